import assert from 'node:assert/strict'
import { parquetWriteBuffer } from 'hyparquet-writer'
import * as vscode from 'vscode'
import { goToCell, told } from './openInGrid'
import { until } from './waiting'
import { gridFrame, press, takeKeyboard, type } from './window'
import { openGrid, problemsOf, textOf } from './workspace'

const tern = `format: 1
machine: {name: Tern 650, use: track, front: {travel: 120}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_rebound: {left: 3 out, right: 6 out}}
`

/** A disk that is only a table of texts, as a forge's repository in a browser is. */
class Shelf implements vscode.FileSystemProvider {
  readonly files = new Map<string, { bytes: Uint8Array; mtime: number }>()
  readonly #changed = new vscode.EventEmitter<vscode.FileChangeEvent[]>()
  readonly onDidChangeFile = this.#changed.event

  stat({ path }: vscode.Uri): vscode.FileStat {
    const file = this.files.get(path)
    if (file) return { type: vscode.FileType.File, ctime: 0, mtime: file.mtime, size: file.bytes.length }
    if (path === '/') return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 }
    throw vscode.FileSystemError.FileNotFound(path)
  }

  readFile({ path }: vscode.Uri): Uint8Array {
    const file = this.files.get(path)
    if (!file) throw vscode.FileSystemError.FileNotFound(path)
    return file.bytes
  }

  writeFile(uri: vscode.Uri, bytes: Uint8Array): void {
    this.files.set(uri.path, { bytes, mtime: Date.now() })
    this.#changed.fire([{ type: vscode.FileChangeType.Changed, uri }])
  }

  readDirectory(): [string, vscode.FileType][] {
    return [...this.files.keys()].map((path) => [path.slice(1), vscode.FileType.File])
  }

  watch(): vscode.Disposable { return new vscode.Disposable(() => undefined) }
  createDirectory(): void { throw vscode.FileSystemError.NoPermissions() }
  delete(): void { throw vscode.FileSystemError.NoPermissions() }
  rename(): void { throw vscode.FileSystemError.NoPermissions() }
}

describe('a virtual workspace', () => {
  const shelf = new Shelf()
  let registered: vscode.Disposable
  before(() => { registered = vscode.workspace.registerFileSystemProvider('shelf', shelf) })
  after(() => registered.dispose())

  it('has its notebooks checked, edited in the grid and saved where they are', async () => {
    const uri = vscode.Uri.parse('shelf:/tern.setup.yaml')
    shelf.writeFile(uri, new TextEncoder().encode(tern))
    const document = await openGrid(uri)
    const grid = await gridFrame()
    await takeKeyboard(grid)
    await until('the legs are found to differ', () => problemsOf(uri).some((problem) => problem.includes('legs-differ')))
    await type('6 out')
    await press('Enter')
    await until('the text has it', async () => (await textOf(uri)).includes('{left: 6 out, right: 6 out}'))
    await until('nothing is found any more', () => problemsOf(uri).every((problem) => !problem.includes('legs-differ')))
    await document.save()
    assert.equal(new TextDecoder().decode(shelf.readFile(uri)), tern.replace('left: 3', 'left: 6'))
  })

  it('has its logs read, those in Parquet too, by a program that is loaded for them', async () => {
    const time = Array.from({ length: 2000 }, (_, at) => at / 100)
    const columns = { t: time, fork: time.map((at) => 60 - 30 * Math.cos(2 * Math.PI * at)) }
    const file = new Uint8Array(parquetWriteBuffer({ columnData: Object.entries(columns).map(([name, data]) => ({ name, data, type: 'DOUBLE' })) }))
    shelf.writeFile(vscode.Uri.parse('shelf:/one.parquet'), file)
    shelf.writeFile(vscode.Uri.parse('shelf:/cut.parquet'), file.subarray(0, file.length / 2))
    const uri = vscode.Uri.parse('shelf:/logged.setup.yaml')
    shelf.writeFile(uri, new TextEncoder().encode(`format: 1
machine:
  name: Tern 650
  front: {travel: 120}
  logger: {time: {column: t, unit: s}, front: {column: fork, unit: mm}}
entries:
  - id: one
    date: 2026-04-18
    ride: {log: one.parquet}
  - id: two
    date: 2026-04-19
    ride: {log: cut.parquet}
`))
    await openGrid(uri)
    const grid = await gridFrame()
    await takeKeyboard(grid)
    await goToCell(uri, grid, 'computed/log.read', 'one')
    await told(grid, '20 s', '2000 rows, 100 samples a second')
    await goToCell(uri, grid, 'computed/log.front_deepest_mm', 'one')
    await told(grid, '90')
    await until('the one that is cut short is told', () => problemsOf(uri).some((problem) => problem.includes('this Parquet file is broken or cut short')))
  })
})
