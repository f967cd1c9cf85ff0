import type { Fix } from '../finding'
import { addAdjuster } from '../notebook/edits/addAdjuster'
import { offer } from '../notebook/edits/offer'
import { writeInstead } from '../notebook/edits/writeInstead'
import { guessAdjuster } from '../notebook/guessAdjuster'
import { settingRow, type Entry, type Notebook } from '../notebook/notebook'
import { nodeAt, pairOf, type TreeNode } from '../notebook/tree'
import { say } from '../words/say'
import { meantName } from './meantName'
import type { EntryRule, Report } from './rule'

export const unknownAdjuster: EntryRule = {
  code: 'unknown-adjuster',
  severity: 'error',
  says: 'A setting names an adjuster that this machine does not have.',
  why: 'A setting under a wrong name is lost: nothing compares, carries or checks it.',
  checkEntry: (entry, notebook) => {
    const strangers = entry.strangers.filter(({ leg }) => leg === undefined)
    return strangers.length === 0 ? [] : report(strangers, entry, notebook)
  },
}

function report(strangers: Entry['strangers'], entry: Entry, notebook: Notebook): Report[] {
  const { root, adjusters, text } = notebook
  // An adjuster may be defined and yet lack what it takes to read its positions; its own place says so.
  const defined = namesIn(nodeAt(root, ['adjusters']))
  // A name that is set here already would stand here twice.
  const written = namesIn(pairOf(entry.node, 'settings')?.value)
  const free = [...adjusters.keys()].filter((name) => !written.has(name))
  return strangers.filter(({ name }) => !defined.has(name)).map(({ name, key }) => {
    const meant = meantName(name, free)
    const hint = meant ? say`did you mean ${meant}?` : say('define it under `adjusters` first')
    const fixes = [...(meant ? writeInstead(text, key, meant) : []), ...(strangers.length > mostDefined ? [] : defineFix(notebook, name))]
    return { message: say`this machine has no adjuster ‘${name}’: ${hint}`, range: key.range, row: settingRow(name), fixes }
  })
}

/** Of more than a machine has, each looked for in all entries, nobody wants every one defined. */
const mostDefined = 100

function namesIn(node: TreeNode | undefined): ReadonlySet<string> {
  return new Set(node?.kind === 'map' ? node.pairs.map(({ key }) => key.text) : [])
}

/** Only where its name says what it is, and the way it is written the rest; what leaves a doubt is asked for by the editor. */
function defineFix(notebook: Notebook, name: string): Fix[] {
  const { on, legs, control, counts } = guessAdjuster(notebook, name)
  if (!on || !legs || !control || !counts) return []
  return offer(say`Define ‘${name}’: ${say(control.words)}, in ${counts.symbol}`, () => addAdjuster(notebook, { id: name, on, legs, controls: control.name, counts: counts.symbol }))
}
