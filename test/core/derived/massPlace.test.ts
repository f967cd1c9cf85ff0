import assert from 'node:assert/strict'
import { frontShareOf, liftingLimitOf, loadsAt, massBehindFrontOf, massHeightOf, riderShareOf, transferOf } from '../../../src/core/derived/massPlace'
import { get, missingOf, near, valueOf } from '../compute/near'
import { readEntry, sketchWith } from './ternSketch'

const loads = (facts: string, more = '') => readEntry(sketchWith(['  geometry:', `  axle_loads: {${facts}}\n${more}  geometry:`], ['front_radius: 300, rear_radius: 315', 'front_radius: 300, rear_radius: 300']), 'as-found')
const level = 'bike: {front: 97.142857142857, rear: 102.857142857143'

describe('massPlace', () => {
  it('J. R. Davis, tip 106: 45 on the front and 55 on the rear lie 55 % of the wheelbase back', () => {
    const { notebook, entry } = loads('bike: {front: 90, rear: 110}')
    near(valueOf(frontShareOf(notebook, entry, 'bike')), 45, 1e-9)
    near(valueOf(massBehindFrontOf(notebook, entry)), 0.55 * 1400, 1e-9)
  })

  it('as it is ridden, where that was weighed, and the entry’s own weighing first', () => {
    const { notebook, entry } = loads('bike: {front: 90, rear: 110}, rider: {front: 124, rear: 160}')
    near(valueOf(massBehindFrontOf(notebook, entry)), (1400 * 160) / 284, 1e-9)
    near(valueOf(riderShareOf(notebook, entry)), 34 / 84, 1e-9)
    const other = readEntry(notebook.text.replace('    sag:\n', '    axle_loads: {rider: {front: 130, rear: 154}}\n    sag:\n'), 'as-found')
    near(valueOf(frontShareOf(other.notebook, other.entry, 'rider')), (100 * 130) / 284, 1e-9)
  })

  it('ISO 9129 and ISO 10392: 600 mm of height come back from the front axle’s 108.626 kg with the rear lifted by 362.35 mm', () => {
    const { notebook, entry } = loads(`${level}, front_lifted: 108.626394, lift: 362.3467}`)
    const { height, load } = massHeightOf(notebook, entry)
    near(valueOf(height), 600, 1e-3)
    assert.equal(load, 'bike')
  })

  it('moments, round numbers: 280 kg, centre 700 mm ahead of the rear and 620 mm up: axle loads at 0, 0.5, 0.8 and 1 g, and their sum', () => {
    const { notebook, entry } = loads('rider: {front: 140, rear: 140}', '  mass_height: 620\n')
    for (const [g, front, rear] of [[0, 1372.931, 1372.931], [0.5, 1980.943, 764.919], [0.8, 2345.751, 400.111], [1, 2588.956, 156.906]] as const) {
      const { frontN, rearN } = get(loadsAt(notebook, entry, g))
      near(frontN.value, front, 1e-3)
      near(rearN.value, rear, 1e-3)
      near(frontN.value + rearN.value, 2745.862, 1e-3)
    }
    near(valueOf(transferOf(notebook, entry)), 1216.0246, 1e-3)
  })

  it('J. S. Riel, Maximal Braking: the limit is l / h, and past it the load below zero is told', () => {
    const { notebook, entry } = loads('rider: {front: 140, rear: 140}', '  mass_height: 620\n')
    near(valueOf(liftingLimitOf(notebook, entry, 'braking')), 700 / 620, 1e-9)
    near(valueOf(liftingLimitOf(notebook, entry, 'drive')), 700 / 620, 1e-9)
    const past = get(loadsAt(notebook, entry, 1.3))
    assert.equal(past.lifted, 'rear')
    assert.ok(past.rearN.value < 0)
  })

  it('what was lifted and weighed counts before what is noted', () => {
    const { notebook, entry } = loads(`${level}, front_lifted: 108.626394, lift: 362.3467}`, '  mass_height: 900\n')
    near(valueOf(massHeightOf(notebook, entry).height), 600, 1e-3)
  })

  it('is absent with its reasons: no weighing, no height, no wheelbase', () => {
    const { notebook, entry } = readEntry(sketchWith(), 'as-found')
    assert.deepEqual(missingOf(massBehindFrontOf(notebook, entry)), ['weight on the front axle', 'weight on the rear axle'])
    assert.match(missingOf(transferOf(notebook, entry)).join(), /^the height of the centre of mass \(`mass_height`\)/)
    const unlevel = loads('bike: {front: 97, front_lifted: 108, lift: 362}')
    assert.deepEqual(missingOf(massHeightOf(unlevel.notebook, unlevel.entry).height), ['rear axle, level'])
    const nowhere = readEntry('format: 1\nmachine: {axle_loads: {bike: {front: 90, rear: 110}}}\nentries:\n  - id: a\n')
    assert.ok(missingOf(massBehindFrontOf(nowhere.notebook, nowhere.entry)).length > 0)
  })
})
