import { standsAt } from '../adjusters/positionWords'
import type { Adjuster, Slot } from '../adjusters/adjuster'
import { slotKey } from '../adjusters/adjuster'
import { changeWords, meansOf } from '../adjusters/changeWords'
import { ownCount, ownPosition, type Conversion } from '../adjusters/convert'
import { shareAt, spanOf } from '../adjusters/share'
import { countAt } from '../derived/countAt'
import { cellOf } from '../grid/cells'
import { settingSource } from '../grid/rows'
import { printNumber } from '../notation/amount'
import { settingRow as rowKey, type Entry, type Notebook } from '../notebook/notebook'
import { countOf, isSame } from '../rules/standings'
import { say } from '../words/say'
import type { Change, CompareCell, CompareRow } from './comparison'
import type { SlotPair } from './pairSlots'
import { whyNoCount } from './whyNoCount'

/** A notebook and the entry of it that is compared. */
export interface State {
  notebook: Notebook
  entry: Entry
}

/** One side of a row: its slot, the state it stands in, and its count where that is known. */
interface Standing {
  slot: Slot
  state: State
  count?: number
}

/** The row of a position, with its change from left to right. */
export function settingRow(pair: SlotPair, left: State | undefined, right: State | undefined, oneMachine: boolean): CompareRow {
  const a = standing(pair.left, left)
  const b = standing(pair.right, right)
  const { adjuster, leg } = (pair.left ?? pair.right)!
  const otherLeg = pair.left && pair.right && pair.right.leg !== leg ? pair.right.leg : undefined
  const detail = otherLeg ? `${leg ? say(leg) : say('one')} / ${say(otherLeg)}` : leg && say(leg)
  const { about } = settingSource({ adjuster, ...(leg ? { leg } : {}) }).row
  return {
    key: rowKey(slotKey(adjuster.id, leg)), kind: 'setting', label: adjuster.label, ...(detail ? { detail } : {}), ...(about ? { about } : {}),
    left: cell(a), right: cell(b), ...judged(a, b, oneMachine),
  }
}

function standing(slot: Slot | undefined, state: State | undefined): Standing | undefined {
  if (!slot || !state) return undefined
  const count = countAt(state.entry, slot)
  return { slot, state, ...(count === undefined ? {} : { count }) }
}

function cell(side: Standing | undefined): CompareCell {
  if (!side) return { text: '', state: 'empty' }
  const { slot: { adjuster, leg }, state, count } = side
  const key = slotKey(adjuster.id, leg)
  const { text, ...shown } = cellOf(settingSource(side.slot), state.notebook, state.entry)
  const own = count === undefined ? text : standsAt(count, adjuster)
  const at = count === undefined ? undefined : shareAt(adjuster, count)
  return {
    text: own, state: shown.state, place: { column: state.entry.key, row: rowKey(key) },
    ...(own === text ? {} : { written: text }), ...(at === undefined ? {} : { at }),
    ...(shown.about ? { about: shown.about } : {}), ...(shown.remark ? { remark: shown.remark } : {}),
  }
}

type Judgement = Pick<CompareRow, 'different' | 'onlyIn' | 'change' | 'incomparable'>

function judged(a: Standing | undefined, b: Standing | undefined, oneMachine: boolean): Judgement {
  const [textA, textB] = [writtenIn(a), writtenIn(b)]
  if (textA === undefined && textB === undefined) return { different: false }
  if (textA === undefined || textB === undefined) return { different: true, onlyIn: textA === undefined ? 'right' : 'left' }
  return oneMachine || isAbsolute(a!.slot.adjuster, b!.slot.adjuster) ? onOneScale(a!, b!) : byShare(a!, b!)
}

function writtenIn(side: Standing | undefined): string | undefined {
  return side?.state.entry.state.get(slotKey(side.slot.adjuster.id, side.slot.leg))?.setting.node.text.trim()
}

/** A pressure or a spring's rate means the same on every machine; a click, a turn or a height in a clamp does not. */
function isAbsolute(left: Adjuster, right: Adjuster): boolean {
  return left.counts.dimension === right.counts.dimension && ['pressure', 'stiffness'].includes(left.counts.dimension)
}

/** In the right side's own count, which the left one's is read in. */
function onOneScale(a: Standing, b: Standing): Judgement {
  const { adjuster } = b.slot
  const before = inCountOf(b, a)
  if (before.count === undefined || b.count === undefined) {
    const isSameCounting = a.slot.adjuster.counts === adjuster.counts && a.slot.adjuster.end === adjuster.end
    if (writtenIn(a) === writtenIn(b) && isSameCounting) return { different: false }
    const why = b.count === undefined ? whyNoCount(b.slot, b.state.entry) : before.missing ?? ''
    return { different: true, incomparable: say`These cannot be set against each other in one count: ${why}.` }
  }
  const by = b.count - before.count
  if (isSame(b.count, before.count)) return { different: false }
  return { different: true, change: { ...inOwnCount(adjuster, by), ...sizeOf(adjuster, by, a, b) } }
}

/** What one side stands at, in the count of the other's adjuster. */
function inCountOf({ slot: { adjuster } }: Standing, from: Standing): Conversion {
  if (from.count === undefined) return { missing: whyNoCount(from.slot, from.state.entry) }
  const converted = ownCount(ownPosition(from.count, from.slot.adjuster), adjuster)
  return converted.count === undefined ? { missing: say`it needs ${converted.missing!}` } : converted
}

function inOwnCount(adjuster: Adjuster, by: number): Pick<Change, 'words' | 'by' | 'direction' | 'gives'> {
  const direction = meansOf(adjuster, by)
  return { words: changeWords(adjuster, by), by, direction, gives: direction === 'more' ? say(adjuster.control.more) : say(adjuster.control.less) }
}

function sizeOf(adjuster: Adjuster, by: number, a: Standing, b: Standing): Pick<Change, 'share' | 'size' | 'sizeIs'> {
  const span = spanOf(adjuster) ?? spanOf(a.slot.adjuster)
  if (span !== undefined) {
    const share = (100 * Math.abs(by)) / span
    return { share: meansOf(adjuster, by) === 'more' ? share : -share, size: Math.min(1, share / 100), sizeIs: 'range' }
  }
  const seen = [a, b].flatMap((side) => recorded(side).flatMap((count) => inCountOf(b, { ...side, count }).count ?? []))
  const width = Math.max(...seen) - Math.min(...seen)
  return width > 0 ? { size: Math.min(1, Math.abs(by) / width), sizeIs: 'record' } : {}
}

/** Every count that was ever set at a slot. */
function recorded({ slot: { adjuster, leg }, state }: Standing): number[] {
  const key = slotKey(adjuster.id, leg)
  return state.notebook.entries.flatMap((entry) => countOf(entry.settings.get(key)) ?? [])
}

function byShare(a: Standing, b: Standing): Judgement {
  const [before, now] = [a, b].map(({ slot, count }) => (count === undefined ? undefined : shareAt(slot.adjuster, count)))
  if (before === undefined || now === undefined) {
    const incomparable = before !== undefined ? say('Not comparable between two machines: the right side lacks its `range`.')
      : now !== undefined ? say('Not comparable between two machines: the left side lacks its `range`.') : say('Not comparable between two machines: both sides lack their `range`.')
    return { different: true, incomparable }
  }
  const by = (now - before) * 100
  if (Math.abs(by) < 0.05) return { different: false }
  const { control } = b.slot.adjuster
  const direction = by > 0 ? 'more' : 'less'
  const gives = direction === 'more' ? say(control.more) : say(control.less)
  return { different: true, change: { words: say`${printNumber(Math.abs(by), 0)} % of range: ${gives}`, by, direction, gives, share: by, size: Math.min(1, Math.abs(by) / 100), sizeIs: 'range' } }
}
