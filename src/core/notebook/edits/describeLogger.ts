import type { LoggerMapping } from '../../logs/mapping/mapping'
import { mappingParts, plainValue } from '../../logs/report/mappingText'
import { applyChanges, type TextChange } from '../../text'
import type { Notebook } from '../notebook'
import { readNotebook } from '../readNotebook'
import { nodeAt, scalarAt, type MapNode } from '../tree'
import { composeChanges } from './composeChanges'
import { removePath, setPath } from './setPath'

const logger = ['machine', 'logger']
const keys = ['time', 'rate', 'front', 'rear', 'brake', 'lap'] as const

/**
 * Writes which column of the logger is what, as one list of changes: what is said already and stays so keeps its bytes,
 * and what the mapping does not say any more is taken out. Comments stay.
 *
 * @throws Refusal where something of another shape stands in the way, or an anchor is shared
 */
export function describeLogger(notebook: Notebook, mapping: LoggerMapping): TextChange[] {
  const steps: TextChange[][] = []
  let text = notebook.text
  for (const key of keys) {
    for (;;) {
      const { root } = readNotebook(text)
      const changes = root ? nextChange(text, root, key, mapping) : [{ start: text.length, end: text.length, text: `${text === '' || text.endsWith('\n') ? '' : '\n'}machine:\n` }]
      if (changes.length === 0) break
      steps.push(changes)
      text = applyChanges(text, changes)
    }
  }
  return composeChanges(notebook.text.length, steps)
}

/** What is to be done first about one part of the mapping; nothing where it says so already. */
function nextChange(text: string, root: MapNode, key: (typeof keys)[number], mapping: LoggerMapping): TextChange[] {
  const part = mappingParts(mapping).find((each) => each.key === key)
  const path = [...logger, key]
  const there = nodeAt(root, path)
  if (!part) return there === undefined ? [] : removePath(text, root, path)
  if (there?.kind !== 'map' || !part.values) return sayIn(root, path, part.values ? undefined : part.text) ?? setPath(text, root, path, part.text, (typed) => typed)
  const stale = there.pairs.find((pair) => !part.values!.some(([name]) => name === pair.key.text) && known.has(pair.key.text))
  if (stale) return removePath(text, root, [...path, stale.key.text])
  const next = part.values.find(([name, value]) => !says(scalarAt(there, [name])?.value, value))
  return next ? setPath(text, root, [...path, next[0]], plainValue(next[1]), (typed) => typed) : []
}

/** Keys of ours; what else someone wrote beside them is not ours to take out. */
const known = new Set(['column', 'unit', 'scale', 'offset', 'direction', 'at', 'on'])

const says = (there: unknown, value: string | number): boolean => there === value || String(there) === String(value)

/** Nothing to do where a plain value says so already. */
function sayIn(root: MapNode, path: readonly string[], wanted: string | undefined): TextChange[] | undefined {
  return wanted !== undefined && scalarAt(root, path)?.text === wanted ? [] : undefined
}
