import { parseArgs } from 'node:util'
import { mergeNotebooks } from '../core/merge/mergeNotebooks'
import { UsageError, type Outcome, type World } from './outcome'

export const mergeUsage = `detent merge BASE OURS THEIRS [--stdout] [--marker-size N] [--ours NAME] [--theirs NAME] [--path FILE]

Merges two versions of a notebook that began from BASE, entry by entry and adjuster by adjuster, and writes the result
to OURS, as git asks of a merge driver; --stdout (-p) prints it and changes no file. What both set differently stands
between the usual marks, of the size and with the names given. --path is what to call the file in messages.
Exit code: 0 merged, 1 conflicts, 2 usage or unreadable input.`

/** `detent merge`. */
export function merge(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true,
    options: {
      stdout: { type: 'boolean', short: 'p', default: false }, 'marker-size': { type: 'string', default: '7' },
      ours: { type: 'string', default: 'ours' }, theirs: { type: 'string', default: 'theirs' }, path: { type: 'string' },
    },
  })
  const [base, ours, theirs, ...more] = positionals
  if (base === undefined || ours === undefined || theirs === undefined || more.length > 0) throw new UsageError('merge: name three files: the common version, ours, and theirs')
  const markers = { size: markerSize(values['marker-size']!), ours: oneLine(values.ours!), theirs: oneLine(values.theirs!) }
  const { text, conflicts } = mergeNotebooks({ base: world.read(base), ours: world.read(ours), theirs: world.read(theirs) }, markers)
  if (!values.stdout) world.write(ours, text)
  const told = conflicts.map(({ line, message }) => `${values.path ?? ours}:${line}: ${message}\n`).join('')
  return { out: values.stdout ? text : '', ...(told ? { err: told } : {}), code: conflicts.length > 0 ? 1 : 0 }
}

function markerSize(text: string): number {
  if (!/^[1-9]\d?$/.test(text)) throw new UsageError(`--marker-size is a number from 1 to 99, not ‘${text}’`)
  return Number(text)
}

function oneLine(name: string): string {
  return name.replace(/\s+/g, ' ').trim()
}
