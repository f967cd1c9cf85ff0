/**
 * Decisions read off a tape of numbers, so that a test library that shrinks the tape shrinks what was decided by it.
 * A tape that has run out decides for the first, simplest choice.
 */
export class Choices {
  #at = 0

  constructor(readonly tape: readonly number[]) {}

  /** A number from 0 to `count - 1`. */
  below(count: number): number {
    return (this.tape[this.#at++] ?? 0) % count
  }

  of<T>(list: readonly T[]): T {
    return list[this.below(list.length)]!
  }

  /** True once in so many times, never on an empty tape. */
  once(outOf: number): boolean {
    return this.below(outOf) === outOf - 1
  }
}
