import type { End } from '../compute/sag/loadCase'
import type { Dimension } from '../notation/units'
import { printNumber } from '../notation/amount'
import { factAt, factIn, isWeighed, type Fact } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import type { NotebookRule, Report } from './rule'
import { ends } from './sagEnds'

interface EndNames {
  travel: string
  rate: string
  load: string
  wire: string
  outer: string
  softRate: string
  stiffRate: string
  softTravel: string
  radius: string
}

const names: Record<End, EndNames> = {
  front: {
    travel: phrase('travel of the front'), rate: phrase('spring rate of the front'), load: phrase('axle load of the front'), wire: phrase('wire of the front spring'),
    outer: phrase('outer diameter of the front spring'), softRate: phrase('rate of the front’s soft spring'), stiffRate: phrase('rate of the front’s stiff spring'),
    softTravel: phrase('travel of the front’s soft spring'), radius: phrase('front tyre radius'),
  },
  rear: {
    travel: phrase('travel of the rear'), rate: phrase('spring rate of the rear'), load: phrase('axle load of the rear'), wire: phrase('wire of the rear spring'),
    outer: phrase('outer diameter of the rear spring'), softRate: phrase('rate of the rear’s soft spring'), stiffRate: phrase('rate of the rear’s stiff spring'),
    softTravel: phrase('travel of the rear’s soft spring'), radius: phrase('rear tyre radius'),
  },
}

/** Figures that only stand above zero, by their path and kind. */
const aboveZero: readonly [path: readonly string[], dimension: Dimension, name: string][] = [
  ...ends.flatMap((end) => [
    [['machine', end, 'travel'], 'length', names[end].travel],
    [['machine', end, 'spring_rate'], 'stiffness', names[end].rate],
    ...['bike', 'rider'].map((load) => [['machine', 'axle_loads', load, end], 'mass', names[end].load] as const),
    [['machine', end, 'spring', 'wire'], 'length', names[end].wire],
    [['machine', end, 'spring', 'outer_diameter'], 'length', names[end].outer],
    [['machine', end, 'stack', 'soft_rate'], 'stiffness', names[end].softRate],
    [['machine', end, 'stack', 'stiff_rate'], 'stiffness', names[end].stiffRate],
    [['machine', end, 'stack', 'soft_travel'], 'length', names[end].softTravel],
    [['machine', 'geometry', `${end}_radius`], 'length', names[end].radius],
  ] as [readonly string[], Dimension, string][]),
  [['machine', 'front', 'spring_rate', 'left'], 'stiffness', phrase('spring rate of the left leg')],
  [['machine', 'front', 'spring_rate', 'right'], 'stiffness', phrase('spring rate of the right leg')],
  ...['bike', 'rider'].flatMap((load) => [
    [['machine', 'axle_loads', load, 'front_lifted'], 'mass', phrase('axle load of the front with the rear lifted')],
    [['machine', 'axle_loads', load, 'lift'], 'length', phrase('lift of the rear axle')],
  ] as [readonly string[], Dimension, string][]),
  [['machine', 'front', 'air', 'seal_diameter'], 'length', phrase('seal diameter of the fork')],
  [['machine', 'front', 'air', 'bore'], 'length', phrase('bore of the fork')],
  [['machine', 'front', 'air', 'oil_level'], 'length', phrase('oil level of the fork')],
  [['machine', 'mass_height'], 'length', phrase('height of the centre of mass')],
  [['machine', 'geometry', 'wheelbase'], 'length', phrase('wheelbase')],
  [['machine', 'reading_resolution'], 'length', phrase('resolution of reading')],
  [['rider', 'kitted_mass'], 'mass', phrase('rider’s mass')],
]

export const impossibleFigure: NotebookRule = {
  code: 'impossible-figure',
  severity: 'error',
  says: 'A figure that cannot be: a travel, rate, load or radius that is not above zero, a rake of 90° or more, a wire thicker than its coil allows.',
  why: 'Nothing is computed with it, and whatever rests on it stays empty.',
  checkNotebook: (notebook) => [...figures(notebook), ...rake(notebook), ...coils(notebook), ...lift(notebook), ...weighings(notebook)],
}

const isNot = (name: string, fact: Fact, must: string): Report => ({ message: say`the ${say(name)} cannot be ${printNumber(fact.quantity.amount)} ${fact.quantity.unit.symbol}: it is ${must}`, range: fact.range })

function figures(notebook: Notebook): Report[] {
  return aboveZero.flatMap(([path, dimension, name]) => {
    const fact = factAt(notebook, path, dimension)
    return fact && !(fact.base > 0) ? [isNot(name, fact, say('more than zero'))] : []
  })
}

function rake(notebook: Notebook): Report[] {
  const fact = factAt(notebook, ['machine', 'geometry', 'rake'], 'angle')
  return fact && !(Math.abs(fact.base) < 90) ? [isNot(phrase('rake'), fact, say('told from the vertical, so less than 90°'))] : []
}

/** Two wires lie across a coil, so its outer diameter is more than that. */
function coils(notebook: Notebook): Report[] {
  return ends.flatMap((end) => {
    const [wire, outer] = ['wire', 'outer_diameter'].map((key) => factAt(notebook, ['machine', end, 'spring', key], 'length'))
    if (!wire || !outer || !(outer.base > 0) || 2 * wire.base < outer.base) return []
    return [isNot(names[end].outer, outer, say('more than twice its wire'))]
  })
}

function lift(notebook: Notebook): Report[] {
  const wheelbase = factAt(notebook, ['machine', 'geometry', 'wheelbase'], 'length')
  return ['bike', 'rider'].flatMap((load) => {
    const lifted = factAt(notebook, ['machine', 'axle_loads', load, 'lift'], 'length')
    return lifted && wheelbase && wheelbase.base > 0 && lifted.base >= wheelbase.base ? [isNot(phrase('lift of the rear axle'), lifted, say('less than the wheelbase'))] : []
  })
}

/** Scales read above zero in an entry as well. */
function weighings({ entries }: Notebook): Report[] {
  return entries.filter(({ node }) => isWeighed(node)).flatMap((entry) => ['bike', 'rider'].flatMap((load) => ends.flatMap((end) => {
    const fact = factIn(entry.node, ['axle_loads', load, end], 'mass')
    return fact && !(fact.base > 0) ? [{ ...isNot(names[end].load, fact, say('more than zero')), entry, row: `axle_loads.${load}.${end}` }] : []
  })))
}
