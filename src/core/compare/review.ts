import type { CompareSide, Comparison, FindingsCompared } from './comparison'
import type { FactChange } from './factsOf'

/**
 * Two versions of one notebook, for whoever reviews the change: what became of its entries, what it says otherwise about
 * the machine, and what is found now that was not before. Plain data, as a comparison is.
 */
export interface Review {
  before: CompareSide
  after: CompareSide
  /** Added and changed entries in the order of the later version, then those that went. */
  entries: EntryReview[]
  /** What is told outside of the entries: machine, rider, adjusters, rules, accepted findings. */
  facts: FactChange[]
  /** Over both whole notebooks. */
  findings: FindingsCompared
}

/**
 * `added`: against the entry it comes from. `changed` and `renamed`: against itself as it was. `affected`: its own lines are the same, and
 * yet something stands otherwise, because something it rests on changed. `removed`: it is gone.
 */
export interface EntryReview {
  kind: 'added' | 'changed' | 'renamed' | 'affected' | 'removed'
  key: string
  date: string
  reason: string
  /** The entry it comes from, in its own version. */
  from?: string
  /** Its name before, where it was renamed. */
  was?: string
  /** Absent for the first entry of a notebook, which comes from nothing, and for one that is gone. */
  comparison?: Comparison
  /** What its own lines say otherwise; of an added one nothing, for all of it is new. */
  facts: FactChange[]
}
