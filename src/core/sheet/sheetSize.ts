import { say } from '../words/say'
import type { Sheet } from './sheet'

/** In points, from the largest; what a page of either size holds at each, in lines, beside what every sheet has. */
const sizes = [{ name: 'large', points: 12, lines: 26 }, { name: 'medium', points: 10.5, lines: 37 }, { name: 'small', points: 9.5, lines: 43.5 }, { name: 'tiny', points: 8.5, lines: 51 }] as const

export type SheetSize = (typeof sizes)[number]['name']

/** The largest type at which a sheet fits on one page, by a rough count of its lines; the smallest where it will take more than one. */
export function sheetSize(sheet: Sheet): SheetSize {
  return (sizes.find(({ points, lines }) => linesOf(sheet, points) <= lines) ?? sizes.at(-1)!).name
}

/** Printable width, mm, and how wide a character is on average for its height; a point is 0.353 mm. */
const widthMm = 186
const perPoint = 0.353 * 0.58

function linesOf({ positions, measures, watch, reason, notes }: Sheet, points: number): number {
  const wrapped = (text: string, share: number) => text.split('\n').reduce((lines, line) => lines + Math.max(1, Math.ceil((line.length * perPoint * points) / (widthMm * share))), 0)
  const rowLines = positions.flatMap(({ rows }) => rows).map(({ label, where, stands, counted, way, changed }) => 0.2 + Math.max(
    wrapped(label, 0.25) + (where === '' ? 0 : 0.85 * wrapped(where, 0.29)),
    1.2 * stands.length + (changed === undefined ? 0 : 0.85 * wrapped(changed, 0.28)),
    0.95 * wrapped(`${counted}; ${way}`, 0.48),
  ))
  const groups = measures.map(({ rows, note }) => 1.7 + rows.length + (note === undefined ? 0 : 0.85 * wrapped(note, 0.34)))
  const prose = [reason, notes].reduce((lines, text) => lines + (text === undefined ? 0 : 1.7 + wrapped(text, 1)), 0)
  return sum(rowLines) + positions.length * 1.2 + Math.max(sum(groups) / 3, ...groups) + prose + sum(watch.map(({ message }) => wrapped(say`Watch: ${message}`, 0.95)))
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, each) => total + each, 0)
}
