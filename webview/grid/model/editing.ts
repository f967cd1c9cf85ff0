import type { GridPlace } from '../../../src/core/grid/view'
import { say } from '../strings'
import type { GridModel } from './gridModel'
import { HEADER, LABELS, type Spot } from './spot'

/** The cell that is open for typing. Kept by key, so that it survives a new view. */
export interface Editing extends GridPlace {
  /** `replace`: begun by typing over what stood there. */
  how: 'replace' | 'edit'
  caret: 'all' | 'end'
  /** What is in the input now. */
  text: string
  /** What the cell held when it opened, or what was last sent. */
  before: string
  /** Whether anything was typed since. */
  touched: boolean
}

/** Why a spot cannot be typed into, in words; undefined when it can. */
export function whyNotEdited(model: GridModel, spot: Spot): string | undefined {
  const { view } = model
  if (view.state === 'broken') return say('refuse.broken')
  if (view.readOnly !== undefined || view.state === 'newer') return say('refuse.readOnly', view.readOnly ?? view.trouble?.message ?? '')
  if (spot.row === HEADER) return undefined
  const kind = model.row(spot.row)?.kind
  if (kind === 'group') return say('refuse.group')
  if (kind === 'computed') return say('refuse.computed')
  return spot.column === LABELS ? say('refuse.noEntry') : undefined
}

/** Whether closing the cell now changes anything. Typing a carried value over itself sets it here, so it does. */
export function isWorthSending(model: GridModel, { how, text, before, touched, row, column }: Editing): boolean {
  if (!touched) return false
  const spot = model.spotOf({ row, column })
  return text !== before || (how === 'replace' && spot !== undefined && model.cell(spot)?.state === 'carried')
}
