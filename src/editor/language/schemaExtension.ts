import * as vscode from 'vscode'

/**
 * Whether the common YAML extension is there: it offers and explains by itself what the schema says, since our
 * manifest hands it the schema, and nobody wants to read everything twice.
 */
export function readsSchema(): boolean {
  return vscode.extensions.getExtension('redhat.vscode-yaml') !== undefined
}
