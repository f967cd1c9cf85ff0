import type { CompareCell, CompareRow } from '../../../src/core/compare/comparison'
import { say } from '../strings'
import { barOf, type Bar } from './bar'
import type { ChangeText, Line, Value } from './lines'

/** What the two sides are called. */
export interface Names {
  left: string
  right: string
}

/** A row of the comparison as a line of the table. `alone`: the other side cannot be read, so there is no change. */
export function rowLine(row: CompareRow, names: Names, alone: boolean): Line {
  const { key, kind, label, detail, about, left, right, different } = row
  const change = alone || kind === 'words' ? undefined : changeText(row, names)
  return {
    key, kind: kind === 'setting' ? 'position' : kind === 'words' ? 'words' : 'number', label, different,
    ...(detail ? { detail } : {}), ...(about ? { about } : {}), left: valueOf(left), right: valueOf(right), ...(change ? { change } : {}),
  }
}

function valueOf({ text, written, place, about, remark }: CompareCell): Value {
  const told = [written === undefined ? '' : say('cell.written', written), about ?? ''].filter(Boolean).join(' · ')
  return { text, ...(remark === undefined ? {} : { more: say('cell.remark', remark) }), ...(told ? { about: told } : {}), ...(place ? { place } : {}) }
}

function changeText(row: CompareRow, names: Names): ChangeText {
  const { incomparable, change, earlier, onlyIn, kind } = row
  if (incomparable !== undefined) return { words: incomparable, quiet: true }
  if (change) {
    const bar = barOf(row)
    return {
      words: change.words, ...moreOf([shareWords(change.share, change.words), change.surely]),
      ...(bar ? { bar, about: barWords(bar) } : {}), ...(kind === 'derived' ? signOf(change.direction, change.sure) : {}),
    }
  }
  if (earlier?.change) {
    const { words, surely, direction, sure } = earlier.change
    return { words: say('cell.since', words, earlier.entry), ...moreOf([say('cell.then', earlier.text), surely]), ...signOf(direction, sure) }
  }
  if (earlier) return { words: say('cell.sameSince', earlier.entry), quiet: true }
  if (onlyIn) return { words: say('cell.onlyIn', names[onlyIn]), quiet: true }
  return { words: say('cell.same'), quiet: true }
}

/** A number whose uncertainty nobody gave is neither sure nor unsure. */
function signOf(direction: 'more' | 'less', sure: boolean | undefined): Pick<ChangeText, 'sign'> {
  return sure === undefined ? {} : { sign: { more: direction === 'more', sure } }
}

function shareWords(share: number | undefined, words: string): string | undefined {
  if (share === undefined || words.includes('% of range')) return undefined
  const size = Math.abs(share)
  return size < 1 ? say('cell.shareSmall') : say('cell.share', Math.round(size))
}

function moreOf(parts: readonly (string | undefined)[]): Pick<ChangeText, 'more'> {
  const more = parts.filter(Boolean).join(', ')
  return more ? { more } : {}
}

function barWords(bar: Bar): string {
  if (bar.kind === 'range') return say('cell.bar.range')
  return say(bar.of === 'record' ? 'cell.bar.step' : 'cell.bar.share')
}
