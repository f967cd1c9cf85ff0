import assert from 'node:assert/strict'
import { printWithUncertainty } from '../../../src/core/notation/uncertainty'

describe('printWithUncertainty', () => {
  const cases: [value: number, u: number, digits: number, text: string][] = [
    [18.213, 0.871, 1, '18.2 ± 0.9'], [38, 0.7071, 1, '38 ± 0.7'], [6.207, 0.046, 1, '6.21 ± 0.05'], [0.40371, 0.0087, 2, '0.4 ± 0.01'],
    [-3.2, 1.26, 1, '-3.2 ± 1.3'], [5, 0, 1, '5 ± 0'],
  ]
  for (const [value, u, digits, text] of cases) it(`prints ${value} with u ${u} as ${text}`, () => assert.equal(printWithUncertainty(value, u, digits), text))
})
