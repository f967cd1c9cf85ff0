import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { disk } from '../../src/cli/disk'
import type { Outcome } from '../../src/cli/outcome'
import { run, start } from '../../src/cli/run'

/** A real repository of git in a folder of its own. */
export interface Repository {
  folder: string
  git: (...args: string[]) => string
  write: (path: string, text: string) => void
  commit: (message: string) => void
  /** Runs a command line in the repository's folder, or in one below it. */
  detent: (args: readonly string[], below?: string) => Outcome
  /** The same for a command that reads a file as it comes. */
  start: (args: readonly string[]) => Promise<Outcome>
  remove: () => void
}

export function aRepository(): Repository {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'detent ')))
  // Nobody's own configuration, such as one that signs commits, has a say in it.
  const env = { ...process.env, GIT_CONFIG_GLOBAL: join(folder, 'none'), GIT_CONFIG_NOSYSTEM: '1' }
  const git = (...args: string[]): string => {
    const { status, stdout, stderr } = spawnSync('git', ['-c', 'user.name=Oda Renn', '-c', 'user.email=oda@example.com', '-c', 'core.autocrlf=false', ...args], { cwd: folder, encoding: 'utf8', env })
    if (status !== 0 && args[0] !== 'merge') throw new Error(`git ${args.join(' ')}: ${stderr}`)
    return stdout
  }
  git('init', '--quiet', '--initial-branch=main')
  return {
    folder, git,
    write: (path, text) => {
      mkdirSync(dirname(join(folder, path)), { recursive: true })
      writeFileSync(join(folder, path), text)
    },
    commit: (message) => {
      git('add', '--all')
      git('commit', '--quiet', '--message', message)
    },
    detent: (args, below = '') => {
      const before = process.cwd()
      process.chdir(join(folder, below))
      try {
        return run(args, disk)
      } finally {
        process.chdir(before)
      }
    },
    start: async (args) => {
      const before = process.cwd()
      process.chdir(folder)
      try {
        return await start(args, disk)
      } finally {
        process.chdir(before)
      }
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}
