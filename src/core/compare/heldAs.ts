import { logPathsOf, logRequestOf } from '../derived/logOf'
import type { Notebook } from '../notebook/notebook'
import { say } from '../words/say'

/**
 * Why a version of a notebook cannot be changed: the revision it stands in, or that it is staged. Its logs are read from
 * beside the file as they lie there now, which is said with it: they may have been others then.
 */
export function heldAs(notebook: Notebook, revision: string | undefined): string {
  const hasLogs = logRequestOf(notebook) !== undefined && logPathsOf(notebook).length > 0
  if (revision === undefined) return hasLogs ? say('as it is staged; its logs as they lie beside the file now') : say('as it is staged')
  return hasLogs ? say`as it is in ${revision}; its logs as they lie beside the file now` : say`as it is in ${revision}`
}
