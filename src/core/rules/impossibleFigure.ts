import type { Dimension } from '../notation/units'
import { printNumber } from '../notation/amount'
import { factAt, type Fact } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'
import type { NotebookRule, Report } from './rule'
import { ends } from './sagEnds'

/** Figures that only stand above zero, by their path and kind. */
const aboveZero: readonly [path: readonly string[], dimension: Dimension, name: string][] = [
  ...ends.flatMap((end) => [
    [['machine', end, 'travel'], 'length', `travel of the ${end}`],
    [['machine', end, 'spring_rate'], 'stiffness', `spring rate of the ${end}`],
    ...['bike', 'rider'].map((load) => [['machine', 'axle_loads', load, end], 'mass', `axle load of the ${end}`] as const),
    [['machine', 'geometry', `${end}_radius`], 'length', `${end} tyre radius`],
  ] as [readonly string[], Dimension, string][]),
  [['machine', 'front', 'spring_rate', 'left'], 'stiffness', 'spring rate of the left leg'],
  [['machine', 'front', 'spring_rate', 'right'], 'stiffness', 'spring rate of the right leg'],
  [['machine', 'geometry', 'wheelbase'], 'length', 'wheelbase'],
  [['machine', 'reading_resolution'], 'length', 'resolution of reading'],
  [['rider', 'kitted_mass'], 'mass', 'rider’s mass'],
]

export const impossibleFigure: NotebookRule = {
  code: 'impossible-figure',
  severity: 'error',
  says: 'A figure that cannot be: a travel, rate, load or radius that is not above zero, or a rake of 90° or more.',
  why: 'Nothing is computed with it, and whatever rests on it stays empty.',
  checkNotebook: (notebook) => [...figures(notebook), ...rake(notebook)],
}

const isNot = (name: string, fact: Fact, must: string): Report => ({ message: `the ${name} cannot be ${printNumber(fact.quantity.amount)} ${fact.quantity.unit.symbol}: it is ${must}`, range: fact.range })

function figures(notebook: Notebook): Report[] {
  return aboveZero.flatMap(([path, dimension, name]) => {
    const fact = factAt(notebook, path, dimension)
    return fact && !(fact.base > 0) ? [isNot(name, fact, 'more than zero')] : []
  })
}

function rake(notebook: Notebook): Report[] {
  const fact = factAt(notebook, ['machine', 'geometry', 'rake'], 'angle')
  return fact && !(Math.abs(fact.base) < 90) ? [isNot('rake', fact, 'told from the vertical, so less than 90°')] : []
}
