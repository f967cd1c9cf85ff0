import { say } from '../../words/say'
import type { MapNode, TreeNode } from '../tree'

/** What keeps an edit from being made, in words for the person. */
export class Refusal extends Error {}

export function sharedElsewhere(): Refusal {
  return new Refusal(say('this value is shared with another place; change it in the text'))
}

/** @throws Refusal where a change below this node would be one in another place too */
export function refuseShared(node: TreeNode): void {
  if (node.alias || node.shared) throw sharedElsewhere()
}

/** @throws Refusal where pairs can neither be put into a map nor taken out */
export function refuseFixed(text: string, map: MapNode): void {
  refuseShared(map)
  if (map.flow && text[map.range.start] !== '{') throw new Refusal(say('this is written as `[key: value]`, without braces; change it in the text'))
}

/** An alias may give way to a value of its own. @throws Refusal where the value itself is anchored or tagged, or stands in what is shared */
export function refuseMarked(node: TreeNode): void {
  if (node.alias && !node.shared) return
  if (node.alias) throw sharedElsewhere()
  refuseShared(node)
  if (node.marked) throw new Refusal(say('an anchor or a tag stands before this value; change it in the text'))
}
