import assert from 'node:assert/strict'
import schema from '../../../../schemas/setup.schema.json'
import { loadCaseNames } from '../../../../src/core/compute/sag/loadCase'
import { sag } from '../../../../src/core/compute/sag/sag'
import { sagOf } from '../../../../src/core/derived/sagOf'
import { fields } from '../../../../src/core/notebook/fields'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../../src/core/rules/checkNotebook'
import { get, missingOf } from '../near'

describe('the load case', () => {
  it('trap, Bike (UK) 2019 against Sport Rider: ‘static sag’ is the machine alone to one and rider aboard to the other, so a reading under that word is no sag', () => {
    const notebook = readNotebook('format: 1\nentries:\n  - id: a\n    sag: {front: {extended: 152, static: [128, 122]}}\n')
    for (const load of ['bike', 'rider'] as const) assert.ok(missingOf(sagOf(notebook, notebook.entries[0]!, 'front', load)).some((reason) => reason.includes(loadCaseNames[load])))
    assert.ok(checkNotebook(notebook).some(({ code }) => code === 'unknown-key'))
  })

  it('is stored with every reading, and named with every row that takes one', () => {
    assert.deepEqual(Object.keys(schema.definitions.sag.properties), ['extended', 'bike', 'rider'])
    for (const { key, label } of fields.filter((field) => /^sag\.(front|rear)\.(?!extended)/.test(field.key))) {
      assert.equal(label, key.includes('.bike.') ? 'Bike alone' : 'Rider aboard')
    }
  })

  it('is told in the working of a sag', () => {
    for (const load of ['bike', 'rider'] as const) {
      const { working } = get(sag({ load, extendedMm: 152, readingsMm: [128, 122] }))
      assert.ok(working.inputs.slice(1).every(({ name }) => name.endsWith(loadCaseNames[load])))
    }
  })
})
