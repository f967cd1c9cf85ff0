import { toldByReading } from '../notebook/toldByReading'
import type { Notebook } from '../notebook/notebook'
import { pairOf, scalarAt, type ScalarNode } from '../notebook/tree'
import { say } from '../words/say'
import { meantName } from './meantName'
import type { NotebookRule, Report } from './rule'
import { writeInstead } from '../notebook/edits/writeInstead'

export const unknownRule: NotebookRule = {
  code: 'unknown-rule',
  severity: 'warning',
  says: '`rules` or `accepted` names a finding that there is not, or that cannot be silenced.',
  why: 'A misspelt code silences nothing.',
  checkNotebook: (notebook, codes) => named(notebook).flatMap(({ code, node, beside }) => (code === '' || codes.has(code) ? [] : [report(notebook.text, node, [...codes].filter((each) => !beside.has(each)))])),
}

interface Named {
  code: string
  node: ScalarNode
  /** Codes that stand in the same group and cannot stand there twice. */
  beside: ReadonlySet<string>
}

function named({ root, accepted }: Notebook): Named[] {
  const rules = pairOf(root, 'rules')?.value
  const pairs = rules?.kind === 'map' ? rules.pairs : []
  const beside = new Set(pairs.map(({ key }) => key.text))
  return [...pairs.map(({ key }) => ({ code: key.text, node: key, beside })), ...accepted.flatMap((each) => {
    const node = scalarAt(each.node, ['finding'])
    return node ? [{ code: node.text, node, beside: new Set<string>() }] : []
  })]
}

function report(text: string, node: ScalarNode, codes: readonly string[]): Report {
  const { text: code, range } = node
  if (toldByReading.some((each) => each.code === code)) return { message: say`‘${code}’ cannot be silenced: mend what it is about`, range }
  const meant = meantName(code, codes)
  return { message: say`no finding is called ‘${code}’${meant ? say`; did you mean ${meant}?` : ''}`, range, fixes: meant ? writeInstead(text, node, meant) : [] }
}
