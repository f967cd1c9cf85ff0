import { airFork } from './airFork'
import type { Architecture } from './architecture'
import { bothCircuitsBothLegs } from './bothCircuitsBothLegs'
import { dualSpeedBothEnds } from './dualSpeedBothEnds'
import { dualSpeedShock } from './dualSpeedShock'
import { nothingAdjustable } from './nothingAdjustable'
import { preloadAndRebound } from './preloadAndRebound'
import { preloadAtFoot } from './preloadAtFoot'
import { rearStepsOnly } from './rearStepsOnly'
import { remotePreload } from './remotePreload'
import { splitDamping } from './splitDamping'
import { springInOneLeg } from './springInOneLeg'
import { twinShocks } from './twinShocks'

/** Every kind of machine that a notebook can begin from, the simplest first. A new one is a file and a line here. */
export const architectures: readonly Architecture[] = [
  nothingAdjustable,
  rearStepsOnly,
  twinShocks,
  preloadAndRebound,
  remotePreload,
  splitDamping,
  preloadAtFoot,
  springInOneLeg,
  bothCircuitsBothLegs,
  dualSpeedShock,
  dualSpeedBothEnds,
  airFork,
]

/** The architecture of this key; `undefined` where there is none. */
export function findArchitecture(key: string): Architecture | undefined {
  return architectures.find((each) => each.key === key)
}
