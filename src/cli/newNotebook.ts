import { parseArgs } from 'node:util'
import { architectures, findArchitecture } from '../core/adjusters/architectures'
import { writeNotebook } from '../core/adjusters/architectures/writeNotebook'
import { cautions } from '../core/grid/cautions'
import { nearest } from '../core/nearest'
import { bareName, isNotebookPath } from '../core/notebook/fileName'
import { labelFrom } from '../core/notebook/readAdjusters'
import { UsageError, type Outcome, type World } from './outcome'

/** The kinds of machine that a notebook can begin with, a line each. */
export function kindList(): string {
  return architectures.map(({ key, label }) => `  ${key.padEnd(24)}${label}`).join('\n')
}

/** `detent new`. */
export function newNotebook(args: readonly string[], world: World): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args], allowPositionals: true, options: { from: { type: 'string' }, name: { type: 'string' }, date: { type: 'string' } },
  })
  const [path, ...more] = positionals
  if (path === undefined || more.length > 0) throw new UsageError('new: name one file')
  if (path !== '-' && !isNotebookPath(path)) throw new UsageError(`${path}: a notebook is named *.setup.yaml`)
  const architecture = findArchitecture(values.from ?? '')
  if (!architecture) throw new UsageError(unknownKind(values.from))
  const name = values.name ?? labelFrom(bareName(path))
  const text = writeNotebook(architecture, { date: values.date ?? world.today(), cautions, name: path === '-' ? (values.name ?? '') : name })
  if (path === '-') return { out: text, code: 0 }
  world.create(path, text)
  return { out: `${path}: begun as ‘${architecture.label}’\n`, code: 0 }
}

function unknownKind(kind: string | undefined): string {
  const keys = architectures.map(({ key }) => key)
  const meant = kind === undefined ? undefined : nearest(kind, keys)
  return `--from names the kind of machine: ${keys.join(', ')}${meant ? `; did you mean ${meant}?` : ''}`
}
