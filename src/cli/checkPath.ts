import { logPathsOf } from '../core/derived/logOf'
import { readNotebook } from '../core/notebook/readNotebook'
import { checkFile, type CheckedFile } from './checkedFile'
import type { World } from './outcome'

/** Checks one file, with the logs that lie beside it where they are wanted. @throws UsageError where it cannot be read */
export async function checkPath(path: string, logs: boolean, world: World): Promise<CheckedFile> {
  const text = world.read(path)
  const notebook = readNotebook(text)
  if (!logs || logPathsOf(notebook).length === 0) return checkFile(path, text, notebook)
  // What reads logs is a fifth of all there is to load, and most notebooks name none.
  const { withLogsBeside } = await import('./logsBeside')
  return checkFile(path, text, await withLogsBeside(path, notebook, world))
}
