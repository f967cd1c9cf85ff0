import { checkNotebook } from '../rules/checkNotebook'
import type { Entry, Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Advice } from './advice'

/** Nothing is advised on figures that cannot be: an error of this entry or of the machine is put right first. */
export function isBlocked(notebook: Notebook, entry: Entry): Advice | undefined {
  const error = checkNotebook(notebook).find(({ severity, place }) => severity === 'error' && (place?.entry === undefined || place.entry === entry.key))
  if (!error) return undefined
  return {
    topic: 'figures', kind: 'measure', step: say('put right what the notebook calls an error first'), evidence: [error.message],
    expect: [say('the numbers can be relied on')], assumes: [],
  }
}
