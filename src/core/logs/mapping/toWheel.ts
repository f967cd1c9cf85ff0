import { readLeverage, type LeverageFacts } from '../../compute/leverage/leverage'
import { isMissing, type Outcome } from '../../compute/working/result'

/** Damper travel into wheel travel, both in mm from full extension. */
export interface ToWheel {
  at: (damperMm: number) => number
  /** The same for many; those beyond the leverage table go on in its last direction, and their number is returned. */
  all: (damper: Float64Array, wheel: Float64Array, count: number) => number
}

/** So many pieces make the curve straight to better than a thousandth of a mm. */
const pieces = 4096

/**
 * Turns the leverage of the machine round: from what the damper did to what the wheel did. A measured table is followed
 * along its smooth curve; missing where there is none, or it does not rise.
 */
export function toWheel(facts: LeverageFacts | undefined): Outcome<ToWheel> {
  const drive = readLeverage(facts)
  if (isMissing(drive)) return drive
  if (!Number.isFinite(drive.toMm)) {
    const ratio = drive.at(1)!.value
    return fromFunction((damper) => damper / ratio, Infinity)
  }
  const table = wheelOverDamper((wheel) => drive.at(Math.min(wheel, drive.toMm))!.value, drive.toMm)
  const reach = drive.at(drive.toMm)!.value
  return fromFunction((damper) => {
    const place = (damper / reach) * pieces
    const piece = Math.max(0, Math.min(pieces - 1, Math.floor(place)))
    return table[piece]! + (place - piece) * (table[piece + 1]! - table[piece]!)
  }, reach)
}

function fromFunction(at: (damperMm: number) => number, reach: number): ToWheel {
  return {
    at,
    all(damper, wheel, count) {
      let beyond = 0
      for (let row = 0; row < count; row++) {
        const mm = damper[row]!
        if (mm > reach) beyond++
        wheel[row] = at(mm)
      }
      return beyond
    },
  }
}

/** Wheel travel at even steps of damper travel, by halving: the curve rises. */
function wheelOverDamper(damperAt: (wheelMm: number) => number, toMm: number): Float64Array {
  const reach = damperAt(toMm)
  let low = 0
  return Float64Array.from({ length: pieces + 1 }, (_, piece) => {
    if (piece === pieces) return toMm
    const wanted = (reach * piece) / pieces
    let [from, to] = [low, Math.min(toMm, low + (toMm * 64) / pieces)]
    if (damperAt(to) < wanted) to = toMm
    for (let halving = 0; halving < 40; halving++) {
      const middle = (from + to) / 2
      if (damperAt(middle) < wanted) from = middle
      else to = middle
    }
    low = from
    return from
  })
}
