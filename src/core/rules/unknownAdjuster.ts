import { nodeAt, pairOf } from '../notebook/tree'
import { settingRow, type Entry, type Notebook } from '../notebook/notebook'
import { meantName } from './meantName'
import type { EntryRule } from './rule'
import { writeInstead } from './writeInstead'

export const unknownAdjuster: EntryRule = {
  code: 'unknown-adjuster',
  severity: 'error',
  says: 'A setting names an adjuster that this machine does not have.',
  why: 'A setting under a wrong name is lost: nothing compares, carries or checks it.',
  checkEntry: (entry, notebook) =>
    entry.strangers.filter(({ name, leg }) => leg === undefined && !isDefined(name, notebook)).map(({ name, range }) => {
      const meant = meantName(name, unusedNames(entry, notebook))
      const hint = meant ? `did you mean ${meant}?` : 'define it under `adjusters` first'
      return { message: `this machine has no adjuster ‘${name}’: ${hint}`, range, row: settingRow(name), fixes: meant ? [writeInstead(range, meant)] : [] }
    }),
}

/** An adjuster may be defined and yet lack what it takes to read its positions; its own place says so. */
function isDefined(name: string, { root }: Notebook): boolean {
  return pairOf(nodeAt(root, ['adjusters']), name) !== undefined
}

/** A name that is set here already would stand here twice. */
function unusedNames(entry: Entry, { adjusters }: Notebook): string[] {
  const settings = pairOf(entry.node, 'settings')?.value
  return [...adjusters.keys()].filter((name) => !pairOf(settings, name))
}
