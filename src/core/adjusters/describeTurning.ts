import { phrase, say } from '../words/say'
import type { Adjuster, Facing, Rotation } from './adjuster'
import { oppositeOf, seenTurning, type View } from './turning'

/** One way to turn an adjuster: what is seen, and what comes of it. */
export interface Turn {
  /** As seen from where it is worked; facing the head where `view` is a side or unknown. */
  rotation: Rotation
  /** What it gives: 'more rebound damping'. */
  gives: string
  /** What that does on the road, as a clause. */
  does: string
  /** Whether its count or figure goes up or down. */
  count: 'rises' | 'falls'
  /** All of it as one sentence for people. */
  sentence: string
}

/** Which way to turn an adjuster from where one stands. Plain data: the hover, the turn list and the drawing share it. */
export interface Turning {
  view: View
  /** Where one looks from: 'as you look down on it from above'. */
  viewpoint: string
  in: Turn
  out: Turn
  /** Where only the side of the head is seen: which way the part nearest to the eye moves, as a sentence. */
  nearSide?: string
}

const viewpoints: Record<string, string> = {
  facing: phrase('facing its head'),
  above: phrase('as you look down on it from above'),
  below: phrase('as you look up at it from below'),
  front: phrase('as you look at it from the front of the machine'),
  rear: phrase('as you look at it from behind the machine'),
  left: phrase('as you look at it from the machine’s left'),
  right: phrase('as you look at it from the machine’s right'),
}
const facings: Record<Facing, string> = { up: phrase('up'), down: phrase('down'), front: phrase('to the front'), rear: phrase('to the rear'), left: phrase('to the left'), right: phrase('to the right') }

/** Whether there is something to turn: not on a tube in its clamps, a chamber of air or a spring that is swapped. */
export function isTurned({ control, counts, mmPerTurn }: Adjuster): boolean {
  return control.counted !== undefined || counts.dimension === 'click' || counts.dimension === 'turn' || mmPerTurn !== undefined
}

/**
 * Which way to turn an adjuster, and what each way gives; `undefined` where there is nothing to turn.
 *
 * @example describeTurning(shockReboundFacingDownWorkedFromAbove)?.in.sentence
 * // 'Turn it anticlockwise, as you look down on it from above, to turn it in (more rebound damping).'
 */
export function describeTurning(adjuster: Adjuster): Turning | undefined {
  if (!isTurned(adjuster)) return undefined
  const { control } = adjuster
  const seen = seenTurning(adjuster.faces, adjuster.workedFrom, adjuster.closes)
  const sideways = seen.view === 'side' || seen.view === 'unknown'
  const viewpoint = sideways ? viewpoints.facing! : viewpoints[adjuster.workedFrom ?? 'facing'] ?? viewpoints.facing!
  // Who is to face a head must know where it is.
  const pointing = adjuster.faces ? say`, which points ${say(facings[adjuster.faces])}` : ''
  const turn = (toward: 'in' | 'out'): Turn => {
    const rotation = seen[toward]
    const [gives, does] = toward === 'in' ? [say(control.more), say(control.moreDoes)] : [say(control.less), say(control.lessDoes)]
    const head = sideways ? say`Face the head${pointing}: turn it ${say(rotation)}` : say`Turn it ${say(rotation)}, ${say(viewpoint)}${viewpoint === viewpoints.facing ? pointing : ''},`
    // What has no end has no in and out that everyone agrees on: there the rotation is said to give more or less.
    const purpose = control.counted === undefined ? say`for ${gives}` : say`to turn it ${say(toward)} (${gives})`
    return { rotation, gives, does, count: countGoes(toward, adjuster), sentence: `${head} ${purpose}.` }
  }
  const { nearSide } = seen
  return { view: seen.view, viewpoint, in: turn('in'), out: turn('out'), ...(nearSide ? { nearSide: nearSideWords(adjuster, nearSide) } : {}) }
}

const froms: Record<string, string> = { above: phrase('from above'), below: phrase('from below'), front: phrase('from the front'), rear: phrase('from behind'), left: phrase('from the machine’s left'), right: phrase('from the machine’s right') }
const towards: Record<Facing, string> = { up: phrase('up'), down: phrase('down'), front: phrase('towards the front'), rear: phrase('towards the rear'), left: phrase('to the machine’s left'), right: phrase('to the machine’s right') }

function nearSideWords({ control, workedFrom }: Adjuster, nearSide: Facing): string {
  return say`As you work it ${say(froms[workedFrom ?? ''] ?? phrase('from there'))}, the side of it nearest to you moves ${say(towards[nearSide])} for ${say(control.more)}, ${say(towards[oppositeOf(nearSide)])} for ${say(control.less)}.`
}

/** Turned in, a count from closed falls and one from open rises; a figure of its own goes as its notebook says. */
function countGoes(toward: 'in' | 'out', { end, higherIs }: Adjuster): 'rises' | 'falls' {
  const risesIn = end === undefined ? higherIs === 'more' : end === 'open'
  return risesIn === (toward === 'in') ? 'rises' : 'falls'
}
