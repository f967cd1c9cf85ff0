import type { NewAdjuster } from '../notebook/edits/addAdjuster'
import type { GridPlace } from './view'

/** What a person did in the grid, in the imperative. Each becomes one edit of the text and one undo step. */
export type Gesture =
  | ({ kind: 'setCell'; text: string } & GridPlace)
  /** Several cells at once: a paste, a fill. With `partly`, those that can be written are, and the answer explains each of the others. */
  | { kind: 'setCells'; cells: ({ text: string } & GridPlace)[]; partly?: boolean }
  /** One position for both legs of a pair. */
  | ({ kind: 'setBothLegs'; text: string } & GridPlace)
  /** Positions one count on, towards more or less of what they control. */
  | { kind: 'nudge'; cells: GridPlace[]; toward: 'more' | 'less' }
  /** Back to what the entry carries: what was set here is taken out. With `partly`, what can be is, as above. */
  | { kind: 'clearCells'; cells: GridPlace[]; partly?: boolean }
  | { kind: 'setHeader'; column: string; field: 'id' | 'date' | 'reason'; text: string }
  /** A new entry that comes from `after`, else from the last one. */
  | { kind: 'addEntry'; after?: string; id?: string; date: string; reason?: string }
  /** Everything back to where it stood in an earlier entry: a new one at the end that comes from it, with the reason. */
  | { kind: 'returnTo'; column: string; id?: string; date: string; reason: string }
  | { kind: 'removeEntry'; column: string }
  /** The same once more behind it, with a name and a date of its own. */
  | { kind: 'duplicateEntry'; column: string; date: string }
  /** A new entry behind one, which it comes from; those that follow come from what they came from. */
  | { kind: 'insertEntry'; column: string; date: string; id?: string; reason?: string }
  /** So many places later in the file, earlier below zero, each entry coming from what it came from. */
  | { kind: 'moveEntry'; column: string; by: number }
  /** A remark about a cell; an empty text takes it out. */
  | ({ kind: 'annotate'; text: string } & GridPlace)
  | { kind: 'applyFix'; finding: number; fix: number }
  /** Accept a finding with a reason, so that it is no longer reported. */
  | { kind: 'acceptFinding'; finding: number; reason: string }
  /** A new adjuster, with what must be known of it. */
  | ({ kind: 'addAdjuster' } & NewAdjuster)
  /** Takes an adjuster out; `withPositions` takes all that entries say of it along. */
  | { kind: 'removeAdjuster'; id: string; withPositions: boolean }
  /** An adjuster before the one above it in its place, or behind the one below. */
  | { kind: 'moveAdjuster'; id: string; toward: 'up' | 'down' }
  /** The same once more below it, under a name of its own. */
  | { kind: 'duplicateAdjuster'; id: string }
  /** Begin a notebook in an empty file. */
  | { kind: 'begin'; start: string; date: string; name?: string }
