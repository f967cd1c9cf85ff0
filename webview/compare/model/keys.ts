import type { SideName } from '../../../src/protocol'
import type { Move } from './walk'

/** What a key means in a comparison. Keys that are not ours give undefined and go on to the editor. */
export type CompareKey =
  | { kind: 'move'; move: Move }
  | { kind: 'open' | 'swap' | 'filter' | 'turns' }
  | { kind: 'step'; newer: boolean }
  | { kind: 'choose'; side: SideName }

type KeyPress = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>

/** Keys of the page as a whole. */
export function readPageKey({ key, ctrlKey, metaKey, altKey }: KeyPress): CompareKey | undefined {
  // Many keyboards type brackets with AltGr or Option, and some systems report AltGr as Ctrl+Alt.
  if (key === '[' || key === ']') return metaKey || (ctrlKey && !altKey) ? undefined : { kind: 'step', newer: key === ']' }
  if (ctrlKey || metaKey || altKey) return undefined
  switch (key.toLowerCase()) {
    case 's': return { kind: 'swap' }
    case 'd': return { kind: 'filter' }
    case 't': return { kind: 'turns' }
    case 'l': return { kind: 'choose', side: 'left' }
    case 'r': return { kind: 'choose', side: 'right' }
    default: return undefined
  }
}

const arrows: Record<string, [lines: number, columns: number]> = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] }

/** Keys of the table. */
export function readTableKey({ key, ctrlKey, metaKey, altKey }: KeyPress): CompareKey | undefined {
  if (altKey) return undefined
  const jump = ctrlKey || metaKey
  const arrow = Object.hasOwn(arrows, key) ? arrows[key] : undefined
  if (arrow) return jump ? { kind: 'move', move: { kind: edgeOf(arrow) } } : { kind: 'move', move: { kind: 'step', lines: arrow[0], columns: arrow[1] } }
  if (key === 'Home' || key === 'End') return { kind: 'move', move: { kind: jump ? (key === 'Home' ? 'first' : 'last') : key === 'Home' ? 'lineStart' : 'lineEnd' } }
  if (jump) return undefined
  if (key === 'PageUp' || key === 'PageDown') return { kind: 'move', move: { kind: 'page', down: key === 'PageDown' } }
  return key === 'Enter' ? { kind: 'open' } : undefined
}

function edgeOf([lines, columns]: [number, number]): 'first' | 'last' | 'lineStart' | 'lineEnd' {
  if (lines !== 0) return lines < 0 ? 'first' : 'last'
  return columns < 0 ? 'lineStart' : 'lineEnd'
}
