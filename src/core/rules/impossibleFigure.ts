import type { Dimension } from '../notation/units'
import { printNumber } from '../notation/amount'
import { factAt, factIn, type Fact } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'
import type { NotebookRule, Report } from './rule'
import { ends } from './sagEnds'

/** Figures that only stand above zero, by their path and kind. */
const aboveZero: readonly [path: readonly string[], dimension: Dimension, name: string][] = [
  ...ends.flatMap((end) => [
    [['machine', end, 'travel'], 'length', `travel of the ${end}`],
    [['machine', end, 'spring_rate'], 'stiffness', `spring rate of the ${end}`],
    ...['bike', 'rider'].map((load) => [['machine', 'axle_loads', load, end], 'mass', `axle load of the ${end}`] as const),
    [['machine', end, 'spring', 'wire'], 'length', `wire of the ${end} spring`],
    [['machine', end, 'spring', 'outer_diameter'], 'length', `outer diameter of the ${end} spring`],
    [['machine', end, 'stack', 'soft_rate'], 'stiffness', `rate of the ${end}’s soft spring`],
    [['machine', end, 'stack', 'stiff_rate'], 'stiffness', `rate of the ${end}’s stiff spring`],
    [['machine', end, 'stack', 'soft_travel'], 'length', `travel of the ${end}’s soft spring`],
    [['machine', 'geometry', `${end}_radius`], 'length', `${end} tyre radius`],
  ] as [readonly string[], Dimension, string][]),
  [['machine', 'front', 'spring_rate', 'left'], 'stiffness', 'spring rate of the left leg'],
  [['machine', 'front', 'spring_rate', 'right'], 'stiffness', 'spring rate of the right leg'],
  ...['bike', 'rider'].flatMap((load) => [
    [['machine', 'axle_loads', load, 'front_lifted'], 'mass', 'axle load of the front with the rear lifted'],
    [['machine', 'axle_loads', load, 'lift'], 'length', 'lift of the rear axle'],
  ] as [readonly string[], Dimension, string][]),
  [['machine', 'front', 'air', 'seal_diameter'], 'length', 'seal diameter of the fork'],
  [['machine', 'front', 'air', 'bore'], 'length', 'bore of the fork'],
  [['machine', 'front', 'air', 'oil_level'], 'length', 'oil level of the fork'],
  [['machine', 'mass_height'], 'length', 'height of the centre of mass'],
  [['machine', 'geometry', 'wheelbase'], 'length', 'wheelbase'],
  [['machine', 'reading_resolution'], 'length', 'resolution of reading'],
  [['rider', 'kitted_mass'], 'mass', 'rider’s mass'],
]

export const impossibleFigure: NotebookRule = {
  code: 'impossible-figure',
  severity: 'error',
  says: 'A figure that cannot be: a travel, rate, load or radius that is not above zero, a rake of 90° or more, a wire thicker than its coil allows.',
  why: 'Nothing is computed with it, and whatever rests on it stays empty.',
  checkNotebook: (notebook) => [...figures(notebook), ...rake(notebook), ...coils(notebook), ...lift(notebook), ...weighings(notebook)],
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

/** Two wires lie across a coil, so its outer diameter is more than that. */
function coils(notebook: Notebook): Report[] {
  return ends.flatMap((end) => {
    const [wire, outer] = ['wire', 'outer_diameter'].map((key) => factAt(notebook, ['machine', end, 'spring', key], 'length'))
    if (!wire || !outer || !(wire.base > 0) || !(outer.base > 0) || 2 * wire.base < outer.base) return []
    return [isNot(`outer diameter of the ${end} spring`, outer, 'more than twice its wire')]
  })
}

function lift(notebook: Notebook): Report[] {
  const wheelbase = factAt(notebook, ['machine', 'geometry', 'wheelbase'], 'length')
  return ['bike', 'rider'].flatMap((load) => {
    const lifted = factAt(notebook, ['machine', 'axle_loads', load, 'lift'], 'length')
    return lifted && wheelbase && wheelbase.base > 0 && lifted.base >= wheelbase.base ? [isNot('lift of the rear axle', lifted, 'less than the wheelbase')] : []
  })
}

/** Scales read above zero in an entry as well. */
function weighings({ entries }: Notebook): Report[] {
  return entries.flatMap((entry) => ['bike', 'rider'].flatMap((load) => ends.flatMap((end) => {
    const fact = factIn(entry.node, ['axle_loads', load, end], 'mass')
    return fact && !(fact.base > 0) ? [{ ...isNot(`axle load of the ${end}`, fact, 'more than zero'), entry, row: `axle_loads.${load}.${end}` }] : []
  })))
}
