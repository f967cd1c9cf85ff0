import { offer } from '../notebook/edits/offer'
import { swapScalars } from '../notebook/edits/swapScalars'
import { factAt } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'
import { nodeAt, type ListNode } from '../notebook/tree'
import { say } from '../words/say'
import type { NotebookRule, Report } from './rule'
import { ends } from './sagEnds'

const windows = ['static_sag', 'rider_sag'] as const

export const unusableWindow: NotebookRule = {
  code: 'unusable-window',
  severity: 'warning',
  says: 'A sag window of this machine runs from more to less, or mixes mm and %.',
  why: 'No sag lies in such a window, so no sag would be judged by it.',
  checkNotebook: (notebook) => ends.flatMap((end) => windows.flatMap((window) => report(notebook, ['machine', end, 'targets', window]))),
}

function report(notebook: Notebook, path: readonly string[]): Report[] {
  const list = nodeAt(notebook.root, path)
  const [from, to] = [0, 1].map((at) => factAt(notebook, [...path, at], 'length', 'share'))
  if (list?.kind !== 'list' || !from || !to) return []
  const range = { start: from.range.start, end: to.range.end }
  if (from.quantity.unit.dimension !== to.quantity.unit.dimension) return [{ message: say('write both ends of this window in mm, or both in %'), range }]
  if (from.base <= to.base) return []
  return [{ message: say('this window runs from more to less: write the smaller end first'), range, fixes: swap(notebook.text, list) }]
}

function swap(text: string, { items }: ListNode): NonNullable<Report['fixes']> {
  const [from, to] = items
  return from?.kind === 'scalar' && to?.kind === 'scalar' ? offer(say('Swap its ends'), () => swapScalars(text, from, to)) : []
}
