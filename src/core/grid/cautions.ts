import { phrase } from '../words/say'

/** The usual cautions, shown below the grid, in new notebooks, on turn lists and sheets. Common practice, no source. */
export const cautions: readonly string[] = [
  phrase('The machine’s service manual and licensed practice come before anything here.'),
  phrase('Support the machine properly before working on it.'),
  phrase('Never force an adjuster past its seat.'),
  phrase('Torque clamps and locknuts to the manual.'),
  phrase('After moving the fork check tyre, brake hoses, fender and steering stops for clearance over the full travel.'),
  phrase('Never open a gas-charged reservoir.'),
  phrase('Keep both legs of a pair alike.'),
  phrase('Ride slowly at first after a change.'),
]
