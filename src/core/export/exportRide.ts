import { readLogPath } from '../notation/logPath'
import { fieldNode, measured } from '../notebook/fields'
import type { Entry } from '../notebook/notebook'
import { plainNumber } from './plainNumber'

/** What the ride told, as far as a script can reckon with it: travel used as noted, and the log's path beside the notebook. */
export interface ExportedRide {
  front_travel_used_mm?: number
  rear_travel_used_mm?: number
  /** Only a path that stays in the notebook's folder. */
  log?: string
}

export const rideNames = ['front_travel_used_mm', 'rear_travel_used_mm', 'log'] as const satisfies readonly (keyof ExportedRide)[]

/** `undefined` where the ride told nothing of it. */
export function exportRide(entry: Entry): ExportedRide | undefined {
  const [front, rear] = [measured(entry, 'ride.front_travel_used'), measured(entry, 'ride.rear_travel_used')]
  const log = readLogPath(fieldNode(entry, 'ride.log')?.text ?? '').value
  const ride: ExportedRide = {
    ...(front ? { front_travel_used_mm: plainNumber(front.base) } : {}), ...(rear ? { rear_travel_used_mm: plainNumber(rear.base) } : {}), ...(log === undefined ? {} : { log }),
  }
  return Object.keys(ride).length > 0 ? ride : undefined
}
