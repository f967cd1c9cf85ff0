import type { Adjuster, Leg } from '../adjusters/adjuster'
import type { Finding, Severity } from '../finding'
import type { LogsAtHand } from '../logs/atHand'
import type { Position } from '../notation/position'
import type { Reading } from '../notation/reading'
import type { Located, Range } from '../text'
import type { Content } from './content'
import type { ParsedByEntry } from './parseByEntry'
import type { MapNode, ScalarNode, TreeNode } from './tree'

/** One reading of a text: every feature works on this and on nothing else. */
export interface Notebook {
  text: string
  /** What its text was parsed to, piece by piece, for the next version of it. */
  parsed: ParsedByEntry
  root?: MapNode
  format?: Located<number>
  adjusters: ReadonlyMap<string, Adjuster>
  entries: readonly Entry[]
  /** How loudly rules speak in this notebook, by code. */
  severities: ReadonlyMap<string, Severity | 'off'>
  accepted: readonly Accepted[]
  /** What reading alone found: syntax, shape, values that are no position. Rules come on top. */
  findings: readonly Finding[]
  /** The first error of syntax: what was read may be wrong, and the text must not be edited by us. */
  broken?: Finding
  /** True where a newer format is declared: shown, never edited. */
  newer: boolean
  /** True where an older format is declared: what it says is not understood until it is migrated. */
  older: boolean
  /** What is known of the logs that entries name; absent where nobody looks for logs. They are no part of the text. */
  logs?: LogsAtHand
}

/** A word of an entry with the place where it is written. */
export interface Written extends Located<string> {
  node: ScalarNode
}

/** An entry: what was set, measured and ridden at one time. */
export interface Entry {
  /**
   * What was worked out of it, the same object over versions of a text in which the entry and the facts of the machine say the
   * same, wherever they stand: it holds but for places, and loses what differs as soon as something differs that it inherits.
   */
  content: Content
  /** Its id where that is unique, else its place in the list as `#3`. */
  key: string
  index: number
  node: MapNode
  /** Where it can be pointed at: its id, else its first key. */
  range: Range
  id?: Written
  date?: Written
  from?: Written
  /** The entry it comes from: `from`, else the one before. Absent for the first, for an unknown `from` and in a loop. */
  parent?: Entry
  asFound: boolean
  baseline: boolean
  reason?: Written
  /** What it sets, by slot key. A value for a pair stands under both legs. */
  settings: ReadonlyMap<string, Setting>
  /** Settings that name no adjuster or leg of this machine. */
  strangers: readonly Stranger[]
  /** Every slot with a known position: set here or carried. */
  state: ReadonlyMap<string, Standing>
  /** Where everything stood in the entry it comes from. */
  inherited: ReadonlyMap<string, Standing>
}

/** A position as an entry gives it. */
export interface Setting {
  adjuster: Adjuster
  leg?: Leg
  node: ScalarNode
  reading: Reading<Position>
  /** One value written for both legs. */
  shared: boolean
}

export interface Stranger {
  name: string
  leg?: string
  adjuster?: Adjuster
  /** The name or the leg as it is written. */
  key: ScalarNode
}

/** Where a slot stands in an entry, and the entry that set it. */
export interface Standing {
  setting: Setting
  setIn: Entry
}

/** A finding that was accepted with a reason. */
export interface Accepted {
  node: TreeNode
  finding: string
  entry?: string
  about?: string
  reason?: string
  range: Range
}

/** The row of a slot in grid and findings. @example 'settings/fork_rebound/left' */
export function settingRow(slot: string): string {
  return `settings/${slot}`
}
