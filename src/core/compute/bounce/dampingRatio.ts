import { say } from '../../words/say'
import { derive, given, type Given } from '../working/derive'
import type { Amount, Outcome } from '../working/result'

/** From one height to the next: a whole cycle (every second extreme, all on one side), or half a cycle (every extreme). */
export type Spacing = 'halfCycle' | 'cycle'

/** Damping ratio from the logarithmic decrement of one step: δ / √(φ² + δ²), φ = π for half a cycle and 2π for a whole one. */
export function ratioFromDecrement(decrement: number, spacing: Spacing): number {
  const phase = spacing === 'halfCycle' ? Math.PI : 2 * Math.PI
  return decrement / Math.hypot(phase, decrement)
}

/**
 * Logarithmic decrement of one step: the slope of ln(height) over the swings, by least squares where there are more than
 * two. With two heights it is ln(x₀ / x₁).
 */
export function decrement(heights: readonly number[]): number {
  const middle = (heights.length - 1) / 2
  const over = heights.reduce((sum, _, swing) => sum + (swing - middle) ** 2, 0)
  return -heights.reduce((sum, height, swing) => sum + (swing - middle) * Math.log(height), 0) / over
}

/**
 * Damping ratio from the heights of successive swings, measured from the place where the end comes to rest.
 *
 * δ = −slope of ln x over the swings; ratio = δ / √(π² + δ²) for half cycles, δ / √(4π² + δ²) for whole ones.
 * Push down, let go, and note each extreme: below (the push), above, below… Signs do not matter. At least two heights.
 * Assumes damping in proportion to speed; dry friction, which lets swings shrink by equal amounts, makes it read too high.
 * Source: S. S. Rao, Mechanical Vibrations (logarithmic decrement).
 * @example dampingRatio({ heightsMm: [40, 10], spacing: 'halfCycle' }) // 0.4037
 */
export function dampingRatio({ heightsMm, spacing }: { heightsMm: readonly Amount[]; spacing: Spacing }): Outcome {
  if (heightsMm.length < 2) return { missing: [say('two swing heights or more; one that settles without a second swing is damped beyond this test')] }
  const from: Record<string, Given> = Object.fromEntries(heightsMm.map((height, swing) => [`x${swing}`, given(say`swing height ${swing + 1}`, 'mm', absolute(height))]))
  const phase = spacing === 'halfCycle' ? 'π²' : '4 · π²'
  const last = heightsMm.length - 1
  const slope = last === 1 ? 'ln(x0 / x1)' : say`−slope of ln(x0), … ln(x${last}) over the swings`
  return derive<string>({
    formula: `ratio = δ / √(${phase} + δ²), δ = ${slope}`, unit: '', from,
    by: (values) => ratioFromDecrement(decrement(Object.values(values)), spacing),
    unless: (values) => findObjection(Object.values(values)),
    assumptions: [say('damping in proportion to speed, alike both ways'), spacing === 'halfCycle' ? say('heights half a cycle apart') : say('heights a whole cycle apart')],
    source: 'S. S. Rao, Mechanical Vibrations (logarithmic decrement)',
  })
}

function absolute(height: Amount): Amount {
  return typeof height === 'number' ? Math.abs(height) : { ...height, value: Math.abs(height.value) }
}

function findObjection(heights: number[]): string | undefined {
  if (heights.some((height) => height === 0)) return say('swing heights above zero: leave out the ones that were not there')
  return decrement(heights) > 0 ? undefined : say('swings that die away')
}
