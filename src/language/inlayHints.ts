import type { Adjuster } from '../core/adjusters/adjuster'
import { unitWords } from '../core/adjusters/unitWords'
import { meansOf } from '../core/adjusters/changeWords'
import { inNotation, ownPosition, unitNamed } from '../core/adjusters/convert'
import { printNumber, printTurns } from '../core/notation/amount'
import { printPosition } from '../core/notation/position'
import type { Entry, Notebook, Setting } from '../core/notebook/notebook'
import type { ScalarNode } from '../core/notebook/tree'
import { changesOf, countOf, type Change } from '../core/rules/standings'
import type { Range } from '../core/text'
import { say } from '../core/words/say'

/** A few words to be shown behind a value, which are not in the text. */
export interface InlayHint {
  at: number
  label: string
  /** More about it, for whoever points at it. */
  about: string
  kind: 'notation' | 'change'
}

/**
 * Behind every setting the other notation where it helps (`3 out` of 10 is `= 7 in`, turns of preload are mm), and how it
 * changed against the entry it comes from. In a broken text only what stands wholly before the error is sure.
 */
export function inlayHints(notebook: Notebook, { start, end }: Range): InlayHint[] {
  const sure = Math.min(end, notebook.broken?.range.start ?? Infinity)
  return notebook.entries
    .filter(({ node }) => node.range.end >= start && node.range.start <= end && (!notebook.broken || node.range.end <= sure))
    .flatMap(hintsOf)
    .filter(({ at }) => at >= start && at <= end)
}

function hintsOf(entry: Entry): InlayHint[] {
  const written = new Map<ScalarNode, Setting[]>()
  for (const setting of entry.settings.values()) written.set(setting.node, [...(written.get(setting.node) ?? []), setting])
  const changes = changesOf(entry)
  return [...written].flatMap(([node, settings]) => [
    ...notationHint(settings[0]!),
    ...changeHint(changes.filter(({ setting }) => setting.node === node), settings.length),
  ])
}

function notationHint(setting: Setting): InlayHint[] {
  const count = countOf(setting)
  const other = count === undefined ? undefined : otherNotation(setting, count)
  return other ? [{ at: setting.node.range.end, label: `= ${other.text}`, about: other.about, kind: 'notation' }] : []
}

function otherNotation({ adjuster, reading }: Setting, count: number): { text: string; about: string } | undefined {
  const written = reading.value!
  const isOwn = (written.end ?? adjuster.end) === adjuster.end && (written.unit ?? adjuster.counts) === adjuster.counts
  if (!isOwn) return { text: printPosition(ownPosition(count, adjuster)), about: say`In ${adjuster.label}’s own count.` }
  return adjuster.control.damping ? fromOtherEnd(adjuster, count) : inMm(adjuster, count)
}

function fromOtherEnd({ end, range, rangeIs, counts }: Adjuster, count: number): { text: string; about: string } | undefined {
  if (end === undefined || range === undefined || count > range || count < 0) return undefined
  const [other, words] = end === 'closed' ? (['open', say('in from fully open')] as const) : (['closed', say('out from fully closed')] as const)
  const about = say`Counted ${words}: its range is ${printNumber(range)} ${unitWords(counts)}, ${rangeIs === 'measured' ? say('measured') : say('by the book')}.`
  return { text: printPosition({ amount: range - count, end: other }), about }
}

/** What a count of turns, clicks or lines comes to. Nothing moved is nothing to tell. */
function inMm(adjuster: Adjuster, count: number): { text: string; about: string } | undefined {
  if (adjuster.counts.dimension === 'length' || count === 0) return undefined
  const length = inNotation(count, adjuster, unitNamed('mm'), adjuster.end).count
  return length === undefined ? undefined : { text: `${printNumber(length, 2)} mm`, about: say('By the ratio that the adjuster has in this notebook.') }
}

/** One hint for what one value changed; leg by leg where the legs did not change alike. */
function changeHint(changes: readonly Change[], legs: number): InlayHint[] {
  const first = changes[0]
  if (!first) return []
  const isAlike = changes.length === legs && changes.every(({ by }) => Math.abs(by - first.by) < 1e-6)
  const told = isAlike ? [first] : changes
  const name = (change: Change) => (isAlike || legs === 1 || !change.setting.leg ? '' : `${say(change.setting.leg)} `)
  return [{
    at: first.setting.node.range.end,
    label: told.map((change) => `${name(change)}${amountOf(change)} · ${effectOf(change).gives}`).join(', '),
    about: told.map((change) => say`${capital(`${name(change)}${change.before.setting.node.text}`)} in ${change.before.setIn.key}. ${capital(effectOf(change).gives)}: ${effectOf(change).does}.`).join(' '),
    kind: 'change',
  }]
}

function effectOf({ setting: { adjuster }, by }: Change): { gives: string; does: string } {
  const { more, moreDoes, less, lessDoes } = adjuster.control
  return meansOf(adjuster, by) === 'more' ? { gives: say(more), does: say(moreDoes) } : { gives: say(less), does: say(lessDoes) }
}

function amountOf({ by, setting: { adjuster } }: Change): string {
  const size = Math.abs(by)
  return `${by > 0 ? '+' : '−'}${adjuster.counts.symbol === 'turns' ? printTurns(size) : printNumber(size, 2)}`
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
