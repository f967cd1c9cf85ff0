import type { Finding } from '../finding'
import type { Adjuster } from '../adjusters/adjuster'
import { settingRow, type Entry } from '../notebook/notebook'
import { say } from '../words/say'
import type { SheetFinding } from './sheet'

const rank = { error: 0, warning: 1, info: 2 } as const

/**
 * What a rider has to know of what the notebook says about itself: what is found in this entry, what was found earlier
 * about a position that still stands, what is wrong with the notebook as a whole, and what may move by itself. Worst
 * first, each once.
 */
export function sheetWatch(findings: readonly Finding[], entry: Entry, adjusters: Iterable<Adjuster>): SheetFinding[] {
  const standing = new Set([...entry.state].map(([slot, { setIn }]) => `${setIn.key} ${settingRow(slot)}`))
  const concerns = ({ place, severity }: Finding) => {
    if (place?.entry === entry.key) return true
    if (place?.entry === undefined) return severity !== 'info'
    return place.row !== undefined && severity !== 'info' && standing.has(`${place.entry} ${place.row}`)
  }
  const told = findings.filter((finding) => concerns(finding) && !aboutWriting.has(finding.code)).sort((a, b) => rank[a.severity] - rank[b.severity])
  const once = new Map(told.map(({ severity, message, place }): [string, SheetFinding] => [message, { severity, message: place?.entry === undefined || place.entry === entry.key ? message : say`${message} (since ${place.entry})` }]))
  const worn = [...adjusters].filter(({ condition }) => condition === 'worn').map(({ label }): SheetFinding => ({ severity: 'warning', message: say`${label}: what holds it is worn. Check where it stands before every ride.` }))
  return [...once.values(), ...worn].sort((a, b) => rank[a.severity] - rank[b.severity])
}

/** What concerns whoever keeps the notebook and not who rides the machine. */
const aboutWriting = new Set(['no-reason', 'several-changes', 'unknown-key', 'entry-without-id', 'accepted-without-reason', 'accepted-for-nothing', 'unknown-rule', 'duplicate-entry', 'dates-backwards', 'unreadable-date'])
