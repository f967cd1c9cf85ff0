import assert from 'node:assert/strict'
import schema from '../../../schemas/setup.schema.json'
import { dimensionsOf } from '../../../src/core/notebook/dimensionsOf'
import { schemasAt } from '../../../src/core/notebook/schemaKeys'

describe('dimensionsOf', () => {
  it('knows every definition of the schema that is a number or a text with a unit, but for positions', () => {
    const definitions = Object.entries(schema.definitions as Record<string, { type?: unknown }>)
    const quantities = definitions.filter(([, { type }]) => JSON.stringify(type) === '["number","string"]').map(([name]) => name)
    assert.deepEqual(quantities.filter((named) => named !== 'position' && dimensionsOf([{ named }]) === undefined), [])
    assert.ok(quantities.length > 6)
  })

  it('finds what stands under a path', () => {
    assert.deepEqual(dimensionsOf(schemasAt(['machine', 'front', 'travel'])), ['length'])
    assert.deepEqual(dimensionsOf(schemasAt(['machine', 'front', 'spring_rate'])), ['stiffness'])
    assert.deepEqual(dimensionsOf(schemasAt(['machine', 'front', 'spring_rate', 'left'])), ['stiffness'])
    assert.deepEqual(dimensionsOf(schemasAt(['machine', 'rear', 'targets', 'rider_sag', '*'])), ['length', 'share'])
    assert.deepEqual(dimensionsOf(schemasAt(['entries', '*', 'sag', 'front', 'bike', '*'])), ['length'])
  })

  it('finds nothing for what is no quantity', () => {
    assert.equal(dimensionsOf(schemasAt(['machine', 'name'])), undefined)
    assert.equal(dimensionsOf(schemasAt(['entries', '*', 'settings', 'any'])), undefined)
  })
})
