import assert from 'node:assert/strict'
import { UsageError, type World } from '../../src/cli/outcome'

/** A world of these files in memory, read and written over; nothing else may be asked of it. */
export function aShelf(files: Record<string, string>): World & { files: Record<string, string> } {
  return {
    files, find: (paths) => [...paths], create: () => assert.fail('nothing new is written'), today: () => assert.fail('no day is asked'),
    write: (path, text) => {
      files[path] = text
    },
    read: (path) => {
      if (files[path] === undefined) throw new UsageError(`${path}: there is no such file or folder`)
      return files[path]
    },
  }
}
