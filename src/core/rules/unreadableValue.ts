import { fieldNode, fields } from '../notebook/fields'
import { readQuantity } from '../notation/quantity'
import type { EntryRule } from './rule'

const examples: Record<string, string> = { length: '128 or 5 in', temperature: '21 or 70 °F', pressure: '2.3 or 33 psi' }

export const unreadableValue: EntryRule = {
  code: 'unreadable-value',
  severity: 'error',
  says: 'A measured value cannot be read, or is in a unit of another kind.',
  why: 'What is not understood is not computed with. A bare number is mm, bar or °C; any other unit is written behind it.',
  checkEntry: (entry) =>
    fields.flatMap(({ key, dimension, label }) => {
      const node = dimension && fieldNode(entry, key)
      if (!node) return []
      const reading = readQuantity(node.text, dimension)
      if (reading.value) return []
      const fixes = reading.suggestion === undefined ? [] : [{ title: `Write ‘${reading.suggestion}’`, changes: [{ ...node.range, text: reading.suggestion }] }]
      const example = examples[dimension]
      return [{ message: `${label}: ‘${node.text}’ cannot be read: ${reading.problem}${example ? ` (such as ${example})` : ''}`, range: node.range, row: key, fixes }]
    }),
}
