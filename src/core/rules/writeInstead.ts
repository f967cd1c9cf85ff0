import type { Fix } from '../finding'
import { figureText } from '../notebook/edits/writeScalar'
import type { Range } from '../text'

/**
 * The fix that writes something else in place of a scalar, quoted only where YAML needs it, be it in braces or not.
 *
 * @example writeInstead(range, '3 clicks out') // { title: 'Write ‘3 clicks out’', changes: [{ ...range, text: '3 clicks out' }] }
 */
export function writeInstead(range: Range, text: string): Fix {
  return { title: `Write ‘${text}’`, changes: [{ ...range, text: figureText(text, { flow: true, indent: '', lineEnd: '\n' }) }] }
}
