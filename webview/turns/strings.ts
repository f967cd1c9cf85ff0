import { createWords } from '../page/words'

/** Every word the page of a turn list shows of its own. The host may override any of them by key; `{0}`… stand for values. */
export const english = {
  'title': 'Turn list: {0}',
  'from': 'From {0}',
  'to': 'To {0}',
  'bar.name': 'Turn list',
  'bar.copy': 'Copy as text',
  'bar.save': 'Save to print…',
  'bar.larger': 'Larger type',
  'bar.untick': 'Untick all',
  'progress.left': '{0} of {1} left',
  'progress.done': 'All {0} done. Ride slowly at first.',
  'hint': 'Space ticks, Enter ticks and goes on, arrow keys move.',
  'cannot.title': 'Cannot be reached by turning',
  'care.title': 'Take care',
  'care': 'Care: {0}',
  'nothing': 'Nothing to turn: it stands there already.',
  'nothing.else': 'Nothing else to turn.',
  'turn.way': 'from {0} to {1}',
  'changed': 'The notebook has changed since. The list is as it is now; what is no longer the same is unticked.',
} as const

export type StringKey = keyof typeof english

export const { say, wordAs } = createWords<StringKey>(english)
