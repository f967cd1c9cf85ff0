import { slotKey, type Adjuster, type Leg } from '../adjusters/adjuster'
import { setSetting } from '../notebook/edits/setSetting'
import { offer } from '../notebook/edits/offer'
import { settingRow, type Entry, type Notebook, type Setting } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'
import type { Fix } from '../finding'
import { say } from '../words/say'
import type { Report } from './rule'
import { countOf, isSame } from './standings'

/** The pairs that stand apart in an entry and were touched by it. */
export function unevenPairs(entry: Entry, notebook: Notebook, concerns: (adjuster: Adjuster) => boolean): { adjuster: Adjuster; left: Setting; right: Setting; at: Setting }[] {
  return pairsOf(notebook.adjusters).flatMap(({ adjuster, slots }) => {
    if (!concerns(adjuster) || !slots.some((slot) => entry.settings.has(slot))) return []
    const [left, right] = [entry.state.get(slots[0]), entry.state.get(slots[1])]
    const at = right?.setIn === entry ? right : left
    if (!left || !right || at?.setIn !== entry) return []
    const [a, b] = [countOf(left.setting), countOf(right.setting)]
    return a === undefined || b === undefined || isSame(a, b) ? [] : [{ adjuster, left: left.setting, right: right.setting, at: at.setting }]
  })
}

/** The adjusters that come in a pair, with the slot of each leg. */
const pairsOf = oncePer((adjusters: Notebook['adjusters']) => [...adjusters.values()].filter(({ legs }) => legs.length >= 2).map((adjuster) => ({ adjuster, slots: [slotKey(adjuster.id, 'left'), slotKey(adjuster.id, 'right')] as const })))

/** The report on an uneven pair, with a fix for either leg. */
export function unevenReport(entry: Entry, notebook: Notebook, pair: ReturnType<typeof unevenPairs>[number], message: string): Report {
  const fixes = (['left', 'right'] as const).flatMap((leg) => matchFix(entry, notebook, pair, leg))
  return { message, range: pair.at.node.range, row: settingRow(`${pair.adjuster.id}/${pair.at.leg}`), fixes }
}

function matchFix(entry: Entry, notebook: Notebook, pair: ReturnType<typeof unevenPairs>[number], leg: Leg): Fix[] {
  const other = leg === 'left' ? pair.right : pair.left
  return offer(leg === 'left' ? say`Write ‘${other.node.text}’ for the left leg` : say`Write ‘${other.node.text}’ for the right leg`, () => setSetting(notebook.text, entry, pair.adjuster.id, leg, other.node.text))
}
