import { say } from '../../words/say'
import type { Outcome } from '../working/result'
import type { End, LoadCase, Use } from './loadCase'
import { findSagWindow, type SagWindow } from './sagWindows'

/** A window in mm of this machine's own travel, and who says so. */
export interface SagTarget {
  lowMm: number
  highMm: number
  source: string
}

/**
 * The window that counts for one end and load case of a machine, in mm: its own where it has one, else the published one
 * for its use. Says what is missing: the use, the travel that a percentage is of, or a published range.
 */
export function sagTarget({ use, end, load, travelMm, own }: {
  use: Use | undefined
  end: End
  load: LoadCase
  travelMm?: number
  own?: Omit<SagWindow, 'source'> & { source?: string }
}): Outcome<SagTarget> {
  if (own) return inMm({ source: say('this machine’s own window'), ...own }, travelMm)
  if (!use) return { missing: [say('what the machine is used for')] }
  const window = findSagWindow(use, end, load)
  return window ? inMm(window, travelMm) : { missing: [say`a published window for ${say(use)}, ${say(end)}, ${load === 'bike' ? say('bike alone') : say('rider aboard')}`] }
}

function inMm({ low, high, unit, source }: SagWindow, travelMm: number | undefined): Outcome<SagTarget> {
  if (!(low <= high)) return { missing: [say('a window whose low end is not above its high end')] }
  if (unit === 'mm') return { lowMm: low, highMm: high, source }
  if (travelMm === undefined || !(travelMm > 0)) return { missing: [say('travel of this end')] }
  return { lowMm: (low / 100) * travelMm, highMm: (high / 100) * travelMm, source: say`${source} (${low} to ${high} % of ${travelMm} mm)` }
}
