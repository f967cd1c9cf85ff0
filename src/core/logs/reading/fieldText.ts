import type { DecimalMark, Separator } from './dialect'

/**
 * The fields of a line, without the quotes and spaces around them; doubled quotes inside are one (RFC 4180).
 *
 * @example splitFields('"Fork, left";12,5', ';') // ['Fork, left', '12,5']
 */
export function splitFields(line: string, separator: Separator): string[] {
  const fields: string[] = []
  for (let at = 0; at <= line.length;) {
    const quoted = /^ *"((?:[^"]|"")*)" */.exec(line.slice(at))
    const behind = quoted ? at + quoted[0].length : -1
    if (quoted && (behind === line.length || line[behind] === separator)) {
      fields.push(quoted[1]!.replaceAll('""', '"').trim())
      at = behind + 1
    } else {
      const found = line.indexOf(separator, at)
      const end = found < 0 ? line.length : found
      fields.push(line.slice(at, end).trim())
      at = end + 1
    }
  }
  return fields
}

const patterns: Record<DecimalMark, RegExp> = {
  '.': /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/,
  ',': /^[+-]?(?:\d+(?:,\d*)?|,\d+)(?:[eE][+-]?\d+)?$/,
}

/** A field as a number, `undefined` where it is none. Blanks, hexadecimal and words such as NaN are none. */
export function numberFrom(field: string, decimal: DecimalMark): number | undefined {
  return patterns[decimal].test(field) ? Number(decimal === ',' ? field.replace(',', '.') : field) : undefined
}

/** What loggers and scripts write where they have no sample. */
export function meansMissing(field: string): boolean {
  return /^(?:|-+|n\/?a|nan|null|none|nil|missing|#n\/a|#num!|#value!|-?1\.#(?:qnan|ind)\d*)$/i.test(field)
}

export function meansInfinite(field: string): boolean {
  return /^[+-]?(?:inf(?:inity)?|∞|1\.#inf\d*)$/i.test(field)
}
