import { makeRide, writeRide } from '../../core/logs/generateLog'

/** Where the samples' log lies, and which entry it belongs to. */
export const sampleLogPath = 'samples/logs/fa-3.csv'

/** The log of one run of the Tern: 66 s at 100 Hz, the shock measured at the damper, as the notebook's `logger` says. */
export function sampleLog(): string {
  const ride = makeRide({ rows: 6600, rateHz: 100, front: { middle: 44, reach: 44, most: 106 }, rear: { middle: 46, reach: 46, most: 112 } })
  return writeRide(ride.map((row) => ({ ...row, rear: row.rear * 0.45 })), { before: ['# Fen Airfield, 13 June, third run', '# made up, like everything here'], units: true, time: ({ time }) => time.toFixed(2) })
}
