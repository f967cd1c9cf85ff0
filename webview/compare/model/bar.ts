import type { CompareRow } from '../../../src/core/compare/comparison'

/**
 * How big a change is, to be seen at a glance. `range`: from where to where in its range, 0 being the least of what it
 * controls. `step`: how far to one side or the other, where nobody knows where in its range it stands.
 */
export type Bar = { kind: 'range'; from: number; to: number } | { kind: 'step'; size: number; more: boolean; of: 'range' | 'record' }

const within = (share: number) => Math.min(1, Math.max(0, share))

/** The bar of a row that has a change of position; none for other rows. */
export function barOf({ left, right, change }: Pick<CompareRow, 'left' | 'right' | 'change'>): Bar | undefined {
  if (!change || change.size === undefined) return undefined
  if (left.at !== undefined && right.at !== undefined) return { kind: 'range', from: within(left.at), to: within(right.at) }
  return { kind: 'step', size: within(change.size), more: change.direction === 'more', of: change.sizeIs ?? 'record' }
}
