import { isAlias, isMap, isScalar, isSeq, Parser, parseDocument, type Document, type Node } from 'yaml'

/** The scalars of a stretch of a notebook as they are written, by path; what is missing, null or an empty group is absent. */
export type Facts = Record<string, string>

/** What a notebook says, found by the YAML library alone and without any code of ours. */
export interface PlainNotebook {
  entries: { facts: Facts; isMap: boolean }[]
  rest: Facts
  problems: string[]
}

export function plainNotebook(text: string): PlainNotebook {
  const document = parseDocument(text, { version: '1.2', schema: 'core', resolveKnownTags: false, logLevel: 'silent', prettyErrors: false })
  const problems = document.errors.map(({ code, message, pos }) => `${code} at ${pos[0]}: ${message}`)
  const root = document.contents as Node | null
  const rest: Facts = {}
  let entries: PlainNotebook['entries'] = []
  const legs = legsOf(root, document)
  for (const pair of isMap(root) ? root.items : []) {
    const key = keyText(pair.key as Node | null)
    const value = resolved(pair.value as Node | null, document)
    if (key === 'entries' && isSeq(value)) {
      entries = value.items.map((item) => {
        const node = resolved(item as Node, document)
        return { isMap: isMap(node), facts: entryFacts(node, document, legs) }
      })
    } else collect(value, [key], rest, document)
  }
  return { entries, rest, problems }
}

/** The facts of one entry, with one value for two legs or the only one, and the three ways to write a reading, brought into one form. */
function entryFacts(node: Node | null, document: Document, legs: ReadonlyMap<string, readonly string[]>): Facts {
  const written: Facts = {}
  collect(node, [], written, document)
  const facts: Facts = {}
  for (const [path, words] of Object.entries(written)) {
    const keys = JSON.parse(path) as string[]
    // A figure in a block has a line end that is none of the figure.
    const value = ['settings', 'sag'].includes(keys[0]!) ? words.trimEnd() : words
    const isReading = keys[0] === 'sag' && ['bike', 'rider'].includes(keys[2] ?? '')
    const own = keys[0] === 'settings' ? legs.get(keys[1]!) ?? [] : []
    if (own.length === 1 && (keys.length === 2 || (keys.length === 3 && keys[2] === own[0]))) facts[factKey([...keys.slice(0, 2), 'only'])] = value
    else if (own.length === 2 && keys.length === 2) for (const leg of own) facts[factKey([...keys, leg])] = value
    else if (isReading && keys.length === 3) facts[factKey([...keys, 'lifted'])] = value
    else if (isReading && ['0', '1'].includes(keys[3]!)) facts[factKey([...keys.slice(0, 3), keys[3] === '0' ? 'lifted' : 'pushed'])] = value
    // The heights of a bounce test are the same with and without the group that also holds their time.
    else if (keys[0] === 'bounce' && keys[2] === 'heights') facts[factKey([...keys.slice(0, 2), ...keys.slice(3)])] = value
    else if (keys[0] === 'bounce' && keys.length === 2) facts[factKey([...keys, '0'])] = value
    else facts[path] = value
  }
  return facts
}

export function factKey(path: readonly string[]): string {
  return JSON.stringify(path)
}

/** The legs of every adjuster that has some. */
function legsOf(root: Node | null, document: Document): Map<string, string[]> {
  const adjusters = isMap(root) ? resolved(root.get('adjusters', true) as unknown as Node, document) : null
  return new Map((isMap(adjusters) ? adjusters.items : []).flatMap(({ key, value }): [string, string[]][] => {
    const adjuster = resolved(value as Node, document)
    const legs = resolved(isMap(adjuster) ? (adjuster.get('legs', true) as unknown as Node) : null, document)
    const names = isSeq(legs) ? legs.items.map((leg) => String((resolved(leg as Node, document) as { value?: unknown }).value)) : []
    const known = ['left', 'right'].filter((leg) => names.includes(leg))
    return known.length > 0 ? [[keyText(key as Node), known]] : []
  }))
}

function resolved(node: Node | null | undefined, document: Document): Node | null {
  return isAlias(node) ? ((node.resolve(document) as Node | undefined) ?? null) : (node ?? null)
}

function keyText(key: Node | null): string {
  return isScalar(key) ? (key.type === 'PLAIN' ? (key.source ?? '') : String(key.value)) : String(key)
}

function collect(source: Node | null, path: readonly string[], into: Facts, document: Document): void {
  const node = resolved(source, document)
  if (isMap(node)) for (const { key, value } of node.items) collect(value as Node | null, [...path, keyText(key as Node | null)], into, document)
  else if (isSeq(node)) node.items.forEach((item, at) => collect(item as Node, [...path, String(at)], into, document))
  else if (isScalar(node) && node.value !== null) into[factKey(path)] = typeof node.value === 'string' ? node.value : (node.source ?? String(node.value))
}

/** Every comment of a text, sorted: from the concrete syntax, which loses none. */
export function commentsOf(text: string): string[] {
  const found: string[] = []
  const walk = (token: unknown): void => {
    if (typeof token !== 'object' || token === null) return
    const { type, source } = token as { type?: unknown; source?: unknown }
    if (type === 'comment') found.push(String(source).trimEnd())
    Object.values(token).forEach(walk)
  }
  for (const token of new Parser().parse(text)) walk(token)
  return found.sort()
}
