import type { Finding, Severity } from '../finding'
import type { GridPlace } from '../grid/view'
import type { DisplayUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'

/** A state of a machine: an entry of a notebook, and how the file it stands in is called. */
export interface StateRef {
  notebook: Notebook
  /** The last entry, where none is given. */
  entry?: Entry
  /** For people: 'tern.setup.yaml', 'main:tern.setup.yaml', 'tern.setup.yaml, as saved'. */
  file: string
  /** Why this side cannot be written, where it cannot: 'as it was in main'. */
  readOnly?: string
  /** The notebook's findings, where they are known already. */
  findings?: readonly Finding[]
  /** Why there is nothing to read, a sentence: 'There is no revision ‘mian’ in this repository.' The notebook is an empty one then. */
  missing?: string
}

export interface CompareOptions {
  /** Whether both are records of one machine, where the caller knows it, such as for two versions of one file. Else their names tell. */
  oneMachine?: boolean
  /** What computed numbers are shown in; the format's own units unless someone asks otherwise. */
  units?: DisplayUnits
}

/**
 * Two states side by side, ready to draw. Plain data of texts made here; every change is told from left to right.
 * Nothing is left out: whoever draws it may hide the rows that are not `different`.
 */
export interface Comparison {
  left: CompareSide
  right: CompareSide
  /** False for two machines, of which only shares of range and absolute quantities are compared. */
  oneMachine: boolean
  /** What has to be known before reading on, such as that these are two machines; a sentence each. */
  notes: string[]
  groups: CompareGroup[]
  /** How many positions differ; both legs of a pair count as one. */
  changes: number
  /** Sags that were not measured on the right, as they follow from the left ones and the change of preload. */
  expected: ExpectedSag[]
  /** What lies between the two, in the order in which it is undone and done; empty where neither comes from the other's line. */
  between: EntryBetween[]
  findings: FindingsCompared
}

export interface CompareSide {
  /** The machine's name, else the file. */
  title: string
  file: string
  entry?: SideEntry
  readOnly?: string
  /** Why there is nothing to compare on this side. With `text` it does not parse, and is shown as it is written. */
  trouble?: { message: string; line: number; text?: string }
  /** Why there is not even a text: a sentence. */
  missing?: string
}

export interface SideEntry {
  key: string
  date: string
  from?: string
  reason: string
  asFound: boolean
  baseline: boolean
  verdict: string
}

export interface CompareGroup {
  key: string
  label: string
  rows: CompareRow[]
}

/** `setting`: a position. `measured`: a quantity that was read. `derived`: worked out. `words`: said in words. */
export interface CompareRow {
  key: string
  kind: 'setting' | 'measured' | 'derived' | 'words'
  label: string
  detail?: string
  about?: string
  left: CompareCell
  right: CompareCell
  /** Whether they differ in value, however they are written; also where only one side has anything. */
  different: boolean
  /** The side that alone has something to say here. */
  onlyIn?: 'left' | 'right'
  change?: Change
  /** Of a sag that was read on the right and not on the left: what it was when it was last read before, and the change since then. */
  earlier?: { entry: string; text: string; change?: Change }
  /** Why two that differ cannot be compared: a sentence. */
  incomparable?: string
}

export interface Change {
  /** '2 clicks out: less rebound damping', '+2.8 mm'. */
  words: string
  /** Right less left: in the adjuster's own count (in % of range for two machines), or in the base unit. */
  by: number
  /** More or less of what is controlled or measured, and that in words: 'less rebound damping'. */
  direction: 'more' | 'less'
  gives?: string
  /** How much of the adjuster's range, %, above zero towards more of what it controls. */
  share?: number
  /** For a bar, 0 to 1: of the range; where that is not known, of all that was ever recorded. Absent for what is no position. */
  size?: number
  sizeIs?: 'range' | 'record'
  /** Of derived numbers: the combined standard uncertainty of the change, and whether it exceeds twice that. */
  u?: number
  sure?: boolean
  /** That in words: 'within twice its uncertainty, 2 × 1.2 mm'. */
  surely?: string
}

export interface CompareCell {
  /** With its unit. */
  text: string
  state: 'set' | 'carried' | 'computed' | 'empty'
  /** As a person wrote it, where `text` says it otherwise. */
  written?: string
  /** Where it stands in that side's grid; absent where the side has no such row. */
  place?: GridPlace
  /** Where in its range it stands: 0 is the least of what it controls, 1 the most. */
  at?: number
  about?: string
  remark?: string
}

/**
 * A sag that was not measured on the right, as it follows from the last one on its line that was, and from how preload
 * was turned since: a starting point, to be measured.
 */
export interface ExpectedSag {
  /** 'Rider sag', 'front'. */
  label: string
  end: 'front' | 'rear'
  /** '42 mm', as it was last measured by the left state, and in which entry where that is not the left one. */
  measured: string
  measuredIn?: string
  /** '35 mm', as to be expected on the right. */
  expected: string
  /** '−7 mm' */
  change: string
  /** What it rests on: 'from 34 mm in run-3 and 1 mm less preload at the spring since; measure it'. */
  about: string
}

/** An entry between the two states. `undone`: it lies on the way back from the left one; `done`: on the way to the right one. */
export interface EntryBetween {
  way: 'undone' | 'done'
  key: string
  date: string
  reason: string
  /** What it changed, a line each: 'Fork rebound, both legs: 2 clicks out: less rebound damping'. */
  changes: string[]
}

/**
 * Findings about one state that the other has not; of two notebooks also those about no entry. A position that still
 * stands keeps its findings, whichever entry set it.
 */
export interface FindingsCompared {
  new: ComparedFinding[]
  gone: ComparedFinding[]
  /** About something that was measured on the left and not on the right, so that nobody knows. */
  notReadAgain: ComparedFinding[]
  /** About something that was not measured on the left, and was found already when it was last measured before that. */
  foundBefore: ComparedFinding[]
}

export interface ComparedFinding {
  code: string
  severity: Severity
  message: string
  /** In its side's file, from 1. */
  line: number
  entry?: string
  row?: string
}
