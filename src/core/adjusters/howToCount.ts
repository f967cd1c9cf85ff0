import { say } from '../words/say'
import { unitWords } from './unitWords'
import type { Adjuster } from './adjuster'
import { isTurned } from './describeTurning'

/**
 * How to find out where an adjuster stands, in the trade's words. Common practice, with what makers' handbooks add; the
 * tests name them.
 */
export function howToCount(adjuster: Adjuster): string {
  return isTurned(adjuster) ? say`${turned(adjuster)} Never force it.` : measured(adjuster)
}

function turned(adjuster: Adjuster): string {
  const { counts, end, control } = adjuster
  if (counts.dimension === 'mark') {
    return end === 'open' ? say`Count the ${unitWords(counts)} that are covered.` : say`Count the ${unitWords(counts)} that show. The further it is wound in, the fewer show.`
  }
  if (counts.dimension === 'dial') return say('Read the number that stands at the mark.')
  if (counts.dimension === 'step') return say`Read the step it rests in, counted from the one with the ${adjuster.higherIs === 'more' ? say('least') : say('most')} ${say(control.words)}, which is step 1.`
  if (end === undefined) return setLength(adjuster)
  return end === 'closed' ? fromClosed(adjuster) : fromOpen(adjuster)
}

function setLength({ control, higherIs }: Adjuster): string {
  const what = control.name === 'preload' ? say('Measure the set length of the spring') : say('Measure it')
  return say`${what}, always between the same two faces. Here longer is ${higherIs === 'more' ? say(control.more) : say(control.less)}.`
}

function fromClosed(adjuster: Adjuster): string {
  const { counts } = adjuster
  if (counts.dimension === 'length') return say('Wind it in, lightly, until it seats; measure how far it came, and wind it back out as far.')
  const seat = say`Turn it in, lightly, until it seats, counting the ${unitWords(counts)}: that is how far out it stood. Then turn it back out by the same count.`
  if (counts.dimension === 'click') return say`${seat} The first click out is 1; where it seats on a click, the seat and 1 may be the same place, so count the same way every time.`
  return `${seat} ${fractionsOf(adjuster)}`.trim()
}

function fromOpen(adjuster: Adjuster): string {
  const { counts } = adjuster
  if (counts.dimension === 'length') return say('Measure how far it is wound in from fully backed off, which is 0.')
  return say`Back it off fully, counting the ${unitWords(counts)}: that is how far in it stood. Then turn it back in by the same count. Fully backed off is 0. ${fractionsOf(adjuster)}`.trim()
}

function fractionsOf({ counts }: Adjuster): string {
  if (counts.symbol === 'turns') return say('Mark where it points first, and count whole turns and quarters; on a hex a flat is a sixth of a turn.')
  return counts.symbol === 'flats' ? say('A hex has six flats to a turn.') : ''
}

function measured({ control, counts }: Adjuster): string {
  const inLines = counts.dimension === 'mark'
  const ways: Record<string, string> = {
    fork_height: inLines
      ? say('Count the lines that show above the clamp, on both sides. A tube level with the clamp’s top is 0.')
      : say('Measure from the top of the clamp to the top of the tube, on both sides. A tube level with the clamp is 0.'),
    ride_height: say('Measure always between the same two points, with the machine held the same way.'),
    air_pressure: say('Read it cold, with the wheel off the ground, always with the same pump. Screwing the pump on takes a little air: set the pressure anew rather than trust the first reading.'),
    oil_level: counts.dimension === 'volume'
      ? say('Note how much oil went in, and what stayed behind when it was drained.')
      : say('Measure from the top of the tube down to the oil, with the fork fully compressed and the spring out.'),
    spring_rate: say('Read the mark on the spring, or measure it: how much more load for each mm.'),
    tyre_pressure: say('Read it cold, before riding, always with the same gauge.'),
  }
  return ways[control.name === 'balance_pressure' ? 'air_pressure' : control.name] ?? say`Measure it in ${unitWords(counts)}, always the same way.`
}
