import type { End } from '../compute/sag/loadCase'
import { travelUsed, type TravelUsed } from '../compute/travel/travelUsed'
import { readLength } from '../compute/working/resolution'
import type { Outcome } from '../compute/working/result'
import { measured } from '../notebook/fields'
import { perEntry } from './perEntry'
import { readingHalfWidth, travelOf } from './sagOf'

/** How much of its travel an end used in this entry's ride, and what that suggests. */
export const travelUsedOf = perEntry((notebook, entry, end: End): Outcome<TravelUsed> => {
  const used = measured(entry, `ride.${end}_travel_used`)
  return travelUsed({ usedMm: used && readLength(used.base, readingHalfWidth(notebook)), travelMm: travelOf(notebook, end) })
})
