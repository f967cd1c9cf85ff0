import { sagsAfter } from '../compute/preload/sagsAfter'
import type { End, LoadCase } from '../compute/sag/loadCase'
import { found, isMissing } from '../compute/working/result'
import { countAt, millimetresFor, slotsFor } from '../derived/countAt'
import { sagOf } from '../derived/sagOf'
import { forkSpringsOf, motionRatioAt, shockSpringOf } from '../derived/springsFitted'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Entry } from '../notebook/notebook'
import { say } from '../words/say'
import type { ExpectedSag } from './comparison'
import { lastKnown } from './lastKnown'
import type { State } from './settingRow'

/**
 * The sags that were not measured in the right state, where it turned the preload of their end: as they were last
 * measured on its line, moved by all that preload was turned since. Only where every change of preload is known in mm
 * and the springs stayed; else nothing is expected.
 */
export function expectedSags(left: State, right: State, units: DisplayUnits): ExpectedSag[] {
  return (['front', 'rear'] as const).flatMap((end) => {
    const changeMm = preloadChangeMm(left, right, end)
    if (changeMm === undefined || Math.abs(changeMm) < 1e-6) return []
    return (['bike', 'rider'] as const).flatMap((load) => expectedSag(left, right, { end, load, units }) ?? [])
  })
}

function expectedSag(left: State, right: State, { end, load, units }: { end: End; load: LoadCase; units: DisplayUnits }): ExpectedSag | undefined {
  const sagIn = ({ notebook }: State) => (entry: Entry) => found(sagOf(notebook, entry, end, load))
  if (sagIn(right)(right.entry)) return undefined
  const before = lastKnown(left.entry, sagIn(left))
  const last = lastKnown(right.entry, sagIn(right))
  const [was, base] = [before && { ...before, notebook: left.notebook }, last ? { ...last, notebook: right.notebook } : before && { ...before, notebook: left.notebook }]
  if (!was || !base) return undefined
  const then = { notebook: base.notebook, entry: base.entry }
  const changeMm = preloadChangeMm(then, right, end)
  const ratio = end === 'front' ? { ratio: 1 } : motionRatioAt(right.notebook, base.known.value)
  if (changeMm === undefined || isMissing(ratio) || !sameSprings(then, right, end)) return undefined
  const length = (mm: number) => sayIn(units)(mm, 'mm')
  const after = sagsAfter({ riderMm: base.known.value }, changeMm, ratio.ratio)
  const by = after.riderMm! - was.known.value
  return {
    label: load === 'bike' ? say('Static sag') : say('Rider sag'), end, measured: length(was.known.value), expected: length(after.riderMm!),
    ...(was.entry === left.entry ? {} : { measuredIn: was.entry.key }),
    change: `${by < 0 ? '−' : '+'}${length(Math.abs(by))}`,
    about: say`from ${length(base.known.value)} in ${base.entry.key} and ${preloadWords(changeMm, length)} since${after.toppingOut.length > 0 ? say('; it then stands on its top stop') : ''}; measure it`,
  }
}

function preloadWords(changeMm: number, length: (mm: number) => string): string {
  return Math.abs(changeMm) < 1e-6 ? say('the same preload') : say`${length(Math.abs(changeMm))} ${changeMm > 0 ? say('more') : say('less')} preload at the spring`
}

/** How much more an end's springs are compressed, mm at the spring, the mean over legs by their rates; `undefined` where some change is not known in mm. */
function preloadChangeMm(left: State, right: State, end: End): number | undefined {
  const springs: Partial<Record<string, number>> = end === 'front' ? forkSpringsOf(right.notebook, right.entry) : {}
  const on = end === 'front' ? 'fork' : 'shock'
  let sum = 0
  let weights = 0
  for (const slot of slotsFor(right.notebook, 'preload', on)) {
    const [before, now] = [countAt(left.entry, slot), countAt(right.entry, slot)]
    if (before === undefined || now === undefined) return undefined
    const mm = millimetresFor(slot.adjuster, now - before)
    if (mm.count === undefined && now !== before) return undefined
    const weight = slot.leg === undefined ? 1 : springs[slot.leg] ?? (Object.keys(springs).length === 0 ? 1 : 0)
    sum += weight * (mm.count ?? 0)
    weights += weight
  }
  // A leg that has a spring and no adjuster shares in the load and stays as it is.
  const adjusted = new Set(slotsFor(right.notebook, 'preload', on).map(({ leg }) => leg))
  for (const [leg, rate] of Object.entries(springs)) if (!adjusted.has(undefined) && !adjusted.has(leg as 'left')) weights += rate ?? 0
  return weights > 0 ? sum / weights : undefined
}

function sameSprings(left: State, right: State, end: End): boolean {
  if (end === 'rear') return shockSpringOf(left.notebook, left.entry).rateNPerMm === shockSpringOf(right.notebook, right.entry).rateNPerMm
  const [a, b] = [forkSpringsOf(left.notebook, left.entry), forkSpringsOf(right.notebook, right.entry)]
  return a.left === b.left && a.right === b.right
}
