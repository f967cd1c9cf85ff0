import * as bounce from '../../../src/core/compute/bounce/dampingRatio'
import { dampedFromNatural } from '../../../src/core/compute/bounce/dampedFromNatural'
import { dampingCoefficient } from '../../../src/core/compute/bounce/dampingCoefficient'
import { describeRatio } from '../../../src/core/compute/bounce/describeBounce'
import { dampedFrequency, frequencyFromDeflection, frequencyFromRate, naturalFrequency } from '../../../src/core/compute/bounce/frequencies'
import { overshoot } from '../../../src/core/compute/bounce/overshoot'
import { geometryNow } from '../../../src/core/compute/geometry/geometryNow'
import { raiseAtWheel } from '../../../src/core/compute/geometry/raiseAtWheel'
import { solveSteering } from '../../../src/core/compute/geometry/solveSteering'
import { normalTrail, radiusFromRollOut, trail, wheelFlop } from '../../../src/core/compute/geometry/trail'
import { progressivity, ratioProgress } from '../../../src/core/compute/leverage/progressivity'
import { wheelSpring } from '../../../src/core/compute/leverage/wheelRate'
import { wheelSag } from '../../../src/core/compute/leverage/wheelSag'
import { axleLoads } from '../../../src/core/compute/loads/axleLoads'
import { frontShare } from '../../../src/core/compute/loads/frontShare'
import { liftingAcceleration, liftingDeceleration, loadTransfer } from '../../../src/core/compute/loads/loadTransfer'
import { massHeight } from '../../../src/core/compute/loads/massHeight'
import { sharedRiderLoad, weighedRiderLoad } from '../../../src/core/compute/loads/riderLoad'
import { riderFrontShare } from '../../../src/core/compute/loads/riderShare'
import { transferPerG } from '../../../src/core/compute/loads/transferPerG'
import { judgeSpring } from '../../../src/core/compute/preload/judgeSpring'
import { planPreload } from '../../../src/core/compute/preload/planPreload'
import { preloadAtSpring, preloadChange } from '../../../src/core/compute/preload/preloadChange'
import { sagsAfter } from '../../../src/core/compute/preload/sagsAfter'
import { turnAdjuster } from '../../../src/core/compute/preload/turnAdjuster'
import { heatedTo, pressureRise } from '../../../src/core/compute/pressure/heatedTo'
import { coldPressureFor, sealedPressure } from '../../../src/core/compute/pressure/sealedPressure'
import { friction } from '../../../src/core/compute/sag/friction'
import { impliedWheelRate } from '../../../src/core/compute/sag/impliedWheelRate'
import { sagDifference } from '../../../src/core/compute/sag/sagDifference'
import { sagTarget } from '../../../src/core/compute/sag/sagTarget'
import { airSpring, forceChangeOfLevel } from '../../../src/core/compute/springs/airSpring'
import { airForce, airPressure, airRate, airRoom } from '../../../src/core/compute/springs/airWorking'
import { compareRates } from '../../../src/core/compute/springs/compareRates'
import { crossOver, dualRateForce } from '../../../src/core/compute/springs/dualRate'
import { forceCurve } from '../../../src/core/compute/springs/forceCurve'
import { forkRateAlongTubes, forkRateVertical } from '../../../src/core/compute/springs/forkWheelRate'
import { nearestRates } from '../../../src/core/compute/springs/nearestRates'
import { levelChangeForOil, oilForLevelChange, spacerDisplacement } from '../../../src/core/compute/springs/oilVolume'
import { rateFromOutside } from '../../../src/core/compute/springs/rateFromOutside'
import { rateFromWire } from '../../../src/core/compute/springs/rateFromWire'
import { sagUnderLoad } from '../../../src/core/compute/springs/sagUnderLoad'
import { shockMeanWheelRate } from '../../../src/core/compute/springs/shockMeanWheelRate'
import { shockWheelRate } from '../../../src/core/compute/springs/shockWheelRate'
import { forkSpringFor, shockSpringFor } from '../../../src/core/compute/springs/springAtDamper'
import { springForTargets } from '../../../src/core/compute/springs/springForTargets'
import { changeTravel, firstRate, secondRate } from '../../../src/core/compute/springs/stackRates'
import { stagedDeflection, stagedForce } from '../../../src/core/compute/springs/stagedSprings'
import { targetRate } from '../../../src/core/compute/springs/targetRate'
import { travelUsed } from '../../../src/core/compute/travel/travelUsed'
import { changeSince } from '../../../src/core/compute/working/changeSince'
import { derive, given } from '../../../src/core/compute/working/derive'
import type { Result } from '../../../src/core/compute/working/result'

type Facts = Record<string, unknown>

/** A calculation with facts as they may well be; told with each of their numbers also at nought, below it, and none at all. */
export interface Call {
  name: string
  facts: Facts
  of: (facts: never) => unknown
}

const call = <Given extends object>(name: string, of: (facts: Given) => unknown, facts: Given): Call => ({ name, of, facts: facts as Facts })

const leverage = { table: [[0, 0], [50, 24], [100, 52]] as [number, number][] }
const rising = { table: [[0, 0], [50, 20], [100, 52]] as [number, number][] }
const leg = { sealDiameterMm: 48, boreMm: 46, oilLevelMm: 120, travelMm: 120, springVolumeMl: 60, gaugeBar: 0.5, atmosphereBar: 1.01325, exponent: 1.2 }
const place = { massKg: 250, wheelbaseMm: 1400, aheadOfRearMm: 700, heightMm: 600 }
const steering = { rakeDeg: 24, offsetMm: 30, frontRadiusMm: 300 }
const length = (value: number): Result => ({ value, unit: 'mm', working: { formula: 'read', inputs: [], assumptions: [], source: 'made up' } })
const window = { lowMm: 30, highMm: 40, source: 'made up' }

const airAt = (travelMm: number) => (facts: typeof leg) => {
  const found = airSpring(facts)
  return 'at' in found ? found.at(travelMm) : found
}
const turned = ({ by, ...adjuster }: Parameters<typeof turnAdjuster>[0] & { by: number }) => turnAdjuster(adjuster, by)

/** Every calculation that works with numbers of its own; a new one gets a line here. */
export const edgeCalls: readonly Call[] = [
  call('dampingRatio, half cycles', ({ a, b, c }: { a: number; b: number; c: number }) => bounce.dampingRatio({ heightsMm: [a, b, c], spacing: 'halfCycle' }), { a: 40, b: 10, c: 3 }),
  call('dampingRatio, whole cycles', ({ a, b }: { a: number; b: number }) => bounce.dampingRatio({ heightsMm: [a, b], spacing: 'cycle' }), { a: 40, b: 10 }),
  call('dampingRatio, no decay', ({ a, b }: { a: number; b: number }) => bounce.dampingRatio({ heightsMm: [a, b], spacing: 'cycle' }), { a: 40, b: 40 }),
  call('dampedFromNatural', dampedFromNatural, { naturalHz: 2.5, ratio: 0.3 }), call('dampedFromNatural, critical', dampedFromNatural, { naturalHz: 2.5, ratio: 1 }),
  call('dampingCoefficient', dampingCoefficient, { massKg: 200, naturalHz: 0.54652, ratio: 0.40371 }),
  ...[0, 0.02, 0.2, 0.3, 0.5, 0.69, 0.7, 1, 1.2].map((ratio) => call(`describeRatio ${ratio}`, ({ add }: { add: number }) => [describeRatio(ratio + add), overshoot(ratio + add)], { add: 0.001 })),
  call('dampedFrequency', dampedFrequency, { cycles: 1, seconds: 0.5 }), call('naturalFrequency', naturalFrequency, { dampedHz: 2.5, ratio: 0.3 }), call('naturalFrequency, critical', naturalFrequency, { dampedHz: 2.5, ratio: 1 }),
  call('frequencyFromRate', frequencyFromRate, { wheelRateNPerMm: 20, sprungLoadN: 900 }), call('frequencyFromDeflection', ({ mm }: { mm: number }) => frequencyFromDeflection(mm), { mm: 35 }),
  call('geometryNow', geometryNow, { ...steering, wheelbaseMm: 1400, rearRadiusMm: 310, moved: { forkUpMm: 5, rearRaisedMm: 3 } }),
  call('geometryNow, an unsure tyre', geometryNow, { ...steering, wheelbaseMm: 1400, rearRadiusMm: { value: 310, u: 2 }, frontRadiusMm: { value: 300, u: 2 } }),
  call('geometryNow, other tyres', geometryNow, { ...steering, wheelbaseMm: 1400, rearRadiusMm: 310, moved: { frontRadiusMm: 295, rearRadiusMm: { value: 305, u: 1 } } }),
  call('raiseAtWheel', raiseAtWheel, { shockLongerMm: 4, motionRatio: 0.5 }),
  call('solveSteering', solveSteering, steering), call('solveSteering, written twice', solveSteering, { ...steering, trailMm: 101 }),
  call('trail', trail, steering), call('normalTrail', normalTrail, steering), call('wheelFlop', wheelFlop, { rakeDeg: 24, trailMm: 100 }), call('radiusFromRollOut', radiusFromRollOut, { distanceMm: 1885, turns: 1 }),
  call('progressivity', ({ travelMm }: { travelMm: number }) => progressivity(rising, travelMm), { travelMm: 100 }), call('ratioProgress', ratioProgress, { ratioAtTop: 0.4, ratioAtEnd: 0.6 }),
  call('progressivity, resting start', ({ travelMm }: { travelMm: number }) => progressivity({ table: [[0, 0], [50, 0.0001], [100, 40]] }, travelMm), { travelMm: 100 }),
  call('wheelSpring', wheelSpring, { springRateNPerMm: 95, preloadMm: 8, leverage, wheelMm: 60 }), call('wheelSpring, at the end', wheelSpring, { springRateNPerMm: 95, preloadMm: 8, leverage, wheelMm: 100 }),
  call('wheelSpring, of five points', wheelSpring, { springRateNPerMm: 95, preloadMm: 8, leverage: { table: [[0, 0], [25, 10], [50, 21], [75, 34], [100, 50]] as [number, number][] }, wheelMm: 95 }),
  call('wheelSpring, past the end', wheelSpring, { springRateNPerMm: 95, preloadMm: 8, leverage, wheelMm: 100.1 }),
  call('wheelSag', wheelSag, { springRateNPerMm: 95, preloadMm: 8, leverage, travelMm: 100, loadN: 900 }), call('wheelSag, light', wheelSag, { springRateNPerMm: 95, preloadMm: 8, leverage, travelMm: 100, loadN: 100 }),
  call('wheelSag, heavy', wheelSag, { springRateNPerMm: 95, preloadMm: 8, leverage, travelMm: 100, loadN: 9000 }),
  call('axleLoads', axleLoads, { frontKg: 90, rearKg: 110, wheelbaseMm: 1400 }), call('frontShare', frontShare, { frontKg: 90, rearKg: 110, whose: 'bike alone' }),
  call('loadTransfer', loadTransfer, { ...place, decelerationG: 0.8 }), call('loadTransfer, rear lifts', loadTransfer, { ...place, decelerationG: 1.5 }), call('loadTransfer, front lifts', loadTransfer, { ...place, decelerationG: -1.5 }),
  call('loadTransfer, at the limit', loadTransfer, { ...place, wheelbaseMm: 1200, aheadOfRearMm: 600, decelerationG: 1 }),
  call('liftingDeceleration', liftingDeceleration, { behindFrontMm: 700, heightMm: 600, slope: 0.1 }), call('liftingAcceleration', liftingAcceleration, { aheadOfRearMm: 700, heightMm: 600, slope: 0.1 }),
  call('massHeight', massHeight, { wheelbaseMm: 1400, frontRadiusMm: 300, rearRadiusMm: 310, frontLevelKg: 90, rearLevelKg: 110, frontLiftedKg: 100, liftMm: 400 }),
  call('massHeight, on end', massHeight, { wheelbaseMm: 1400, frontRadiusMm: 300, frontLevelKg: 90, rearLevelKg: 110, frontLiftedKg: 100, liftMm: 1400 }),
  call('weighedRiderLoad', weighedRiderLoad, { withRiderKg: 130, withoutRiderKg: 95 }), call('sharedRiderLoad', sharedRiderLoad, { end: 'rear', riderKg: 80, share: 0.6 }), call('sharedRiderLoad, assumed', sharedRiderLoad, { end: 'front', riderKg: 80 }),
  call('riderFrontShare', riderFrontShare, { frontWithKg: 122, frontWithoutKg: 90, riderKg: 80 }), call('transferPerG', transferPerG, { massKg: 250, wheelbaseMm: 1400, heightMm: 600 }),
  ...([[8, 33], [8, 38], [15, 45], [3, 45], [15, 25], [0, 20], [8, 40]] as const).map(([bike, rider]) => call(`judgeSpring ${bike} and ${rider}`, ({ bikeU, riderU }: { bikeU: number; riderU: number }) => judgeSpring({ bikeSagMm: { value: bike, u: bikeU }, riderSagMm: { value: rider, u: riderU }, bikeWindow: { lowMm: 5, highMm: 10 }, riderWindow: { lowMm: 30, highMm: 40 } }), { bikeU: 0.5, riderU: 0.7 })),
  ...[30, 35, 40, 48, 24].flatMap((rider) => [0, 2, 100].map((highest) => call(`planPreload ${rider}, up to ${highest}`, ({ at }: { at: number }) => planPreload({ bikeSagMm: { value: 8 }, riderSagMm: { value: rider }, riderWindow: window, motionRatio: 1, adjuster: { at, mmPerCount: 1, lowest: 0, highest, step: 1 } }), { at: 0 }))),
  call('planPreload, short and yet within', ({ highest }: { highest: number }) => planPreload({ riderSagMm: { value: 41 }, riderWindow: window, motionRatio: 1, adjuster: { at: 0, mmPerCount: 1, lowest: 0, highest, step: 1 } }), { highest: 4 }),
  call('planPreload, beyond all numbers', ({ step }: { step: number }) => planPreload({ bikeSagMm: { value: 1e308 }, riderSagMm: { value: 0 }, riderWindow: { lowMm: 0.89e308, highMm: 0.89e308, source: 'made up' }, motionRatio: 1, adjuster: { at: 0, mmPerCount: 1, step } }), { step: 1.77e308 }),
  call('planPreload, coarse', ({ step }: { step: number }) => planPreload({ bikeSagMm: { value: 44 }, bikeWindow: { ...window, highMm: 31 }, motionRatio: 1, adjuster: { at: 0, mmPerCount: 1, step } }), { step: 30 }),
  call('planPreload, no adjuster', ({ sag, ratio }: { sag: number; ratio: number }) => planPreload({ riderSagMm: { value: sag }, riderWindow: window, motionRatio: ratio }), { sag: 50, ratio: 0.5 }),
  call('planPreload, out of all measure', ({ sag, ratio }: { sag: number; ratio: number }) => planPreload({ bikeSagMm: { value: 1 }, riderSagMm: { value: sag }, riderWindow: window, motionRatio: ratio }), { sag: 1e300, ratio: 1e-300 }),
  call('preloadChange', preloadChange, { sagMm: 40, targetMm: 35, motionRatio: 0.5 }), call('preloadAtSpring', preloadAtSpring, { wheelPreloadMm: 10, motionRatio: 0.5 }),
  call('sagsAfter', ({ bikeMm, riderMm, by }: { bikeMm: number; riderMm: number; by: number }) => sagsAfter({ bikeMm, riderMm }, by, 0.5), { bikeMm: 4, riderMm: 30, by: 2 }), call('sagsAfter, rider alone', ({ riderMm }: { riderMm: number }) => sagsAfter({ riderMm }, 2, 0.5), { riderMm: 30 }),
  call('turnAdjuster', turned, { at: 3, mmPerCount: 1, lowest: 0, highest: 8, step: 0.25, by: 2.2 }),
  call('turnAdjuster, to its end', turned, { at: 3, mmPerCount: 1, lowest: 1, highest: 8, step: 1, by: 5 }),
  call('turnAdjuster, to its other end', turned, { at: 3, mmPerCount: 1, lowest: 1, highest: 8, step: 1, by: -2 }),
  call('turnAdjuster, endless', turned, { at: 1e308, mmPerCount: 1e308, step: 1, by: 1e308 }),
  call('heatedTo', heatedTo, { coldBar: 2, coldC: 20, hotBar: 2.3 }), call('heatedTo, empty', heatedTo, { coldBar: -1, coldC: 20, hotBar: 2.3, atmosphereBar: 1 }), call('heatedTo, frozen', heatedTo, { coldBar: 2, coldC: -273.15, hotBar: 2.3 }), call('pressureRise', pressureRise, { coldBar: 2, hotBar: 2.3 }),
  call('sealedPressure', sealedPressure, { gaugeBar: 2, fromC: 20, toC: 60, toAtmosphereBar: 0.9 }), call('sealedPressure, frozen', sealedPressure, { gaugeBar: 2, fromC: 20, toC: -273.15 }), call('sealedPressure, empty', sealedPressure, { gaugeBar: -1, fromC: 20, toC: 60, fromAtmosphereBar: 1 }),
  call('coldPressureFor', coldPressureFor, { wantedBar: 2.3, wantedAtC: 60, setAtC: 20 }),
  call('friction', ({ lifted, pushed }: { lifted: number; pushed: number }) => friction([lifted, pushed]), { lifted: 128, pushed: 120 }), call('friction, swapped', ({ lifted, pushed }: { lifted: number; pushed: number }) => friction([lifted, pushed]), { lifted: 120, pushed: 128 }),
  call('friction, half read', ({ pushed }: { pushed: number }) => friction([NaN, pushed]), { pushed: 120 }), call('friction, the other half', ({ lifted }: { lifted: number }) => friction([lifted, NaN]), { lifted: 120 }),
  call('sagDifference', sagDifference, { bikeMm: [128, 120] as const, riderMm: [108] as const }), call('impliedWheelRate', impliedWheelRate, { riderLoadN: 450, bikeMm: [128, 120] as const, riderMm: [108, 100] as const }), call('impliedWheelRate, unread', ({ riderLoadN }: { riderLoadN: number }) => impliedWheelRate({ riderLoadN, bikeMm: undefined, riderMm: [100] }), { riderLoadN: 450 }),
  ...(['bike', 'rider'] as const).flatMap((load) => (['front', 'rear'] as const).flatMap((end) => (['road', 'track', 'motocross', 'enduro', 'adventure', 'touring'] as const).map((use) => call(`sagTarget ${use}, ${end}, ${load}`, sagTarget, { use, end, load, travelMm: 120 })))),
  call('sagTarget, own', sagTarget, { use: undefined, end: 'front', load: 'rider', travelMm: 120, own: { low: 30, high: 30, unit: 'percent' } }),
  call('airSpring', airAt(60), leg), call('airSpring, full', airAt(120), { ...leg, springVolumeMl: 199.4 }),
  ...[0.1, 10_000].map((mm) => call(`airSpring, tubes of ${mm} mm`, airAt(0), { ...leg, sealDiameterMm: mm, boreMm: mm, oilLevelMm: mm, travelMm: mm, springVolumeMl: 0 })),
  call('airSpring, at 1000 bar', airAt(60), { ...leg, gaugeBar: 999, atmosphereBar: 1 }), call('airSpring, empty', airAt(60), { ...leg, gaugeBar: -1, atmosphereBar: 1 }),
  call('forceChangeOfLevel', ({ by, ...facts }: typeof leg & { by: number }) => forceChangeOfLevel(facts, by, 100), { ...leg, by: -10 }),
  ...([['airForce', airForce], ['airRate', airRate], ['airPressure', airPressure]] as const).flatMap(([name, of]) => [call(name, of, { ...leg, atMm: 60 }), call(`${name}, empty`, of, { ...leg, gaugeBar: -1, atmosphereBar: 1, atMm: 60 })]), call('airRoom', airRoom, leg),
  call('compareRates', compareRates, { impliedNPerMm: { value: 20, u: 1 }, fittedNPerMm: { value: 22, u: 0 } }), call('compareRates, exact', compareRates, { impliedNPerMm: 20, fittedNPerMm: 22 }),
  ...[0, 5, 10, 20].map((mm) => call(`dualRateForce at ${mm}`, (stack: Parameters<typeof crossOver>[0]) => [crossOver(stack), dualRateForce(stack, mm)], { softRateNPerMm: 10, stiffRateNPerMm: 10, softTravelMm: 5 })),
  ...[0, 1, 4].map((steps) => call(`forceCurve in ${steps} steps`, ({ travelMm }: { travelMm: number }) => forceCurve(travelMm, [{ name: 'spring', at: (x) => 20 * x }], steps), { travelMm: 100 })),
  call('forkRateAlongTubes', forkRateAlongTubes, { legRatesNPerMm: [9, 9], rakeDeg: 24 }), call('forkRateVertical', forkRateVertical, { legRatesNPerMm: [9, 9], rakeDeg: 24 }), call('forkRateVertical, one leg', forkRateVertical, { legRatesNPerMm: [9], rakeDeg: 24 }),
  call('nearestRates, beyond all numbers', ({ step }: { step: number }) => nearestRates(1e308, step), { step: 1e-10 }),
  ...[9, 9.25, 9.3, 9.5].map((rate) => call(`nearestRates of ${rate}`, ({ step }: { step: number }) => nearestRates(rate, step), { step: 0.5 })),
  call('oilForLevelChange', oilForLevelChange, { boreMm: 43, changeMm: 10 }), call('levelChangeForOil', levelChangeForOil, { boreMm: 43, oilMl: 14.5 }), call('spacerDisplacement', spacerDisplacement, { lengthMm: 200, outerMm: 35, innerMm: 30, boreMm: 36.6 }), call('spacerDisplacement, no wall', spacerDisplacement, { lengthMm: 200, outerMm: 30, innerMm: 30, boreMm: 36.6 }),
  call('rateFromOutside', rateFromOutside, { wireMm: 2.5, outerMm: 31, activeCoils: 13, shearModulusGPa: 81 }), call('rateFromOutside, no modulus', rateFromOutside, { wireMm: 2.5, outerMm: 31, activeCoils: 13 }), call('rateFromOutside, all wire', rateFromOutside, { wireMm: 15.5, outerMm: 31, activeCoils: 13 }),
  call('rateFromWire', rateFromWire, { wireMm: 3, meanDiameterMm: 30, activeCoils: 10, shearModulusGPa: 80 }), call('rateFromWire, no modulus', rateFromWire, { wireMm: 3, meanDiameterMm: 30, activeCoils: 10 }),
  ...[0, 100, 400].map((load) => call(`sagUnderLoad of ${load} N`, (end: Parameters<typeof sagUnderLoad>[0]) => sagUnderLoad(end, load), { wheelRateNPerMm: 100, wheelPreloadMm: 1 })),
  call('shockMeanWheelRate', shockMeanWheelRate, { springRateNPerMm: 95, preloadMm: 8, leverage, springs: 1, fromMm: 20, toMm: 60 }), call('shockMeanWheelRate, past the table', shockMeanWheelRate, { springRateNPerMm: 95, preloadMm: 8, leverage, springs: 1, fromMm: 20, toMm: 160 }), call('shockWheelRate', shockWheelRate, { springRateNPerMm: 95, motionRatio: 0.45, springs: 1 }),
  call('forkSpringFor', forkSpringFor, { rateAlongTubesNPerMm: 18, rakeDeg: 24, legs: 2 }), call('forkSpringFor, with air', forkSpringFor, { rateAlongTubesNPerMm: 18, rakeDeg: 24, legs: 2, withAir: true }), call('shockSpringFor', shockSpringFor, { wheelRateNPerMm: 20, motionRatio: 0.45 }),
  call('springForTargets', springForTargets, { bikeLoadN: 900, riderLoadN: 450, bikeSagMm: 10, riderSagMm: 35 }), call('targetRate', targetRate, { riderLoadN: 450, bikeSagMm: 10, riderSagMm: 35 }),
  call('firstRate', firstRate, { softRateNPerMm: 8, stiffRateNPerMm: 12 }), call('secondRate', secondRate, { stiffRateNPerMm: 12 }), call('changeTravel', changeTravel, { softRateNPerMm: 8, stiffRateNPerMm: 12, softTravelMm: 20, preloadMm: 5, motionRatio: 0.5 }),
  ...[0, 5, 10, 20].map((mm) => call(`stagedSprings at ${mm}`, ({ gap }: { gap: number }) => [stagedForce([{ rateNPerMm: 10, gapMm: 0 }, { rateNPerMm: 20, gapMm: gap }], mm), stagedDeflection([{ rateNPerMm: 10, gapMm: 0 }, { rateNPerMm: 20, gapMm: gap }], mm * 10)], { gap: 10 })),
  call('an odd uncertainty', ({ u }: { u: number }) => derive({ formula: 'a', unit: 'mm', from: { a: given('length', 'mm', { value: 1, u }) }, by: ({ a }) => a, source: 'made up' }), { u: 0.5 }),
  ...[0.5, Infinity].map((unsure) => call(`a number given with ${unsure}`, ({ u }: { u: number }) => given('length', 'mm', { value: 1, u }), { u: unsure })),
  call('changeSince', ({ now, then }: { now: number; then: number }) => changeSince(length(now), length(then), 'run-1'), { now: 40, then: 35 }),
  ...[0, 12, 60, 80, 100, 110, 116, 118, 120].map((usedMm) => call(`travelUsed ${usedMm}`, travelUsed, { usedMm, travelMm: 120 })),
]
