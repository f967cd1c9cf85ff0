/**
 * The units of the trade. A row here is all it takes to add one.
 *
 * Factors are exact by definition: inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s2
 * (NIST SP 811, appendix B); a hex has six flats to a turn by its geometry.
 */
export type Dimension =
  | 'length' | 'mass' | 'stiffness' | 'pressure' | 'temperature' | 'angle' | 'force' | 'volume' | 'share'
  | 'click' | 'turn' | 'mark' | 'step' | 'dial'

export interface Unit {
  /** How we write it, and its name in the code. */
  symbol: string
  /** Every way people write it, lower case; the symbol included. */
  spellings: readonly string[]
  dimension: Dimension
  /** Value in the dimension's base unit = (amount + offset) * factor. */
  factor: number
  offset?: number
}

const kgf = 9.80665
const lbf = 0.45359237 * kgf
const psi = (lbf / (25.4 * 25.4)) * 10

/** The first unit of each dimension is its base: mm, kg, N/mm, bar, °C, deg, N, ml, %, and one of each count. */
export const units: readonly Unit[] = [
  { symbol: 'mm', spellings: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'], dimension: 'length', factor: 1 },
  { symbol: 'cm', spellings: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'], dimension: 'length', factor: 10 },
  { symbol: 'inch', spellings: ['inch', 'inches', '"', '″'], dimension: 'length', factor: 25.4 },
  { symbol: 'ft', spellings: ['ft', 'foot', 'feet'], dimension: 'length', factor: 304.8 },
  { symbol: 'm', spellings: ['m', 'metre', 'metres', 'meter', 'meters'], dimension: 'length', factor: 1000 },
  { symbol: 'kg', spellings: ['kg', 'kgs'], dimension: 'mass', factor: 1 },
  { symbol: 'lb', spellings: ['lb', 'lbs', 'pound', 'pounds'], dimension: 'mass', factor: 0.45359237 },
  { symbol: 'N/mm', spellings: ['n/mm', 'n·mm⁻¹'], dimension: 'stiffness', factor: 1 },
  { symbol: 'kgf/mm', spellings: ['kgf/mm', 'kg/mm', 'kp/mm', 'kgf·mm⁻¹'], dimension: 'stiffness', factor: kgf },
  { symbol: 'lbf/in', spellings: ['lbf/in', 'lb/in', 'lbs/in', 'lbf/inch', 'lb/inch', 'lbs/inch'], dimension: 'stiffness', factor: lbf / 25.4 },
  { symbol: 'bar', spellings: ['bar'], dimension: 'pressure', factor: 1 },
  { symbol: 'psi', spellings: ['psi'], dimension: 'pressure', factor: psi },
  { symbol: 'kPa', spellings: ['kpa'], dimension: 'pressure', factor: 0.01 },
  { symbol: 'kgf/cm²', spellings: ['kgf/cm²', 'kgf/cm2', 'kg/cm²', 'kg/cm2'], dimension: 'pressure', factor: kgf / 10 },
  { symbol: '°C', spellings: ['°c', 'c', 'degc', 'deg c', 'ºc', '℃'], dimension: 'temperature', factor: 1 },
  { symbol: '°F', spellings: ['°f', 'f', 'degf', 'deg f', 'ºf', '℉'], dimension: 'temperature', factor: 5 / 9, offset: -32 },
  { symbol: 'deg', spellings: ['deg', '°', 'degree', 'degrees'], dimension: 'angle', factor: 1 },
  { symbol: 'N', spellings: ['n', 'newton', 'newtons'], dimension: 'force', factor: 1 },
  { symbol: 'kgf', spellings: ['kgf', 'kp'], dimension: 'force', factor: kgf },
  { symbol: 'lbf', spellings: ['lbf'], dimension: 'force', factor: lbf },
  { symbol: 'ml', spellings: ['ml', 'cc', 'cm3', 'cm³'], dimension: 'volume', factor: 1 },
  { symbol: '%', spellings: ['%', 'percent'], dimension: 'share', factor: 1 },
  { symbol: 'clicks', spellings: ['clicks', 'click'], dimension: 'click', factor: 1 },
  { symbol: 'turns', spellings: ['turns', 'turn'], dimension: 'turn', factor: 1 },
  { symbol: 'flats', spellings: ['flats', 'flat'], dimension: 'turn', factor: 1 / 6 },
  { symbol: 'rings', spellings: ['rings', 'ring'], dimension: 'mark', factor: 1 },
  { symbol: 'lines', spellings: ['lines', 'line'], dimension: 'mark', factor: 1 },
  { symbol: 'steps', spellings: ['steps', 'step', 'notch', 'notches'], dimension: 'step', factor: 1 },
  { symbol: 'dial', spellings: ['dial', 'number', 'no'], dimension: 'dial', factor: 1 },
]

const bySpelling = new Map(units.flatMap((unit) => unit.spellings.map((spelling) => [spelling, unit] as const)))

/** The unit that is written so, in any case; `undefined` when we know none. */
export function findUnit(spelling: string): Unit | undefined {
  return bySpelling.get(spelling.trim().toLowerCase())
}

/** Amount in the dimension's base unit. @example toBase(0.95, findUnit('kgf/mm')!) // 9.3163175 N/mm */
export function toBase(amount: number, unit: Unit): number {
  return (amount + (unit.offset ?? 0)) * unit.factor
}

/** The opposite of `toBase`. */
export function fromBase(base: number, unit: Unit): number {
  return base / unit.factor - (unit.offset ?? 0)
}

/** True for the units that count an adjuster's movement rather than measure a thing. */
export function isCount(unit: Unit): boolean {
  return ['click', 'turn', 'mark', 'step', 'dial'].includes(unit.dimension)
}
