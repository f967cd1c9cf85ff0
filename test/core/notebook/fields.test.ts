import assert from 'node:assert/strict'
import { dimensionsOf } from '../../../src/core/notebook/dimensionsOf'
import { fieldNode, fields, findField, measured, pathOf } from '../../../src/core/notebook/fields'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { schemasAt } from '../../../src/core/notebook/schemaKeys'

const entryWith = (sag: string) => readNotebook(`format: 1\nentries: [{id: a, sag: {front: {bike: ${sag}}}}]\n`).entries[0]!
const lengths = (sag: string) => ['lifted', 'pushed'].map((half) => measured(entryWith(sag), `sag.front.bike.${half}`)?.base)

describe('the fields of an entry', () => {
  it('all stand in the schema, each with the unit and the choices it has there', () => {
    for (const { key, dimension, choices, list, bare } of fields) {
      const schemas = schemasAt(['entries', '*', ...pathOf(key).path])
      assert.ok(schemas.some(({ description }) => description !== undefined), `${key} is not in the schema`)
      for (const path of list ? [['*'], [list.key, '*']] : [[]]) assert.deepEqual(dimensionsOf(schemasAt(['entries', '*', ...pathOf(key).path, ...path])), dimension && [dimension], key)
      assert.equal(schemas.some(({ type }) => type === 'number'), bare === true, key)
      assert.deepEqual(schemas.flatMap((schema) => schema.enum ?? []), choices ?? [], key)
    }
  })

  it('have keys of their own', () => {
    assert.equal(new Set(fields.map(({ key }) => key)).size, fields.length)
    for (const field of fields) assert.equal(findField(field.key), field)
  })

  it('are found in either way of writing a sag reading', () => {
    assert.deepEqual(lengths('[128, 122]'), [128, 122])
    assert.deepEqual(lengths('{lifted: 128, pushed: 122}'), [128, 122])
    assert.deepEqual(lengths('{pushed: 122}'), [undefined, 122])
    assert.deepEqual(lengths('5 in'), [127, undefined])
    assert.deepEqual(lengths('[128]'), [128, undefined])
  })

  it('are absent where nothing is written, or nothing that can be read', () => {
    assert.equal(fieldNode(entryWith(''), 'sag.front.bike.lifted'), undefined)
    assert.equal(fieldNode(entryWith('[~, 122]'), 'sag.front.bike.lifted'), undefined)
    assert.deepEqual(lengths('long'), [undefined, undefined])
    assert.equal(measured(entryWith('128'), 'verdict'), undefined)
  })
})
