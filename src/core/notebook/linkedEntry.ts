import { lookAlongTheLine, State, type Content } from './content'
import type { Entry, Setting, Standing, Stranger, Written } from './notebook'
import type { Range } from '../text'
import type { MapNode } from './tree'

/** What an entry says, before it is known what it comes from. */
export interface Said {
  node: MapNode
  range: Range
  id?: Written
  date?: Written
  from?: Written
  reason?: Written
  asFound: boolean
  baseline: boolean
  settings: ReadonlyMap<string, Setting>
  strangers: readonly Stranger[]
}

const nowhere: ReadonlyMap<string, Standing> = new Map()

/** An entry with what it comes from. Where everything stands in it is worked out when somebody asks. */
export class LinkedEntry implements Entry {
  declare readonly node: MapNode
  declare readonly range: Range
  declare readonly id?: Written
  declare readonly date?: Written
  declare readonly from?: Written
  declare readonly reason?: Written
  declare readonly asFound: boolean
  declare readonly baseline: boolean
  declare readonly settings: ReadonlyMap<string, Setting>
  declare readonly strangers: readonly Stranger[]
  readonly #parent: LinkedEntry | undefined
  #standings: ReadonlyMap<string, Standing> | undefined
  #state: State | undefined
  #inherited: State | undefined

  constructor(readonly said: Said, readonly key: string, readonly index: number, parent: LinkedEntry | undefined, readonly content: Content) {
    Object.assign(this, said)
    this.#parent = parent
    content.owner = this
  }

  get parent(): LinkedEntry | undefined {
    lookAlongTheLine()
    return this.#parent
  }

  get state(): State {
    return this.#state ??= new State(this, standingsOf(this))
  }

  get inherited(): State {
    return this.#inherited ??= new State(this, this.#parent ? standingsOf(this.#parent) : nowhere)
  }

  /** For whoever links entries, who is watched by nobody. */
  static parentOf(entry: LinkedEntry): LinkedEntry | undefined {
    return entry.#parent
  }

  static standingsOf(entry: LinkedEntry): ReadonlyMap<string, Standing> {
    const waiting: LinkedEntry[] = []
    let at: LinkedEntry | undefined = entry
    for (; at && !at.#standings; at = at.#parent) waiting.push(at)
    let above = (at && at.#standings) ?? nowhere
    for (const each of waiting.reverse()) above = each.#standings = withSettings(above, each)
    return above
  }
}

const { standingsOf } = LinkedEntry

function withSettings(above: ReadonlyMap<string, Standing>, entry: Entry): ReadonlyMap<string, Standing> {
  if (entry.settings.size === 0) return above
  const standings = new Map(above)
  for (const [slot, setting] of entry.settings) standings.set(slot, { setting, setIn: entry })
  return standings
}
