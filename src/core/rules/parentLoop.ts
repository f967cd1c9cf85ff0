import type { NotebookRule } from './rule'

export const parentLoop: NotebookRule = {
  code: 'parent-loop',
  severity: 'error',
  says: 'An entry comes from itself, directly or over others.',
  why: 'A history has a beginning. In a loop no position can be resolved.',
  checkNotebook: ({ entries }) => {
    const ids = new Set(entries.flatMap((entry) => (entry.id ? [entry.id.value] : [])))
    // Reading leaves a parent out where `from` is known all the same: it led back to the entry.
    return entries.flatMap(({ from, parent, id }) =>
      from && !parent && ids.has(from.value) ? [{ message: `‘${from.value}’ leads back to ${id ? `‘${id.value}’` : 'this entry'}`, range: from.range }] : [])
  },
}
