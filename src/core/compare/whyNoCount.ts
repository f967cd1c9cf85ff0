import { slotKey, type Slot } from '../adjusters/adjuster'
import { ownCount } from '../adjusters/convert'
import type { Entry } from '../notebook/notebook'
import { say } from '../words/say'

/** Why what is written for a slot is no count of its adjuster: it cannot be read, or a fact is missing. @example 'it needs clicks_per_turn' */
export function whyNoCount({ adjuster, leg }: Slot, entry: Entry): string {
  const reading = entry.state.get(slotKey(adjuster.id, leg))?.setting.reading
  if (reading?.value === undefined) return reading?.problem ?? say('it is not recorded')
  return say`it needs ${ownCount(reading.value, adjuster).missing!}`
}
