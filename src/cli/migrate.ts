import { parseArgs } from 'node:util'
import { migrateNotebook } from '../core/migrate/migrateNotebook'
import { applyChanges, lineAndColumn } from '../core/text'
import { UsageError, type Outcome, type World } from './outcome'
import { forTerminal } from './forTerminal'

/** `detent migrate`. */
export function migrate(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options: { write: { type: 'boolean', default: false } } })
  if (positionals.length === 0) throw new UsageError('migrate: name files or folders')
  const told = { out: '', err: '', left: 0 }
  for (const path of world.find(positionals)) {
    const text = world.read(path)
    const migrated = migrateNotebook(text)
    if ('refused' in migrated) {
      const { line, column } = lineAndColumn(text, migrated.range.start)
      told.err += `${path}:${line + 1}:${column + 1}: ${migrated.refused}\n`
    } else if (migrated.changes.length > 0) {
      if (values.write) world.write(path, applyChanges(text, migrated.changes))
      else told.left++
      told.out += `${path}: ${values.write ? `brought from format ${migrated.from} to today's` : `format ${migrated.from}`}\n`
    }
  }
  return { out: forTerminal(told.out), ...(told.err ? { err: told.err } : {}), code: told.err ? 2 : told.left > 0 ? 1 : 0 }
}
