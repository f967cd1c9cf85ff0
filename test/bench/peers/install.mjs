// Fetches the peers from the package registry, once, into `.cache/bench/<hash of the lock>`. No install scripts run.
import { createHash } from 'node:crypto'
import { copyFileSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { cache, npm } from '../../workbench/install.mjs'

const here = join(dirname(fileURLToPath(import.meta.url)), '..')

/** Everything a benchmark makes or fetches lies here, ignored by git. */
export const benchFolder = join(cache, 'bench')

/**
 * The folder with the peers in its `node_modules`.
 * @throws an Error with a sentence for people when the registry cannot be reached
 */
export function ensurePeers() {
  const lock = readFileSync(join(here, 'package-lock.json'))
  const folder = join(benchFolder, `peers-${createHash('sha256').update(lock).digest('hex').slice(0, 12)}`)
  if (existsSync(folder)) return folder
  console.log('Fetching the peers (about 150 MB, once) …')
  const partial = `${folder}.${process.pid}`
  mkdirSync(partial, { recursive: true })
  try {
    for (const file of ['package.json', 'package-lock.json']) copyFileSync(join(here, file), join(partial, file))
    // Not `npm ci`: builds for other platforms that a registry does not serve are missing from the lock, which it refuses.
    npm(['install', '--ignore-scripts'], partial)
    renameSync(partial, folder)
  } catch (error) {
    rmSync(partial, { recursive: true, force: true })
    throw error
  }
  return folder
}
