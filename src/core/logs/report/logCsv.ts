/**
 * Statistics as CSV (RFC 4180, with line feeds): a line a number, its name and its value. Names are those of the JSON with
 * dots between, so that a script finds them in either; events and densities stay in the JSON.
 */
export function logCsv(statistics: unknown): string {
  return ['name,value', ...flatten(statistics, []).map(([name, value]) => `${name},${value}`), ''].join('\n')
}

/** Lists of things that happened, and of numbers by place, are no figures. */
const leftOut = new Set(['places', 'found', 'events', 'density_mm2_per_hz'])

function flatten(value: unknown, path: readonly string[]): [string, string][] {
  if (typeof value === 'number') return [[path.join('.'), String(value)]]
  if (typeof value === 'string' || typeof value === 'boolean') return [[path.join('.'), cell(String(value))]]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([key, below]) => {
    const matrix = Array.isArray(below) && below.some(Array.isArray)
    return leftOut.has(key) || matrix ? [] : flatten(below, [...path, key])
  })
}

/** Words are quoted where they must be, and made harmless where a spreadsheet would take them for a formula. */
function cell(text: string): string {
  const harmless = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless
}
