import { Refusal } from '../notebook/edits/refusal'
import { pairOf, type TreeNode } from '../notebook/tree'
import type { TextChange } from '../text'
import { say } from '../words/say'

/**
 * Gives keys of a group their new names. A group that is shared by way of an alias is changed where it stands.
 *
 * @param node what should be a group; anything else has no keys and stays as it is
 * @throws Refusal where a key stands there under its old and its new name
 */
export function renameKeys(node: TreeNode | undefined, names: Readonly<Record<string, string>>): TextChange[] {
  if (node?.kind !== 'map' || node.alias) return []
  return node.pairs.flatMap(({ key }) => {
    const name = Object.hasOwn(names, key.text) ? names[key.text]! : undefined
    if (name === undefined) return []
    if (pairOf(node, name)) throw new Refusal(say`both \`${key.text}\` and \`${name}\` stand here; keep one of them`)
    return [{ ...key.range, text: name }]
  })
}
