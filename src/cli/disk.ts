import { files } from './files'
import { git } from './git'
import type { World } from './outcome'

/** All of this machine that commands may ask for. */
export const disk: World = {
  ...files,
  git,
}
