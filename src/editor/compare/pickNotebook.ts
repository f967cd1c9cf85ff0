import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { notebookPattern } from '../notebooks'
import { asText } from '../asText'
import type { Steps } from '../steps'

interface Item extends vscode.QuickPickItem {
  uri?: vscode.Uri
}

/** So many notebooks are looked for; what is beyond that is browsed to. */
const most = 500

/** Asks for a notebook, among those of the workspace or anywhere. With only one there is, that one unless it is asked `always`. */
export async function pickNotebook({ title, always = false }: { title: string; always?: boolean }, steps: Steps): Promise<vscode.Uri | undefined> {
  const found = await vscode.workspace.findFiles(notebookPattern, undefined, most)
  if (!always && found.length === 1) return found[0]
  const items = found.map((uri): Item => ({ ...nameParts(uri), uri })).sort((a, b) => a.label.localeCompare(b.label) || (a.description ?? '').localeCompare(b.description ?? ''))
  const browse: Item = { label: say('Browse…'), iconPath: new vscode.ThemeIcon('folder-opened'), alwaysShow: true }
  const chosen = await steps.ask([...items, browse], { title })
  if (chosen !== browse) return chosen?.uri
  steps.close()
  const [file] = await vscode.window.showOpenDialog({ title, filters: { [say('Setup notebook')]: ['yaml', 'yml'] } }) ?? []
  return file
}

function nameParts(uri: vscode.Uri): { label: string; description: string } {
  const path = vscode.workspace.asRelativePath(uri)
  const at = path.lastIndexOf('/')
  return { label: asText(path.slice(at + 1)), description: asText(at < 0 ? '' : path.slice(0, at)) }
}
