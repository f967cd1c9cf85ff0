import assert from 'node:assert/strict'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildSync } from 'esbuild'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as { main: string; browser: string; contributes: { commands: { command: string }[] } }

/** As much of an editor as what stands in asks for. */
class Editor {
  readonly commands = new Map<string, (...given: unknown[]) => unknown>()
  readonly opened: ((document: unknown) => void)[] = []
  readonly editors = new Map<string, { resolveCustomTextEditor: (...given: unknown[]) => unknown }>()
  readonly panels = new Map<string, { deserializeWebviewPanel: (...given: unknown[]) => unknown }>()
  readonly trees = new Map<string, { treeDataProvider: { getChildren: () => Promise<unknown[]> } }>()
  files: unknown[] = []
  documents: unknown[] = []

  get api() {
    const put = <Value>(map: Map<string, Value>) => (name: string, value: Value) => {
      assert.ok(!map.has(name), `${name} is there already`)
      map.set(name, value)
      return { dispose: () => map.delete(name) }
    }
    const event = (listeners: unknown[]) => (listener: unknown) => {
      listeners.push(listener)
      return { dispose: () => listeners.splice(listeners.indexOf(listener), 1) }
    }
    return {
      Disposable: { from: (...all: { dispose: () => void }[]) => ({ dispose: () => all.forEach((each) => each.dispose()) }) },
      EventEmitter: class { event = event([]); fire() {} dispose() {} },
      TabInputCustom: class {},
      commands: { registerCommand: put(this.commands), executeCommand: async (name: string, ...given: unknown[]) => this.commands.get(name)?.(...given) },
      window: { registerCustomEditorProvider: put(this.editors), registerWebviewPanelSerializer: put(this.panels), createTreeView: put(this.trees), tabGroups: { all: [] } },
      workspace: {
        textDocuments: this.documents, onDidOpenTextDocument: event(this.opened), findFiles: async () => this.files,
        createFileSystemWatcher: () => ({ onDidCreate: event([]), dispose() {} }),
      },
    }
  }
}

const named = (path: string) => ({ uri: { path } })

describe('what stands in for the whole extension', () => {
  let editor: Editor
  let loads: number
  const asked: string[] = []
  const children = () => editor.trees.get('detent.setups')!.treeDataProvider.getChildren()
  const settled = () => new Promise((resolve) => setTimeout(resolve))

  before(() => {
    const common = { bundle: true, platform: 'node', format: 'cjs', target: 'es2022', logLevel: 'error' } as const
    const { metafile } = buildSync({ ...common, entryPoints: ['src/editor/extension.ts'], outfile: join(folder, 'extension.js'), external: ['vscode', './whole'], supported: { 'dynamic-import': false }, metafile: true })
    assert.deepEqual(Object.keys(metafile.inputs).sort(), ['src/core/notebook/fileName.ts', 'src/editor/extension.ts', 'src/editor/lateTree.ts', 'src/editor/names.ts', 'src/editor/standIn.ts'])
  })
  after(() => rmSync(folder, { recursive: true }))

  /** Starts the extension in an editor, in which the whole is told of and nothing else. */
  function start(set: (editor: Editor) => void = () => undefined): void {
    editor = new Editor()
    set(editor)
    loads = 0
    asked.length = 0
    const module = { exports: {} as { activate: (context: unknown) => void } }
    const { api } = editor
    const whole = {
      registerAll: () => {
        loads++
        api.commands.registerCommand('detent.newNotebook', (...given) => `made of ${given.join()}`)
        const panel = (name: string) => ({ deserializeWebviewPanel: () => asked.push(name) })
        return { gridEditor: { resolveCustomTextEditor: () => asked.push('grid') }, panels: { 'detent.compare': panel('compare'), 'detent.turns': panel('turns') }, setups: { getChildren: async () => ['a notebook'] } }
      },
    }
    const require = (name: string) => (name === 'vscode' ? api : name === './whole' ? whole : createRequire(import.meta.url)(name) as unknown)
    new Function('module', 'exports', 'require', readFileSync(join(folder, 'extension.js'), 'utf8'))(module, module.exports, require)
    module.exports.activate({ subscriptions: [], extension: { packageJSON: manifest } })
  }

  it('loads nothing for any other file', async () => {
    start()
    for (const opened of editor.opened) opened(named('/garage/compose.yaml'))
    assert.deepEqual(await children(), [])
    await settled()
    assert.equal(loads, 0)
    assert.deepEqual([...editor.commands.keys()], manifest.contributes.commands.map(({ command }) => command))
  })

  it('loads the whole once, for the first notebook that is opened or open already', async () => {
    start()
    for (const opened of [...editor.opened]) opened(named('/garage/tern-650.setup.yaml'))
    await settled()
    assert.equal(loads, 1)
    start(({ documents }) => documents.push(named('/garage/tern-650.setup.yml')))
    await settled()
    assert.equal(loads, 1)
    await editor.editors.get('detent.setup')!.resolveCustomTextEditor()
    assert.equal(loads, 1)
  })

  it('hands on what a command was given, and what came of it', async () => {
    start()
    assert.equal(await editor.commands.get('detent.newNotebook')!('this', 'that'), 'made of this,that')
    assert.equal(loads, 1)
    assert.equal(await editor.commands.get('detent.newNotebook')!('more'), 'made of more')
  })

  it('hands on grids and pages that an editor opens again', async () => {
    start()
    await Promise.all([editor.editors.get('detent.setup')!.resolveCustomTextEditor(), editor.panels.get('detent.turns')!.deserializeWebviewPanel(), editor.panels.get('detent.compare')!.deserializeWebviewPanel()])
    assert.deepEqual([asked.sort(), loads], [['compare', 'grid', 'turns'], 1])
  })

  it('shows all notebooks when somebody looks at their view and there are some', async () => {
    start((each) => each.files.push({}))
    await settled()
    assert.equal(loads, 0)
    assert.deepEqual(await children(), ['a notebook'])
    assert.equal(loads, 1)
  })

  it('is what an editor with Node starts; a browser’s host loads one file alone', () => {
    assert.deepEqual([manifest.main, manifest.browser], ['./dist/extension.js', './dist/whole.js'])
  })
})
