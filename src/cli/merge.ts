import { parseArgs } from 'node:util'
import { mergeNotebooks } from '../core/merge/mergeNotebooks'
import { UsageError, type Outcome, type World } from './outcome'

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
