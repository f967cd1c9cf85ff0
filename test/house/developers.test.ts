import assert from 'node:assert/strict'
import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

const guide = readFileSync('DEVELOPERS.md', 'utf8')
const spans = new Set([...guide.matchAll(/`([^`\n]+)`/g)].map(([, span]) => span!))

function dependenciesOf(file: string): string[] {
  const { dependencies = {}, devDependencies = {} } = JSON.parse(readFileSync(file, 'utf8')) as Record<string, Record<string, string> | undefined>
  return [...Object.keys(dependencies), ...Object.keys(devDependencies)]
}

/** The folders of the house that hold code: those of src, of core and of the webview. */
function folders(): string[] {
  const under = (parent: string) => readdirSync(parent, { withFileTypes: true }).filter((each) => each.isDirectory() && each.name !== 'node_modules').map(({ name }) => join(parent, name)).filter((path) => readdirSync(path).length > 0)
  return [...under('src'), ...under('src/core'), ...under('webview'), ...under('test')]
}

describe('the developers’ guide', () => {
  it('gives the reason for every dependency', () => {
    const all = [...dependenciesOf('package.json'), ...dependenciesOf('test/workbench/package.json')]
    assert.deepEqual(all.filter((name) => !spans.has(name)), [])
  })

  it('has every folder of code on its map', () => {
    assert.deepEqual(folders().map((path) => path.replaceAll('\\', '/')).filter((path) => path !== 'test/fixtures' && !spans.has(path)), [])
  })

  it('names only files and folders that exist', () => {
    const paths = [...spans].filter((span) => /^(src|webview|test|schemas|samples|syntaxes)(\/[\w./-]+)?$/.test(span))
    assert.ok(paths.length > 20)
    assert.deepEqual(paths.filter((path) => !existsSync(path)), [])
  })

  it('names only scripts that there are', () => {
    const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> }
    const named = [...guide.matchAll(/npm run ([\w:]+)/g)].map(([, name]) => name!)
    assert.ok(named.length > 0)
    assert.deepEqual(named.filter((name) => !(name in scripts)), [])
  })
})
