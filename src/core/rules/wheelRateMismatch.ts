import { found } from '../compute/working/result'
import { sagLengthsOf } from '../derived/sagOf'
import { fittedRateOf, impliedRateOf, rateComparisonOf } from '../derived/wheelRateOf'
import { printNumber } from '../notation/amount'
import { say } from '../words/say'
import type { EntryRule, Report } from './rule'
import { ends, endWord } from './sagEnds'

export const wheelRateMismatch: EntryRule = {
  code: 'wheel-rate-mismatch',
  severity: 'info',
  says: 'Both sags imply another rate than the springs fitted have, by more than twice the uncertainty.',
  why: 'A length was misread, a load or the motion ratio is wrong, the spring is not the one its mark says, or friction, air or a stop took part. Until it is found, neither rate is to be built upon.',
  checkEntry: (entry, notebook) => ends.flatMap((end): Report[] => {
    const { lifted, pushed } = sagLengthsOf(entry, end, 'rider')
    const at = lifted ?? pushed
    if (!at) return []
    const comparison = found(rateComparisonOf(notebook, entry, end))
    if (comparison?.agree !== false) return []
    const [implied, fitted] = [found(impliedRateOf(notebook, entry, end)), found(fittedRateOf(notebook, entry, end))]
    if (!implied || !fitted) return []
    const rates = say`${printNumber(implied.value, 1)} ± ${printNumber(implied.u ?? 0, 1)} N/mm, the springs fitted make ${printNumber(fitted.value, 1)} N/mm`
    return [{ message: say`${endWord(end)}: the two sags imply ${rates}; read the lengths again, then look at loads, motion ratio and the mark on the spring`, range: at.range, row: at.key }]
  }),
}
