// What others wrote and is shipped: their licences for people, and a bill of materials (CycloneDX 1.6) for programs.
// build.mjs calls this with every file that went into a bundle.
import { readFileSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

/** Writes `dist/third-party-notices.txt` and `dist/detent.cdx.json`. @param {Iterable<string>} inputs paths of bundled files */
export function writeSupply(inputs) {
  const packages = bundledPackages(inputs)
  writeFileSync('dist/third-party-notices.txt', noticesOf(packages))
  writeFileSync('dist/detent.cdx.json', `${JSON.stringify(billOf(packages), null, 2)}\n`)
}

/** The packages that bundled files belong to, by name. */
export function bundledPackages(inputs) {
  const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')).packages
  const folders = new Set([...inputs].flatMap(path => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path.replaceAll('\\', '/'))?.[0] ?? []))
  const packages = [...folders].map(folder => {
    const { name, version, license, description, author } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'))
    if (!license) throw new Error(`${name} says no licence; it cannot be shipped.`)
    const { integrity } = lock[folder.slice(folder.lastIndexOf('node_modules/'))] ?? {}
    if (!integrity) throw new Error(`${name} is not in package-lock.json.`)
    return { folder, name, version, license, description, author, integrity }
  })
  // One version may lie in several folders.
  const byRef = new Map(packages.map(each => [purl(each), each]))
  return [...byRef.values()].sort((a, b) => a.name.localeCompare(b.name))
}

export function noticesOf(packages) {
  const parts = packages.map(each => `${'-'.repeat(79)}\n${each.name} ${each.version} (${each.license})\n\n${licenceText(each)}\n`)
  return `Detent is shipped with parts of these packages, under their own licences.\n\n${parts.join('\n')}`
}

function licenceText({ folder, name, license, author }) {
  const file = readdirSync(folder).find(each => /^licen[cs]e(\.(md|txt))?$/i.test(each))
  if (file) return readFileSync(join(folder, file), 'utf8').replaceAll('\r\n', '\n').trim()
  // Some say MIT and whose it is in their manifest alone.
  const holder = typeof author === 'string' ? author : author?.name
  if (license === 'MIT' && holder) return `Copyright (c) ${holder}\n\n${mit}`
  throw new Error(`${name} carries no text of its licence (${license}); it cannot be shipped so.`)
}

const mit = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated documentation files (the
"Software"), to deal in the Software without restriction, including without limitation the rights to use, copy, modify, merge, publish,
distribute, sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is furnished to do so, subject to
the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE WARRANTIES OF
MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR
ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH
THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`

export function billOf(packages) {
  const { name, version, license, description } = JSON.parse(readFileSync('package.json', 'utf8'))
  const own = { type: 'application', 'bom-ref': `${name}@${version}`, name, version, description: textOf(description), licenses: [{ license: { id: license } }] }
  return {
    $schema: 'http://cyclonedx.org/schema/bom-1.6.schema.json', bomFormat: 'CycloneDX', specVersion: '1.6', version: 1,
    metadata: { component: own },
    components: packages.map(component),
    dependencies: [{ ref: own['bom-ref'], dependsOn: packages.map(purl) }],
  }
}

/** The manifest keeps its words beside it, as `%description%`. */
function textOf(words) {
  const key = /^%(.+)%$/.exec(words)?.[1]
  return key ? JSON.parse(readFileSync('package.nls.json', 'utf8'))[key] : words
}

function component({ name, version, license, description, integrity }) {
  const [, algorithm, digest] = /^sha(\d+)-(.+)$/.exec(integrity)
  return {
    type: 'library', 'bom-ref': purl({ name, version }), name, version, ...(description ? { description } : {}),
    hashes: [{ alg: `SHA-${algorithm}`, content: Buffer.from(digest, 'base64').toString('hex') }],
    licenses: [/[ ()]/.test(license) ? { expression: license } : { license: { id: license } }], purl: purl({ name, version }),
  }
}

const purl = ({ name, version }) => `pkg:npm/${name.replace('@', '%40')}@${version}`
