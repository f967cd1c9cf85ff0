import { naturalEnd, usualHigherIs, type Adjuster } from '../../../src/core/adjusters/adjuster'
import { findControl } from '../../../src/core/adjusters/controls'
import { findUnit } from '../../../src/core/notation/units'

/** An adjuster for a test, counted in its control's usual way unless `facts` say otherwise. */
export function anAdjuster(control: string, counts: string, facts: Partial<Adjuster> = {}): Adjuster {
  const controls = findControl(control)!
  const unit = findUnit(counts)!
  const end = naturalEnd(controls, unit)
  return {
    id: control, label: controls.words, on: 'fork', legs: [], control: controls, counts: unit, ...(end === undefined ? {} : { end }),
    rangeIs: 'book', higherIs: usualHigherIs(controls, unit), closes: 'clockwise', nameRange: { start: 0, end: 0 }, ...facts,
  }
}
