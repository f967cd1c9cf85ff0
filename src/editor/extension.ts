import type * as vscode from 'vscode'

/** The composition root: a list of what the extension registers. */
export function activate(_context: vscode.ExtensionContext): void {}
