import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { refTypes, type Ref } from './gitApi'
import type { RevisionChoice, Revisions } from './revisions'
import { asText } from '../asText'

interface Item extends vscode.QuickPickItem {
  revision?: string
}

/**
 * Asks for a revision of a file: HEAD, what is staged, a branch, a tag, a commit that touched it, or any that is typed.
 * Says why where there are none.
 */
export async function pickRevision(uri: vscode.Uri, revisions: Revisions): Promise<string | undefined> {
  const choices = await revisions.choices(uri)
  if ('missing' in choices) return void vscode.window.showWarningMessage(asText(choices.missing))
  const pick = vscode.window.createQuickPick<Item>()
  const items = itemsOf(choices)
  // Another list has just closed: a page that gets its focus back late is not to close this one.
  pick.ignoreFocusOut = true
  Object.assign(pick, { title: say('Compare: at which revision?'), placeholder: say('A branch, a tag, a commit; or type one, such as HEAD~3'), items, matchOnDescription: true, matchOnDetail: true })
  return new Promise((resolve) => {
    pick.onDidChangeValue((value) => {
      const typed = value.trim()
      pick.items = typed === '' ? items : [...items, separator(say('As typed')), { label: asText(typed), iconPath: new vscode.ThemeIcon('edit'), revision: typed, alwaysShow: true }]
    })
    pick.onDidAccept(() => {
      const [chosen] = pick.activeItems
      if (chosen?.revision === undefined) return
      resolve(chosen.revision)
      pick.hide()
    })
    pick.onDidHide(() => {
      resolve(undefined)
      pick.dispose()
    })
    pick.show()
  })
}

function itemsOf({ refs, commits }: RevisionChoice): Item[] {
  const named = (type: Ref['type'], icon: string): Item[] => refs.flatMap((ref) => (ref.type === type && ref.name !== undefined ? [{ label: asText(ref.name), iconPath: new vscode.ThemeIcon(icon), revision: ref.name }] : []))
  const section = (label: string, items: Item[]) => (items.length > 0 ? [separator(label), ...items] : [])
  return [
    { label: 'HEAD', description: say('the last commit'), iconPath: new vscode.ThemeIcon('git-commit'), revision: 'HEAD' },
    { label: say('As it is staged'), iconPath: new vscode.ThemeIcon('diff-added'), revision: '' },
    ...section(say('Branches'), [...named(refTypes.head, 'git-branch'), ...named(refTypes.remoteHead, 'cloud')]),
    ...section(say('Tags'), named(refTypes.tag, 'tag')),
    ...section(say('Commits of this file'), commits.map(({ hash, message, authorDate, authorName }) => ({
      label: asText(message.split('\n')[0] ?? ''), description: asText([hash.slice(0, 7), authorName, authorDate?.toLocaleDateString()].filter(Boolean).join(' · ')),
      iconPath: new vscode.ThemeIcon('git-commit'), revision: hash,
    }))),
  ]
}

const separator = (label: string): Item => ({ label, kind: vscode.QuickPickItemKind.Separator })
