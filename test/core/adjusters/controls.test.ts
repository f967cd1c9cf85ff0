import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { controls, findControl } from '../../../src/core/adjusters/controls'
import { findUnit } from '../../../src/core/notation/units'

interface Schema { definitions: { adjuster: { properties: { controls: { enum: string[] }; counts: { enum: string[] } } } } }
const schema = JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')) as Schema
const properties = schema.definitions.adjuster.properties

describe('what can be controlled', () => {
  it('is the same list in the table and in the schema', () => {
    assert.deepEqual(controls.map((control) => control.name).sort(), [...properties.controls.enum].sort())
    assert.equal(new Set(controls.map((control) => control.name)).size, controls.length)
  })

  it('is found by its name only', () => {
    for (const control of controls) assert.equal(findControl(control.name), control)
    for (const name of ['', 'Rebound', 'springs', '__proto__', 'constructor']) assert.equal(findControl(name), undefined)
  })

  it('can be counted in at least one unit that the schema allows, and every unit of the schema suits something', () => {
    const dimensions = properties.counts.enum.map((name) => {
      assert.ok(findUnit(name), name)
      return findUnit(name)!.dimension
    })
    for (const control of controls) assert.ok(control.suits.some((each) => dimensions.includes(each)), control.name)
    for (const dimension of dimensions) assert.ok(controls.some((control) => control.suits.includes(dimension)), dimension)
  })

  it('says of both directions what they give and do, differently', () => {
    for (const control of controls) {
      assert.notEqual(control.more, control.less)
      assert.notEqual(control.moreDoes, control.lessDoes)
      for (const words of [control.words, control.more, control.moreDoes, control.less, control.lessDoes]) assert.ok(words.length > 5 && !words.endsWith('.'))
    }
  })

  it('counts damping from closed and preload from open, and measures the rest', () => {
    for (const control of controls) assert.equal(control.counted, control.damping ? 'closed' : control.name === 'preload' ? 'open' : undefined, control.name)
  })

  it('never says that preload changes a spring’s rate', () => {
    const preload = findControl('preload')!
    for (const words of [preload.moreDoes, preload.lessDoes]) {
      assert.match(words, /rate stays the same/)
      assert.doesNotMatch(words, /stiffer|softer|harder|firmer/)
    }
  })

  // A larger gap is less oil, hence softer at the end of the stroke; one published page has it the wrong way round.
  it('makes a larger air gap softer', () => {
    assert.match(findControl('oil_level')!.moreDoes, /softer/)
  })
})
