import assert from 'node:assert/strict'
import manifest from '../../package.json'
import { displayChoices, fileUnits, type DisplayUnits } from '../../src/core/notation/displayUnits'

describe('the settings for the units of computed numbers', () => {
  it('offer in the editor what core can show, with the format’s own unit as the default', () => {
    const properties = manifest.contributes.configuration.properties as Record<string, { enum?: readonly string[]; default: unknown }>
    const kinds = Object.keys(properties).filter((name) => name.startsWith('detent.display.')).map((name) => name.slice('detent.display.'.length))
    assert.deepEqual(kinds, Object.keys(displayChoices))
    for (const kind of kinds as (keyof DisplayUnits)[]) {
      assert.deepEqual(properties[`detent.display.${kind}`]!.enum, displayChoices[kind])
      assert.equal(properties[`detent.display.${kind}`]!.default, fileUnits[kind])
    }
  })
})
