import { countedFrom, usualHigherIs, type Adjuster, type Assembly, type Facing, type Leg } from '../adjusters/adjuster'
import { findContradiction } from '../adjusters/contradiction'
import { findControl } from '../adjusters/controls'
import { findNeighbours } from '../adjusters/together'
import { findUnit } from '../notation/units'
import { say } from '../words/say'
import { capital } from '../words/sentence'
import { pairOf, scalarAt, type MapNode, type Pair } from './tree'

/**
 * The adjusters a notebook defines, by name. One that lacks what it cannot do without (what it controls, what it
 * counts in) is left out here; the schema check says what is wrong with it.
 */
export function readAdjusters(root: MapNode | undefined): Map<string, Adjuster> {
  const section = pairOf(root, 'adjusters')?.value
  const found = new Map<string, Adjuster>()
  if (section?.kind !== 'map') return found
  for (const pair of section.pairs) {
    const adjuster = readAdjuster(pair)
    if (adjuster) found.set(adjuster.id, adjuster)
  }
  for (const [id, neighbours] of findNeighbours(found)) Object.assign(found.get(id)!, { neighbours })
  return found
}

function readAdjuster(pair: Pair): Adjuster | undefined {
  const node = pair.value
  if (node.kind !== 'map') return undefined
  const word = (key: string) => scalarAt(node, [key])?.text
  const control = findControl(word('controls') ?? '')
  const counts = findUnit(word('counts') ?? '')
  if (!control || !counts) return undefined
  const id = pair.key.text
  const counted = (['out', 'in'] as const).find((each) => each === word('counted'))
  const higherIs = (['more', 'less'] as const).find((each) => each === word('higher_is'))
  const said = { ...(counted ? { counted } : {}), ...(higherIs ? { higherIs } : {}) }
  const end = countedFrom(control, counts, said)
  const adjuster: Adjuster = {
    id, label: word('label') ?? say(labelFrom(id)), control, counts, nameRange: pair.key.range,
    on: assemblies.find((each) => each === word('on')) ?? 'chassis',
    legs: readLegs(node),
    ...(end === undefined ? {} : { end }),
    rangeIs: word('range_is') === 'measured' ? 'measured' : 'book',
    higherIs: higherIs ?? usualHigherIs(control, counts),
    closes: word('closes') === 'anticlockwise' ? 'anticlockwise' : 'clockwise',
    ...readFigures(node, counts.dimension),
    ...readWords(node),
  }
  const contradiction = findContradiction(adjuster, said)
  return contradiction === undefined ? adjuster : { ...adjuster, contradiction }
}

const assemblies: readonly Assembly[] = ['fork', 'shock', 'chassis', 'tyres']
const facings: readonly Facing[] = ['up', 'down', 'front', 'rear', 'left', 'right']
const stepwise = ['click', 'mark', 'step', 'dial']

function readLegs(node: MapNode): Leg[] {
  const legs = pairOf(node, 'legs')?.value
  const items = legs?.kind === 'list' ? legs.items : legs?.kind === 'scalar' ? [legs] : []
  const names = items.flatMap((item) => (item.kind === 'scalar' ? [item.text] : []))
  return (['left', 'right'] as const).filter((leg) => names.includes(leg))
}

function readFigures(node: MapNode, dimension: string) {
  const figure = (key: string, name: string) => {
    const value = scalarAt(node, [key])?.value
    return typeof value === 'number' && value > 0 && Number.isFinite(value) ? { [name]: value } : {}
  }
  const step = figure('step', 'step')
  return {
    ...(stepwise.includes(dimension) ? { step: 1 } : {}),
    ...step,
    ...figure('range', 'range'),
    ...figure('mm_per_turn', 'mmPerTurn'),
    ...figure('clicks_per_turn', 'clicksPerTurn'),
    ...figure('mm_per_click', 'mmPerClick'),
    ...figure('mm_per_ring', 'mmPerRing'),
    ...figure('mm_per_step', 'mmPerStep'),
  }
}

function readWords(node: MapNode): Partial<Adjuster> {
  const word = (key: string, name: string) => {
    const text = scalarAt(node, [key])?.text
    return text === undefined ? {} : { [name]: text }
  }
  const faces = facings.find((each) => each === scalarAt(node, ['faces'])?.text)
  return {
    ...word('place', 'place'), ...word('tool', 'tool'), ...word('worked_from', 'workedFrom'), ...word('held_by', 'heldBy'), ...word('inside', 'inside'),
    ...word('condition', 'condition'), ...word('notes', 'notes'), ...(faces ? { faces } : {}),
  }
}

/** @example labelFrom('fork_rebound') // 'Fork rebound' */
export function labelFrom(id: string): string {
  const words = id.replace(/[_-]+/g, ' ').trim()
  return words === '' ? id : capital(words)
}
