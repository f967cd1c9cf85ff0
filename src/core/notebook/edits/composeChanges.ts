import { inOrder, type TextChange } from '../../text'

/** A stretch of the old text that is still there, or text that is new. */
type Piece = { start: number; end: number } | { text: string }

const lengthOf = (piece: Piece) => ('text' in piece ? piece.text.length : piece.end - piece.start)

/**
 * Makes one list of changes out of several that follow one another, each counted in the text the ones before it left.
 * The result counts in the first text and touches only what any of them touched.
 */
export function composeChanges(length: number, steps: readonly (readonly TextChange[])[]): TextChange[] {
  let pieces: Piece[] = [{ start: 0, end: length }]
  for (const step of steps) {
    for (const change of inOrder(step).reverse()) pieces = replace(pieces, change)
  }
  return toChanges(pieces, length)
}

function replace(pieces: readonly Piece[], { start, end, text }: TextChange): Piece[] {
  const [before, rest] = cut(pieces, start)
  const [, after] = cut(rest, end - start)
  return text === '' ? [...before, ...after] : [...before, { text }, ...after]
}

function cut(pieces: readonly Piece[], at: number): [Piece[], Piece[]] {
  const before: Piece[] = []
  let left = at
  for (const [index, piece] of pieces.entries()) {
    const size = lengthOf(piece)
    if (left < size) {
      if (left === 0) return [before, pieces.slice(index)]
      const [head, tail]: [Piece, Piece] = 'text' in piece
        ? [{ text: piece.text.slice(0, left) }, { text: piece.text.slice(left) }]
        : [{ start: piece.start, end: piece.start + left }, { start: piece.start + left, end: piece.end }]
      return [[...before, head], [tail, ...pieces.slice(index + 1)]]
    }
    before.push(piece)
    left -= size
  }
  return [before, []]
}

function toChanges(pieces: readonly Piece[], length: number): TextChange[] {
  const changes: TextChange[] = []
  let at = 0
  let fresh = ''
  for (const piece of [...pieces, { start: length, end: length }]) {
    if ('text' in piece) fresh += piece.text
    else {
      if (fresh !== '' || piece.start > at) changes.push({ start: at, end: piece.start, text: fresh })
      fresh = ''
      at = piece.end
    }
  }
  return changes
}
