import { spawnSync } from 'node:child_process'
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { buildSync } from 'esbuild'

/** A shell in which `detent` is a program on the PATH, as the documents have it. */
export interface Shell {
  /** Runs lines of a shell in a folder. */
  run: (folder: string, script: string, environment?: Record<string, string>) => { code: number; out: string; err: string }
  /** Puts a program of one's own on the PATH. */
  addProgram: (name: string, script: string) => void
  remove: () => void
}

/** Builds the command line as it ships and makes a shell for it, in which nobody's own configuration of git has a say. */
export function aShell(): Shell {
  const folder = mkdtempSync(join(tmpdir(), 'detent-'))
  const programs = join(folder, 'bin')
  mkdirSync(programs)
  const outfile = join(programs, 'detent')
  buildSync({ entryPoints: ['src/cli/main.ts'], outfile, bundle: true, platform: 'node', format: 'cjs', target: 'es2022', banner: { js: '#!/usr/bin/env node' }, logLevel: 'error' })
  chmodSync(outfile, 0o755)
  const person = (role: string) => ({ [`GIT_${role}_NAME`]: 'Oda Renn', [`GIT_${role}_EMAIL`]: 'oda@example.com', [`GIT_${role}_DATE`]: '2026-04-18T12:00:00Z' })
  const env = {
    ...process.env, ...person('AUTHOR'), ...person('COMMITTER'), LC_ALL: 'C.UTF-8', HOME: folder,
    GIT_CONFIG_GLOBAL: join(folder, 'none'), GIT_CONFIG_NOSYSTEM: '1', GIT_PAGER: 'cat', GIT_EDITOR: 'true', PATH: programs + delimiter + process.env.PATH,
  }
  return {
    run: (cwd, script, environment = {}) => {
      const { status, stdout, stderr } = spawnSync('bash', ['-e', '-o', 'pipefail', '-c', script], { cwd, encoding: 'utf8', env: { ...env, ...environment } })
      return { code: status ?? -1, out: stdout, err: stderr }
    },
    addProgram: (name, script) => writeFileSync(join(programs, name), `#!/usr/bin/env bash\n${script}\n`, { mode: 0o755 }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  }
}
