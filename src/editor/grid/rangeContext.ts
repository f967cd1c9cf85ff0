import * as vscode from 'vscode'

let told: boolean | undefined

/** Tells key bindings whether several cells are selected, where that is new: the editor weighs all its menus and keys at each word of it. */
export function tellRange(selected: boolean): void {
  if (selected === told) return
  told = selected
  void vscode.commands.executeCommand('setContext', 'detent.rangeSelected', selected)
}
