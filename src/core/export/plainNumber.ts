/** A number without the last bits of a binary fraction: twelve digits. @example plainNumber(0.1 + 0.2) // 0.3 */
export function plainNumber(value: number): number {
  const plain = Number(value.toPrecision(12))
  return Object.is(plain, -0) ? 0 : plain
}
