import { printNumber } from './amount'

/**
 * A number with its standard uncertainty, as many digits behind the point as asked for; more where the uncertainty
 * would read as zero.
 * @example printWithUncertainty(18.213, 0.871, 1) // '18.2 ± 0.9'
 */
export function printWithUncertainty(value: number, u: number, digits: number): string {
  const enough = u > 0 ? Math.min(9, Math.max(digits, -Math.floor(Math.log10(u)))) : digits
  const shown = Number(u.toFixed(digits)) === 0 ? enough : digits
  return `${printNumber(value, shown)} ± ${printNumber(u, shown)}`
}
