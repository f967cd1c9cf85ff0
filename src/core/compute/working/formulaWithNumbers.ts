import type { Working, WorkingInput } from './result'

const plainNumber = ({ value }: WorkingInput) => String(Number(value.toPrecision(6)))

/**
 * The formula with this entry's numbers in the place of its symbols; `print` writes one input, six digits by default.
 * A negative number is put in brackets, so that it does not run into the sign before it.
 * @example formulaWithNumbers(working) // 'sag = 152 − (128 + 122) / 2'
 */
export function formulaWithNumbers(working: Working, print: (input: WorkingInput) => string = plainNumber): string {
  const bySymbol = new Map(working.inputs.map((input) => [input.symbol, input]))
  return working.formula.replace(/[\p{L}_][\p{L}\p{Nd}_′″]*/gu, (word) => {
    const input = bySymbol.get(word)
    if (!input) return word
    const written = print(input)
    return input.value < 0 ? `(${written})` : written
  })
}
