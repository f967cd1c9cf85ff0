// Packs the extension as it is built, as people install it.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { root } from './install.mjs'

/**
 * @param {string} path of the .vsix to write
 * @returns {string} the same path
 * @throws an Error with the packer's words when it cannot
 */
export function packExtension(path) {
  const vsce = join(root, 'node_modules', '@vscode', 'vsce', 'vsce')
  const { status, stderr } = spawnSync(process.execPath, [vsce, 'package', '--no-dependencies', '--allow-missing-repository', '--no-rewrite-relative-links', '--readme-path', 'dist/page/README.md', '--out', path], { cwd: root, encoding: 'utf8' })
  if (status !== 0) throw new Error(`The extension could not be packed.\n${stderr}`)
  return path
}
