import { oilForLevelChange } from '../compute/springs/oilVolume'
import { found } from '../compute/working/result'
import { airAt, forkAirOf } from '../derived/airOf'
import { travelOf } from '../derived/sagOf'
import { printNumber } from '../notation/amount'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'

/** The step in which an oil level is usually tried, mm. Common practice, no source. */
const stepMm = 5

/**
 * A step of the fork's oil level for `more` or `less` resistance at the end of its stroke, and what it does in numbers;
 * `undefined` where the notebook does not tell the fork's air, or where there is no room for more oil.
 */
export function moveOil(notebook: Notebook, entry: Entry, wanted: 'more' | 'less', units: DisplayUnits): { step: string; expect: string; assumes: string[] } | undefined {
  const air = found(forkAirOf(notebook, entry))
  const by = wanted === 'more' ? -stepMm : stepMm
  const force = (levelByMm: number) => found(airAt(notebook, entry, 'force', { mm: travelOf(notebook, 'front'), stroke: 'fast', levelByMm }))
  const [now, then] = [force(0), force(by)]
  const oil = air && found(oilForLevelChange({ boreMm: air.leg.boreMm, changeMm: stepMm }))
  if (!air || !now || !then || !oil) return undefined
  const figure = sayIn(units)
  const legs = air.legs === 2 ? say(' in both legs') : ''
  return {
    step: say`try ${figure(stepMm, 'mm')} ${say(wanted)} oil${legs}: a level of ${figure(air.leg.oilLevelMm + by, 'mm')}, which is ${printNumber(oil.value, 1)} ml ${wanted === 'more' ? say('poured in') : say('drawn off')}${air.legs === 2 ? say(' each leg') : ''}`,
    expect: say`${figure(Math.abs(then.value - now.value), 'N', 0)} ${say(wanted)} from the air of ${air.legs === 2 ? say('each') : say('that')} leg at full travel, and next to nothing at the beginning`,
    assumes: [say('the level stays within what the manual allows'), say('measured with the fork fully compressed and its springs out')],
  }
}
