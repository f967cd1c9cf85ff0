import { airSpring, wantsRoom } from '../compute/springs/airSpring'
import { found, isMissing } from '../compute/working/result'
import { forkAirOf, hasAir } from '../derived/airOf'
import { factAt } from '../notebook/machine'
import { settingRow } from '../notebook/notebook'
import { say } from '../words/say'
import type { NotebookRule, Report } from './rule'

export const noRoomForAir: NotebookRule = {
  code: 'no-room-for-air',
  severity: 'error',
  says: 'Oil and spring fill the fork before its travel ends.',
  why: 'Oil does not give: a fork that is filled so locks before its end and breaks seals. The level was misread or measured from another place, or a diameter or the travel is wrong.',
  checkNotebook: (notebook) => {
    if (!hasAir(notebook)) return []
    const written = factAt(notebook, ['machine', 'front', 'air', 'oil_level'], 'length')
    const reports = new Map<number, Report>()
    for (const entry of notebook.entries) {
      const air = found(forkAirOf(notebook, entry))
      const spring = air && airSpring({ ...air.leg, exponent: air.exponent })
      if (!spring || !isMissing(spring) || !spring.missing.includes(say(wantsRoom))) continue
      const set = [...entry.state].find(([, { setting }]) => setting.adjuster.control.name === 'oil_level' && setting.adjuster.counts.dimension === 'length')
      const range = set?.[1].setting.node.range ?? written?.range
      if (range && !reports.has(range.start)) {
        const place = set ? { entry: set[1].setIn, row: settingRow(set[0]) } : {}
        reports.set(range.start, { message: say('at this oil level oil and spring fill the fork before its travel ends; measure from the top of the tube, fork fully compressed, spring out'), range, ...place })
      }
    }
    return [...reports.values()]
  },
}
