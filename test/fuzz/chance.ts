import { Choices } from '../core/grid/choices'

/** Choices that follow from one number: the same number makes the same case on any machine (mulberry32, common practice). */
export function chance(number: number, length = 6000): Choices {
  let state = number >>> 0
  return new Choices(Array.from({ length }, () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) % 1_000_003
  }))
}
