import { legWords } from '../adjusters/legWords'
import { changeWords } from '../adjusters/changeWords'
import type { Entry, Notebook } from '../notebook/notebook'
import { changesOf, isSame, type Change } from '../rules/standings'
import { say } from '../words/say'
import type { EntryBetween } from './comparison'
import type { State } from './settingRow'

/**
 * The entries on the way from the left state to the right one: those to undo, newest first, down to the entry that both
 * come from, then those to do. Empty where they have none in common; entries of two versions of a notebook are told by their ids.
 */
export function entriesBetween(left: State, right: State): EntryBetween[] {
  const line = ancestry(right.entry)
  const undone: Entry[] = []
  for (const entry of ancestry(left.entry)) {
    const shared = counterpart(entry, left.notebook, right.notebook)
    const at = shared ? line.indexOf(shared) : -1
    if (at >= 0) return [...undone.map((each) => between(each, 'undone')), ...line.slice(0, at).reverse().map((each) => between(each, 'done'))]
    undone.push(entry)
  }
  return []
}

/** An entry and all it comes from, newest first. */
function ancestry(entry: Entry): Entry[] {
  const line: Entry[] = []
  for (let at: Entry | undefined = entry; at; at = at.parent) line.push(at)
  return line
}

function counterpart(entry: Entry, from: Notebook, to: Notebook): Entry | undefined {
  if (from === to) return entry
  return entry.id && entry.key === entry.id.value ? to.entries.find(({ key }) => key === entry.key) : undefined
}

function between(entry: Entry, way: EntryBetween['way']): EntryBetween {
  return { way, key: entry.key, date: entry.date?.value ?? '', reason: entry.reason?.value.trim() ?? '', changes: changeLines(entry) }
}

/** What an entry changed on the machine, a line an adjuster. @example ['Fork rebound, both legs: 2 clicks out: less rebound damping'] */
export function changeLines(entry: Entry): string[] {
  const changes = changesOf(entry)
  return changes.flatMap((change) => {
    const { adjuster, leg } = change.setting
    const other = changes.find((each) => each !== change && each.setting.adjuster === adjuster)
    const together = other !== undefined && isSame(other.by, change.by)
    if (together && leg === 'right') return []
    return [`${adjuster.label}${together ? `, ${say('both legs')}` : leg ? `, ${legWords(leg)}` : ''}: ${wordsOf(change)}`]
  })
}

function wordsOf({ setting, by }: Change): string {
  return changeWords(setting.adjuster, by)
}

