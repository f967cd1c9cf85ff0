import { readFileSync } from 'node:fs'
import { units } from '../../../src/core/notation/units'
import { architectures } from '../../../src/core/adjusters/architectures'
import { answerTo } from '../../../src/core/adjusters/architectures/architecture'
import { fields } from '../../../src/core/notebook/fields'
import { labelFrom } from '../../../src/core/notebook/readAdjusters'
import { computedRows } from '../../../src/core/grid/computed'
import { descriptions } from '../../../src/core/rules'
import type { Said } from './phrases'

/** Words of the format that are also said in sentences, by the name they have in the code. */
const namesSaid = [
  'front', 'rear', 'left', 'right', 'in', 'out', 'clockwise', 'anticlockwise', 'more', 'less', 'below', 'within', 'above', 'rises', 'falls', 'keep',
  'error', 'warning', 'info', 'road', 'track', 'motocross', 'enduro', 'adventure', 'touring',
]

/** Texts of tables whose every row is said: they need no mark at each text, for all of a kind are. */
export function tablePhrases(): Said[] {
  const from = (file: string, texts: readonly (string | undefined)[]) => texts.flatMap((text): Said[] => (text === undefined || text === '' ? [] : [{ key: text, english: text, file }]))
  return [
    ...from('src/core/notebook/fields.ts', fields.flatMap(({ label, detail, about }) => [label, detail, about])),
    ...from('src/core/grid/computed.ts', computedRows.flatMap(({ label, detail, about }) => [label, detail, about])),
    ...from('src/core/rules/index.ts', descriptions.flatMap(({ says, why }) => [says, why])),
    ...from('schemas/setup.schema.json', descriptionsIn(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')))),
    ...from('src/core/notation/units.ts', [...new Set(units.map(({ dimension }) => dimension))]),
    ...from('src/core/adjusters/architectures/index.ts', [...new Set(architectures.flatMap(({ adjusters, asks }) => adjusters(answerTo(asks, {})).map(([id]) => labelFrom(id))))]),
    ...from('test/house/words/tables.ts', namesSaid),
  ]
}

function descriptionsIn(node: unknown): string[] {
  if (typeof node !== 'object' || node === null) return []
  return Object.entries(node).flatMap(([key, value]) => (key === 'description' && typeof value === 'string' ? [value] : descriptionsIn(value)))
}
