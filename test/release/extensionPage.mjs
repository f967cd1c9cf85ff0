// The README as the page of the extension, in the editor and in a gallery: there it is read without the repository around it.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'

/** Writes `dist/page/README.md`; `npm run package` puts it into the package in the README's place. */
export function writeExtensionPage(path = 'dist/page/README.md') {
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, extensionPage(readFileSync('README.md', 'utf8'), pictureOf))
}

/**
 * What is for a clone alone is left out. The pictures of the repository are in it, where there is a small version of them, and what leads to a file of the repository is plain words.
 * @param {string} readme
 * @param {(path: string) => string | undefined} picture its address, by its path in the repository; those that have none are left out
 */
export function extensionPage(readme, picture) {
  return readme
    .replace(/<!-- clone:begin -->\n[^]*?<!-- clone:end -->\n\n/g, '')
    .replace(/^!\[([^\]\n]*)\]\((?!https:)([^)\n]+)\)\n\n?/gm, (_, words, path) => {
      const address = picture(path)
      return address ? `![${words}](${address})\n\n` : ''
    })
    .replace(/(?<!!)\[([^\]\n]+)\]\((?!https?:|#)[^)\n]+\)/g, '$1')
}

function pictureOf(path) {
  const small = path.replace(/\.png$/, '.webp')
  return existsSync(small) ? `data:image/webp;base64,${readFileSync(small, 'base64')}` : undefined
}
