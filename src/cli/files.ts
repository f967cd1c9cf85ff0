import { existsSync, lstatSync, readdirSync, readFileSync, realpathSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { isNotebookPath } from '../core/notebook/fileName'
import { expandGlob, isGlob } from './expandGlob'
import { UsageError, type World } from './outcome'
import { why } from './why'

/** Folders that never hold notebooks of one's own. */
const skipped = new Set(['node_modules', '.git'])

/** Files and folders of this machine; `-` reads standard input. */
export const files: World = {
  read(path) {
    try {
      // A byte order mark belongs to the file, not to the text of a notebook, but offsets count it.
      return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(path === '-' ? readFileSync(0) : readFileSync(path))
    } catch (error) {
      throw new UsageError(`${path}: ${why(error)}`)
    }
  },
  create(path, text) {
    try {
      // `wx` refuses to write over a file, also one that came in between.
      writeFileSync(path, text, { flag: 'wx' })
    } catch (error) {
      throw new UsageError(`${path}: ${why(error)}`)
    }
  },
  write(path, text) {
    try {
      writeFileSync(path, text)
    } catch (error) {
      throw new UsageError(`${path}: ${why(error)}`)
    }
  },
  async *stream(path) {
    // Only a log is read so: other commands start without what unpacks it.
    const { streamFile } = await import('./streamFile')
    yield* streamFile(path)
  },
  logBeside(notebook, log) {
    let path = dirname(notebook)
    for (const step of log.split('/')) {
      path = join(path, step)
      const found = lstatSync(path, { throwIfNoEntry: false })
      if (!found) return undefined
      if (found.isSymbolicLink()) return { why: `${step} is a link to somewhere else, which is not followed; put the file itself there` }
    }
    return statSync(path).isFile() ? { path } : { why: `${log} is a folder; name the file in it` }
  },
  isSame(one, other) {
    return one !== '-' && existsSync(one) && existsSync(other) && realpathSync(one) === realpathSync(other)
  },
  today() {
    const now = new Date()
    return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-')
  },
  find(paths) {
    return paths.flatMap((path) => {
      if (path === '-') return [path]
      return isGlob(path) && !existsSync(path) ? matching(path) : isFolder(path) ? notebooksIn(path) : [path]
    })
  },
}

export function sizeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.size ?? 0
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory()
  } catch (error) {
    throw new UsageError(`${path}: ${why(error)}`)
  }
}

/** @throws UsageError where there is none: a pattern that fits nothing is most often misspelt */
function matching(pattern: string): string[] {
  const found = expandGlob(pattern, skipped)
  if (found.length === 0) throw new UsageError(`${pattern}: there is no file like this`)
  return found
}

function notebooksIn(folder: string): string[] {
  const items = readdirSync(folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))
  return items.flatMap((item) => {
    const path = join(folder, item.name)
    if (item.isDirectory()) return skipped.has(item.name) ? [] : notebooksIn(path)
    return isNotebookPath(item.name) ? [path] : []
  })
}
