import * as vscode from 'vscode'

/**
 * Whether the common YAML extension offers or explains by itself what the schema says, since our manifest hands it the
 * schema, and nobody wants to read everything twice. What its user has turned off there, it does not.
 */
export function readsSchema(feature: 'completion' | 'hover'): boolean {
  return vscode.extensions.getExtension('redhat.vscode-yaml') !== undefined && vscode.workspace.getConfiguration('yaml').get(feature) !== false
}
