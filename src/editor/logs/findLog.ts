import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import type { LogFile } from './logReader'

/** Why a log is not read; `absent` where there is no such file. */
export interface NoLog {
  why: string
  absent?: true
}

/** The folder a notebook's logs are named from: its own. */
export const folderOf = (notebook: vscode.Uri): vscode.Uri => vscode.Uri.joinPath(notebook, '..').with({ query: '', fragment: '' })

/**
 * Looks for a log below a folder, `path` being as `readLogPath` reads it, without `..`. Neither the file nor a folder on
 * the way may be a link: it would lead out of what was opened, whoever put it there.
 */
export async function findLog(folder: vscode.Uri, path: string): Promise<LogFile | NoLog> {
  let uri = folder
  let found: vscode.FileStat | undefined
  for (const step of path.split('/')) {
    uri = vscode.Uri.joinPath(uri, step)
    try {
      found = await vscode.workspace.fs.stat(uri)
    } catch {
      return { why: say`there is no file ${path} beside this notebook`, absent: true }
    }
    if (found.type & vscode.FileType.SymbolicLink) return { why: say`${step} is a link to somewhere else, which is not followed; put the file itself there` }
  }
  if (!found || !(found.type & vscode.FileType.File)) return { why: say`${path} is a folder; name the file in it` }
  return { uri: uri.toString(), size: found.size, changed: found.mtime, ...(uri.scheme === 'file' ? { path: uri.fsPath } : {}) }
}
