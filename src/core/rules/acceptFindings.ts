import type { Finding } from '../finding'
import type { Accepted, Notebook } from '../notebook/notebook'

/** Takes out the findings that are accepted with a reason, and says where an acceptance has nothing left to accept. */
export function acceptFindings(notebook: Notebook, findings: readonly Finding[]): Finding[] {
  const used = new Set<Accepted>()
  const standing = findings.filter((finding) => {
    const by = notebook.accepted.find((accepted) => covers(accepted, finding))
    if (by) used.add(by)
    return by === undefined
  })
  const idle = notebook.accepted.filter((accepted) => accepted.reason !== undefined && !used.has(accepted))
  return [...standing, ...idle.map((accepted): Finding => ({
    code: acceptedForNothing.code, severity: 'info', range: accepted.range,
    message: `nothing like ‘${accepted.finding}’ is found here any more; this acceptance can go`,
  }))]
}

/** Told by the engine itself, since only it knows what was used; listed with the rules in the README. */
export const acceptedForNothing = {
  code: 'accepted-for-nothing',
  severity: 'info',
  says: 'A finding is accepted that is not found any more.',
  why: 'An acceptance that outlives its finding would hide the next one.',
} as const

function covers({ finding: code, entry, about, reason }: Accepted, finding: Finding): boolean {
  if (reason === undefined || code !== finding.code) return false
  if (entry !== undefined && entry !== finding.place?.entry) return false
  if (about === undefined) return true
  const row = finding.place?.row ?? ''
  return [about, `settings/${about}`].some((name) => row === name || row.startsWith(`${name}/`) || row.startsWith(`${name}.`))
}
