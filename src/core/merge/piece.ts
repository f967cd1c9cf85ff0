/** A stretch of the merged text: whole lines, or two versions of them that a person has to choose between. */
export type Piece = string | Clash

export interface Clash {
  ours: string
  theirs: string
  /** What happened, in words. */
  about: string
}

/** A place where the two sides could not be brought together. */
export interface Conflict {
  /** The line of the merged text, from 1. */
  line: number
  message: string
}

/** How the two versions of a clash are marked in the text, as git does it. */
export interface Markers {
  /** How many `<`, `=` and `>` make a mark. */
  size: number
  ours: string
  theirs: string
}

/** The text of the pieces, with each clash between marks. All pieces end in a line end. */
export function printPieces(pieces: readonly Piece[], markers: Markers): { text: string; conflicts: Conflict[] } {
  const conflicts: Conflict[] = []
  const texts: string[] = []
  let line = 1
  for (const piece of pieces) {
    if (typeof piece !== 'string') conflicts.push({ line, message: piece.about })
    const text = typeof piece === 'string' ? piece : marked(piece, markers)
    texts.push(text)
    line += text.split('\n').length - 1
  }
  return { text: texts.join(''), conflicts }
}

function marked({ ours, theirs }: Clash, markers: Markers): string {
  const mark = (sign: string, label: string) => `${sign.repeat(markers.size)}${label === '' ? '' : ` ${label}`}\n`
  return mark('<', markers.ours) + ours + mark('=', '') + theirs + mark('>', markers.theirs)
}
