import type { Finding, Fix } from '../finding'
import { eraseItem } from '../notebook/edits/listItems'
import { offer } from '../notebook/edits/offer'
import { removePath } from '../notebook/edits/setPath'
import type { Accepted, Notebook } from '../notebook/notebook'
import { holdsShared, nodeAt } from '../notebook/tree'
import { say } from '../words/say'
import type { Description, Report } from './rule'

/** The findings less those that are accepted with a reason; the acceptances that took one out are noted in `used`. */
export function acceptFindings(notebook: Notebook, findings: readonly Finding[], used: Set<Accepted>): readonly Finding[] {
  if (notebook.accepted.length === 0) return findings
  return findings.filter((finding) => {
    const by = notebook.accepted.filter((accepted) => covers(accepted, finding))
    for (const each of by) used.add(each)
    return by.length === 0
  })
}

/** Told by the engine itself, since only it knows what was used; listed with the rules in the README. */
export const acceptedForNothing = {
  code: 'accepted-for-nothing',
  severity: 'info',
  says: 'A finding is accepted that is not found any more.',
  why: 'An acceptance that outlives its finding would hide the next one.',
} as const satisfies Description

/** The acceptances that accept nothing. Of a rule that was turned off nobody knows what it would have found. */
export function findIdle(notebook: Notebook, used: ReadonlySet<Accepted>, spoken: ReadonlySet<string>): Report[] {
  const idle = notebook.accepted.filter((accepted) => accepted.reason !== undefined && spoken.has(accepted.finding) && !used.has(accepted))
  return idle.map((accepted) => {
    const { range } = accepted
    return { range, message: idleWords(accepted), fixes: takeOut(notebook, accepted) }
  })
}

function idleWords({ finding, entry, about }: Accepted): string {
  if (entry !== undefined && about !== undefined) return say`‘${finding}’ is not found in ${entry} about ${about} any more: take this acceptance out`
  if (entry !== undefined) return say`‘${finding}’ is not found in ${entry} any more: take this acceptance out`
  return about !== undefined ? say`‘${finding}’ is not found about ${about} any more: take this acceptance out` : say`‘${finding}’ is not found here any more: take this acceptance out`
}

function takeOut({ root, text }: Notebook, { node }: Accepted): Fix[] {
  const list = nodeAt(root, ['accepted'])
  if (!root || list?.kind !== 'list' || list.alias || holdsShared(list)) return []
  return offer(say('Take this acceptance out'), () => {
    if (list.items.length === 1) return removePath(text, root, ['accepted'])
    return list.flow ? [] : [eraseItem(text, list, list.items.indexOf(node))]
  })
}

function covers({ finding: code, entry, about, reason }: Accepted, finding: Finding): boolean {
  if (reason === undefined || code !== finding.code) return false
  if (entry !== undefined && entry !== finding.place?.entry) return false
  if (about === undefined) return true
  const row = finding.place?.row ?? ''
  return [about, `settings/${about}`].some((name) => row === name || row.startsWith(`${name}/`) || row.startsWith(`${name}.`))
}
