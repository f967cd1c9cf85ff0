import { isAlias, isMap, isPair, isScalar, isSeq, parseDocument, type Node, type Scalar, type YAMLError } from 'yaml'
import type { Finding } from '../finding'
import type { Range } from '../text'
import type { ListNode, MapNode, Pair, ScalarNode, TreeNode } from './tree'

/** What came of parsing: the tree as far as it was understood, and what YAML itself complains about. */
export interface Parsed {
  root?: TreeNode
  findings: Finding[]
}

/** More values than this in one file, aliases followed, is no notebook but an attack or an accident. */
const mostNodes = 2_000_000
const mostAliased = 100_000

/** Parses YAML 1.2 into a tree; never throws. An error in the findings means that the text must not be edited by us. */
export function parseTree(text: string): Parsed {
  try {
    const document = parseDocument(text, { prettyErrors: false, version: '1.2', schema: 'core', logLevel: 'silent' })
    const findings = [...document.errors.map(toFinding('error', text)), ...document.warnings.map(toFinding('warning', text))]
    const builder = new TreeBuilder(text)
    const root = document.contents ? builder.node(document.contents as Node) : undefined
    return root ? { root, findings: [...findings, ...builder.findings] } : { findings }
  } catch (error) {
    const message = error instanceof RangeError ? 'this is nested too deeply to be read' : `this cannot be read: ${String(error)}`
    return { findings: [{ code: 'yaml-syntax', severity: 'error', message, range: { start: 0, end: Math.min(1, text.length) } }] }
  }
}

class TreeBuilder {
  readonly findings: Finding[] = []
  readonly #anchors = new Map<string, TreeNode>()
  readonly #sizes = new Map<TreeNode, number>()
  #nodes = 0
  #aliased = 0

  constructor(readonly text: string) {}

  node(source: Node | null): TreeNode {
    const before = this.#nodes++
    if (before > mostNodes) throw new RangeError('too many values')
    if (isAlias(source)) return this.#alias(source.source, this.#range(source))
    const made = isMap(source) ? this.#map(source) : isSeq(source) ? this.#list(source) : this.#scalar(source as Scalar | null)
    const anchor = (source as { anchor?: string } | null)?.anchor
    if (anchor) {
      this.#anchors.set(anchor, made)
      this.#sizes.set(made, this.#nodes - before)
    }
    return made
  }

  #map(source: import('yaml').YAMLMap): MapNode {
    const pairs: Pair[] = []
    for (const item of source.items) {
      if (!isPair(item)) continue
      const key = this.#key(item.key as Node | null)
      pairs.push({ key, value: item.value ? this.node(item.value as Node) : emptyAt(key.range.end) })
    }
    return { kind: 'map', flow: source.flow === true, pairs, range: this.#range(source) }
  }

  #key(source: Node | null): ScalarNode {
    const made = source ? this.node(source) : emptyAt(0)
    if (made.kind === 'scalar') return { ...made, text: made.style === 'plain' ? made.text : String(made.value ?? '') }
    return { kind: 'scalar', value: '', text: this.text.slice(made.range.start, made.range.end), style: 'plain', range: made.range }
  }

  #list(source: import('yaml').YAMLSeq): ListNode {
    const items = source.items.map((item) => (isPair(item) ? emptyAt(0) : this.node(item as Node | null)))
    return { kind: 'list', flow: source.flow === true, items, range: this.#range(source) }
  }

  #scalar(source: Scalar | null): ScalarNode {
    if (!source || !isScalar(source)) return emptyAt(0)
    const range = this.#range(source)
    if (range.start === range.end) return emptyAt(range.start)
    const style = styles[source.type ?? 'PLAIN'] ?? 'plain'
    const value = source.value as unknown
    const known = value === null || ['string', 'number', 'boolean'].includes(typeof value) ? (value as ScalarNode['value']) : String(value)
    return { kind: 'scalar', value: known, text: typeof known === 'string' ? known : (source.source ?? String(known)), style, range }
  }

  /** A value that stands for another: the anchored value, at the place of the alias. */
  #alias(name: string, range: Range): TreeNode {
    const target = this.#anchors.get(name)
    if (!target) return emptyAt(range.start)
    this.#aliased += this.#sizes.get(target) ?? 1
    this.#nodes += this.#sizes.get(target) ?? 1
    if (this.#aliased > mostAliased) throw new RangeError('too many aliased values')
    return { ...target, range, alias: true }
  }

  #range(node: Node): Range {
    const [start, end] = node.range ?? [0, 0]
    return { start, end: trimmedEnd(this.text, start, end) }
  }
}

const styles: Record<string, ScalarNode['style']> = {
  PLAIN: 'plain', QUOTE_SINGLE: 'single', QUOTE_DOUBLE: 'double', BLOCK_LITERAL: 'block', BLOCK_FOLDED: 'block',
}

function emptyAt(offset: number): ScalarNode {
  return { kind: 'scalar', value: null, text: '', style: 'empty', range: { start: offset, end: offset } }
}

/** Block values reach over their last line end; what belongs to the value ends before it. */
function trimmedEnd(text: string, start: number, end: number): number {
  let at = end
  while (at > start && /\s/.test(text[at - 1]!)) at--
  return at
}

const said: Partial<Record<YAMLError['code'], string>> = {
  DUPLICATE_KEY: 'this key stands here twice; keep one of them',
  TAB_AS_INDENT: 'a tab cannot indent; use spaces',
  BAD_INDENT: 'this line is indented differently from its neighbours',
  MULTIPLE_DOCS: 'a notebook is one YAML document; put a second one into a file of its own',
  MULTILINE_IMPLICIT_KEY: 'a line seems to be missing its `:`, or a quote or bracket is not closed',
  MISSING_CHAR: 'something is missing here: a closing quote or bracket, or the `:` after a key',
  BLOCK_AS_IMPLICIT_KEY: 'a nested value cannot stand on the line of its key; put it on the next line, indented',
  UNEXPECTED_TOKEN: 'this does not belong here',
}

function toFinding(severity: 'error' | 'warning', text: string) {
  return (error: YAMLError): Finding => {
    const start = Math.min(error.pos[0], text.length)
    const words = said[error.code]
    const message = words ? `${words} (${error.message})` : error.message
    return { code: 'yaml-syntax', severity, message, range: { start, end: Math.max(start, Math.min(error.pos[1], text.length)) } }
  }
}
