import { say } from '../../words/say'
import { isMissing, type Measured, type Outcome, type Result } from '../working/result'
import type { SagTarget } from '../sag/sagTarget'
import type { LoadCase } from '../sag/loadCase'
import { judgeSag } from '../sag/judgeSag'
import { preloadChange } from './preloadChange'
import { sagsAfter, type SagsAfter } from './sagsAfter'
import { turnAdjuster, type AdjusterMove, type PreloadAdjuster } from './turnAdjuster'

export interface PreloadQuestion {
  bikeSagMm?: Measured
  riderSagMm?: Measured
  bikeWindow?: SagTarget
  riderWindow?: SagTarget
  /** Spring travel over sag: 1 for a fork read along its tubes. */
  motionRatio: number | undefined
  adjuster?: PreloadAdjuster
  /** How a length is written in the limits; in mm by default. */
  lengthWords?: (mm: number) => string
}

export interface PreloadPlan {
  /** The load case whose sag is brought into its window. */
  for: LoadCase
  needed: 'none' | 'more' | 'less'
  /** To the middle of the window, mm at the spring, above zero more; told even when the sag is within. */
  toMiddle: Result
  /** How to set the adjuster; absent without one, or when no change is needed. */
  move?: AdjusterMove
  /** Both sags after the move, or after the exact change where there is no adjuster to round it. */
  after: SagsAfter
  /** Why preload alone is not the answer, in plain words; empty when it is. */
  limits: string[]
}

/**
 * How much preload, and which way, brings the sag of an end into its window; the rider sag where it is known, else the
 * bike's. Says what both sags become, and where the range ends or the end would top out: then the spring is the problem.
 */
export function planPreload(question: PreloadQuestion): Outcome<PreloadPlan> {
  const aim = findAim(question)
  if (isMissing(aim)) return aim
  const { motionRatio, adjuster } = question
  const targetMm = (aim.window.lowMm + aim.window.highMm) / 2
  const toMiddle = preloadChange({ sagMm: aim.sagMm, targetMm, motionRatio })
  if (isMissing(toMiddle)) return toMiddle
  const { where } = judgeSag(aim.sagMm, aim.window)
  const needed = where === 'within' ? 'none' : where === 'above' ? 'more' : 'less'
  const move = needed !== 'none' && adjuster ? turnAdjuster(adjuster, toMiddle.value) : undefined
  const changeMm = needed === 'none' ? 0 : move ? move.givesMm : toMiddle.value
  const sags = { bikeMm: question.bikeSagMm?.value, riderMm: question.riderSagMm?.value }
  const after = sagsAfter(sags, changeMm, motionRatio!)
  if (![after.bikeMm ?? 0, after.riderMm ?? 0].every(Number.isFinite)) return { missing: [say('sags and a motion ratio that fit together')] }
  return { for: aim.load, needed, toMiddle, ...(move ? { move } : {}), after, limits: findLimits(aim, after, move, question.lengthWords) }
}

interface Aim {
  load: LoadCase
  sagMm: Measured
  window: SagTarget
}

function findAim({ bikeSagMm, riderSagMm, bikeWindow, riderWindow }: PreloadQuestion): Outcome<Aim> {
  if ([bikeSagMm, riderSagMm].some((sag) => sag && !Number.isFinite(sag.value))) return { missing: [say('sags that are numbers')] }
  if (riderSagMm && riderWindow) return { load: 'rider', sagMm: riderSagMm, window: riderWindow }
  if (bikeSagMm && bikeWindow) return { load: 'bike', sagMm: bikeSagMm, window: bikeWindow }
  return { missing: riderSagMm || bikeSagMm ? [say('a window for the sag')] : [say('a sag, with the rider or of the bike alone')] }
}

const inMm = (mm: number): string => `${mm.toFixed(1)} mm`

function findLimits({ load, window }: Aim, after: SagsAfter, move: AdjusterMove | undefined, figure = inMm): string[] {
  const limits: string[] = []
  const sagMm = load === 'rider' ? after.riderMm! : after.bikeMm!
  const { where, byMm } = judgeSag({ value: sagMm }, window)
  if (move && move.shortMm > 0 && where !== 'within') {
    limits.push(say`the adjuster’s range ends ${figure(byMm)} of sag short: the spring is too ${where === 'above' ? say('soft') : say('stiff')}, or its spacer too ${where === 'above' ? say('short') : say('long')}`)
  } else if (where !== 'within') {
    limits.push(say`the adjuster’s steps are too coarse for the window: ${figure(byMm)} outside`)
  }
  if (after.toppingOut.includes('bike')) limits.push(say('the bike alone would stand on its top stop: the spring is too soft for this load'))
  return limits
}
