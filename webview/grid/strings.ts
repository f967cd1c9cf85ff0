/**
 * Every word the grid shows, in one place. The host may override any of them by key; a missing one stays English.
 * `{0}`, `{1}` stand for values. Nothing here is HTML.
 */
export const english = {
  'bar.addEntry': 'Add entry',
  'bar.remark': 'Remark',
  'bar.editAsText': 'Edit as text',
  'bar.about': 'About',
  'bar.whatNext': 'What next?',
  'bar.findings': 'Findings',
  'bar.charts': 'Charts',
  'advice.none': 'There is no entry yet to advise on',
  'charts.title': 'Charts',
  'charts.groups': 'Kinds of charts',
  'charts.close': 'Close the charts',
  'charts.height': 'Height of the charts',
  'charts.asTable': 'As table',
  'charts.hint': 'Left and right walk the points, up and down go to another line, Enter goes to the entry, plus and minus zoom, zero shows all, Escape goes back to the grid.',
  'charts.failed': 'The charts could not be loaded. Close this tab and open the notebook again.',
  'card.showChart': 'Show chart',
  'card.more': 'There is more to read: press About',
  'card.none': 'There is nothing more to say about this cell',
  'bar.findings.none': 'No findings',
  'bar.actions': 'Notebook',
  'bar.untitled': 'Setup notebook',

  'detail.name': 'Current cell',
  'grid.name': '{0}: settings by entry',
  'grid.hint': 'Arrow keys move, Enter edits, Escape leaves the grid.',
  'grid.corner': 'Adjuster or reading',
  'grid.addFirst.title': 'No entry yet',
  'grid.addFirst.about': 'The adjusters are set out. Add an entry to write down where they stand.',
  'grid.addFirst': 'Add the first entry',

  'cell.empty': 'empty',
  'cell.carried': 'carried forward',
  'cell.changed': 'changed here',
  'cell.computed': 'worked out, not edited',
  'cell.pending': 'being written',
  'cell.refused': 'not written',
  'cell.remark': 'Remark: {0}',
  'cell.place': '{0}, {1}',

  'entry.asFound': 'as found',
  'entry.baseline': 'baseline',
  'entry.from': 'from {0}',
  'entry.heirs': 'leads on to {0}',
  'entry.left': 'tried and left',

  'severity.error': 'Error',
  'severity.warning': 'Warning',
  'severity.info': 'Note',
  'severity.error.many': 'errors',
  'severity.warning.many': 'warnings',
  'severity.info.many': 'notes',

  'findings.title': 'Findings',
  'findings.none': 'Nothing to report.',
  'findings.close': 'Close the findings',
  'findings.line': 'line {0}',
  'findings.accept': 'Accept with reason…',
  'findings.appeared': '{0}: {1}',

  'refuse.readOnly': 'This notebook cannot be edited here: {0}',
  'refuse.broken': 'The text has an error; nothing is written until it is mended.',
  'refuse.computed': 'This row is worked out from others and is not edited.',
  'refuse.group': 'A heading holds nothing to edit.',
  'refuse.noPosition': 'Only a position is moved by a count.',
  'refuse.oneLeg': 'There is only one of this, so there are no two legs to set.',
  'refuse.noAdjuster': 'Stand on the row of the adjuster that is to be taken out.',
  'refuse.noRemark': 'A remark belongs to a cell of an entry.',
  'refuse.noEntry': 'There is no entry here to edit.',

  'refused.title': 'Not written: {0}',
  'refused.again': 'Edit again',
  'refused.letGo': 'Discard',
  'refused.keys': 'Enter edits it again, Escape discards it.',
  'refused.unsent': 'It is not certain that this was written.',
  'refused.gone': 'What was typed has no cell any more: {0}',

  'silent.title': 'Not connected.',
  'silent.about': 'The editor does not answer. What you typed is kept here. Close this tab and open the notebook again; if that does not help, reload the window.',
  'silent.typed': 'Typed and not yet written: {0}',

  'trouble.line': 'Line {0}',
  'trouble.broken': 'Shown as last understood, not editable until the text is mended.',
  'trouble.newer': 'Read only.',

  'form.save': 'Save',
  'form.cancel': 'Cancel',
  'form.header.title': 'Entry {0}',
  'form.header.id': 'Name',
  'form.header.date': 'Date',
  'form.header.reason': 'Reason',
  'form.entry.title': 'New entry',
  'form.entry.add': 'Add',
  'form.remark.title': 'Remark on {0}',
  'form.remark.text': 'Remark',
  'form.remark.keys': 'Ctrl+Enter saves. An empty remark is taken out.',
  'form.accept.title': 'Accept this finding',
  'form.accept.about': 'It is no longer reported. The reason is written into the notebook.',
  'form.accept.reason': 'Reason',
  'form.accept.accept': 'Accept',
  'form.accept.missing': 'A reason is needed.',
  'form.adjuster.title': 'Take out {0}',
  'form.adjuster.about': 'Taken out with it, they can be had back by undoing.',
  'form.adjuster.remove': 'Take out with all positions',
  'form.entry.missing': 'A name and a date are needed.',

  'edit.name': '{0}, {1}, edit',
  'edit.choices': 'Choices for {0}',

  'begin.title': 'Begin a setup notebook',
  'begin.about': 'A notebook lists the adjusters of one machine and, entry by entry, where each of them stands, why it was moved and what the ride was like. It is a plain text file: it can be read, compared and kept beside the logs.',
  'begin.choose': 'How is the machine built?',
  'begin.none': 'Write the notebook as text to begin.',

  'copied.one': 'Copied.',
  'copied.many': '{0} cells copied.',
  'selected': '{0} cells selected.',
  'left.title': 'Left as they were:',
  'left.one': '{0}: {1}',
  'left.more': 'and {0} more.',
  'left.beyond': '{0} texts lay beyond the last row or entry.',
  'filled': '{0} cells filled.',
  'fill.noColumn': 'There is no entry before this one to fill from.',
  'fill.noRow': 'There is no row above this one to fill from.',
  'legs.set': '{0}, both legs: {1}',
  'did.duplicateEntry': 'Entry {0} duplicated.',
  'did.insertEntry': 'Entry inserted after {0}.',
  'did.removeEntry': 'Entry {0} taken out.',
  'did.moveEntryLeft': 'Entry {0} moved to the left.',
  'did.moveEntryRight': 'Entry {0} moved to the right.',
  'did.removeAdjuster': '{0} taken out.',
  'cautions.title': 'Before you turn anything',
} as const

export type StringKey = keyof typeof english

let given: Record<string, string> = {}

/** Takes the host's wording for any of the keys. */
export function wordAs(strings: Record<string, string>): void {
  given = strings
}

/** The words for a key, with `{0}`… filled in. */
export function say(key: StringKey, ...values: (string | number)[]): string {
  return (given[key] ?? english[key]).replace(/\{(\d)\}/g, (whole, index) => String(values[Number(index)] ?? whole))
}
