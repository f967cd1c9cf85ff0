import { slotKey, slotsOf, type Adjuster, type Assembly, type Leg } from '../adjusters/adjuster'
import { changeWords } from '../adjusters/changeWords'
import { ownPosition } from '../adjusters/convert'
import { describeTurning, type Turning } from '../adjusters/describeTurning'
import { printPosition } from '../notation/position'
import type { Entry, Notebook } from '../notebook/notebook'
import { countOf, isSame } from '../rules/standings'
import type { SheetGroup, SheetPosition } from './sheet'

const assemblies: readonly (readonly [Assembly, string])[] = [['fork', 'Fork'], ['shock', 'Shock'], ['chassis', 'Chassis'], ['tyres', 'Tyres']]

/** Where everything stands in an entry, by where it sits on the machine. */
export function sheetPositions(notebook: Notebook, entry: Entry): SheetGroup<SheetPosition>[] {
  return assemblies.flatMap(([on, label]) => {
    const rows = [...notebook.adjusters.values()].filter((adjuster) => adjuster.on === on).map((adjuster) => position(adjuster, entry))
    return rows.length > 0 ? [{ label, rows }] : []
  })
}

function position(adjuster: Adjuster, entry: Entry): SheetPosition {
  const changed = changeOf(adjuster, entry)
  return {
    label: adjuster.label, where: [adjuster.place, adjuster.tool].filter(Boolean).join(' · '),
    stands: standsOf(adjuster, entry), counted: countedWords(adjuster), way: wayWords(adjuster),
    ...(changed === undefined ? {} : { changed }),
  }
}

/** Both legs as one where they stand alike. */
function standsOf(adjuster: Adjuster, entry: Entry): SheetPosition['stands'] {
  const stands = slotsOf(adjuster).map(({ leg }) => ({ leg: leg ? `${leg} leg` : '', text: textOf(adjuster, leg, entry) }))
  const [one, other] = stands
  return other && one!.text === other.text ? [{ leg: 'both legs', text: one!.text }] : stands
}

/** In the adjuster's own count; as it was written where that cannot be told. */
function textOf(adjuster: Adjuster, leg: Leg | undefined, entry: Entry): string {
  const setting = entry.state.get(slotKey(adjuster.id, leg))?.setting
  if (!setting) return 'not recorded'
  const count = countOf(setting)
  return count === undefined ? setting.node.text.trim() : printPosition(ownPosition(count, adjuster))
}

function changeOf(adjuster: Adjuster, entry: Entry): string | undefined {
  const said = slotsOf(adjuster).flatMap(({ leg }) => {
    const slot = slotKey(adjuster.id, leg)
    const [now, before] = [countOf(entry.state.get(slot)?.setting), countOf(entry.parent?.state.get(slot)?.setting)]
    return now === undefined || before === undefined || isSame(now, before) ? [] : [{ leg, words: changeWords(adjuster, now - before) }]
  })
  const [one, ...more] = said
  if (!one) return undefined
  const isBoth = more.length > 0 && more.every(({ words }) => words === one.words)
  const whole = slotsOf(adjuster).length === 1 || isBoth
  return whole ? one.words : said.map(({ leg, words }) => `${leg} ${words}`).join('; ')
}

const measuredWays: Record<string, string> = {
  fork_height: 'from the clamp’s top to the tube’s top', ride_height: 'between the usual two points', air_pressure: 'cold, wheel off the ground', balance_pressure: 'cold, wheel off the ground',
  oil_level: 'fork compressed, spring out', spring_rate: 'by its mark', tyre_pressure: 'cold',
}

/** From which end it is counted, or how it is measured, in few words. */
export function countedWords(adjuster: Adjuster): string {
  const { counts, end, control, higherIs } = adjuster
  if (counts.dimension === 'mark' && end !== undefined) return `counted by the ${counts.symbol} that ${end === 'closed' ? 'show' : 'are covered'}`
  if (end !== undefined) return end === 'closed' ? 'counted out from closed' : 'counted in from backed off'
  if (counts.dimension === 'step') return `step 1 is the ${higherIs === 'more' ? 'least' : 'most'} ${control.words}`
  const way = measuredWays[control.name]
  if (way !== undefined) return `measured ${way}`
  return `a higher figure is ${higherIs === 'more' ? control.more : control.less}`
}

const froms: Record<string, string> = { above: 'seen from above', below: 'seen from below', front: 'seen from the front', rear: 'seen from behind', left: 'seen from the left', right: 'seen from the right' }

/** Where one looks from, in few words; from the side only facing the head tells. */
function seenFrom({ workedFrom }: Adjuster, { view }: Turning): string {
  return view === 'side' || view === 'unknown' ? 'facing its head' : froms[workedFrom ?? ''] ?? 'facing its head'
}

/** Which way turns it in; for what has no ends, which way gives more of what it controls. */
export function wayWords(adjuster: Adjuster): string {
  const turning = describeTurning(adjuster)
  if (!turning) return ''
  const { rotation, gives } = turning.in
  const isTurnedIn = adjuster.control.counted !== undefined && adjuster.end !== undefined
  return `${rotation}, ${seenFrom(adjuster, turning)}, ${isTurnedIn ? `turns it in: ${gives}` : `is ${gives}`}`
}
