import { migrateNotebook } from '../migrate/migrateNotebook'
import { currentFormat } from '../notebook/readNotebook'
import { say } from '../words/say'
import type { NotebookRule } from './rule'

export const olderFormat: NotebookRule = {
  code: 'older-format',
  severity: 'error',
  says: 'The notebook is written in an older format.',
  why: 'What has another name since is not understood. The fix, and `detent migrate`, give it its new one and leave the rest alone.',
  checkNotebook: ({ older, format, text }) => {
    if (!older || !format) return []
    const migrated = migrateNotebook(text)
    const message = 'refused' in migrated ? say`format ${format.value} is older than ${currentFormat}: ${migrated.refused}` : say`format ${format.value} is older than ${currentFormat}; take the fix, which writes it in format ${currentFormat}`
    const fixes = 'refused' in migrated ? [] : [{ title: say`Write this notebook in format ${currentFormat}`, changes: migrated.changes }]
    return [{ message, range: format.range, fixes }]
  },
}
