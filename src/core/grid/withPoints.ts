import { findField } from '../notebook/fields'
import type { Gesture } from './gesture'

/** A number at the beginning with a decimal comma, and nothing that could be a second or third number of a list. */
const decimalComma = /^(\s*[+\-−]?\d{1,12}),(\d{1,20})(?![\d.,]|\s*,)/

/**
 * A gesture of someone whose language writes `3,5`: in cells of figures the comma becomes the point of the file, which
 * must read alike everywhere. Words, and cells that hold several figures with commas between them, stay as they were typed.
 */
export function withPoints(gesture: Gesture): Gesture {
  switch (gesture.kind) {
    case 'setCell': case 'setBothLegs': return { ...gesture, text: pointed(gesture.row, gesture.text) }
    case 'setCells': return { ...gesture, cells: gesture.cells.map((cell) => ({ ...cell, text: pointed(cell.row, cell.text) })) }
    case 'addAdjuster': return gesture.range === undefined ? gesture : { ...gesture, range: withPoint(gesture.range) }
    default: return gesture
  }
}

/** Whether a language writes decimals with a comma. @example writesComma('de') // true */
export function writesComma(language: string): boolean {
  try {
    return new Intl.NumberFormat(language).formatToParts(1.5).some(({ type, value }) => type === 'decimal' && value === ',')
  } catch {
    return false
  }
}

function pointed(row: string, text: string): string {
  const field = findField(row)
  const isFigure = row.startsWith('settings/') || (field !== undefined && !field.list && (field.dimension !== undefined || field.bare === true))
  return isFigure ? withPoint(text) : text
}

const withPoint = (text: string): string => text.replace(decimalComma, '$1.$2')
