/** What a key press means while moving about. Keys that are not ours give undefined and go on to the editor. */
export type MoveKey =
  | { kind: 'step' | 'edge'; rows: number; columns: number; extend: boolean }
  | { kind: 'page'; down: boolean; extend: boolean }
  | { kind: 'rowStart' | 'rowEnd' | 'first' | 'last'; extend: boolean }
  | { kind: 'tab'; back: boolean }
  /** `all`: with the whole text selected; `end`: with the caret behind it. */
  | { kind: 'edit'; caret: 'all' | 'end' }
  /** The character itself then lands in the opened input. */
  | { kind: 'type' }
  | { kind: 'clear' }
  | { kind: 'leave' }
  | { kind: 'remark' }
  | { kind: 'finding'; back: boolean }

/** What a key press means while a cell is edited. */
export type EditKey =
  | { kind: 'commit'; go: 'down' | 'up' | 'right' | 'left' }
  /** To all selected cells; of a single one, to both legs. */
  | { kind: 'commitAll' }
  | { kind: 'cancel' }
  | { kind: 'newLine' }

/** The part of a KeyboardEvent that matters. */
export interface KeyPress {
  key: string
  ctrlKey: boolean
  metaKey: boolean
  shiftKey: boolean
  altKey: boolean
  /** AltGr, which some systems report as Ctrl+Alt and which types characters. */
  altGraph?: boolean
}

const arrows: Record<string, [rows: number, columns: number]> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
}

export function readMoveKey(press: KeyPress): MoveKey | undefined {
  const { key, shiftKey, altKey, altGraph } = press
  const jump = press.ctrlKey || press.metaKey
  if (altGraph && isCharacter(key)) return { kind: 'type' }
  if (altKey) return undefined
  const arrow = arrows[key]
  if (arrow) return { kind: jump ? 'edge' : 'step', rows: arrow[0], columns: arrow[1], extend: shiftKey }
  if (key === 'Home') return { kind: jump ? 'first' : 'rowStart', extend: shiftKey }
  if (key === 'End') return { kind: jump ? 'last' : 'rowEnd', extend: shiftKey }
  if (jump) return undefined
  if (key === 'PageUp' || key === 'PageDown') return { kind: 'page', down: key === 'PageDown', extend: shiftKey }
  return shiftKey ? readShifted(key) : readPlain(key)
}

function readShifted(key: string): MoveKey | undefined {
  switch (key) {
    case 'Tab': return { kind: 'tab', back: true }
    case 'F2': return { kind: 'remark' }
    case 'F8': return { kind: 'finding', back: true }
    case 'Enter': return { kind: 'step', rows: -1, columns: 0, extend: false }
    // Selects the row.
    case ' ': return undefined
    default: return isCharacter(key) ? { kind: 'type' } : undefined
  }
}

function readPlain(key: string): MoveKey | undefined {
  switch (key) {
    case 'Tab': return { kind: 'tab', back: false }
    case 'Enter': return { kind: 'edit', caret: 'all' }
    case 'F2': return { kind: 'edit', caret: 'end' }
    case 'F8': return { kind: 'finding', back: false }
    case 'Delete':
    case 'Backspace': return { kind: 'clear' }
    case 'Escape': return { kind: 'leave' }
    default: return isCharacter(key) || key === 'Dead' || key === 'Process' ? { kind: 'type' } : undefined
  }
}

/** `replace`: begun by typing, so that arrows commit and move, as spreadsheets do. `edit`: arrows move the caret. */
export function readEditKey(press: KeyPress, how: 'replace' | 'edit'): EditKey | undefined {
  const { key, shiftKey, altKey } = press
  if (key === 'Enter' && altKey) return { kind: 'newLine' }
  if (key === 'Enter' && (press.ctrlKey || press.metaKey)) return { kind: 'commitAll' }
  if (press.ctrlKey || press.metaKey || altKey) return undefined
  if (key === 'Enter') return { kind: 'commit', go: shiftKey ? 'up' : 'down' }
  if (key === 'Tab') return { kind: 'commit', go: shiftKey ? 'left' : 'right' }
  if (key === 'Escape') return { kind: 'cancel' }
  if (how === 'edit' || shiftKey) return undefined
  switch (key) {
    case 'ArrowUp': return { kind: 'commit', go: 'up' }
    case 'ArrowDown': return { kind: 'commit', go: 'down' }
    case 'ArrowLeft': return { kind: 'commit', go: 'left' }
    case 'ArrowRight': return { kind: 'commit', go: 'right' }
    default: return undefined
  }
}

/** One character, also one outside the basic plane. */
const isCharacter = (key: string) => [...key].length === 1
