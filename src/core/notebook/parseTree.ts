import { isAlias, isMap, isPair, isScalar, isSeq, parseDocument, type Node, type Scalar, type YAMLError, type YAMLMap, type YAMLSeq } from 'yaml'
import type { Finding } from '../finding'
import type { Range } from '../text'
import { language, phrase, say } from '../words/say'
import { deepestNesting } from './deepestNesting'
import { findForbidden } from './findForbidden'
import { readPlain } from './plain/readPlain'
import { emptyAt, markShared, shiftTree, type ListNode, type MapNode, type Pair, type ScalarNode, type TreeNode } from './tree'

/** What came of parsing: the tree as far as it was understood, and what YAML itself complains about. */
export interface Parsed {
  root?: TreeNode
  findings: Finding[]
  /** Something in it reaches past itself: an anchor, an alias, or what may begin another document. */
  inseparable?: true
}

/** A text longer than this is no notebook but an accident, and would keep whoever typed in it waiting. */
export const longestText = 4_000_000
/** Colons, commas, brackets and line ends together: short as it is, a text of nothing else takes as long. */
const mostMarks = 400_000
/** Values behind aliases, each time one is followed. */
const mostAliased = 100_000
/** Levels of nesting. How deep the parser itself comes depends on the stack; this does not, and is well below. */
const mostDepth = 500
/** After so many complaints one more is no help. */
const mostFindings = 100
/** The marks and directives that stand between documents. */
const betweenDocuments = /^(?:---|\.\.\.|%)/m

/** Parses YAML 1.2 into a tree; never throws. An error in the findings means that the text must not be edited by us. */
export function parseTree(text: string): Parsed {
  return parseAt(text, 0)
}

/** Parses a piece of a longer text, each value at its place in that. */
export function parseAt(piece: string, base: number): Parsed {
  const refused = refusal(piece)
  const root = refused ? undefined : readPlain(piece, base)
  return root ? { root, findings: [] } : shiftParsed(refused ?? parseByLibrary(piece), base)
}

function refusal(text: string): Parsed | undefined {
  if (isTooMuch(text)) return unread(say('this file is too long for a notebook, which holds one machine’s history'), text)
  // A list may stand as far left as its key, so that an indentation may be two levels.
  if (2 * deepestNesting(text) > mostDepth) return unread(say('this is nested too deeply to be read'), text)
  return undefined
}

/** Whatever the text holds: what `parseTree` does with all that is not plain. */
export function parseByLibrary(text: string): Parsed {
  try {
    // Looking for keys that stand twice is left to us: the parser's way takes minutes for a long map.
    const document = parseDocument(text, { prettyErrors: false, version: '1.2', schema: 'core', resolveKnownTags: false, logLevel: 'error', uniqueKeys: false })
    const builder = new TreeBuilder(text)
    const root = document.contents ? builder.node(document.contents as Node) : undefined
    const findings = [...document.errors.map(toFinding('error', text)), ...findForbidden(text), ...builder.findings, ...document.warnings.map(toFinding('warning', text))]
    const inseparable = builder.sawAnchor || betweenDocuments.test(text)
    return { ...(root ? { root } : {}), findings: findings.slice(0, mostFindings), ...(inseparable ? { inseparable } : {}) }
  } catch (error) {
    return unread(error instanceof RangeError ? say('this is nested too deeply to be read') : say`this cannot be read: ${String(error)}`, text)
  }
}

/** The same at another place. */
export function shiftParsed({ root, findings, inseparable }: Parsed, by: number): Parsed {
  return {
    ...(root ? { root: shiftTree(root, by) } : {}),
    findings: findings.map((finding) => ({ ...finding, range: { start: finding.range.start + by, end: finding.range.end + by } })),
    ...(inseparable ? { inseparable } : {}),
  }
}

function isTooMuch(text: string): boolean {
  if (text.length <= mostMarks || text.length > longestText) return text.length > longestText
  let marks = 0
  for (let at = 0; at < text.length; at++) if (':,[]{}\n'.includes(text[at]!)) marks++
  return marks > mostMarks
}

function unread(message: string, text: string): Parsed {
  return { findings: [{ code: 'yaml-syntax', severity: 'error', message, range: { start: 0, end: Math.min(1, text.length) } }] }
}

class TreeBuilder {
  readonly findings: Finding[] = []
  sawAnchor = false
  readonly #anchors = new Map<string, { node: TreeNode; size: number } | undefined>()
  #nodes = 0
  #aliased = 0
  #depth = 0

  constructor(readonly text: string) {}

  node(source: Node): TreeNode {
    const before = this.#nodes++
    if (isAlias(source) || source.anchor) this.sawAnchor = true
    if (isAlias(source)) return this.#alias(source.source, this.#range(source))
    const { anchor, tag } = source
    // Known and not yet there: an alias inside its own anchor would never end.
    if (anchor) this.#anchors.set(anchor, undefined)
    if (++this.#depth > mostDepth) throw new RangeError('nested too deeply')
    const made = isMap(source) ? this.#map(source) : isSeq(source) ? this.#list(source) : this.#scalar(source as Scalar)
    this.#depth--
    if (anchor) this.#anchors.set(anchor, { node: made, size: this.#nodes - before })
    return anchor || tag ? Object.assign(made, { marked: true }) : made
  }

  #map(source: YAMLMap): MapNode {
    const pairs: Pair[] = []
    const keys = new Set<string>()
    for (const item of source.items) {
      const key = this.#key(item.key as Node | null, source)
      if (key.style === 'empty') this.#complain(say('a key is missing here, before the colon'), key.range)
      if (keys.has(key.text)) this.#complain(say('this key stands here twice; keep one of them'), key.range)
      keys.add(key.text)
      pairs.push({ key, value: item.value ? this.node(item.value as Node) : emptyAt(key.range.end) })
    }
    return { kind: 'map', flow: source.flow === true, pairs, range: this.#around(source, pairs.at(-1)?.value) }
  }

  #key(source: Node | null, map: YAMLMap): ScalarNode {
    const made = source ? this.node(source) : emptyAt(map.range?.[0] ?? 0)
    if (made.kind === 'scalar') return made
    return { kind: 'scalar', value: '', text: this.text.slice(made.range.start, made.range.end), style: 'plain', range: made.range, marked: true }
  }

  #list(source: YAMLSeq): ListNode {
    // `[a: 1]` is a list of one map of one pair, which has no place of its own.
    const items = source.items.map((item) => (isPair(item) ? emptyAt(source.range?.[0] ?? 0) : this.node(item as Node)))
    return { kind: 'list', flow: source.flow === true, items, range: this.#around(source, items.at(-1)) }
  }

  #scalar(source: Scalar): ScalarNode {
    const range = this.#range(source)
    if (!isScalar(source) || range.start === range.end) return emptyAt(range.start)
    const style = styles[source.type ?? 'PLAIN'] ?? 'plain'
    const value = source.value as unknown
    const known = value === null || ['string', 'number', 'boolean'].includes(typeof value) ? (value as ScalarNode['value']) : String(source.source ?? value)
    return { kind: 'scalar', value: known, text: typeof known === 'string' ? known : (source.source ?? String(known)), style, range }
  }

  /** A value that stands for another: the anchored value, at the place of the alias. */
  #alias(name: string, range: Range): TreeNode {
    const target = this.#anchors.get(name)
    const empty = { ...emptyAt(range.start), range, style: 'plain', alias: true } satisfies ScalarNode
    if (!target) {
      this.#complain(this.#anchors.has(name) ? say('this value would hold itself') : say`no anchor \`&${name}\` stands before this`, range)
      return empty
    }
    this.#aliased += target.size
    if (this.#aliased > mostAliased) {
      this.#complain(say('too many values are shared by way of this'), range)
      return empty
    }
    this.#nodes += target.size
    markShared(target.node)
    // The alias itself is in one place, unless it stands in something that is shared in turn.
    const copy: TreeNode = { ...target.node, range, alias: true, marked: false, shared: false }
    return copy.kind === 'scalar' && copy.style === 'empty' ? { ...copy, style: 'plain' } : copy
  }

  #complain(message: string, range: Range): void {
    if (this.findings.length < mostFindings) this.findings.push({ code: 'yaml-syntax', severity: 'error', message, range })
  }

  /** What is written line by line ends with the last thing in it; whether the parser counts comments behind it in depends on what follows. */
  #around(source: YAMLMap | YAMLSeq, last: TreeNode | undefined): Range {
    const range = this.#range(source)
    return source.flow || !last ? range : { start: range.start, end: Math.max(last.range.end, range.start + 1) }
  }

  #range(node: Node): Range {
    const [start, end] = node.range ?? [0, 0]
    const isBlock = isScalar(node) && styles[node.type ?? 'PLAIN'] === 'block'
    return { start, end: isBlock ? end - lineEndBefore(this.text, end) : trimmedEnd(this.text, start, end) }
  }
}

const styles: Record<string, ScalarNode['style']> = {
  PLAIN: 'plain', QUOTE_SINGLE: 'single', QUOTE_DOUBLE: 'double', BLOCK_LITERAL: 'block', BLOCK_FOLDED: 'block',
}

/** The length of the line end that stands before an offset. Lines of blanks may be part of a block value; its last line end is not. */
function lineEndBefore(text: string, offset: number): number {
  return text[offset - 1] !== '\n' ? 0 : text[offset - 2] === '\r' ? 2 : 1
}

/** Nested values reach over their last line end; what belongs to the value ends before it. */
function trimmedEnd(text: string, start: number, end: number): number {
  let at = end
  while (at > start && ' \t\r\n'.includes(text[at - 1]!)) at--
  return at
}

const said: Partial<Record<YAMLError['code'], string>> = {
  TAB_AS_INDENT: phrase('a tab cannot indent; use spaces'),
  BAD_INDENT: phrase('this line is indented differently from its neighbours'),
  MULTIPLE_DOCS: phrase('a notebook is one YAML document; put a second one into a file of its own'),
  MULTILINE_IMPLICIT_KEY: phrase('a line seems to be missing its `:`, or a quote or bracket is not closed'),
  MISSING_CHAR: phrase('something is missing here: a closing quote or bracket, or the `:` after a key'),
  BLOCK_AS_IMPLICIT_KEY: phrase('a nested value cannot stand on the line of its key; put it on the next line, indented'),
  UNEXPECTED_TOKEN: phrase('this does not belong here'),
  RESOURCE_EXHAUSTION: phrase('this is nested too deeply to be read'),
}

function toFinding(severity: 'error' | 'warning', text: string) {
  return (error: YAMLError): Finding => {
    const start = Math.min(error.pos[0], text.length)
    const isOpen = error.code === 'BAD_INDENT' && error.message.startsWith('Flow')
    const words = isOpen ? say('a bracket is not closed') : said[error.code] && say(said[error.code]!)
    // What the library says of it is English.
    const message = words && language() !== 'en' ? words : words ? `${words} (${error.message})` : error.message
    return { code: 'yaml-syntax', severity, message, range: { start, end: Math.max(start, Math.min(error.pos[1], text.length)) } }
  }
}
