import { newerWords } from '../migrate/migrateNotebook'
import type { NotebookRule } from './rule'

export const newerFormat: NotebookRule = {
  code: 'newer-format',
  severity: 'error',
  says: 'The notebook is written in a newer format than this program knows.',
  why: 'Editing what is only half understood could lose something. It is shown, and not edited.',
  checkNotebook: ({ newer, format }) =>
    newer && format ? [{ message: newerWords(format.value), range: format.range }] : [],
}
