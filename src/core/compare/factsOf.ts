import type { TreeNode } from '../notebook/tree'

/** What a part of a notebook says, a fact a path: 'adjusters.fork_rebound.range' → '20'. Comments and ways of writing are none. */
export function factsOf(node: TreeNode | undefined, path = ''): Map<string, string> {
  const facts = new Map<string, string>()
  const walk = (at: TreeNode, name: string, depth: number): void => {
    // What is nested deeper than any notebook is one fact, as it stands.
    if (at.kind === 'scalar' || depth > 20) facts.set(name, at.kind === 'scalar' ? at.text.trim() : '…')
    else if (at.kind === 'list') at.items.forEach((item, index) => walk(item, `${name}[${index + 1}]`, depth + 1))
    else for (const { key, value } of at.pairs) walk(value, name === '' ? key.text : `${name}.${key.text}`, depth + 1)
  }
  if (node) walk(node, path, 0)
  return facts
}

/** A fact that one version of a notebook has and the other has not, or has otherwise. */
export interface FactChange {
  /** 'adjusters.fork_rebound.range' */
  path: string
  before?: string
  after?: string
}

/** What differs between two sets of facts, in the order of the later one, what went at the end. */
export function factChanges(before: ReadonlyMap<string, string>, after: ReadonlyMap<string, string>): FactChange[] {
  const here = [...after].filter(([path, text]) => before.get(path) !== text)
  const gone = [...before].filter(([path]) => !after.has(path))
  return [
    ...here.map(([path, text]) => ({ path, after: text, ...(before.has(path) ? { before: before.get(path)! } : {}) })),
    ...gone.map(([path, text]) => ({ path, before: text })),
  ]
}
