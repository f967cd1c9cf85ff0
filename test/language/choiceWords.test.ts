import assert from 'node:assert/strict'
import { rootSchemas, schemasBelow, type SchemaNode } from '../../src/core/notebook/schemaKeys'
import { choiceWords } from '../../src/language/choiceWords'

/** Every path of the format that lets one choose, with its choices; any name stands for those that are free. */
function choices(nodes: readonly SchemaNode[], path: string[] = []): { path: string[]; values: string[] }[] {
  const own = nodes.flatMap((node) => (node.enum ?? []).map(String))
  const keys = new Set(nodes.flatMap((node) => Object.keys(node.properties ?? {})))
  const steps = [...keys, ...(nodes.some((node) => node.additionalProperties) ? ['any'] : []), ...(nodes.some((node) => node.items) ? ['*'] : [])]
  return [...(own.length > 0 ? [{ path, values: own }] : []), ...steps.flatMap((step) => choices(schemasBelow(nodes, step), [...path, step]))]
}

describe('choiceWords', () => {
  for (const { path, values } of choices(rootSchemas)) {
    it(`says what each choice of ${path.join('.')} says`, () => {
      for (const value of values) assert.ok(choiceWords(path, value), value)
    })
  }
  it('says nothing about what is no choice', () => {
    assert.equal(choiceWords(['entries', '*', 'reason'], 'keep'), undefined)
    assert.equal(choiceWords(['entries', '*', 'verdict'], 'constructor'), undefined)
    assert.equal(choiceWords([], ''), undefined)
  })
})
