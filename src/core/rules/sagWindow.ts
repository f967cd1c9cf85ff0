import type { LoadCase } from '../compute/sag/loadCase'
import { judgeSag } from '../compute/sag/judgeSag'
import { found } from '../compute/working/result'
import { sagLengthsOf, sagOf, sagTargetOf, travelOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { phrase, say } from '../words/say'
import type { EntryRule, Report } from './rule'
import { endWord, loadWords, measuredEnds } from './sagEnds'

/** A place to start, as the trade teaches it; preload moves sag and leaves the rate as it is. */
const advice = {
  bike: {
    below: phrase('Set the rider’s sag first; too little of this one then means a spring too soft.'),
    above: phrase('Set the rider’s sag first; too much of this one then means a spring too stiff.'),
  },
  rider: {
    below: phrase('Take preload or air off to let it sit lower.'),
    above: phrase('Add preload or air to bring it up.'),
  },
} as const

/** The rule for one load case: the sag lies outside its window. */
function windowRule(code: string, load: LoadCase, why: string): EntryRule {
  return {
    code, why, severity: 'warning',
    says: `The ${loadWords[load]} lies outside its window.`,
    checkEntry: (entry, notebook) =>
      measuredEnds(entry).flatMap((end): Report[] => {
        const value = found(sagOf(notebook, entry, end, load))
        const target = found(sagTargetOf(notebook, end, load))
        const { lifted, pushed } = sagLengthsOf(entry, end, load)
        const at = lifted ?? pushed
        const travel = travelOf(notebook, end)
        // What cannot be is reported as such, not as a window missed.
        if (!value || !target || !at || value.value > (travel ?? Infinity)) return []
        const { where, byMm } = judgeSag(value, target)
        if (where === 'within') return []
        const window = say`${printNumber(target.lowMm, 1)} to ${printNumber(target.highMm, 1)} mm (${say(target.source)})`
        const [what, mm, by] = [`${endWord(end)} ${say(loadWords[load])}`, printNumber(value.value, 1), printNumber(byMm, 1)]
        const so = where === 'below' ? say`${what}: ${mm} mm is ${by} mm below the window of ${window}.` : say`${what}: ${mm} mm is ${by} mm above the window of ${window}.`
        const message = `${so} ${say(advice[load][where])}`
        return [{ message, range: at.range, row: at.key }]
      }),
  }
}

export const staticSagWindow = windowRule('static-sag-window', 'bike',
  'With the rider’s sag set right, the bike’s own sag tells whether the spring suits: too little of it and the spring is too soft, too much and it is too stiff.')

export const riderSagWindow = windowRule('rider-sag-window', 'rider',
  'Sag with the rider aboard sets where in its travel the end works. It comes before damping. The windows are starting points.')
