// The files and documents of a test. Every test has a folder of its own with a fresh copy of the samples, so that no test
// meets a document that another left in the editor's memory.
import { cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import * as vscode from 'vscode'
import { forgetPageWorker } from './pageWorker'
import { settings } from './settings'
import { pause, until } from './waiting'
import { page, press } from './window'

/** The view type of the grid in package.json. */
export const gridViewType = 'detent.setup'

let folder = ''
let copies = 0

/** Makes the folder of the next test. The suite does so before each. */
export function copySamples(title: string): void {
  const { samples, workspace } = settings()
  folder = join(workspace, `${++copies} ${title.replace(/[^\p{L}\p{N}]+/gu, ' ').slice(0, 60).trim()}`)
  mkdirSync(folder)
  if (existsSync(samples)) cpSync(samples, folder, { recursive: true })
}

/** Removes the folder of the test that has ended. The suite does so after each. */
export function removeCopy(): void {
  rmSync(folder, { recursive: true, force: true })
}

/** A file of this test's copy of the samples. */
export function sample(path: string): vscode.Uri {
  return vscode.Uri.file(join(folder, path))
}

/** Writes a file into this test's folder. */
export function write(path: string, content: string | Uint8Array): vscode.Uri {
  const target = join(folder, path)
  mkdirSync(dirname(target), { recursive: true })
  writeFileSync(target, content)
  return vscode.Uri.file(target)
}

/**
 * Makes a folder in which changes are noticed. Whoever watches for the editor may miss for good one that is made in another as soon as that is
 * made; made again, it is seen.
 */
export async function makeWatched(path: string): Promise<void> {
  const made = join(folder, path)
  const probe = join(made, 'probe')
  await until(`${path} is watched`, async () => {
    rmSync(made, { recursive: true, force: true })
    mkdirSync(made)
    const watcher = vscode.workspace.createFileSystemWatcher(new vscode.RelativePattern(vscode.Uri.file(made), '*'))
    const seen = new Promise<boolean>(resolve => watcher.onDidCreate(() => resolve(true)))
    // Until it is known that there is the folder.
    await pause(200)
    writeFileSync(probe, '')
    const isSeen = await Promise.race([seen, pause(2000)])
    watcher.dispose()
    return isSeen
  })
  rmSync(probe)
}

/**
 * Writes a file until what follows from it is seen. Whoever watches files for the editor takes a while to begin, and was seen on a busy
 * machine to miss a change.
 * @param seen gives something truthy once it is seen; is asked again and again
 */
export async function changeOnDisk(file: vscode.Uri, content: string, what: string, seen: () => Promise<unknown>): Promise<void> {
  await until(what, async () => {
    writeFileSync(file.fsPath, content)
    return until(what, seen, 4000)
  })
}

/** Has the extension start, in whichever host it runs: only one of our own host could be asked directly. */
export async function activate(): Promise<void> {
  await vscode.commands.executeCommand('detent.setups.refresh')
}

/** A file by the name that the extension knows it under, for a command that takes it as text: a browser's host sees this machine from afar. */
export function nameOf(uri: vscode.Uri): string {
  if (!settings().web) return uri.toString()
  return uri.with({ scheme: 'vscode-remote', authority: new URL(page().url()).host }).toString()
}

/** Opens a file in the grid, in the active group or in the one given. */
export async function openGrid(uri: vscode.Uri, column: vscode.ViewColumn = vscode.ViewColumn.Active): Promise<vscode.TextDocument> {
  await forgetPageWorker()
  await vscode.commands.executeCommand('vscode.openWith', uri, gridViewType, { viewColumn: column, preview: false })
  return vscode.workspace.openTextDocument(uri)
}

/** Opens a file in the text editor and puts the keyboard into it. */
export async function openText(uri: vscode.Uri, column: vscode.ViewColumn = vscode.ViewColumn.Active): Promise<vscode.TextDocument> {
  await vscode.commands.executeCommand('vscode.openWith', uri, 'default', { viewColumn: column, preview: false })
  return until('the text editor is active', () => {
    const document = vscode.window.activeTextEditor?.document
    return document?.uri.toString() === uri.toString() ? document : undefined
  })
}

/** The text of a file as the editor has it now, saved or not. */
export async function textOf(uri: vscode.Uri): Promise<string> {
  return (await vscode.workspace.openTextDocument(uri)).getText()
}

/** What the problems list says about a file, as `line:column code message`, the first line being 1. */
export function problemsOf(uri: vscode.Uri): string[] {
  return vscode.languages.getDiagnostics(uri).map(({ range, code, message }) => {
    const name = typeof code === 'object' ? code.value : code
    return `${range.start.line + 1}:${range.start.character + 1} ${name ?? ''} ${message}`
  })
}

/** Closes every editor without saving, and what lies over the window, and shows the explorer beside. The suite does so after each test. */
export async function closeEverything(): Promise<void> {
  await press('Escape')
  await vscode.commands.executeCommand('notifications.clearAll')
  for (let left = openTabs(); left > 0; left--) await vscode.commands.executeCommand('workbench.action.revertAndCloseActiveEditor')
  if (openTabs() > 0) await vscode.commands.executeCommand('workbench.action.closeAllEditors')
  await vscode.commands.executeCommand('workbench.action.joinAllGroups')
  await vscode.commands.executeCommand('workbench.view.explorer')
}

const openTabs = (): number => vscode.window.tabGroups.all.reduce((sum, group) => sum + group.tabs.length, 0)
