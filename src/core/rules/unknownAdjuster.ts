import { nearest } from '../nearest'
import type { EntryRule } from './rule'

export const unknownAdjuster: EntryRule = {
  code: 'unknown-adjuster',
  severity: 'error',
  says: 'A setting names an adjuster that this machine does not have.',
  why: 'A setting under a wrong name is lost: nothing compares, carries or checks it.',
  checkEntry: (entry, notebook) =>
    entry.strangers.filter((stranger) => stranger.leg === undefined).map(({ name, range }) => {
      const meant = nearest(name, notebook.adjusters.keys())
      const fixes = meant ? [{ title: `Write ‘${meant}’`, changes: [{ ...range, text: meant }] }] : []
      const hint = meant ? `; did you mean ${meant}?` : '; it is not under `adjusters`'
      return { message: `‘${name}’ is no adjuster of this machine${hint}`, range, fixes }
    }),
}
