/** The usual cautions, shown below the grid, in new notebooks, on turn lists and sheets. Common practice, no source. */
export const cautions: readonly string[] = [
  'The machine’s service manual and licensed practice come before anything here.',
  'Support the machine properly before working on it.',
  'Never force an adjuster past its seat.',
  'Torque clamps and locknuts to the manual.',
  'After moving the fork check tyre, brake hoses, fender and steering stops for clearance over the full travel.',
  'Never open a gas-charged reservoir.',
  'Keep both legs of a pair alike.',
  'Ride slowly at first after a change.',
]
