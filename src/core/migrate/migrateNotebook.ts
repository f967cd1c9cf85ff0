import { composeChanges } from '../notebook/edits/composeChanges'
import { Refusal } from '../notebook/edits/refusal'
import { currentFormat } from '../notebook/readNotebook'
import { parseTree } from '../notebook/parseTree'
import { scalarAt } from '../notebook/tree'
import { applyChanges, type Range, type TextChange } from '../text'
import { say } from '../words/say'
import { migrations } from './migrations'

/** What leads from an older format to the one written now. No changes where it is that one already. */
export type Migrated = { from: number; changes: TextChange[] } | { refused: string; range: Range }

/** Why a notebook of a format is not touched that only a later version knows. */
export function newerWords(format: number): string {
  return say`format ${format} is newer than ${currentFormat}, the newest this version edits; update Detent to edit it`
}

/**
 * Brings a text to the format that is written now, step by step, by as few changes as that takes: comments, order and
 * everything that is called as before stay as they are. Never throws.
 */
export function migrateNotebook(text: string, known = migrations): Migrated {
  const steps: TextChange[][] = []
  let now = text
  let first: number | undefined
  for (;;) {
    const { root, findings } = parseTree(now)
    const broken = findings.find(({ severity }) => severity === 'error')
    if (broken) return { refused: broken.message, range: broken.range }
    const format = scalarAt(root, ['format'])
    if (root?.kind !== 'map' || typeof format?.value !== 'number') return { refused: say('this notebook does not say its format; begin it with `format: 1`'), range: { start: 0, end: Math.min(1, text.length) } }
    const version = format.value
    first ??= version
    if (version === currentFormat) return { from: first, changes: composeChanges(text.length, steps) }
    const step = known.find(({ from }) => from === version)
    if (!step) return { refused: version > currentFormat ? newerWords(version) : say`there is no format ${version}`, range: format.range }
    try {
      steps.push([...step.changes(root, now), { ...format.range, text: String(version + 1) }])
    } catch (error) {
      if (error instanceof Refusal) return { refused: error.message, range: format.range }
      throw error
    }
    now = applyChanges(now, steps.at(-1)!)
  }
}
