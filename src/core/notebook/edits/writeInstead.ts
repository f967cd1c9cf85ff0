import type { Fix } from '../../finding'
import { say } from '../../words/say'
import type { ScalarNode } from '../tree'
import { offer } from './offer'
import { refuseMarked } from './refusal'
import { replaceScalar } from './replaceScalar'
import { figureText } from './writeScalar'

/**
 * The fix that writes something else in place of a key or value, quoted only where YAML needs it, be it in braces or
 * not. A comment behind it stays; none is offered where another place shares what stands here.
 *
 * @example writeInstead(text, node, '3 clicks out') // [{ title: 'Write ‘3 clicks out’', changes: [{ ...node.range, text: '3 clicks out' }] }]
 */
export function writeInstead(text: string, node: ScalarNode, words: string): Fix[] {
  return writeRaw(text, node, words, figureText(words, { flow: true, indent: '', lineEnd: '\n' }))
}

/** The same where what is written must have a form of its own, such as quotes around a number. */
export function writeRaw(text: string, node: ScalarNode, words: string, written: string): Fix[] {
  return offer(say`Write ‘${words}’`, () => {
    refuseMarked(node)
    return replaceScalar(text, node, written)
  })
}
