import { legWords } from '../adjusters/legWords'
import { slotKey, type Adjuster } from '../adjusters/adjuster'
import { cautionsFor } from '../adjusters/cautions'
import { cautions as usualCautions } from '../grid/cautions'
import { settingRow } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import type { CompareOptions, StateRef } from './comparison'
import { sideOf, stateOf, withEntry } from './sides'
import { areOneMachine } from './oneMachine'
import { pairSlots } from './pairSlots'
import { reach } from './reach'
import type { Turn, TurnGroup, TurnList, TurnStep, Unreachable } from './turns'
import { turnOf } from './turnOf'
import { inWorkingOrder } from './workingOrder'

/**
 * The list that brings a machine from where it stands in one state to another. Both must be of one machine, for a
 * count on one is no count on another.
 *
 * @example turnListText(turnList({ notebook, file }, { notebook, entry: baseline, file })) // back to the baseline
 */
export function turnList(from: StateRef, to: StateRef, { oneMachine }: CompareOptions = {}): TurnList {
  const [a, b] = [withEntry(from), withEntry(to)]
  const [now, wanted] = [stateOf(a), stateOf(b)]
  const sides = { from: sideOf(a), to: sideOf(b) }
  const none = { ...sides, cannot: [], cautions: [], groups: [] }
  if (!now || !wanted) return { ...none, refused: [sides.from, sides.to].flatMap(({ file, trouble, missing }) => missing ?? (trouble ? [say`${file}, line ${trouble.line}: ${trouble.message}`] : [])).join('\n') }
  if (!(oneMachine ?? areOneMachine(a.notebook, b.notebook))) return { ...none, refused: say`These are two machines, ‘${sides.from.title}’ and ‘${sides.to.title}’: a count on one is no count on the other. Compare them by their shares of range instead.` }

  const cannot: Unreachable[] = []
  const turns: { adjuster: Adjuster; turn: Turn }[] = []
  for (const pair of pairSlots(now.notebook, wanted.notebook)) {
    const { adjuster, leg } = (pair.right ?? pair.left)!
    const where = { row: settingRow(slotKey(adjuster.id, leg)), legWords: leg ? legWords(leg, adjuster.on) : '' }
    const found = reach(pair, now, wanted)
    if ('why' in found) cannot.push({ ...where, label: adjuster.label, ...(adjuster.place ? { place: adjuster.place } : {}), ...found })
    else if ('to' in found) turns.push({ adjuster, turn: { ...where, ...(leg ? { leg } : {}), ...turnOf(adjuster, found.from, found.to) } })
  }
  const groups = groupsOf(stepsOf(turns))
  return { ...sides, cannot, cautions: groups.length + cannot.length > 0 ? cautionsAbove(groups) : [], groups }
}

/** The turns of one adjuster as one step, the left leg first. */
function stepsOf(turns: readonly { adjuster: Adjuster; turn: Turn }[]): { adjuster: Adjuster; step: TurnStep }[] {
  const steps = new Map<Adjuster, Turn[]>()
  for (const { adjuster, turn } of turns) steps.set(adjuster, [...(steps.get(adjuster) ?? []), turn])
  return [...steps].map(([adjuster, parts]) => ({
    adjuster,
    step: {
      key: adjuster.id, label: adjuster.label, ...(adjuster.place ? { place: adjuster.place } : {}), ...(adjuster.tool ? { tool: adjuster.tool } : {}),
      alike: parts.length > 1 && parts.every((each) => each.amount === parts[0]!.amount && each.from === parts[0]!.from),
      turns: parts, cautions: cautionsFor(adjuster),
    },
  }))
}

const labels = { stand: phrase('First'), fork: phrase('Fork'), shock: phrase('Shock'), chassis: phrase('Chassis'), tyres: phrase('Tyres') } as const

function groupsOf(steps: readonly { adjuster: Adjuster; step: TurnStep }[]): TurnGroup[] {
  if (steps.length === 0) return []
  const ordered = inWorkingOrder(steps)
  const rest = (['fork', 'shock', 'chassis', 'tyres'] as const).map((key): TurnGroup => ({
    key, label: say(labels[key]), first: [], steps: ordered.filter(({ adjuster }) => adjuster.on === key).map(({ step }) => step),
  }))
  const first = standFor(ordered.map(({ adjuster }) => adjuster))
  return [...(first.length > 0 ? [{ key: 'stand' as const, label: say(labels.stand), first, steps: [] }] : []), ...rest.filter((group) => group.steps.length > 0)]
}

/** How the machine has to stand for what follows. */
function standFor(adjusters: readonly Adjuster[]): string[] {
  const controls = new Set(adjusters.map(({ control }) => control.name))
  const has = (...names: string[]) => names.some((name) => controls.has(name))
  return [
    ...(adjusters.some(({ on }) => on !== 'tyres') ? [say('Put the machine on a stand that holds it safely, on level ground.')] : []),
    ...(has('fork_height') ? [say('Support it so that the front cannot drop when the clamps are loosened.')] : []),
    ...(has('air_pressure', 'balance_pressure') ? [say('Lift the wheel whose air is set off the ground.')] : []),
    ...(has('tyre_pressure') ? [say('Let the tyres cool first: their pressures here are cold ones.')] : []),
  ]
}

/** The usual cautions, then each that more than one step would repeat. */
function cautionsAbove(groups: readonly TurnGroup[]): string[] {
  const all = groups.flatMap(({ steps }) => steps.flatMap(({ cautions }) => cautions))
  return [...new Set([...usualCautions.map((words) => say(words)), ...all.filter((caution, at) => all.indexOf(caution) !== at)])]
}
