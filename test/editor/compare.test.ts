import assert from 'node:assert/strict'
import { execFileSync } from 'node:child_process'
import { rmSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import type { GitApi, GitExtension, Repository } from '../../src/editor/compare/gitApi'
import { barriersIn, barriersInThemes } from './accessibility'
import { framesWith } from './frames'
import { settings } from './settings'
import { pause, until } from './waiting'
import { gridFrame, page, press, resize, takeKeyboard, type } from './window'
import { changeOnDisk, makeWatched, nameOf, openGrid, openText, sample, textOf, write } from './workspace'

const tern = `format: 1
machine: {name: Tern 650, use: track, front: {travel: 120}}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
entries:
  - id: as-found
    date: 2026-04-18
    settings:
      fork_rebound: {left: 3 out, right: 6 out}
      shock_rebound: 7 out
  - id: run-1
    date: 2026-04-18
    settings: {fork_rebound: {right: 3 out}}
    reason: right leg brought to the left
    ride: {laps: 6, felt: steadier}
  - id: run-2
    date: 2026-04-19
    settings: {shock_rebound: 9 out}
    reason: packs down
`

/** The page of the comparison that is in sight, as soon as it shows something. */
async function compareFrame(): Promise<Frame> {
  return until('a comparison is shown', async () => (await framesWith(page(), '[data-detent="compare"]:not(.is-loading)'))[0])
}

/** Opens two states side by side and puts the keyboard into the table. */
async function compare(command: string, ...args: unknown[]): Promise<Frame> {
  await vscode.commands.executeCommand(command, ...args)
  const frame = await compareFrame()
  await frame.locator('.cell[tabindex="0"], .nothing-shown:visible').first().focus()
  return frame
}

/** Opens a notebook in the grid and compares its newest entry with the one it comes from. */
async function compareTern(text = tern): Promise<{ uri: vscode.Uri; frame: Frame }> {
  const uri = write('tern.setup.yaml', text)
  await openGrid(uri)
  await takeKeyboard(await gridFrame())
  return { uri, frame: await compare('detent.compareSelected') }
}

const names = (frame: Frame) => frame.locator('.side-name').allTextContents()
const sees = (frame: Frame, left: string, right: string) => until(`${left} and ${right} are compared`, async () => (await names(frame)).join() === [left, right].join())
const row = (frame: Frame, text: string) => frame.locator('.row:not(.row-head)', { hasText: text }).first()

/** Presses a key as soon as the keyboard is in the page: a list that was open gives it back a moment later. */
async function pressIn(frame: Frame, key: string): Promise<void> {
  await until('the page has the keyboard', () => frame.evaluate('document.hasFocus()'))
  await press(key)
}

/** Presses a key that asks something until it is asked: the page may say it has the keyboard a moment early. */
async function ask(frame: Frame, key: string): Promise<void> {
  const input = page().locator('.quick-input-widget input').first()
  await until('it is asked', async () => {
    await pressIn(frame, key)
    return input.waitFor({ timeout: 1500 }).then(() => true, () => false)
  })
}

/**
 * Chooses the line of the list that the editor has opened which a text leaves. Where one list follows another, what is typed too early
 * goes into the one that is about to close.
 */
async function choose(text: string): Promise<void> {
  const input = page().locator('.quick-input-widget input').first()
  await input.waitFor()
  await until(`‘${text}’ can be chosen`, async () => {
    if ((await input.inputValue()) !== text) await input.fill(text)
    return (await page().locator('.quick-input-list .monaco-list-row.focused', { hasText: text }).count()) > 0
  })
  await press('Enter')
}

/** A button at the right of the open editor’s tabs. */
const titleAction = (label: string) => page().locator(`.editor-actions .action-label[aria-label^="${label}"]`).first()

async function chooseInMenu(label: string): Promise<void> {
  const item = page().locator('.context-view .action-label', { hasText: label }).first()
  await item.waitFor()
  // A menu that has just come up takes no click yet.
  await pause(500)
  await item.click()
}

async function replaceIn(uri: vscode.Uri, before: string, after: string): Promise<void> {
  const document = await vscode.workspace.openTextDocument(uri)
  const at = document.getText().indexOf(before)
  assert.ok(at >= 0)
  const edit = new vscode.WorkspaceEdit()
  edit.replace(uri, new vscode.Range(document.positionAt(at), document.positionAt(at + before.length)), after)
  await vscode.workspace.applyEdit(edit)
}

function git(uri: vscode.Uri, ...args: string[]): string {
  return execFileSync('git', ['-c', 'user.name=Oda', '-c', 'user.email=oda@example.org', '-c', 'init.defaultBranch=main', ...args], { cwd: dirname(uri.fsPath), encoding: 'utf8' })
}

/** A notebook in a repository of its own, committed once. */
async function committed(name = 'tern.setup.yaml'): Promise<vscode.Uri> {
  await makeWatched('team')
  const uri = write(`team/${name}`, tern)
  git(uri, 'init', '--quiet')
  git(uri, 'add', '.')
  git(uri, 'commit', '--quiet', '-m', 'as found')
  return uri
}

/** What is asked here of the editor's git beyond what the extension asks of it. */
type WatchedRepository = Repository & { status(): Promise<void>; state: { workingTreeChanges: { uri: vscode.Uri }[] } }

/**
 * Writes a file and waits until the editor's git has seen that, which one that is short of time may miss. Repositories that earlier tests
 * left are closed: the list of changes draws only the lines that are in sight.
 */
async function untilGitKnowsChange(uri: vscode.Uri, text: string): Promise<void> {
  const api = vscode.extensions.getExtension<GitExtension>('vscode.git')?.exports.getAPI(1) as (GitApi & { repositories: Repository[] }) | undefined
  assert.ok(api)
  const folder = vscode.Uri.joinPath(uri, '..')
  const ours = await until('git has the repository', async () => api.getRepository(uri) ?? api.openRepository(folder)) as WatchedRepository
  for (const other of api.repositories.filter(each => each.rootUri.fsPath !== ours.rootUri.fsPath)) await vscode.commands.executeCommand('git.close', other)
  writeFileSync(uri.fsPath, text)
  await until('git has seen the change', async () => {
    await ours.status()
    return ours.state.workingTreeChanges.some(change => change.uri.fsPath === uri.fsPath)
  })
}

describe('a comparison', () => {
  it('opens from the grid: the selected entry against the one it comes from, with its change and its bar', async () => {
    const { frame } = await compareTern()
    await sees(frame, 'run-1', 'run-2')
    const shock = row(frame, 'Shock rebound')
    assert.equal(await shock.locator('.cell-change .change-words').innerText(), '2 clicks out: less rebound damping\n9 % of range')
    assert.equal(await shock.locator('svg .bar-tip').count(), 1)
    assert.deepEqual(await shock.locator('.cell-left, .cell-right').allInnerTexts(), ['7 clicks out', '9 clicks out'])
    assert.equal(await frame.locator('.summary').innerText(), '1 position differs')
  })

  it('opens from the grid: the entries that a range begins and ends in', async () => {
    await openGrid(write('tern.setup.yaml', tern))
    const grid = await gridFrame()
    await takeKeyboard(grid)
    await press('Shift+ArrowLeft', 'Shift+ArrowLeft')
    await press('ControlOrMeta+k', 'ControlOrMeta+d')
    const frame = await compareFrame()
    await sees(frame, 'as-found', 'run-2')
    assert.equal(await frame.locator('.summary').innerText(), '2 positions differ, 1 finding gone')
    await row(frame, 'Entries on the way').waitFor()
  })

  it('asks what to compare the first entry with', async () => {
    await openGrid(write('tern.setup.yaml', tern))
    await takeKeyboard(await gridFrame())
    await press('ArrowLeft', 'ArrowLeft')
    await press('ControlOrMeta+k', 'ControlOrMeta+d')
    await choose('run-2')
    await sees(await compareFrame(), 'run-2', 'as-found')
  })

  it('steps through the history by one key, both ways, and says where it ends', async () => {
    const { frame } = await compareTern()
    await press('[')
    await sees(frame, 'as-found', 'run-1')
    await until('it is said', async () => (await frame.locator('[aria-live=polite]').innerText()).startsWith('as-found to run-1: 1 position differs'))
    await press('[')
    await frame.getByText('There is no older pair of entries').waitFor({ state: 'attached' })
    await press(']')
    await sees(frame, 'run-1', 'run-2')
    await vscode.commands.executeCommand('detent.compareOlder')
    await sees(frame, 'as-found', 'run-1')
    assert.equal(vscode.window.tabGroups.activeTabGroup.activeTab?.label, 'as-found ↔ run-1')
  })

  it('swaps the sides by a key, and tells every change the other way round', async () => {
    const { frame } = await compareTern()
    await press('s')
    await sees(frame, 'run-2', 'run-1')
    await frame.getByText('2 clicks in: more rebound damping').waitFor()
  })

  it('hides what is alike by a key and by its box, and remembers that for the next comparison', async () => {
    const { frame } = await compareTern()
    const isTicked = async () => (await frame.locator('vscode-checkbox').getAttribute('aria-checked')) === 'true'
    // What an earlier try left is remembered, as it should be.
    if ((await row(frame, 'Fork rebound').count()) === 0) await press('d')
    await until('the fork is there', async () => (await row(frame, 'Fork rebound').count()) === 1)
    await press('d')
    await until('the fork is hidden', async () => (await row(frame, 'Fork rebound').count()) === 0)
    // The box is drawn a moment after the rows.
    await until('the box is ticked', isTicked)
    await until('the pair before is shown', async () => {
      await pressIn(frame, '[')
      return sees(frame, 'as-found', 'run-1').then(() => true, () => false)
    }, 25_000)
    await until('the shock is hidden', async () => (await row(frame, 'Shock rebound').count()) === 0)
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor')
    await takeKeyboard(await gridFrame())
    const next = await compare('detent.compareSelected')
    assert.equal(await row(next, 'Fork rebound').count(), 0)
    await next.locator('vscode-checkbox').click()
    await row(next, 'Fork rebound').waitFor()
    await until('the box is empty', async () => (await next.locator('vscode-checkbox').getAttribute('aria-checked')) === 'false')
    await next.locator('.cell[tabindex="0"]').focus()
    await vscode.commands.executeCommand('detent.compareDifferences')
    await until('hidden again', async () => (await row(next, 'Fork rebound').count()) === 0)
    await vscode.commands.executeCommand('detent.compareDifferences')
    await row(next, 'Fork rebound').waitFor()
  })

  it('leads by Enter to the cell in the grid, of the side one stands on', async () => {
    const { uri, frame } = await compareTern()
    await until('the keyboard is on the change', async () => (await frame.locator('.cell:focus').innerText()).startsWith('Shock rebound'))
    await press('ArrowRight')
    await press('Enter')
    await until('the grid is in front', () => vscode.window.tabGroups.activeTabGroup.activeTab?.input instanceof vscode.TabInputCustom)
    const grid = await gridFrame()
    await grid.getByText(/^Shock rebound, run-1/).waitFor()
    await grid.locator('[role=grid]:focus').waitFor()
    await type('8 out')
    await press('Enter')
    await until('it is written there', async () => (await textOf(uri)).includes('settings: {fork_rebound: {right: 3 out}, shock_rebound: 8 out}'))
    assert.equal(vscode.window.tabGroups.activeTabGroup.tabs.length, 2)
  })

  it('follows either document as it is typed, and keeps its row', async () => {
    const { uri, frame } = await compareTern()
    await press('ArrowRight')
    await replaceIn(uri, '9 out', '12 out')
    await frame.getByText('5 clicks out: less rebound damping').waitFor()
    assert.equal(await frame.locator('.cell:focus').innerText(), '7 clicks out')
    await replaceIn(uri, 'shock_rebound: 7 out', 'shock_rebound: 6 out')
    await frame.getByText('6 clicks out: less rebound damping').waitFor()
    assert.equal(await frame.locator('.cell:focus').innerText(), '6 clicks out')
  })

  it('keeps its place while it is hidden', async () => {
    const { frame } = await compareTern()
    await press('ControlOrMeta+End', 'ArrowRight', 'ArrowRight')
    const stood = await frame.locator('.cell:focus').innerText()
    await openText(write('other.txt', 'hello'))
    await vscode.commands.executeCommand('workbench.action.previousEditor')
    const again = await compareFrame()
    await sees(again, 'run-1', 'run-2')
    assert.equal(await again.locator('.cell[tabindex="0"]').innerText(), stood)
  })

  it('has either side chosen from a list: another entry, another notebook', async () => {
    const { frame } = await compareTern()
    write('wren.setup.yaml', tern.replace('Tern 650', 'Wren 250').replace('range: 22', 'range: 44').replaceAll('run-', 'w-'))
    await ask(frame, 'l')
    await choose('as-found')
    await sees(frame, 'as-found', 'run-2')
    await frame.locator('.side-choose').nth(1).click()
    await choose('Another notebook')
    await choose('wren.setup.yaml')
    await choose('w-2')
    await sees(frame, 'as-found', 'w-2')
    await frame.locator('.banner', { hasText: 'These are two machines' }).waitFor()
    assert.match(await row(frame, 'Shock rebound').locator('.change-words').innerText(), /% of range: /)
    assert.equal(await frame.locator('.title').innerText(), 'Tern 650 – Wren 250')
  })

  it('stays as it is where a list is left by Escape, at its first step or a later one', async () => {
    const { frame } = await compareTern()
    const list = page().locator('.quick-input-widget')
    await ask(frame, 'l')
    await press('Escape')
    await list.waitFor({ state: 'hidden' })
    await ask(frame, 'l')
    await choose('Another notebook')
    await until('a notebook is asked for', async () => (await page().locator('.quick-input-title').innerText()) === 'Compare: which notebook?')
    await press('Escape')
    await list.waitFor({ state: 'hidden' })
    await pressIn(frame, 's')
    await sees(frame, 'run-2', 'run-1')
    assert.equal(await list.isVisible(), false)
  })

  it('asks for both sides when it is opened from the palette', async () => {
    await openText(write('tern.setup.yaml', tern))
    void vscode.commands.executeCommand('detent.compare')
    await choose('as-found')
    await until('the second question is asked', async () => (await page().locator('.quick-input-title').innerText()) === 'Compare: with which state?')
    await choose('run-2')
    await sees(await compareFrame(), 'as-found', 'run-2')
  })

  it('opens from the explorer for two files that are selected there', async () => {
    await vscode.commands.executeCommand('revealInExplorer', write('b.setup.yaml', tern.replaceAll('run-', 'b-')))
    await vscode.commands.executeCommand('revealInExplorer', write('a.setup.yaml', tern))
    const file = (name: string) => page().locator('.explorer-folders-view .monaco-list-row', { hasText: name }).first()
    await file('a.setup.yaml').click()
    await file('b.setup.yaml').click({ modifiers: ['ControlOrMeta'] })
    await file('b.setup.yaml').click({ button: 'right' })
    await chooseInMenu('Compare Setups')
    await sees(await compareFrame(), 'run-2', 'b-2')
  })

  it('opens from the title of the grid and of the text', async () => {
    const uri = write('tern.setup.yaml', tern)
    await openGrid(uri)
    await takeKeyboard(await gridFrame())
    await titleAction('Compare Selected Entries').click()
    await sees(await compareFrame(), 'run-1', 'run-2')
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor')
    await openText(uri)
    await titleAction('Compare Setup with').click()
    await until('the question is asked', async () => (await page().locator('.quick-input-title').innerText()).startsWith('Compare'))
    await choose('as-found')
    const frame = await compareFrame()
    await until('as-found is a side', async () => (await names(frame)).includes('as-found'))
  })

  it('opens from the menu of a cell', async () => {
    await openGrid(write('tern.setup.yaml', tern))
    await (await gridFrame()).locator('.cell', { hasText: '9 out' }).first().click({ button: 'right' })
    await chooseInMenu('Compare Selected Entries')
    await sees(await compareFrame(), 'run-1', 'run-2')
  })

  it('opens from the explorer for one file, and asks with what', async () => {
    await vscode.commands.executeCommand('revealInExplorer', write('a.setup.yaml', tern))
    await page().locator('.explorer-folders-view .monaco-list-row', { hasText: 'a.setup.yaml' }).first().click({ button: 'right' })
    await chooseInMenu('Compare Setup with')
    await choose('as-found')
    const frame = await compareFrame()
    await until('as-found is a side', async () => (await names(frame)).includes('as-found'))
  })

  it('opens from the tree of setups: an entry against the last one', async () => {
    write('aa-tern.setup.yaml', tern.replace('Tern 650', 'Aa Tern'))
    await vscode.commands.executeCommand('detent.setups.focus')
    await vscode.commands.executeCommand('detent.setups.refresh')
    const node = page().locator('.monaco-list-row[role=treeitem][aria-label^="Aa Tern,"]')
    await node.locator('.monaco-tl-twistie').click({ timeout: 20_000 })
    const entry = page().locator('.monaco-list-row[role=treeitem][aria-label^="as-found,"]').first()
    await entry.click({ button: 'right' })
    await chooseInMenu('Compare with Last Entry')
    await sees(await compareFrame(), 'as-found', 'run-2')
    await entry.click({ button: 'right' })
    await chooseInMenu('Turn List to Here')
    const turns = await until('a turn list is shown', async () => (await framesWith(page(), '[data-detent="turns"]'))[0])
    await turns.getByText('To as-found').waitFor()
  })

  it('sets what is saved against what is not, and is even again once that is saved', async () => {
    const uri = write('tern.setup.yaml', tern)
    await openText(uri)
    await replaceIn(uri, '9 out', '11 out')
    const frame = await compare('detent.compareWithSaved', uri)
    await sees(frame, 'run-2', 'run-2')
    assert.deepEqual((await frame.locator('.side-file').allInnerTexts()).map((each) => each.slice(each.lastIndexOf('/') + 1)), ['tern.setup.yaml, as saved', 'tern.setup.yaml, not saved yet'])
    await frame.getByText('Read only: as it was last saved').waitFor()
    await frame.getByText('2 clicks out: less rebound damping').waitFor()
    await (await vscode.workspace.openTextDocument(uri)).save()
    await until('nothing differs', async () => (await frame.locator('.summary').innerText()).startsWith('No position differs'))
  })

  it('shows a side that does not parse as its text, with the error and its line, beside the other', async () => {
    const { uri, frame } = await compareTern()
    const other = write('other.setup.yaml', tern)
    await vscode.commands.executeCommand('workbench.action.closeActiveEditor')
    const both = await compare('detent.compareFiles', uri, [other, uri])
    await replaceIn(uri, 'date: 2026-04-19', 'date: "2026-04-19')
    const pane = both.locator('.pane:visible')
    await pane.waitFor()
    assert.match(await pane.locator('.pane-why').innerText(), /^Line \d+: /)
    assert.equal(await pane.locator('.text-line').nth(4).locator('.text-words').innerText(), '  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}')
    assert.equal(await pane.locator('.text-line.is-wrong').count(), 1)
    assert.equal(await row(both, 'Shock rebound').locator('.cell').count(), 2)
    assert.match(await both.locator('.summary').innerText(), /^Only run-2 can be read/)
    assert.deepEqual(await barriersIn(both), [])
    await pane.locator('vscode-button', { hasText: 'Show line' }).click()
    await until('the text is in front', () => vscode.window.activeTextEditor?.document.uri.toString() === uri.toString())
    await vscode.commands.executeCommand('undo')
    await vscode.commands.executeCommand('workbench.action.previousEditor')
    const mended = await compareFrame()
    await until('it is whole again', async () => (await mended.locator('.pane:visible').count()) === 0)
    assert.equal(frame.isDetached(), true)
  })

  it('follows files that are open nowhere, and says so where one is gone', async () => {
    const [left, right] = [write('left.setup.yaml', tern), write('right.setup.yaml', tern)]
    const frame = await compare('detent.compareFiles', left, [left, right])
    await until('nothing differs', async () => (await frame.locator('.summary').innerText()).startsWith('No position differs'))
    await changeOnDisk(right, tern.replace('9 out', '13 out'), 'it is followed', () => frame.getByText('4 clicks out: less rebound damping').isVisible())
    rmSync(left.fsPath)
    await frame.getByText(/left\.setup\.yaml cannot be read; it may have been moved or deleted\./).waitFor()
  })

  it('offers the turns from the left state to the right one', async () => {
    const { frame } = await compareTern()
    await frame.locator('vscode-button', { hasText: 'Turn list' }).click()
    const turns = await until('the turn list is shown', async () => (await framesWith(page(), '[data-detent="turns"]'))[0])
    await turns.getByText(/2 clicks/).first().waitFor()
  })

  it('shows what is worked out in the units that the settings ask for', async () => {
    const uri = nameOf(sample('tern-650.setup.yaml'))
    const frame = await compare('detent.compare', { uri, entry: 'as-found' }, { uri, entry: 'run-2' })
    const sag = row(frame, 'Rider sag rider aboard')
    assert.match(await sag.innerText(), /42 mm/)
    const settings = vscode.workspace.getConfiguration('detent.display')
    await settings.update('length', 'in', vscode.ConfigurationTarget.Global)
    try {
      await until('it is in inches', async () => /1\.65\d? in/.test(await sag.innerText()))
    } finally {
      await settings.update('length', undefined, vscode.ConfigurationTarget.Global)
    }
  })

  it('says where an entry is gone', async () => {
    const { uri, frame } = await compareTern()
    await replaceIn(uri, '  - id: run-1\n', '  - id: run-one\n')
    await frame.getByText(/tern\.setup\.yaml, not saved yet has no entry ‘run-1’\./).waitFor()
    await frame.locator('vscode-button:visible', { hasText: 'Choose another state' }).click()
    await choose('run-one')
    await sees(frame, 'run-one', 'run-2')
  })

  it('lets nothing run, and shows content as text', async () => {
    const evil = '<img src=x onerror=alert(1)><script>window.hit=1</script>'
    const { frame } = await compareTern(tern.replace('Tern 650', `"${evil}"`).replace('reason: packs down', `reason: "${evil}"`))
    await frame.locator('.title', { hasText: '<img src=x' }).waitFor()
    assert.equal(await frame.evaluate('window.hit'), undefined)
    assert.equal(await frame.locator('img').count(), 0)
    const policy = (await frame.locator('meta[http-equiv="Content-Security-Policy"]').getAttribute('content')) ?? ''
    assert.match(policy, /default-src 'none'/)
    assert.doesNotMatch(policy, /unsafe/)
  })

  it('puts up no barriers in any theme, wide or narrow', async () => {
    await openGrid(sample('tern-650.setup.yaml'))
    await takeKeyboard(await gridFrame())
    const frame = await compare('detent.compareSelected')
    await press('[')
    await sees(frame, 'june', 'wet')
    for (const width of [1280, 800]) {
      await resize(width, 800)
      assert.deepEqual(await barriersInThemes(frame), [])
      assert.equal(await frame.evaluate('document.querySelector(".scroller").scrollWidth <= document.querySelector(".scroller").clientWidth'), true)
    }
  })
})

// The editor's git speaks to extensions of its own host alone, so in a browser's there are no revisions.
const itWithGit = settings().web ? () => undefined : it

describe('a comparison with git', () => {
  itWithGit('sets the last commit against the file as it is, says that it is read only, and leads to its grid', async () => {
    const uri = await committed()
    writeFileSync(uri.fsPath, tern.replace('9 out', '12 out'))
    await openText(uri)
    const frame = await compare('detent.compareWithHead', { resourceUri: uri })
    await sees(frame, 'run-2', 'run-2')
    await frame.getByText('Read only: as it is in HEAD').waitFor()
    await frame.getByText('3 clicks out: less rebound damping').waitFor()
    assert.deepEqual(await frame.locator('.row-head .cell-left, .row-head .cell-right').allInnerTexts(), ['run-2 at HEAD', 'run-2'])
    await until('the keyboard is on the change', async () => (await frame.locator('.cell:focus').innerText()).startsWith('Shock rebound'))
    await press('ArrowRight', 'Enter')
    const grid = await gridFrame()
    await grid.getByText(/^Shock rebound, run-2/).waitFor()
    await grid.getByText('This is a version to read, not to edit.').waitFor()
    await grid.getByText('9 out', { exact: true }).first().waitFor()
  })

  itWithGit('compares with any revision that is chosen or typed, and says which one there is not', async () => {
    const uri = await committed()
    git(uri, 'checkout', '--quiet', '-b', 'softer')
    writeFileSync(uri.fsPath, tern.replace('9 out', '14 out'))
    git(uri, 'commit', '--quiet', '-a', '-m', 'softer')
    git(uri, 'checkout', '--quiet', 'main')
    await openText(uri)
    const frame = await compare('detent.compareWithHead', uri)
    await ask(frame, 'l')
    await choose('At a git revision')
    await choose('softer')
    await frame.getByText('Read only: as it is in softer').waitFor()
    await frame.getByText('5 clicks in: more rebound damping').waitFor()
    await ask(frame, 'l')
    await choose('At a git revision')
    await choose('mian')
    await frame.getByText('There is no revision ‘mian’ in this repository; did you mean ‘main’?').waitFor()
    assert.equal(await row(frame, 'Shock rebound').locator('.cell-right').innerText(), '9 clicks out')
    assert.deepEqual(await barriersIn(frame), [])
  })

  itWithGit('finds a file that was called otherwise then, and follows a commit', async () => {
    const uri = await committed()
    const renamed = vscode.Uri.joinPath(uri, '../tern-650.setup.yaml')
    git(uri, 'tag', 'before')
    git(uri, 'mv', 'tern.setup.yaml', 'tern-650.setup.yaml')
    git(uri, 'commit', '--quiet', '-m', 'its full name')
    await openText(renamed)
    const frame = await compare('detent.compareWithHead', renamed)
    await until('nothing differs', async () => (await frame.locator('.summary').innerText()).startsWith('No position differs'))
    await ask(frame, 'l')
    await choose('At a git revision')
    await choose('before')
    await frame.locator('.side-file', { hasText: /before:.*team\/tern\.setup\.yaml$/ }).waitFor()
    await ask(frame, 'l')
    await choose('At a git revision')
    await choose('HEAD')
    await frame.getByText('Read only: as it is in HEAD').waitFor()
    await changeOnDisk(renamed, tern.replace('9 out', '10 out'), 'the file is followed', () => frame.getByText('1 click out: less rebound damping').isVisible())
    git(renamed, 'commit', '--quiet', '-a', '-m', 'a click')
    await until('HEAD has it too', async () => (await frame.locator('.summary').innerText()).startsWith('No position differs'), 30_000)
  })

  itWithGit('opens from the list of changes', async () => {
    // A name of its own at each try: the list may still have what an earlier one left.
    const name = `listed-${Date.now()}.setup.yaml`
    const uri = await committed(name)
    await openText(uri)
    await untilGitKnowsChange(uri, tern.replace('9 out', '12 out'))
    await vscode.commands.executeCommand('workbench.view.scm')
    const changed = page().locator('.scm-view .monaco-list-row', { hasText: name }).first()
    await changed.click({ button: 'right' })
    await chooseInMenu('Compare Setup with HEAD')
    await (await compareFrame()).getByText('3 clicks out: less rebound damping').waitFor()
  })

  itWithGit('tells what is staged from what is not', async () => {
    const uri = await committed()
    writeFileSync(uri.fsPath, tern.replace('9 out', '12 out'))
    git(uri, 'add', '.')
    writeFileSync(uri.fsPath, tern.replace('9 out', '13 out'))
    await openText(uri)
    const frame = await compare('detent.compareWithHead', { resourceUri: uri, resourceGroupType: 1 })
    await frame.getByText('Read only: as it is staged').waitFor()
    await frame.getByText('3 clicks out: less rebound damping').waitFor()
  })

  it('says so where git is switched off', async () => {
    const uri = await committed()
    await openText(uri)
    const configuration = vscode.workspace.getConfiguration('git')
    await configuration.update('enabled', false, vscode.ConfigurationTarget.Global)
    try {
      const frame = await compare('detent.compareWithHead', uri)
      await frame.getByText(/git/i).first().waitFor()
      assert.match(await frame.locator('body').innerText(), /switched off|not there|disabled|enable/i)
    } finally {
      await configuration.update('enabled', undefined, vscode.ConfigurationTarget.Global)
    }
  })

  itWithGit('says so where there is no repository, and where a file is no notebook', async () => {
    const uri = write('alone.setup.yaml', tern)
    await openText(uri)
    const frame = await compare('detent.compareWithHead', uri)
    await frame.getByText(/alone\.setup\.yaml is in no git repository that the editor has found\./).waitFor()
    await vscode.commands.executeCommand('detent.compareWithHead', { resourceUri: write('note.txt', '') })
    await page().getByText(/note\.txt is no setup notebook\./).first().waitFor()
  })
})
