import assert from 'node:assert/strict'
import fc from 'fast-check'
import { compareRates } from '../../../src/core/compute/springs/compareRates'
import { dampedFrequency, frequencyFromRate, naturalFrequency } from '../../../src/core/compute/bounce/frequencies'
import { dampingRatio } from '../../../src/core/compute/bounce/dampingRatio'
import { airSpring } from '../../../src/core/compute/springs/airSpring'
import { axleLoads } from '../../../src/core/compute/loads/axleLoads'
import { forkRateAlongTubes } from '../../../src/core/compute/springs/forkWheelRate'
import { friction } from '../../../src/core/compute/sag/friction'
import { geometryNow } from '../../../src/core/compute/geometry/geometryNow'
import { impliedWheelRate } from '../../../src/core/compute/sag/impliedWheelRate'
import { isMissing } from '../../../src/core/compute/working/result'
import { loadTransfer } from '../../../src/core/compute/loads/loadTransfer'
import { massHeight } from '../../../src/core/compute/loads/massHeight'
import { planPreload } from '../../../src/core/compute/preload/planPreload'
import { rateFromWire } from '../../../src/core/compute/springs/rateFromWire'
import { sag } from '../../../src/core/compute/sag/sag'
import { sagPercent } from '../../../src/core/compute/sag/sagPercent'
import { sealedPressure } from '../../../src/core/compute/pressure/sealedPressure'
import { solveSteering } from '../../../src/core/compute/geometry/solveSteering'
import { springForTargets } from '../../../src/core/compute/springs/springForTargets'
import { travelUsed } from '../../../src/core/compute/travel/travelUsed'
import { wheelSag } from '../../../src/core/compute/leverage/wheelSag'
import { wheelSpring } from '../../../src/core/compute/leverage/wheelRate'
import type { Point } from '../../../src/core/compute/leverage/monotoneCurve'

/** Numbers as people may write them by mistake, and as they come out of other sums. */
const anything = fc.oneof(fc.double(), fc.integer({ min: -500, max: 2000 }), fc.constantFrom(0, -0, NaN, Infinity, -Infinity, 1e-300, 1e300))

/** Every number in a result is finite, at any depth; what was handed in and is shown in the working included. */
function assertFinite(thing: unknown, what: string): void {
  if (typeof thing === 'number') assert.ok(Number.isFinite(thing), `${what} is ${thing}`)
  else if (Array.isArray(thing)) thing.forEach((one, place) => assertFinite(one, `${what}[${place}]`))
  else if (typeof thing === 'object' && thing !== null) for (const [key, one] of Object.entries(thing)) assertFinite(one, `${what}.${key}`)
}

const table = (v: number[]): Point[] => [[0, 0], [v[0]!, v[1]!], [v[2]!, v[3]!]]

const sums: Record<string, (v: number[]) => unknown> = {
  sag: (v) => sag({ load: 'rider', extendedMm: v[0], readingsMm: [v[1]!, { value: v[2]!, u: v[3]! }] }),
  sagPercent: (v) => sagPercent({ sagMm: v[0], travelMm: v[1] }),
  friction: (v) => friction([v[0]!, v[1]!]),
  impliedWheelRate: (v) => impliedWheelRate({ riderLoadN: { value: v[0]!, u: v[1]! }, bikeMm: [v[2]!, v[3]!], riderMm: [v[4]!] }),
  planPreload: (v) => planPreload({
    bikeSagMm: { value: v[0]! }, riderSagMm: { value: v[1]! }, riderWindow: { lowMm: v[2]!, highMm: v[3]!, source: '' }, motionRatio: v[4],
    adjuster: { at: v[5]!, mmPerCount: v[6]!, lowest: 0, highest: 12, step: v[7]! },
  }),
  rateFromWire: (v) => rateFromWire({ wireMm: v[0], meanDiameterMm: v[1], activeCoils: v[2] }),
  forkRateAlongTubes: (v) => forkRateAlongTubes({ legRatesNPerMm: [v[0]!, v[1]!], rakeDeg: v[2] }),
  springForTargets: (v) => springForTargets({ bikeLoadN: v[0], riderLoadN: v[1], bikeSagMm: v[2], riderSagMm: v[3] }),
  compareRates: (v) => compareRates({ impliedNPerMm: v[0], fittedNPerMm: v[1] }),
  airSpring: (v) => {
    const air = airSpring({ sealDiameterMm: v[0]!, boreMm: v[1]!, oilLevelMm: v[2]!, travelMm: v[3]!, gaugeBar: v[4] })
    return isMissing(air) ? air : air.at(v[3]! / 2)
  },
  wheelSpring: (v) => wheelSpring({ springRateNPerMm: v[4], preloadMm: v[5], leverage: { table: table(v) }, wheelMm: v[6] }),
  wheelSag: (v) => wheelSag({ springRateNPerMm: v[4]!, preloadMm: v[5]!, leverage: { table: table(v) }, travelMm: v[6]!, loadN: v[7]! }),
  solveSteering: (v) => solveSteering({ rakeDeg: v[0], offsetMm: v[1], frontRadiusMm: v[2], trailMm: v[3] }),
  geometryNow: (v) => geometryNow({
    rakeDeg: v[0], offsetMm: v[1], wheelbaseMm: v[2], frontRadiusMm: v[3], rearRadiusMm: v[4], moved: { forkUpMm: v[5]!, rearSagMm: v[6]!, frontRadiusMm: v[7]! },
  }),
  axleLoads: (v) => axleLoads({ frontKg: v[0], rearKg: v[1], wheelbaseMm: v[2] }),
  loadTransfer: (v) => loadTransfer({ massKg: v[0], wheelbaseMm: v[1], aheadOfRearMm: v[2], heightMm: v[3], decelerationG: v[4] }),
  massHeight: (v) => massHeight({ wheelbaseMm: v[0], frontRadiusMm: v[1], rearRadiusMm: v[2]!, frontLevelKg: v[3], rearLevelKg: v[4], frontLiftedKg: v[5], liftMm: v[6] }),
  dampingRatio: (v) => dampingRatio({ heightsMm: v, spacing: 'halfCycle' }),
  dampedFrequency: (v) => dampedFrequency({ cycles: v[0], seconds: v[1] }),
  naturalFrequency: (v) => naturalFrequency({ dampedHz: v[0], ratio: v[1] }),
  frequencyFromRate: (v) => frequencyFromRate({ wheelRateNPerMm: v[0], sprungLoadN: v[1] }),
  travelUsed: (v) => travelUsed({ usedMm: v[0], travelMm: v[1] }),
  sealedPressure: (v) => sealedPressure({ gaugeBar: v[0], fromC: v[1], toC: v[2], fromAtmosphereBar: v[3]!, toAtmosphereBar: v[4]! }),
}

describe('any numbers', () => {
  for (const [name, sum] of Object.entries(sums)) {
    it(`${name} never throws, and is never NaN or infinite: a number, or what is missing`, () => {
      fc.assert(fc.property(fc.array(anything, { minLength: 8, maxLength: 8 }), (numbers) => {
        const outcome = sum(numbers)
        assertFinite(outcome, name)
        return !isMissing(outcome) || outcome.missing.length > 0
      }), { numRuns: 300 })
    })
  }
})
