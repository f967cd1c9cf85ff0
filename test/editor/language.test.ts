import assert from 'node:assert/strict'
import * as vscode from 'vscode'
import { until } from './waiting'
import { page, press, type } from './window'
import { activate, openText, problemsOf, sample, textOf, write } from './workspace'

const machine = `format: 1
adjusters:
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 20, faces: down, worked_from: above}
  fork_height: {on: fork, controls: fork_height, counts: mm}
entries:
  - id: found
    settings:
      shock_rebound: 7
  - id: run-1
    settings:
      shock_rebound: 9
`

/** Where the n-th place of some words is in a document. */
function at(document: vscode.TextDocument, words: string, which = 0): vscode.Position {
  let offset = document.getText().indexOf(words)
  for (let n = 0; n < which; n++) offset = document.getText().indexOf(words, offset + 1)
  return document.positionAt(offset)
}

function ask<T>(command: string, uri: vscode.Uri, ...rest: unknown[]): Thenable<T> {
  return vscode.commands.executeCommand<T>(command, uri, ...rest)
}

/** Chooses a quick fix where the cursor is put, by its title. */
async function fix(place: vscode.Position, title: string): Promise<void> {
  vscode.window.activeTextEditor!.selection = new vscode.Selection(place, place)
  await page().getByText(`Ln ${place.line + 1}, Col ${place.character + 1}`).waitFor()
  const row = page().locator('.action-widget .monaco-list-row', { hasText: title })
  // Asked while the cursor's move is still on its way, the editor answers for the place before, or not at all.
  await until(`‘${title}’ is offered`, async () => {
    await press('Escape', 'ControlOrMeta+.')
    return row.waitFor({ timeout: 3000 }).then(() => true, () => false)
  }, 30_000)
  // The list takes no pointer before it has moved, so that one that rests there chooses nothing.
  await page().mouse.move(1, 1)
  await page().mouse.move(2, 2)
  await row.click()
}

describe('a notebook’s text', () => {
  before(activate)

  it('completes an adjuster and its position as one types', async () => {
    const file = write('new.setup.yaml', machine)
    await openText(file)
    await press('ControlOrMeta+End')
    await type('      fork')
    await page().locator('.suggest-widget .monaco-list-row.focused', { hasText: 'fork_height' }).first().waitFor()
    await press('Enter')
    await until('the adjuster is written', async () => (await textOf(file)).endsWith('      fork_height: '))
    await press('Escape')
    await type('5 ')
    await page().locator('.suggest-widget .monaco-list-row.focused', { hasText: '5 mm' }).first().waitFor()
    await press('Enter')
    await until('the position is written', async () => (await textOf(file)).endsWith('fork_height: 5 mm'))
  })

  it('begins a group under its key, indented as it is to stand', async () => {
    const file = write('new.setup.yaml', 'format: 1\nentries:\n  - id: a\n    ')
    await openText(file)
    await press('ControlOrMeta+End')
    await type('sag')
    await page().locator('.suggest-widget .monaco-list-row.focused', { hasText: 'sag' }).first().waitFor()
    await press('Enter')
    await until('the group is begun', async () => (await textOf(file)).endsWith('  - id: a\n    sag:\n      '))
  })

  it('shows the card of a setting, with its drawing', async () => {
    const document = await openText(write('new.setup.yaml', machine))
    const hovers = await ask<vscode.Hover[]>('vscode.executeHoverProvider', document.uri, at(document, '9'))
    const shown = hovers.flatMap(({ contents }) => contents).map((content) => (content as vscode.MarkdownString).value).join('\n')
    assert.match(shown, /\*\*Shock rebound\*\*/)
    assert.match(shown, /2 clicks out: less rebound damping/)
    assert.match(shown, /data:image\/svg\+xml,/)
    vscode.window.activeTextEditor!.selection = new vscode.Selection(at(document, '9'), at(document, '9'))
    await vscode.commands.executeCommand('editor.action.showHover')
    const picture = page().locator('.monaco-hover img').first()
    await picture.waitFor()
    await until('the drawing is drawn', () => picture.evaluate((image) => (image as unknown as { naturalWidth: number }).naturalWidth > 0))
  })

  it('shows the other notation and the change behind a setting, and not when that is turned off', async () => {
    const document = await openText(write('new.setup.yaml', machine))
    await until('the hints are shown', async () => (await page().locator('.editor-instance .view-lines').innerText()).replace(/\u00a0/g, ' ').includes('+2 · less rebound damping'))
    const all = new vscode.Range(0, 0, document.lineCount, 0)
    const hints = () => ask<vscode.InlayHint[]>('vscode.executeInlayHintProvider', document.uri, all)
    assert.deepEqual((await hints()).map(({ label }) => label), ['= 13 in', '= 11 in', '+2 · less rebound damping'])
    const configuration = vscode.workspace.getConfiguration('detent')
    try {
      await configuration.update('inlayHints', false, vscode.ConfigurationTarget.Global)
      assert.equal((await hints()).length, 0)
    } finally {
      await configuration.update('inlayHints', undefined, vscode.ConfigurationTarget.Global)
    }
  })

  it('leads from a setting to its adjuster, and knows all places of it', async () => {
    const document = await openText(write('new.setup.yaml', machine))
    const place = at(document, 'shock_rebound', 2)
    const links = await ask<vscode.LocationLink[]>('vscode.executeDefinitionProvider', document.uri, place)
    assert.deepEqual(links.map(({ targetRange }) => targetRange.start.line), [2])
    assert.equal((await ask<vscode.Location[]>('vscode.executeReferenceProvider', document.uri, place)).length, 3)
    assert.equal((await ask<vscode.DocumentHighlight[]>('vscode.executeDocumentHighlights', document.uri, place)).length, 3)
  })

  it('renames an adjuster everywhere, and takes it back in one step', async () => {
    const document = await openText(write('new.setup.yaml', machine))
    const edit = await ask<vscode.WorkspaceEdit>('vscode.executeDocumentRenameProvider', document.uri, at(document, 'shock_rebound', 1), 'rear_rebound')
    await vscode.workspace.applyEdit(edit)
    assert.equal(document.getText(), machine.replaceAll('shock_rebound', 'rear_rebound'))
    await vscode.commands.executeCommand('undo')
    await until('the old names are back', () => document.getText() === machine)
    await assert.rejects(Promise.resolve(ask('vscode.executeDocumentRenameProvider', document.uri, at(document, 'shock_rebound', 1), 'fork_height')), /‘fork_height’ is in this notebook already/)
  })

  it('lists its entries in the outline', async () => {
    const document = await openText(sample('tern-650.setup.yaml'))
    const symbols = await until('there is an outline', async () => {
      const found = await ask<vscode.DocumentSymbol[] | undefined>('vscode.executeDocumentSymbolProvider', document.uri)
      return found?.length ? found : undefined
    })
    const entries = symbols.find(({ name }) => name === 'entries')!
    assert.equal(entries.children[0]!.name, 'as-found')
    assert.match(entries.children[1]!.detail, /^2026-03-28 · right leg brought to the left/)
  })

  it('folds an adjuster written over several lines', async () => {
    const document = await openText(sample('tern-650.setup.yaml'))
    const folds = await ask<vscode.FoldingRange[]>('vscode.executeFoldingRangeProvider', document.uri)
    const line = at(document, 'fork_preload: {on').line
    assert.ok(folds.some(({ start, end }) => start === line && end === line + 1))
  })

  it('adds a reason and puts the cursor where it goes', async () => {
    const file = write('new.setup.yaml', machine)
    const document = await openText(file)
    await until('the missing reason is a problem', () => problemsOf(file).some((problem) => problem.includes('no-reason')))
    const place = at(document, 'run-1')
    await fix(place, 'Add a reason')
    await page().getByText('Ln 12, Col 13').waitFor()
    await type('softer')
    await until('the reason is written', () => document.getText() === `${machine}    reason: softer\n`)
    await until('the problem is gone', () => !problemsOf(file).some((problem) => problem.includes('no-reason')))
  })

  it('defines an adjuster that is set and not defined, and asks what it counts in', async () => {
    const file = write('new.setup.yaml', `${machine}      shock_compression: 9 out\n`)
    const document = await openText(file)
    await until('the adjuster is not known', () => problemsOf(file).some((problem) => problem.includes('unknown-adjuster')))
    const place = at(document, 'shock_compression')
    await fix(place, 'Define ‘shock_compression’ as compression damping')
    await page().getByText('Ln 5, Col 65').waitFor()
    await type('clicks')
    await until('it is defined', () => document.getText().includes('  shock_compression: {on: shock, controls: compression, counts: clicks}\nentries:'))
    await until('the problem is gone', () => !problemsOf(file).some((problem) => /unknown-adjuster|wrong-shape/.test(problem)))
  })

  it('tells what is wrong with its shape once, where a YAML extension tells it too', async () => {
    const file = write('new.setup.yaml', machine.replace('range: 20', 'range: many').replace('shock_rebound: 9', 'shock_rebound: 9\n    verdict: kep'))
    await openText(file)
    const ours = () => vscode.languages.getDiagnostics(file).filter(({ source }) => source === 'detent').map(({ range, code }) => `${range.start.line + 1} ${String(code)}`)
    const all = ['3 wrong-shape', '9 no-reason', '12 wrong-shape']
    await until('all is told', () => ours().join() === all.join())
    const yaml = vscode.languages.createDiagnosticCollection('yaml of the test')
    const said = new vscode.Diagnostic(new vscode.Range(2, 60, 2, 64), 'Incorrect type. Expected "number".')
    said.source = 'yaml-schema: Setup notebook'
    const configuration = vscode.workspace.getConfiguration('detent')
    try {
      yaml.set(file, [said])
      await until('it is told once', () => ours().join() === all.slice(1).join())
      await configuration.update('shapeProblems', 'always', vscode.ConfigurationTarget.Global)
      await until('it is told in our words too', () => ours().join() === all.join())
      await configuration.update('shapeProblems', undefined, vscode.ConfigurationTarget.Global)
      await until('it is told once again', () => ours().join() === all.slice(1).join())
      const other = new vscode.Diagnostic(new vscode.Range(0, 0, 0, 6), 'Something of another line.')
      other.source = said.source
      yaml.set(file, [other])
      await until('nobody else tells it, so we do', () => ours().join() === all.join())
    } finally {
      yaml.dispose()
      await configuration.update('shapeProblems', undefined, vscode.ConfigurationTarget.Global)
    }
  })

  it('colours a position inside of its value', async () => {
    await openText(write('new.setup.yaml', 'a: 3 clicks out\nb: three clicks out\n'))
    const pieces = await until('the line is coloured', async () => {
      const spans = await page().locator('.view-line', { hasText: 'three' }).locator('..').locator('.view-line').evaluateAll((lines) => lines.map((line) => [...line.querySelectorAll('span span')].map((span) => span.textContent)))
      return spans.some((line) => line.length > 4) ? spans : undefined
    })
    const texts = pieces.map((line) => line.map((piece) => piece!.replace(/\u00a0/g, ' ').trim()))
    assert.ok(texts.some((line) => line.includes('3') && line.includes('out')), JSON.stringify(texts))
    assert.ok(texts.some((line) => line.includes('three clicks out')), JSON.stringify(texts))
  })
})
