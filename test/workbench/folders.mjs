// Folders for a short time.
import { mkdtempSync } from 'node:fs'
import { rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

/** A new empty folder. Short on purpose: editors put sockets below, and their paths may not exceed about a hundred bytes. */
export function temporaryFolder() {
  return mkdtempSync(join(tmpdir(), 'detent-'))
}

/** Removes a folder that a program which is just ending may still be writing to; gives up in silence after two seconds. */
export async function removeFolder(folder) {
  for (let left = 10; left > 0; left--) {
    try {
      return await rm(folder, { recursive: true, force: true })
    } catch {
      await new Promise(resolve => setTimeout(resolve, 200))
    }
  }
}
