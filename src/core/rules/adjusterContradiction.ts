import { insideProblem } from '../adjusters/together'
import type { NotebookRule } from './rule'

export const adjusterContradiction: NotebookRule = {
  code: 'adjuster-contradiction',
  severity: 'error',
  says: 'An adjuster is defined by facts that contradict one another.',
  why: 'Every position, conversion and direction of it rests on them. It is told once, where it is defined.',
  checkNotebook: ({ adjusters }) =>
    [...adjusters.values()].flatMap((adjuster) => {
      const problem = adjuster.contradiction ?? insideProblem(adjuster, adjusters)
      return problem === undefined ? [] : [{ message: `${adjuster.label}: ${problem}`, range: adjuster.nameRange }]
    }),
}
