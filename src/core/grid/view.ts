import type { Severity } from '../finding'

/**
 * The notebook as a grid: rows, columns and cells, ready to draw. Plain data that crosses to the webview;
 * everything shown is text made here, so that whoever draws it parses and decides nothing.
 */
export interface GridView {
  /** The machine's name. */
  title: string
  /** `broken`: the text has an error, what is shown is the last that was understood. `empty`: nothing to show yet. */
  state: 'ready' | 'broken' | 'empty' | 'newer'
  /** A first sight of a long notebook: findings and most computed numbers are still being worked out. */
  unfinished?: true
  /** Whether gestures that write are refused, and why. */
  readOnly?: string
  /** Where the text is broken, or why it cannot be edited. */
  trouble?: Trouble
  columns: Column[]
  rows: Row[]
  /** `cells[row][column]`, in the order of `rows` and `columns`; a group's row has none. */
  cells: Cell[][]
  findings: GridFinding[]
  /** Cautions and the like that stand below the grid. */
  cautions: string[]
  /** While `empty`: the ways to begin, the key being what the gesture `begin` names as its `start`. */
  beginnings?: Beginning[]
}

/** A kind of machine to begin a notebook from. */
export interface Beginning {
  key: string
  label: string
  /** A sentence about it. */
  about: string
}

export interface Trouble {
  message: string
  /** From 1, as editors count. */
  line: number
}

/** An entry. `key` is its id where that is unique, else its place in the file as `#3`. */
export interface Column {
  key: string
  id: string
  date: string
  reason: string
  /** The entry it is said to come from, as it is written. */
  from?: string
  /** How the history branches here; absent in all columns where it does nowhere. */
  branch?: Branch
  asFound: boolean
  baseline: boolean
  verdict: string
  /** Where in the weekend or the season it was. */
  session?: string
  /** Ids of the findings about the entry as a whole. */
  findings: number[]
}

/**
 * An entry's place in a drawing of the history. It hangs on the column before it, in the same lane, unless it comes
 * `from` another or `begins` anew.
 */
export interface Branch {
  /** From 0. */
  lane: number
  /** The column it comes from, where that is not the one before; `drawn` where a line runs there, in this entry's lane. */
  from?: { column: string; drawn: boolean }
  /** It comes from nothing that is known, and is not the first. */
  begins?: true
  /** Lanes of lines that pass this column on their way to a later one. */
  passing: number[]
  /** The columns that come from this one; with none, and not the last, it was tried and left. */
  heirs: string[]
}

/** `setting`: a slot of an adjuster. `field`: something measured or written. `computed`: never edited. `group`: a heading. */
export interface Row {
  key: string
  kind: 'group' | 'setting' | 'field' | 'computed'
  label: string
  /** Behind the label, quieter: the leg, the reading. */
  detail?: string
  /** What the figures are in: `clicks out`, `mm`. */
  unit?: string
  /** How many lines of text a cell of this row shows. */
  lines: 1 | 2 | 3
  /** Text that may run over several lines, edited as such. */
  prose: boolean
  /** Alignment of what the cells hold. */
  figures: boolean
  /** What may be chosen from, for fields that are a choice. */
  choices?: string[]
  /** A sentence about the row, shown on its label. */
  about?: string
}

/** `set`: written in this entry. `carried`: stands as in the entry it comes from. `computed`: worked out. `empty`: unknown. */
export interface Cell {
  state: 'set' | 'carried' | 'computed' | 'empty'
  text: string
  /** Set here to something else than it was in the entry it comes from. */
  changed?: boolean
  /** What a person wrote about this cell. */
  remark?: string
  /** Ids of the findings about it, worst first, and the worst severity. */
  findings?: number[]
  worst?: Severity
  /** One sentence more about the cell: where a carried value comes from, why a computed one is absent. */
  about?: string
}

/** A finding as the grid lists it. `row` and `column` are keys; absent where it is about no cell. */
export interface GridFinding {
  /** The same in the next version of the text. */
  id: number
  code: string
  severity: Severity
  message: string
  /** Where it is about no entry, in whose column it is found. */
  line?: number
  column?: string
  row?: string
  fixes: string[]
}

/** Where something stands in the grid, by keys. An empty row is the entry's header. */
export interface GridPlace {
  column: string
  row: string
}
