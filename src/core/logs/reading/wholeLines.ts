import { lineFeed, quote } from './bytes'

/** Takes a stretch of bytes that ends with a line end and holds whole lines only. */
export type TakeLines = (bytes: Uint8Array, from: number, to: number) => void

/** No line of a log is longer; one that is has no line ends, or a quote that is never closed. */
export const longestLine = 1 << 20

export interface WholeLines {
  /** False where a line is longer than any. */
  feed: (chunk: Uint8Array) => boolean
  /** What is left when the file ends: a last line without a line end. */
  rest: () => Uint8Array
}

/**
 * Cuts chunks of any size into stretches of whole lines. The middle of a chunk is passed on where it lies; only a line
 * that lies across two chunks is copied. With `quoted` a line end inside quotes is part of its field.
 */
export function wholeLines(take: TakeLines, quoted: boolean): WholeLines {
  let carried: Uint8Array = new Uint8Array(0)
  const ends = quoted ? quotedEnds : plainEnds
  const carryOn = (chunk: Uint8Array, from: number) => {
    const joined = new Uint8Array(carried.length + chunk.length - from)
    joined.set(carried)
    joined.set(chunk.subarray(from), carried.length)
    carried = joined
    return carried.length <= longestLine
  }
  return {
    feed(chunk) {
      const { first, last } = ends(chunk, carried)
      if (last < 0) return carryOn(chunk, 0)
      let from = 0
      if (carried.length > 0) {
        carryOn(chunk.subarray(0, first + 1), 0)
        take(carried, 0, carried.length)
        carried = new Uint8Array(0)
        from = first + 1
      }
      if (last >= from) take(chunk, from, last + 1)
      return last + 1 === chunk.length || carryOn(chunk, last + 1)
    },
    rest: () => carried,
  }
}

function plainEnds(chunk: Uint8Array): { first: number; last: number } {
  return { first: chunk.indexOf(lineFeed), last: chunk.lastIndexOf(lineFeed) }
}

function quotedEnds(chunk: Uint8Array, carried: Uint8Array): { first: number; last: number } {
  let inside = false
  for (const byte of carried) if (byte === quote) inside = !inside
  let [first, last] = [-1, -1]
  for (let at = 0; at < chunk.length; at++) {
    const byte = chunk[at]
    if (byte === quote) inside = !inside
    else if (byte === lineFeed && !inside) {
      last = at
      if (first < 0) first = at
    }
  }
  return { first, last }
}
