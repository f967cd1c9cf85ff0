import type { ScalarNode } from '../tree'

/** What a word that is more than words can begin with. */
const mayBeMore = /^[-+.0-9~tTfFnN]/
const isNull = /^(?:~|[Nn]ull|NULL)$/
const isTrue = /^(?:[Tt]rue|TRUE)$/
const isFalse = /^(?:[Ff]alse|FALSE)$/
const isWhole = /^[-+]?[0-9]+$/
const isOctal = /^0o[0-7]+$/
const isHexadecimal = /^0x[0-9a-fA-F]+$/
const isFraction = /^[-+]?(?:\.[0-9]+|[0-9]+\.[0-9]*|(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)[eE][-+]?[0-9]+)$/
const isInfinite = /^[-+]?\.(?:inf|Inf|INF)$/
const isNoNumber = /^(?:\.nan|\.NaN|\.NAN)$/

/** What YAML 1.2 makes of a word without quotes, by its core schema. */
export function resolvePlain(word: string): ScalarNode['value'] {
  if (!mayBeMore.test(word)) return word
  if (isWhole.test(word)) return parseInt(word, 10)
  if (isFraction.test(word)) return parseFloat(word)
  if (isNull.test(word)) return null
  if (isTrue.test(word)) return true
  if (isFalse.test(word)) return false
  if (isOctal.test(word)) return parseInt(word.slice(2), 8)
  if (isHexadecimal.test(word)) return parseInt(word.slice(2), 16)
  if (isInfinite.test(word)) return word.startsWith('-') ? -Infinity : Infinity
  return isNoNumber.test(word) ? NaN : word
}
