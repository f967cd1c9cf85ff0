import { toldByReading } from '../notebook/toldByReading'
import { acceptedForNothing } from './acceptFindings'
import { acceptedWithoutReason } from './acceptedWithoutReason'
import { adjusterContradiction } from './adjusterContradiction'
import { adjusterCrept } from './adjusterCrept'
import { altitudeWithoutUnit } from './altitudeWithoutUnit'
import { belowZero } from './belowZero'
import { beyondRange } from './beyondRange'
import { bottomed } from './bottomed'
import { bottomedInLog } from './bottomedInLog'
import { datesBackwards } from './datesBackwards'
import { duplicateEntry } from './duplicateEntry'
import { entryWithoutId } from './entryWithoutId'
import { forkHeightUneven } from './forkHeightUneven'
import { fractionOfStep } from './fractionOfStep'
import { frictionBand } from './frictionBand'
import { geometryContradiction } from './geometryContradiction'
import { impossibleFigure } from './impossibleFigure'
import { leftAtStop } from './leftAtStop'
import { legsDiffer } from './legsDiffer'
import { leverageNotRising } from './leverageNotRising'
import { loggerIncomplete } from './loggerIncomplete'
import { logOutside } from './logOutside'
import { logUnread } from './logUnread'
import { newerFormat } from './newerFormat'
import { noReason } from './noReason'
import { noRoomForAir } from './noRoomForAir'
import { olderFormat } from './olderFormat'
import { packingDown } from './packingDown'
import { parentLoop } from './parentLoop'
import { riderAddsNothing } from './riderAddsNothing'
import { riderSagBelowStatic } from './riderSagBelowStatic'
import type { Description, Rule } from './rule'
import { sagBeyondTravel } from './sagBeyondTravel'
import { sagLengthsSwapped } from './sagLengthsSwapped'
import { sagLongerThanExtended } from './sagLongerThanExtended'
import { riderSagWindow, staticSagWindow } from './sagWindow'
import { severalChanges } from './severalChanges'
import { swingsGrow } from './swingsGrow'
import { tieAgainstLog } from './tieAgainstLog'
import { travelLeftOver } from './travelLeftOver'
import { unknownAdjuster } from './unknownAdjuster'
import { unknownKey } from './unknownKey'
import { unknownLeg } from './unknownLeg'
import { unknownParent } from './unknownParent'
import { unknownRule } from './unknownRule'
import { unreadableDate } from './unreadableDate'
import { unreadablePosition } from './unreadablePosition'
import { unreadableValue } from './unreadableValue'
import { unusableWindow } from './unusableWindow'
import { unusualSteering } from './unusualSteering'
import { wheelRateMismatch } from './wheelRateMismatch'
import { wrongEnd } from './wrongEnd'
import { wrongUnit } from './wrongUnit'

/** The rules that look into logs, and speak only where these are at hand. */
export const logRules: readonly Rule[] = [logUnread, bottomedInLog, travelLeftOver, packingDown, tieAgainstLog]

/** Every rule there is, in the order of the table in the README. */
export const rules: readonly Rule[] = [
  forkHeightUneven, legsDiffer, adjusterCrept,
  beyondRange, belowZero, wrongEnd, wrongUnit, fractionOfStep, leftAtStop,
  severalChanges, noReason,
  sagLongerThanExtended, riderSagBelowStatic, sagBeyondTravel, sagLengthsSwapped, staticSagWindow, riderSagWindow, unusableWindow,
  frictionBand, wheelRateMismatch, bottomed,
  impossibleFigure, riderAddsNothing, leverageNotRising, geometryContradiction, unusualSteering, noRoomForAir, altitudeWithoutUnit, swingsGrow,
  unreadablePosition, unreadableValue, unreadableDate,
  unknownAdjuster, unknownLeg, unknownKey,
  logOutside, loggerIncomplete, ...logRules,
  adjusterContradiction,
  entryWithoutId, duplicateEntry, unknownParent, parentLoop, datesBackwards,
  acceptedWithoutReason, unknownRule, newerFormat, olderFormat,
]

/** Every finding there is: what reading tells, what the rules find, and what the engine adds. The README's table. */
export const descriptions: readonly Description[] = [...toldByReading, ...rules, acceptedForNothing]
