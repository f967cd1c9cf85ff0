import { standsAt } from '../adjusters/positionWords'
import { legWords } from '../adjusters/legWords'
import { slotKey, slotsOf, type Adjuster, type Assembly, type Leg } from '../adjusters/adjuster'
import { unitWords } from '../adjusters/unitWords'
import { changeWords } from '../adjusters/changeWords'
import { describeTurning, type Turning } from '../adjusters/describeTurning'
import type { Entry, Notebook } from '../notebook/notebook'
import { countOf, isSame } from '../rules/standings'
import { phrase, say } from '../words/say'
import type { SheetGroup, SheetPosition } from './sheet'

const assemblies: readonly (readonly [Assembly, string])[] = [['fork', phrase('Fork')], ['shock', phrase('Shock')], ['chassis', phrase('Chassis')], ['tyres', phrase('Tyres')]]

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
  const stands = slotsOf(adjuster).map(({ leg }) => ({ leg: leg ? legWords(leg) : '', text: textOf(adjuster, leg, entry) }))
  const [one, other] = stands
  return other && one!.text === other.text ? [{ leg: say('both legs'), text: one!.text }] : stands
}

/** In the adjuster's own count; as it was written where that cannot be told. */
function textOf(adjuster: Adjuster, leg: Leg | undefined, entry: Entry): string {
  const setting = entry.state.get(slotKey(adjuster.id, leg))?.setting
  if (!setting) return say('not recorded')
  const count = countOf(setting)
  return count === undefined ? setting.node.text.trim() : standsAt(count, adjuster)
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
  return whole ? one.words : said.map(({ leg, words }) => `${leg ? say(leg) : ''} ${words}`).join('; ')
}

const measuredWays: Record<string, string> = {
  fork_height: phrase('from the clamp’s top to the tube’s top'), ride_height: phrase('between the usual two points'), air_pressure: phrase('cold, wheel off the ground'), balance_pressure: phrase('cold, wheel off the ground'),
  oil_level: phrase('fork compressed, spring out'), spring_rate: phrase('by its mark'), tyre_pressure: phrase('cold'),
}

/** From which end it is counted, or how it is measured, in few words. */
export function countedWords(adjuster: Adjuster): string {
  const { counts, end, control, higherIs } = adjuster
  if (counts.dimension === 'mark' && end !== undefined) return say`counted by the ${unitWords(counts)} that ${end === 'closed' ? say('show') : say('are covered')}`
  if (end !== undefined) return end === 'closed' ? say('counted out from closed') : say('counted in from backed off')
  if (counts.dimension === 'step') return say`step 1 is the ${higherIs === 'more' ? say('least') : say('most')} ${say(control.words)}`
  const way = measuredWays[control.name]
  if (way !== undefined) return say`measured ${say(way)}`
  return say`a higher figure is ${higherIs === 'more' ? say(control.more) : say(control.less)}`
}

const froms: Record<string, string> = { above: phrase('seen from above'), below: phrase('seen from below'), front: phrase('seen from the front'), rear: phrase('seen from behind'), left: phrase('seen from the left'), right: phrase('seen from the right') }

/** Where one looks from, in few words; from the side only facing the head tells. */
function seenFrom({ workedFrom }: Adjuster, { view }: Turning): string {
  return view === 'side' || view === 'unknown' ? say('facing its head') : say(froms[workedFrom ?? ''] ?? phrase('facing its head'))
}

/** Which way turns it in; for what has no ends, which way gives more of what it controls. */
export function wayWords(adjuster: Adjuster): string {
  const turning = describeTurning(adjuster)
  if (!turning) return ''
  const { rotation, gives } = turning.in
  const isTurnedIn = adjuster.control.counted !== undefined && adjuster.end !== undefined
  return `${say(rotation)}, ${seenFrom(adjuster, turning)}, ${isTurnedIn ? say`turns it in: ${gives}` : say`is ${gives}`}`
}
