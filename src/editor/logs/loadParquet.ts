import * as vscode from 'vscode'
import type { parquetText } from '../../core/logs/reading/parquet/parquetText'

let loaded: Promise<{ parquetText: typeof parquetText }> | undefined

/**
 * What reads Parquet, from its file beside this one, once. A browser's host loads one file of an extension and no other by
 * itself, and elsewhere a module has no address that both would take; so it is handed over as its own text.
 */
export function loadParquet(extension: vscode.Uri): Promise<{ parquetText: typeof parquetText }> {
  return loaded ??= load(vscode.Uri.joinPath(extension, 'dist', 'parquet.js'))
}

async function load(file: vscode.Uri): Promise<{ parquetText: typeof parquetText }> {
  const text = new TextDecoder().decode(await vscode.workspace.fs.readFile(file))
  const program = `const module = { exports: {} };\n${text}\nexport const parquetText = module.exports.parquetText;`
  const address = URL.createObjectURL(new Blob([program], { type: 'text/javascript' }))
  try {
    return await import(address) as { parquetText: typeof parquetText }
  } catch {
    // Node takes no such address, and browsers none such as this.
    return await import(`data:text/javascript,${encodeURIComponent(program)}`) as { parquetText: typeof parquetText }
  } finally {
    URL.revokeObjectURL(address)
  }
}
