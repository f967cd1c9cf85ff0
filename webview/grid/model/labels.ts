import type { Row } from '../../../src/core/grid/view'

/** A part of a row's label, each drawn in a type of its own. */
export type LabelPart = 'name' | 'detail' | 'unit'

/** How wide a text is in the type of a part, px; handed in, for only the page knows its type. */
export type Measure = (text: string, part: LabelPart) => number

/** The column of labels takes what its labels need, in px, within these bounds and, by itself, this share of the page. */
const narrowest = 180
const widest = 340
const share = 0.38

/** As far as a person may draw it. */
const narrowestDrawn = 120
const shareDrawn = 0.7

/** Left and right of a label's words and between two of them, as grid.css has it; what is measured is a trifle off now and then. */
const padding = 26 + 2
const gap = 6

/** More lines than these no label gets: what is longer than that is nobody's name for an adjuster. */
const mostLines = 4

export type Named = Pick<Row, 'label' | 'detail' | 'unit'>

/** How wide the label of a row is on one line. */
export function labelNeeds(row: Named, measure: Measure): number {
  const widths = partsOf(row).map(([part, text]) => measure(text, part))
  return padding + widths.reduce((sum, width) => sum + width, 0) + gap * (widths.length - 1)
}

/** How wide the column of labels is on a page: as drawn by a person, else as its labels need. */
export function labelsWidth(rows: readonly Named[], pageWidth: number, drawn: number | undefined, measure: Measure): number {
  if (drawn !== undefined) return Math.round(Math.max(narrowestDrawn, Math.min(drawn, pageWidth * shareDrawn)))
  const needed = rows.reduce((most, row) => Math.max(most, labelNeeds(row, measure)), 0)
  return Math.ceil(Math.max(narrowest, Math.min(needed, widest, pageWidth * share)))
}

/** On how many lines a label stands in a column of that width: its parts one after the other, each broken between words where it must be. */
export function labelLines(row: Named, width: number, measure: Measure): number {
  const room = width - padding
  if (labelNeeds(row, measure) <= width) return 1
  let lines = 0
  let used = Infinity
  for (const [part, text] of partsOf(row)) {
    const wide = measure(text, part)
    if (used + gap + wide <= room) {
      used += gap + wide
      continue
    }
    lines += wide <= room ? 1 : wordLines(text, room, (words) => measure(words, part))
    used = wide <= room ? wide : Infinity
  }
  return Math.min(lines, mostLines)
}

function wordLines(text: string, room: number, measure: (text: string) => number): number {
  let lines = 1
  let line = ''
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (line === '' || measure(longer) <= room) line = longer
    else {
      lines++
      line = word
    }
    // A word that is longer than a line is broken anywhere.
    const wide = measure(line)
    if (wide > room) lines += Math.ceil(wide / room) - 1
  }
  return lines
}

function partsOf({ label, detail, unit }: Named): [LabelPart, string][] {
  const parts: [LabelPart, string | undefined][] = [['name', label], ['detail', detail], ['unit', unit]]
  return parts.filter((part): part is [LabelPart, string] => Boolean(part[1]))
}
