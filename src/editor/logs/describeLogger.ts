import * as vscode from 'vscode'
import { loggerOf, logFactsOf } from '../../core/derived/loggerOf'
import { logPathsOf } from '../../core/derived/logOf'
import { answered } from '../../core/grid/applyGesture'
import { firstRows } from '../../core/logs/analyseLog'
import type { LoggerMapping } from '../../core/logs/mapping/mapping'
import { proposeMapping } from '../../core/logs/mapping/proposeMapping'
import { resolveMapping } from '../../core/logs/mapping/resolveMapping'
import { isLogProblem, told } from '../../core/logs/problem'
import { detectDialect, headBytes } from '../../core/logs/reading/detectDialect'
import { mappingParts } from '../../core/logs/report/mappingText'
import { describeLogger as describe } from '../../core/notebook/edits/describeLogger'
import { say } from '../../core/words/say'
import { activeNotebook } from '../activeNotebook'
import { asText } from '../asText'
import { EditQueue } from '../grid/editQueue'
import type { Notebooks } from '../notebooks'
import { askParts, type Part, type TableSeen } from './askMapping'
import { findLog, folderOf } from './findLog'
import type { LogFile } from './logReader'
import type { Logs } from './logs'

const parts: readonly Part[] = ['time', 'front', 'rear', 'brake', 'lap']

/** Proposes which column of the logger is what from a look at a log, lets each be changed, and writes it as one edit. */
export async function describeLogger(notebooks: Notebooks, logs: Logs): Promise<void> {
  const uri = activeNotebook()
  if (!uri) return void vscode.window.showInformationMessage(say('Open the notebook of the machine first.'))
  const document = await vscode.workspace.openTextDocument(uri)
  const { notebook } = notebooks.of(document)
  const file = await chooseLog(uri, logPathsOf(notebook))
  if (!file) return
  const table = await lookAt(file, logs).catch((error: unknown) => (error as Error).message)
  if (typeof table === 'string') return void vscode.window.showWarningMessage(asText(say`This log cannot be described: ${table}`))
  const mapping = await settle(loggerOf(notebook) ?? table.proposed, table, (now) => {
    const resolved = resolveMapping(now, table.dialect, logFactsOf(notebooks.of(document).notebook))
    return 'problems' in resolved ? resolved.problems : []
  })
  if (!mapping) return
  const { refused } = await new EditQueue().run(document, () => {
    const now = notebooks.of(document).notebook
    return answered(now, () => ({ changes: describe(now, mapping) }))
  })
  if (refused !== undefined) await vscode.window.showWarningMessage(asText(refused))
}

/** A log of the notebook, or any other file. */
async function chooseLog(notebook: vscode.Uri, paths: readonly string[]): Promise<LogFile | undefined> {
  const found = await Promise.all(paths.map((path) => findLog(folderOf(notebook), path)))
  const there = found.flatMap((file, at) => ('why' in file ? [] : [{ label: asText(paths[at]!), file }])).reverse()
  const other = { label: say('Another file…'), file: undefined }
  const chosen = there.length === 0 ? other : await vscode.window.showQuickPick([...there, other], { title: say('Describe logger: from a look at which log?') })
  if (!chosen || chosen.file) return chosen?.file
  const [uri] = await vscode.window.showOpenDialog({ title: say('A log of this machine'), defaultUri: folderOf(notebook) }) ?? []
  if (!uri) return undefined
  const { size, mtime } = await vscode.workspace.fs.stat(uri)
  return { uri: uri.toString(), size, changed: mtime, ...(uri.scheme === 'file' ? { path: uri.fsPath } : {}) }
}

async function lookAt(file: LogFile, logs: Logs): Promise<TableSeen & { proposed: LoggerMapping }> {
  const head = await logs.headOf(file)
  const dialect = detectDialect(head, head.length < headBytes)
  if (isLogProblem(dialect)) throw new Error(told(dialect))
  const rows = firstRows(head, dialect)
  const { mapping, unsure } = proposeMapping(dialect, rows)
  return { dialect, rows, unsure, proposed: mapping }
}

/** The mapping as a list to be gone through: the first line writes it, each other changes one thing. */
async function settle(begun: LoggerMapping, table: TableSeen, problemsOf: (mapping: LoggerMapping) => string[]): Promise<LoggerMapping | undefined> {
  let mapping = begun
  for (;;) {
    const [problems, doubts] = [problemsOf(mapping), table.unsure]
    const write = {
      label: say('$(check) Write this into the notebook'), part: undefined,
      detail: asText(problems.length > 0 ? say`Not enough yet: ${problems.join('; ')}` : doubts.length > 0 ? say`Look at this first: ${doubts.join('; ')}` : say('Everything that is needed is there.')),
    }
    const lines = parts.map((part) => ({ label: say(askParts[part].label), description: asText(wordsOf(mapping, part)), part }))
    const chosen = await vscode.window.showQuickPick([write, ...lines], { title: say('Describe logger: choose what is different, or write it'), ignoreFocusOut: true })
    if (!chosen) return undefined
    if (chosen.part === undefined) return mapping
    mapping = await askParts[chosen.part].ask(mapping, table) ?? mapping
  }
}

function wordsOf(mapping: LoggerMapping, part: Part): string {
  const said = mappingParts(mapping)
  const found = said.find(({ key }) => key === part) ?? (part === 'time' ? said.find(({ key }) => key === 'rate') : undefined)
  return found ? `${found.key}: ${found.text}` : say('not logged')
}
