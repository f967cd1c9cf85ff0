import { spawnSync } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'
import { benchFolder } from './peers/install.mjs'

/** Our command line as it ships: several files, of which each command loads what it needs. */
export function builtCli(): string {
  const { status, stderr } = spawnSync(process.execPath, ['build.mjs'], { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  return join(process.cwd(), 'dist/cli.js')
}

/** A script as one file, so that what is measured cold is not the search for its modules; `apart` are those that cannot be bundled. */
export async function bundled(entry: string, name: string, apart: string[] = []): Promise<string> {
  mkdirSync(benchFolder, { recursive: true })
  const outfile = join(benchFolder, name)
  await build({ entryPoints: [entry], outfile, bundle: true, minify: true, target: 'es2022', platform: 'node', format: 'cjs', logLevel: 'error', external: apart })
  return outfile
}
