import type { Finding, Severity } from '../finding'
import { say } from '../words/say'
import { checkShape } from './checkShape'
import type { Accepted, Notebook } from './notebook'
import { parseByEntry } from './parseByEntry'
import type { Places } from './placeOfPath'
import { readAdjusters } from './readAdjusters'
import { readEntries } from './readEntries'
import { nodeAt, pairOf, scalarAt, type MapNode, type TreeNode } from './tree'

/** The format this program writes, and the newest it edits. */
export const currentFormat = 1

/**
 * Reads a text into a notebook in which every value knows its place. Never throws: whatever is wrong is a finding,
 * and what could be understood is there. What an `earlier` version of the text has in common with it is not read again.
 */
export function readNotebook(text: string, earlier?: Notebook): Notebook {
  const parsed = parseByEntry(text, earlier?.parsed)
  const { findings } = parsed
  const root = parsed.root?.kind === 'map' ? parsed.root : undefined
  const broken = findings.find((finding) => finding.severity === 'error')
  const known = earlier && saysTheSame(root, earlier.root) ? earlier : undefined
  const adjusters = known?.adjusters ?? readAdjusters(root)
  const format = scalarAt(root, ['format'])
  const newer = typeof format?.value === 'number' && format.value > currentFormat
  const older = typeof format?.value === 'number' && format.value < currentFormat
  const entries = readEntries(root, adjusters, known?.entries)
  return {
    text, parsed, newer, older, adjusters,
    ...(root ? { root } : {}),
    ...(broken ? { broken } : {}),
    ...(typeof format?.value === 'number' ? { format: { value: format.value, range: format.range } } : {}),
    entries,
    severities: readSeverities(root),
    accepted: readAccepted(root),
    findings: [...findings, ...(broken || newer || older ? [] : shapeFindings(parsed.root, text, { entries, adjusters }))],
  }
}

/** What is told outside of the entries and is no fact about machine or rider. */
const apart = new Set(['entries', 'rules', 'accepted'])

/** Whether all that is told beside the entries is the same at the same place, so that it was not even parsed again. */
function saysTheSame(now: MapNode | undefined, before: MapNode | undefined): boolean {
  const facts = (root: MapNode | undefined) => (root?.pairs ?? []).filter(({ key }) => !apart.has(key.text))
  const [these, those] = [facts(now), facts(before)]
  return now !== undefined && these.length === those.length && these.every(({ value }, at) => value === those[at]!.value)
}

function shapeFindings(parsed: TreeNode | undefined, text: string, read: Omit<Places, 'root'>): Finding[] {
  if (!parsed || (parsed.kind === 'scalar' && parsed.style === 'empty')) return []
  if (parsed.kind === 'map') return checkShape({ root: parsed, ...read }, text)
  const range = { start: parsed.range.start, end: Math.min(text.length, parsed.range.start + 1) }
  return [{ code: 'wrong-shape', severity: 'error', message: say('a notebook is a group of `key: value` lines, beginning with `format: 1`'), range }]
}

function readSeverities(root: MapNode | undefined): Map<string, Severity | 'off'> {
  const rules = pairOf(root, 'rules')?.value
  const words = ['error', 'warning', 'info', 'off'] as const
  return new Map((rules?.kind === 'map' ? rules.pairs : []).flatMap(({ key, value }) => {
    const word = value.kind === 'scalar' ? words.find((each) => each === value.text) : undefined
    return word ? [[key.text, word] as const] : []
  }))
}

function readAccepted(root: MapNode | undefined): Accepted[] {
  const list = nodeAt(root, ['accepted'])
  return (list?.kind === 'list' ? list.items : []).flatMap((node) => {
    if (node.kind !== 'map') return []
    const word = (key: string) => scalarAt(node, [key])?.text
    const entry = word('entry')
    const about = word('about')
    const reason = word('reason')
    return [{
      node, finding: word('finding') ?? '', range: scalarAt(node, ['finding'])?.range ?? node.range,
      ...(entry === undefined ? {} : { entry }), ...(about === undefined ? {} : { about }), ...(reason?.trim() ? { reason } : {}),
    }]
  })
}
