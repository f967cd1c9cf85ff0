import { standsAt } from '../adjusters/positionWords'
import { movementWords } from '../adjusters/changeWords'
import type { Adjuster } from '../adjusters/adjuster'
import { countAt } from '../derived/countAt'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Advisor } from './advice'

/** Both legs of a pair first: every reading of an uneven fork is a reading of neither. Fork height before all. */
export const legsAlike: Advisor = (notebook, entry) => {
  const pairs = [...notebook.adjusters.values()].filter(({ legs }) => legs.length === 2)
  for (const adjuster of [...pairs].sort((a, b) => Number(b.control.mustBeEven ?? false) - Number(a.control.mustBeEven ?? false))) {
    const [left, right] = (['left', 'right'] as const).map((leg) => countAt(entry, { adjuster, leg }))
    if (left === undefined || right === undefined || Math.abs(left - right) < 1e-6 || isAccepted(notebook, entry, adjuster)) continue
    const figure = (count: number) => standsAt(count, adjuster)
    return {
      topic: 'legs', kind: 'change', step: say`bring the right leg of ${adjuster.label} to the left one: ${movementWords(adjuster, left - right)}, to ${figure(left)}`,
      evidence: [say`${entry.key}: ${adjuster.label} stands at ${figure(left)} left and ${figure(right)} right`],
      expect: [adjuster.control.mustBeEven ? say('both tubes stand alike, so that the axle is not clamped askew') : say('both legs work alike')],
      assumes: [say('the left leg stands where it should; if the right one does, bring the left to it')],
    }
  }
  return undefined
}

function isAccepted({ accepted }: Notebook, entry: Entry, { id }: Adjuster): boolean {
  return accepted.some(({ finding, reason, about, entry: only }) =>
    finding === 'legs-differ' && reason !== undefined && (about === undefined || about.split('/')[0] === id) && (only === undefined || only === entry.key))
}
