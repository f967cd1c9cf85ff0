import { files, sizeOf } from './files'
import { git } from './git'
import type { World } from './outcome'

/** Below so many bytes a thread takes longer to start than it saves. */
const worthAThread = 32 * 1024 * 1024

/** All of this machine that commands may ask for. */
export const disk: World = {
  ...files,
  git,
  rows(script, path) {
    if (path === '-' || sizeOf(path) < worthAThread) return undefined
    return import('./rowsThread').then(({ startRows }) => startRows(script))
  },
}
