import type { Finding } from '../finding'
import { nearest } from '../nearest'
import { readAmount } from '../notation/amount'
import { phrase, say } from '../words/say'
import type { ShapeError } from './checkShape'
import { isPlainKey } from './edits/layout'
import { writeRaw } from './edits/writeInstead'
import { lineEndOf, lineStart } from '../text'
import type { ScalarNode, TreeNode } from './tree'

type Words = Pick<Finding, 'message' | 'fixes'>

/** A place of the notebook, how to speak of it, and what stands there. */
export interface Place {
  subject: string
  node: TreeNode | undefined
  /** The whole text. */
  text: string
}

/** What is wrong at one place and what to write instead, from all that the schema has against it. */
export function shapeWords(errors: readonly ShapeError[], { subject, node, text }: Place): Words | undefined {
  const missing = missingNames(errors)
  if (missing.length > 0) return { message: missingMessage(missing) }
  // A branch of a choice whose kind fits says what is really wrong; the other branches only miss their kind.
  const exact = errors.find(({ keyword }) => keyword !== 'type' && keyword !== 'anyOf')
  if (exact) return exactWords(exact, { subject, node, text })
  const kinds = errors.flatMap(({ keyword, params }) => (keyword === 'type' ? [params['type']].flat() as string[] : []))
  return kinds.length > 0 ? kindWords(kinds, { subject, node, text }) : undefined
}

/** The same for the notebook as a whole, which can only lack its format. */
export function rootWords(errors: readonly ShapeError[], root: TreeNode, text: string): Words {
  const message = say`${missingMessage(missingNames(errors))}: begin with \`format: 1\``
  const first = root.kind === 'map' ? root.pairs[0] : undefined
  if (root.kind !== 'map' || !first || root.pairs.some(({ key }) => key.text === 'format')) return { message }
  // Behind an anchor or a `? ` it would become another key's.
  if (root.marked || !(root.flow ? text[root.range.start] === '{' && !first.key.marked : isPlainKey(text, first.key))) return { message }
  const at = first.key.range.start
  // All keys of a notebook may be indented, as long as they are alike.
  const indent = text.slice(lineStart(text, at), at)
  // Behind a byte order mark the first line is further in than it looks.
  if (indent !== '' && text.startsWith('\ufeff')) return { message }
  return { message, fixes: [{ title: say('Write ‘format: 1’'), changes: [{ start: at, end: at, text: `format: 1${root.flow ? ', ' : lineEndOf(text) + indent}` }] }] }
}

function missingNames(errors: readonly ShapeError[]): string[] {
  return errors.filter(({ keyword }) => keyword === 'required').map(({ params }) => String(params['missingProperty']))
}

function missingMessage(names: readonly string[]): string {
  return say`${names.map((name) => `\`${name}\``).join(say(' and '))} ${names.length === 1 ? say('is') : say('are')} missing here`
}

function exactWords({ keyword, params }: ShapeError, place: Place): Words {
  const { subject } = place
  const limit = String(params['limit'])
  switch (keyword) {
    case 'enum': return choiceWords((params['allowedValues'] as unknown[]).map(String), place)
    case 'minItems': return { message: say`${subject} needs at least ${limit} ${limit === '1' ? say('value') : say('values')}` }
    case 'maxItems': return { message: say`${subject} takes at most ${limit} values` }
    case 'minimum': return { message: say`${subject} must be ${limit} or more` }
    case 'maximum': return { message: say`${subject} must be ${limit} or less` }
    case 'exclusiveMinimum': return { message: say`${subject} must be more than ${limit}` }
    case 'uniqueItems': return { message: say`the same value stands twice in ${subject}` }
    default: return { message: say`${subject} does not belong here in this form` }
  }
}

function choiceWords(names: readonly string[], { subject, node, text }: Place): Words {
  if (node?.kind !== 'scalar') return { message: say`${subject} must be one of these: ${names.join(', ')}` }
  const meant = nearest(node.text, names)
  return { message: say`‘${node.text}’ is not one of these: ${names.join(', ')}`, ...(meant ? { fixes: writeRaw(text, node, meant, meant) } : {}) }
}

const kinds: Record<string, string> = {
  string: phrase('a text'), number: phrase('a number'), integer: phrase('a whole number'), object: phrase('a group of `key: value` lines'), array: phrase('a list'), boolean: phrase('true or false'),
}

function kindWords(wanted: readonly string[], { subject, node, text }: Place): Words {
  const names = [...new Set(wanted)].map((kind) => say(kinds[kind] ?? kind))
  const message = say`${subject} must be ${names.length > 1 ? say`${names.slice(0, -1).join(', ')} or ${names.at(-1)!}` : names[0]!}`
  if (node?.kind !== 'scalar') return { message }
  if (wanted.includes('number') || wanted.includes('integer')) return wanted.includes('string') ? { message } : numberWords(message, node, text)
  if (wanted.includes('boolean')) return { message, ...truthFix(node, text) }
  if (wanted.includes('string')) return { message: say`${message}: put it in quotes`, fixes: quoteFix(node, text) }
  return { message }
}

/** A number in quotes, with a decimal comma or with a unit, where only a bare one is expected. */
function numberWords(message: string, node: ScalarNode, source: string): Words {
  const reading = readAmount(node.text)
  if (reading.value && reading.value.rest !== '') return { message: say`${message} without a unit` }
  const text = reading.value ? String(reading.value.amount) : reading.suggestion
  return text !== undefined && /^-?\d+(\.\d+)?$/.test(text) ? { message, fixes: writeRaw(source, node, text, text) } : { message }
}

const truths: Record<string, string> = { yes: 'true', y: 'true', on: 'true', x: 'true', true: 'true', no: 'false', n: 'false', off: 'false', false: 'false' }

function truthFix(node: ScalarNode, text: string): Pick<Words, 'fixes'> {
  const meant = Object.hasOwn(truths, node.text.toLowerCase()) ? truths[node.text.toLowerCase()] : undefined
  return meant ? { fixes: writeRaw(text, node, meant, meant) } : {}
}

function quoteFix(node: ScalarNode, text: string): NonNullable<Words['fixes']> {
  const quoted = JSON.stringify(node.text)
  return writeRaw(text, node, quoted, quoted)
}
