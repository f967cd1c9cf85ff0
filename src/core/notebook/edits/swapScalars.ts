import type { TextChange } from '../../text'
import { say } from '../../words/say'
import type { ScalarNode } from '../tree'
import { Refusal, refuseMarked, refuseShared } from './refusal'

/** Writes each of two values in the place of the other. @throws Refusal where one is shared, or runs over several lines */
export function swapScalars(text: string, one: ScalarNode, other: ScalarNode): TextChange[] {
  for (const node of [one, other]) {
    refuseShared(node)
    refuseMarked(node)
    if (node.style === 'block') throw new Refusal(say('this value is written as a block; change it in the text'))
  }
  const written = ({ range }: ScalarNode) => text.slice(range.start, range.end)
  return [{ ...one.range, text: written(other) }, { ...other.range, text: written(one) }]
}
