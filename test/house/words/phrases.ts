import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import ts from 'typescript'
import { templateKey } from '../../../src/core/words/say'
import { tablePhrases } from './tables'
import { english as compare } from '../../../webview/compare/strings'
import { english as grid } from '../../../webview/grid/strings'
import { english as turns } from '../../../webview/turns/strings'

/** A text of ours, as a catalogue knows it, and the file it is said in. */
export interface Said {
  key: string
  english: string
  file: string
}

/** Every text of the sources that goes through `say` or `phrase`, and every word of the pages. */
export function everyPhrase(): Said[] {
  // The command line speaks English, but what of it runs as the editor's thread says some in the editor's language.
  const said = [...sourceFiles(), ...parsed('src/cli')].flatMap(({ file, source }) => phrasesOf(source).map((key) => ({ key, english: key, file })))
  const pages = Object.entries({ compare, grid, turns }).flatMap(([page, words]) =>
    Object.entries(words).map(([key, english]) => ({ key: `${page}:${key}`, english, file: `webview/${page}/strings.ts` })))
  return [...said, ...tablePhrases(), ...pages]
}

/** The sources that say something to a person through the editor, parsed. */
export function sourceFiles(): { file: string; source: ts.SourceFile }[] {
  return ['src/core', 'src/language', 'src/editor'].flatMap(parsed)
}

function parsed(folder: string): { file: string; source: ts.SourceFile }[] {
  return filesUnder(folder).map((file) => ({ file, source: ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2022, true) }))
}

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts')).map((name) => join(folder, name).replaceAll('\\', '/')).sort()
}

function phrasesOf(source: ts.SourceFile): string[] {
  const keys: string[] = []
  const visit = (node: ts.Node): void => {
    const key = phraseAt(node)
    if (key !== undefined) keys.push(key)
    ts.forEachChild(node, visit)
  }
  visit(source)
  return keys
}

/** The key of a `say` with a template or a text, or of a `phrase`, where a node is one. */
export function phraseAt(node: ts.Node): string | undefined {
  if (ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'say') return keyOf(node.template)
  if (!ts.isCallExpression(node) || !['say', 'phrase'].includes(node.expression.getText())) return undefined
  const [first] = node.arguments
  return first && ts.isStringLiteralLike(first) ? first.text : undefined
}

function keyOf(template: ts.TemplateLiteral): string {
  return ts.isTemplateExpression(template) ? templateKey([template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)]) : template.text
}

/** The texts of a language, part by part as they are kept. */
export function wordsOf(language: string): { part: string; words: Record<string, string> }[] {
  const folder = `src/words/${language}`
  return readdirSync(folder).map((part) => ({ part, words: JSON.parse(readFileSync(join(folder, part), 'utf8')) as Record<string, string> }))
}
