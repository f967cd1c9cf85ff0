import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { dirname, sep } from 'node:path'
import type { Git } from './outcome'

/** The git of this machine. */
export const git: Git = {
  folderOf(path) {
    let folder = dirname(path)
    while (!existsSync(folder) && dirname(folder) !== folder) folder = dirname(folder)
    const isHere = folder === '.' && !/^\.[\\/]/.test(path)
    const typed = isHere ? '' : path.slice(0, folder.length + (/[\\/]$/.test(folder) ? 0 : 1))
    return { folder: typed, rest: path.slice(typed.length).replaceAll(sep, '/').replace(/^\/+/, '') }
  },
  run(folder, args) {
    const { status, stdout, stderr, error } = spawnSync('git', args, { cwd: folder || '.', encoding: 'utf8', maxBuffer: longestAnswer, windowsHide: true })
    if ((error as { code?: string } | undefined)?.code === 'ENOENT') return undefined
    return { code: error ? 1 : status ?? 1, out: stdout ?? '', err: error ? error.message : stderr ?? '' }
  },
}

/** In bytes; a notebook is refused long before. */
const longestAnswer = 64 * 1024 * 1024
