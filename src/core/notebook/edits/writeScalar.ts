import { stringify } from 'yaml'
import type { ScalarNode } from '../tree'

/** Where a value is to be written: inside `{…}` or `[…]`, and how far its line is indented in block style. */
export interface Context {
  flow: boolean
  indent: string
  lineEnd: '\n' | '\r\n'
}

/** Characters that stand for themselves wherever a figure is written. */
const plainFigure = /^(?![-?%\s])[\w.+\-−/ ¼½¾⅓⅔⅙⅚⅛⅜⅝⅞⁄%°·″]*[\w¼½¾⅓⅔⅙⅚⅛⅜⅝⅞%°″]$|^-[\d.][\d. ]*(?:[A-Za-z_%/][\w %/]*)?$/
const reserved = /^(null|true|false|~)$/i
/** What is longer is no figure, whatever it looks like. */
const longestFigure = 120

/**
 * A figure as it was typed: a position, a quantity, a date. Written plain wherever YAML lets it, so that `3` stays a
 * number and `1.0` stays `1.0`.
 */
export function figureText(typed: string, context: Context, like?: ScalarNode['style']): string {
  const text = typed.trim().replace(/\s+/g, ' ')
  if (text.length > longestFigure || !plainFigure.test(text) || reserved.test(text)) return proseText(text, context, like)
  return like === 'single' ? `'${text}'` : like === 'double' ? `"${text}"` : text
}

/**
 * Words as they were typed, read back by any YAML library as exactly this text. Keeps the kind of quotes that stood
 * there; several lines become a literal block where block style allows it.
 */
export function proseText(typed: string, context: Context, like?: ScalarNode['style']): string {
  const text = typed.replace(/\r\n?/g, '\n')
  if (text.includes('\n')) return context.flow || !blockSafe.test(text) ? quoted(text) : literal(text, context)
  if (like === 'double') return quoted(text)
  if (like === 'single' && !unprintable.test(text)) return `'${text.replaceAll("'", "''")}'`
  if (unprintable.test(text)) return quoted(text)
  if (context.flow) return stringify([text], { collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false }).slice(1, -2)
  return stringify({ k: text }, { lineWidth: 0 }).slice(3, -1)
}

/** What stands in the text for a value, for a place inside of `{…}` or `[…]`: as it is, wherever it may stand there. */
export function inFlow(text: string, node: ScalarNode): string {
  const stood = text.slice(node.range.start, node.range.end)
  if (node.alias || node.style === 'single' || node.style === 'double') return stood
  const isSafe = node.style === 'plain' && /^[^,[\]{}:?#&*!|>'"%@`\r\n-][^,[\]{}:#\r\n]*$/.test(stood)
  return isSafe ? stood : figureText(node.text, { flow: true, indent: '', lineEnd: '\n' })
}

const unprintable = /[\x00-\x1f\x7f-\x9f\u2028\u2029\ufeff\ud800-\udfff\ufffe\uffff]/u
/** Printable throughout, with nothing at its ends that a literal block would change. */
const blockSafe = /^(?![ \t\n])[^\x00-\x09\x0b-\x1f\x7f-\x9f\u2028\u2029\ufeff\ud800-\udfff\ufffe\uffff]*(?<!\s)$/u

/** JSON's strings are YAML's double-quoted ones; what YAML does not count as printable is escaped besides. */
function quoted(text: string): string {
  return JSON.stringify(text).replace(/[\x7f-\x9f\u2028\u2029\ufeff\ufffe\uffff]/g, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

function literal(text: string, { indent, lineEnd }: Context): string {
  return ['|-', ...text.split('\n').map((line) => (line === '' ? '' : `${indent}  ${line}`))].join(lineEnd)
}
