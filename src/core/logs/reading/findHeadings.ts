import { say } from '../../words/say'
import type { LogProblem } from '../problem'
import type { Column, Dialect } from './dialect'
import { numberFrom } from './fieldText'
import type { Shape } from './findShape'
import type { HeadLine } from './headLines'

type Headings = Pick<Dialect, 'columns' | 'headerLine' | 'unitLine'>

/** The headings and units that stand before the data, or a remark that holds them; columns without are numbered. */
export function findHeadings(lines: readonly HeadLine[], content: readonly HeadLine[], start: number, shape: Shape): Headings | LogProblem {
  const [above, last] = [content[start - 2], content[start - 1]]
  if (last && above && isUnitLine(shape.split(last.text), shape.width) && fits(shape.split(above.text), shape)) {
    return { columns: columnsFrom(shape.split(above.text), shape.width, shape.split(last.text)), headerLine: above.number, unitLine: last.number }
  }
  if (last && fits(shape.split(last.text), shape)) return { columns: columnsFrom(shape.split(last.text), shape.width), headerLine: last.number }
  const twofold = last && commaTwice(shape.split(last.text).length, last, content[start]!, shape)
  return twofold ?? inRemark(lines, content[start]!, shape) ?? { columns: columnsFrom([], shape.width) }
}

/** A line of headings has one for each column, save a last one that only a separator at the ends of lines makes. */
function fits(fields: readonly string[], { width, decimal }: Shape): boolean {
  const words = fields.filter((field) => field !== '' && numberFrom(field, decimal) === undefined)
  return (fields.length === width || fields.length === width - 1) && fields.length > 1 && words.length * 2 > fields.length
}

const unit = /^[[(]?(?:s|sec|secs|seconds|ms|us|µs|hh?:mm:ss\S*|mm|cm|m|in|inch|%|mv|v|volts?|counts?|adc|bits?|bar|mbar|kpa|mpa|psi|g|m\/s\^?2|m\/s²|km\/h|kph|mph|m\/s|mm\/s|rpm|1\/min|deg|°|deg\/s|°\/s|°c|degc|n|kn|nm|hz|-|#)?[\])]?$/i

function isUnitLine(fields: readonly string[], width: number): boolean {
  return fields.length >= width - 1 && fields.length <= width && fields.some((field) => field !== '') && fields.every((field) => unit.test(field))
}

function columnsFrom(headings: readonly string[], width: number, units: readonly string[] = []): Column[] {
  return Array.from({ length: width }, (_, at) => {
    // Nothing in a heading may act on the terminal it is shown in.
    const name = headings[at]?.replace(/[\u0000-\u001f\u007f-\u009f]/g, ' ').trim() || `column ${at + 1}`
    const bracketed = /[[(]([^\][()]{1,16})[\])]$/.exec(name)?.[1]
    const written = units[at]?.replace(/^[[(]|[\])]$/g, '') || bracketed
    return { name, ...(written ? { unit: written.trim() } : {}) }
  })
}

/** A script often writes the headings as a remark above the numbers. */
function inRemark(lines: readonly HeadLine[], data: HeadLine, shape: Shape): Headings | undefined {
  const remark = lines.filter(({ number, text }) => number < data.number && /^\s*#/.test(text)).at(-1)
  const fields = remark && shape.split(remark.text.replace(/^\s*#+\s*/, ''))
  return fields && fields.length === shape.width ? { columns: columnsFrom(fields, shape.width), headerLine: remark.number } : undefined
}

/** Fewer headings than values, and no decimal point anywhere: the commas of the numbers were taken for separators. */
function commaTwice(headings: number, last: HeadLine, data: HeadLine, { separator, width }: Shape): LogProblem | undefined {
  if (separator !== ',' || data.text.includes('.') || headings < 2 || headings >= width || width > 2 * headings) return undefined
  return {
    line: data.number,
    message: say`${headings} headings in line ${last.number}, but ${width} values: the comma seems to stand both between columns and inside numbers; export with semicolons or tabs, or with decimal points`,
  }
}
