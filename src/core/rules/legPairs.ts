import type { Adjuster, Leg } from '../adjusters/adjuster'
import { setSetting } from '../notebook/edits/setSetting'
import { offer } from '../notebook/edits/offer'
import { settingRow, type Entry, type Notebook, type Setting } from '../notebook/notebook'
import type { Fix } from '../finding'
import { say } from '../words/say'
import type { Report } from './rule'
import { countOf, isSame } from './standings'

/** The pairs that stand apart in an entry and were touched by it. */
export function unevenPairs(entry: Entry, notebook: Notebook, concerns: (adjuster: Adjuster) => boolean): { adjuster: Adjuster; left: Setting; right: Setting; at: Setting }[] {
  return [...notebook.adjusters.values()].flatMap((adjuster) => {
    if (adjuster.legs.length < 2 || !concerns(adjuster)) return []
    const left = entry.state.get(`${adjuster.id}/left`)
    const right = entry.state.get(`${adjuster.id}/right`)
    const at = right?.setIn === entry ? right : left
    if (!left || !right || at?.setIn !== entry) return []
    const [a, b] = [countOf(left.setting), countOf(right.setting)]
    return a === undefined || b === undefined || isSame(a, b) ? [] : [{ adjuster, left: left.setting, right: right.setting, at: at.setting }]
  })
}

/** The report on an uneven pair, with a fix for either leg. */
export function unevenReport(entry: Entry, notebook: Notebook, pair: ReturnType<typeof unevenPairs>[number], message: string): Report {
  const fixes = (['left', 'right'] as const).flatMap((leg) => matchFix(entry, notebook, pair, leg))
  return { message, range: pair.at.node.range, row: settingRow(`${pair.adjuster.id}/${pair.at.leg}`), fixes }
}

function matchFix(entry: Entry, notebook: Notebook, pair: ReturnType<typeof unevenPairs>[number], leg: Leg): Fix[] {
  const other = leg === 'left' ? pair.right : pair.left
  return offer(leg === 'left' ? say`Write ‘${other.node.text}’ for the left leg` : say`Write ‘${other.node.text}’ for the right leg`, () => setSetting(notebook.text, entry, pair.adjuster.id, leg, other.node.text))
}
