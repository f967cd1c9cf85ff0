import { positionWords, standsAt } from '../adjusters/positionWords'
import type { Adjuster } from '../adjusters/adjuster'
import { unitWords } from '../adjusters/unitWords'
import { meansOf, movementWords } from '../adjusters/changeWords'
import { convertAmount, unitNamed } from '../adjusters/convert'
import { describeTurning, type Turning } from '../adjusters/describeTurning'
import type { HeadDrawing } from '../card/card'
import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import type { Turn } from './turns'

/** One movement of an adjuster, in its own count, in words for the one who makes it. */
export function turnOf(adjuster: Adjuster, from: number, to: number): Omit<Turn, 'row' | 'leg' | 'legWords'> {
  const by = to - from
  const { control } = adjuster
  const gives = meansOf(adjuster, by) === 'more' ? say(control.more) : say(control.less)
  const turning = describeTurning(adjuster)
  const way = turning && (turning.in.count === (by > 0 ? 'rises' : 'falls') ? turning.in : turning.out)
  const also = inTurns(adjuster, by)
  const [start, goal] = [from, to].map((count) => standsAt(count, adjuster)) as [string, string]
  return {
    by, amount: movementWords(adjuster, by), ...(also ? { also } : {}), gives, from: start, to: goal, toCount: to,
    ...(way ? { rotation: way.rotation, view: turning.view, drawing: drawingOf(adjuster, turning, way) } : {}),
    how: way ? way.sentence : say`Bring it from ${start} to ${goal} (${gives}).`,
    check: checkOf(adjuster, to, goal),
  }
}

/** What has no end has no in and out that everyone agrees on, so there it is just turned. */
function drawingOf({ control }: Adjuster, turning: Turning, way: Turning['in']): HeadDrawing {
  const sideways = turning.view === 'side' || turning.view === 'unknown'
  const purpose = control.counted === undefined ? say('turn') : way === turning.in ? say('turn in') : say('turn out')
  return { ...(sideways ? {} : { seen: way.rotation }), facing: way.rotation, viewpoint: turning.viewpoint, purpose, text: way.sentence }
}

/** How many turns of its thread a change of a length is. */
function inTurns(adjuster: Adjuster, by: number): string | undefined {
  if (adjuster.counts.dimension !== 'length') return undefined
  const { count } = convertAmount(Math.abs(by), adjuster.counts, unitNamed('turns'), adjuster)
  return count === undefined ? undefined : positionWords({ amount: count, unit: unitNamed('turns') })
}

/** The end it is counted from is the check; what has no end is read. */
function checkOf(adjuster: Adjuster, to: number, goal: string): string {
  const { counts, end, range, control } = adjuster
  if (counts.dimension === 'mark' && control.name === 'preload') return say`Check: ${printNumber(to)} ${unitWords(counts)} ${end === 'open' ? say('are covered') : say('show')}.`
  if (end === undefined || ['step', 'dial'].includes(counts.dimension)) return say`Check: it stands at ${goal}.`
  const left = range === undefined ? '' : say`, and ${printNumber(range - to)} more to the other end`
  if (to === 0) return say`Check: ${end === 'closed' ? say('it is closed, seated lightly') : say('it is fully backed off')}${left}.`
  return say`Check: ${goal} from ${end === 'closed' ? say('closed') : say('fully backed off')}${left}.`
}
