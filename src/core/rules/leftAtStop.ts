import { ownCount } from '../adjusters/convert'
import { say } from '../words/say'
import type { EntryRule, Report } from './rule'
import { isSame } from './standings'
import { writtenPositions, type Written } from './writtenSettings'

export const leftAtStop: EntryRule = {
  code: 'left-at-stop',
  severity: 'warning',
  says: 'Damping is left fully closed; or, said more quietly, fully open, or found at either.',
  why: 'Fully closed is where counting begins, not a setting: the valve passes next to nothing, and fully open it hardly works. If it takes the stop to feel right, the spring or the valving is to blame.',
  checkEntry: (entry) => writtenPositions(entry).flatMap((written) => report(written, entry.asFound)),
}

function report(written: Written, asFound: boolean): Report[] {
  const stop = stopOf(written)
  if (stop === undefined) return []
  const { setting: { adjuster, node }, row } = written
  return [{ message: messageOf(adjuster.label, stop, asFound), range: node.range, row, severity: stop === 'closed' && !asFound ? 'warning' : 'info' }]
}

function messageOf(label: string, stop: 'closed' | 'open', asFound: boolean): string {
  if (stop === 'closed') {
    const what = say('that is where counting begins, not a setting; open it before riding')
    return asFound ? say`${label} was found fully closed: ${what}` : say`${label} is left fully closed: ${what}`
  }
  const what = say('it hardly damps there; if that feels right, look at the spring and the valving')
  return asFound ? say`${label} was found fully open: ${what}` : say`${label} is left fully open: ${what}`
}

function stopOf({ setting: { adjuster }, position }: Written): 'closed' | 'open' | undefined {
  if (!adjuster.control.damping || adjuster.end === undefined) return undefined
  const { count } = ownCount(position, adjuster)
  const atFarEnd = count !== undefined && adjuster.range !== undefined && isSame(count, adjuster.range)
  // Nought from an end is that end, whether or not the range is known.
  const stop = isSame(position.amount, 0) ? (position.end ?? adjuster.end) : atFarEnd ? otherEnd[adjuster.end] : undefined
  // A steering damper may well be left open; that is how it is switched off.
  return stop === 'open' && adjuster.control.name === 'steering_damper' ? undefined : stop
}

const otherEnd = { closed: 'open', open: 'closed' } as const
