import { phrase } from '../../words/say'
import { cosDeg, sinDeg, toDegrees } from './degrees'

/** The five numbers of a steering end: rake ε, offset d, tyre radius R, trail a, normal trail n. */
export type SteeringKey = 'rakeDeg' | 'offsetMm' | 'frontRadiusMm' | 'trailMm' | 'normalTrailMm'

export type SteeringSymbol = 'ε' | 'd' | 'R' | 'a' | 'n'

export const steeringSymbols: Record<SteeringKey, { symbol: SteeringSymbol; name: string; unit: string }> = {
  rakeDeg: { symbol: 'ε', name: phrase('rake'), unit: '°' },
  offsetMm: { symbol: 'd', name: phrase('offset of the axle from the steering axis'), unit: 'mm' },
  frontRadiusMm: { symbol: 'R', name: phrase('front tyre radius'), unit: 'mm' },
  trailMm: { symbol: 'a', name: phrase('trail'), unit: 'mm' },
  normalTrailMm: { symbol: 'n', name: phrase('normal trail'), unit: 'mm' },
}

/** One way to get a number from others: those it needs, and how. */
export interface SteeringRecipe {
  needs: readonly SteeringKey[]
  formula: string
  by: (v: Record<SteeringSymbol, number>) => number
}

const [rake, offset, radius, trail, normal] = ['rakeDeg', 'offsetMm', 'frontRadiusMm', 'trailMm', 'normalTrailMm'] as const

/** sin ε from both trails: their ratio is cos ε. */
const sinOf = (n: number, a: number): number => Math.sqrt(1 - (n / a) ** 2)

/** R·sin ε − a·cos ε = d, solved for ε by writing the left side as one sine. */
const rakeOf = (R: number, d: number, a: number): number => toDegrees(Math.asin(d / Math.hypot(R, a)) + Math.atan2(a, R))

/** R·sin ε − d = n = a·cos ε, solved for each number, best-conditioned way first. */
export const steeringRecipes: Record<SteeringKey, readonly SteeringRecipe[]> = {
  rakeDeg: [
    { needs: [radius, offset, normal], formula: 'ε = asin((n + d) / R)', by: ({ R, d, n }) => toDegrees(Math.asin((n + d) / R)) },
    { needs: [radius, offset, trail], formula: 'ε = asin(d / √(R² + a²)) + atan(a / R)', by: ({ R, d, a }) => rakeOf(R, d, a) },
    { needs: [normal, trail], formula: 'ε = acos(n / a)', by: ({ n, a }) => toDegrees(Math.acos(n / a)) },
  ],
  offsetMm: [
    { needs: [rake, radius, normal], formula: 'd = R · sin ε − n', by: ({ ε, R, n }) => R * sinDeg(ε) - n },
    { needs: [rake, radius, trail], formula: 'd = R · sin ε − a · cos ε', by: ({ ε, R, a }) => R * sinDeg(ε) - a * cosDeg(ε) },
    { needs: [radius, normal, trail], formula: 'd = R · √(1 − (n / a)²) − n', by: ({ R, n, a }) => R * sinOf(n, a) - n },
  ],
  frontRadiusMm: [
    { needs: [rake, offset, normal], formula: 'R = (n + d) / sin ε', by: ({ ε, d, n }) => (n + d) / sinDeg(ε) },
    { needs: [rake, offset, trail], formula: 'R = (a · cos ε + d) / sin ε', by: ({ ε, d, a }) => (a * cosDeg(ε) + d) / sinDeg(ε) },
    { needs: [offset, normal, trail], formula: 'R = (n + d) / √(1 − (n / a)²)', by: ({ d, n, a }) => (n + d) / sinOf(n, a) },
  ],
  trailMm: [
    { needs: [rake, radius, offset], formula: 'a = (R · sin ε − d) / cos ε', by: ({ ε, R, d }) => (R * sinDeg(ε) - d) / cosDeg(ε) },
    { needs: [rake, normal], formula: 'a = n / cos ε', by: ({ ε, n }) => n / cosDeg(ε) },
    { needs: [radius, offset, normal], formula: 'a = n / √(1 − ((n + d) / R)²)', by: ({ R, d, n }) => n / Math.sqrt(1 - ((n + d) / R) ** 2) },
  ],
  normalTrailMm: [
    { needs: [rake, radius, offset], formula: 'n = R · sin ε − d', by: ({ ε, R, d }) => R * sinDeg(ε) - d },
    { needs: [rake, trail], formula: 'n = a · cos ε', by: ({ ε, a }) => a * cosDeg(ε) },
    { needs: [radius, offset, trail], formula: 'n = a · cos(asin(d / √(R² + a²)) + atan(a / R))', by: ({ R, d, a }) => a * cosDeg(rakeOf(R, d, a)) },
  ],
}
