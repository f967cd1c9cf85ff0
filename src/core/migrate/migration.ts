import type { MapNode } from '../notebook/tree'
import type { TextChange } from '../text'

/** The step from one format to the next: what to write otherwise, and nothing besides. */
export interface Migration {
  from: number
  /** What it changes, for whoever is asked whether to. */
  says: string
  /**
   * The changes to a text of format `from`, its `format:` line not among them.
   *
   * @throws Refusal where the text must be put right by hand first
   */
  changes: (root: MapNode, text: string) => TextChange[]
}
