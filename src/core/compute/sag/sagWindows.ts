import type { End, LoadCase, Use } from './loadCase'

/** Where the sag of an end should lie, and who says so. */
export interface SagWindow {
  low: number
  high: number
  unit: 'mm' | 'percent'
  source: string
}

const byrnes = 'G. Byrnes, Sag and Preload II'
const thede = 'Thede & Parks, Motorcycle Suspension Bible'
const road2019 = 'Suspension sorted, Bike (UK), 1 August 2019'

const mm = (low: number, high: number, source: string): SagWindow => ({ low, high, unit: 'mm', source })
const percent = (low: number, high: number, source: string): SagWindow => ({ low, high, unit: 'percent', source })

const frontRoadBike = mm(20, 30, `${road2019}: 25 mm; the ±5 mm is our own choice`)
const rearRoadBike = mm(10, 15, 'Motor Cycle News, from a copy: road')
const rearRoadRider = percent(25, 30, 'R. Paul, Adjusting Suspension, Motor Cycle News 56(24)')
const dirtFork = mm(60, 75, `${thede}: full-size dirt`)
const freeSag = percent(5, 10, 'J. Siddall, The Basics: free sag')

/**
 * The windows by use, end and load case. Front ones along the fork tubes, rear ones vertical at the wheel.
 * Where no range was found in print, none is given: a motocross or enduro fork with the bike alone.
 */
const windows: Record<Use, Record<End, Partial<Record<LoadCase, SagWindow>>>> = {
  road: {
    front: { bike: frontRoadBike, rider: mm(30, 35, `${thede}: street`) },
    rear: { bike: rearRoadBike, rider: rearRoadRider },
  },
  track: {
    front: { bike: mm(15, 25, 'common practice, no source'), rider: mm(25, 35, `${thede}: road race`) },
    rear: { bike: mm(5, 10, 'Motor Cycle News, from a copy: racing'), rider: mm(25, 35, byrnes) },
  },
  motocross: {
    front: { rider: dirtFork },
    rear: {
      bike: mm(25, 30, 'Dirt bike suspension: sag and spring, dirtbikeblogger: 125 cc and over'),
      rider: percent(30, 36, 'a manufacturer’s competition handbook of 2007, p. 94: about one third; the ±3 % is our own choice'),
    },
  },
  enduro: {
    front: { rider: dirtFork },
    rear: {
      bike: mm(30, 40, 'Suspension tuning part 1, all-offroad: machine alone'),
      rider: mm(90, 110, 'a manufacturer’s owner’s manual of 2006, p. 120: 90 to turn quicker, 110 for stability'),
    },
  },
  adventure: {
    front: { bike: freeSag, rider: percent(25, 33.3, 'sasquatchrider, November 2014: between 1/4 and 1/3 of fork travel') },
    rear: { bike: freeSag, rider: percent(25, 35, 'Quick tips: rear sag on an adventure bike, ADV Pulse: about 30 %; the ±5 % is our own choice') },
  },
  touring: {
    front: { bike: frontRoadBike, rider: percent(30, 35, byrnes) },
    rear: { bike: rearRoadBike, rider: rearRoadRider },
  },
}

/** The published window; `undefined` where none was found. @example findSagWindow('road', 'rear', 'bike') // 10 to 15 mm */
export function findSagWindow(use: Use, end: End, load: LoadCase): SagWindow | undefined {
  return windows[use][end][load]
}

/** Every window with its place, for a table of them. */
export function listSagWindows(): { use: Use; end: End; load: LoadCase; window: SagWindow }[] {
  return (Object.keys(windows) as Use[]).flatMap((use) =>
    (['front', 'rear'] as const).flatMap((end) =>
      (['bike', 'rider'] as const).flatMap((load) => {
        const window = findSagWindow(use, end, load)
        return window ? [{ use, end, load, window }] : []
      })))
}
