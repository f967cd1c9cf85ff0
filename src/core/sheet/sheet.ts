import type { Severity } from '../finding'

/**
 * One state of a machine on one page, to be handed over: plain words, as they are to be read. Whoever prints it lays
 * out and decides nothing.
 */
export interface Sheet {
  /** The machine's name. */
  machine: string
  /** Its use, its rider. */
  about: string[]
  /** The entry's id or place, its day, and what it comes from. */
  entry: string
  date?: string
  marks: string[]
  reason?: string
  notes?: string
  positions: SheetGroup<SheetPosition>[]
  measures: SheetGroup<SheetMeasure>[]
  /** What to watch for, worst first. */
  watch: SheetFinding[]
  cautions: readonly string[]
}

export interface SheetGroup<Row> {
  label: string
  rows: Row[]
  /** What holds for all of its rows: where they were measured, and what has changed since. */
  note?: string
}

/** Where an adjuster stands. */
export interface SheetPosition {
  label: string
  /** Where it is and with what: 'fork caps · 19 mm hex'. */
  where: string
  /** One a leg, or one for both; `leg` is empty for what there is only one of. */
  stands: { leg: string; text: string }[]
  /** From which end, or how: 'counted out from closed'. */
  counted: string
  /** Which way turns it in, or gives more of it: 'clockwise, facing its head, turns it in: more rebound damping'. */
  way: string
  /** Against the entry this one comes from: '2 clicks out: less rebound damping'. */
  changed?: string
}

export interface SheetMeasure {
  label: string
  text: string
}

export interface SheetFinding {
  severity: Severity
  message: string
}
