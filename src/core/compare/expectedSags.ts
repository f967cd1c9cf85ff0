import { sagsAfter } from '../compute/preload/sagsAfter'
import type { End } from '../compute/sag/loadCase'
import { found, isMissing } from '../compute/working/result'
import { countAt, millimetresFor, slotsFor } from '../derived/countAt'
import { sagOf } from '../derived/sagOf'
import { forkSpringsOf, motionRatioAt, shockSpringOf } from '../derived/springsFitted'
import { sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { ExpectedSag } from './comparison'
import type { State } from './settingRow'

/**
 * The sags that were measured in the left state and not in the right one, moved by what the preload of their end was
 * turned in between. Only where every change of preload is known in mm and the springs stayed; else nothing is expected.
 */
export function expectedSags(left: State, right: State, units: DisplayUnits): ExpectedSag[] {
  return (['front', 'rear'] as const).flatMap((end) => {
    const changeMm = preloadChangeMm(left, right, end)
    return changeMm === undefined || Math.abs(changeMm) < 1e-6 || !sameSprings(left, right, end) ? [] : expectedAt({ left, right, end, units }, changeMm)
  })
}

function expectedAt({ left, right, end, units }: { left: State; right: State; end: End; units: DisplayUnits }, changeMm: number): ExpectedSag[] {
  const length = (mm: number) => sayIn(units)(mm, 'mm')

  return (['bike', 'rider'] as const).flatMap((load) => {
    const before = found(sagOf(left.notebook, left.entry, end, load))
    if (!before || found(sagOf(right.notebook, right.entry, end, load))) return []
    const ratio = end === 'front' ? { ratio: 1 } : motionRatioAt(right.notebook, before.value)
    if (isMissing(ratio)) return []
    const after = sagsAfter({ riderMm: before.value }, changeMm, ratio.ratio)
    const now = after.riderMm!
    const more = `${length(Math.abs(changeMm))} ${changeMm > 0 ? 'more' : 'less'} preload at the spring`
    const stop = after.toppingOut.length > 0 ? '; it then stands on its top stop' : ''
    return [{
      label: load === 'bike' ? 'Static sag' : 'Rider sag', end, measured: length(before.value), expected: length(now),
      change: `${now < before.value ? '−' : '+'}${length(Math.abs(now - before.value))}`, about: `from ${more}${stop}; measure it`,
    }]
  })
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
