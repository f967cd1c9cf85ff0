import * as vscode from 'vscode'
import { viewType } from '../notebooks'

/**
 * Puts another grid in a grid's place, by way of a group beside: a document that is not saved is never without an editor then,
 * so nobody is asked whether to save it. A group that was left empty is gone by itself; else the grid goes back to where it was.
 * @param anew holds the notebooks that are being opened so, for the page to look for what the other one kept
 */
export async function openAnew(tab: vscode.Tab, uri: vscode.Uri, anew: Set<string>): Promise<void> {
  const group = tab.group
  const isAlone = group.tabs.length === 1
  anew.add(uri.toString())
  try {
    await vscode.commands.executeCommand('vscode.openWith', uri, viewType, { viewColumn: vscode.ViewColumn.Beside, preview: false })
    // Tabs are told anew whenever one is opened, so it is looked for only now.
    const old = vscode.window.tabGroups.all.find(({ viewColumn }) => viewColumn === group.viewColumn)?.tabs.find((each) => gridOf(each)?.toString() === uri.toString())
    if (old) await vscode.window.tabGroups.close(old, true)
    if (!isAlone) await vscode.commands.executeCommand('moveActiveEditor', { to: 'position', by: 'group', value: group.viewColumn })
  } finally {
    anew.delete(uri.toString())
  }
}

/** The same for the grid that has the focus, where it is the one meant. */
export async function openActiveAnew(uri: vscode.Uri, anew: Set<string>): Promise<void> {
  const { activeTab } = vscode.window.tabGroups.activeTabGroup
  if (activeTab && gridOf(activeTab)?.toString() === uri.toString()) await openAnew(activeTab, uri, anew)
}

/** The notebook that a tab shows as a grid. */
export function gridOf({ input }: vscode.Tab): vscode.Uri | undefined {
  return input instanceof vscode.TabInputCustom && input.viewType === viewType ? input.uri : undefined
}
