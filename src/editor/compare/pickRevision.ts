import * as vscode from 'vscode'
import { say } from '../../core/words/say'
import { refTypes, type Ref } from './gitApi'
import type { RevisionChoice, Revisions } from './revisions'
import { asText } from '../asText'
import type { Steps } from '../steps'

interface Item extends vscode.QuickPickItem {
  revision?: string
}

/**
 * Asks for a revision of a file: HEAD, what is staged, a branch, a tag, a commit that touched it, or any that is typed.
 * Says why where there are none.
 */
export async function pickRevision(uri: vscode.Uri, revisions: Revisions, steps: Steps): Promise<string | undefined> {
  const choices = await revisions.choices(uri)
  if ('missing' in choices) return void vscode.window.showWarningMessage(asText(choices.missing))
  const typed = (value: string): Item[] => [separator(say('As typed')), { label: asText(value), iconPath: new vscode.ThemeIcon('edit'), revision: value, alwaysShow: true }]
  const question = { title: say('Compare: at which revision?'), placeholder: say('A branch, a tag, a commit; or type one, such as HEAD~3'), typed }
  return (await steps.ask(itemsOf(choices), question))?.revision
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
