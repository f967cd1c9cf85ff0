/**
 * The door for scripts, `detent/core`: read a notebook, check it, export it as plain data, and make statistics of a log.
 * Everything here is pure: texts and bytes in, values out. `samples/scripts` and the README show it at work; `api.d.ts` is
 * all of it, and what is not there may change without notice.
 */
import { loggerOf as findLogger, logFactsOf as findLogFacts, logGeometryOf as findLogGeometry } from './derived/loggerOf'
import { exportNotebook as exportWhole, type Exported } from './export/exportNotebook'
import type { Finding } from './finding'
import type { LogRequest } from './logs/analyseLog'
import type { LoggerMapping } from './logs/mapping/mapping'
import type { Notebook as Whole } from './notebook/notebook'
import { readNotebook as readWhole } from './notebook/readNotebook'
import { checkNotebook as checkWhole, type Severities } from './rules/checkNotebook'

export { analyseLog, type LogAnalysis, type LogReport, type LogRequest } from './logs/analyseLog'
export type { LoggerMapping } from './logs/mapping/mapping'
export { usualOptions, type LogOptions } from './logs/options'
export type { LogStatistics } from './logs/statistics/logStatistics'
export { applyChanges, lineAndColumn } from './text'
export type { Exported, ExportedEntry } from './export/exportNotebook'
export type { Finding } from './finding'

declare const read: unique symbol

/** A notebook that was read, to be handed on to the functions here; what it is made of is the program's own. */
export interface Notebook {
  readonly [read]: true
  readonly text: string
  /** What is wrong with its syntax; such a notebook says no more than that. */
  readonly broken?: Finding
}

/** Reads the text of a notebook. Never throws: what is wrong with it, `checkNotebook` tells. */
export function readNotebook(text: string): Notebook {
  return readWhole(text) as unknown as Notebook
}

/**
 * What the rules find, in the order of the text.
 *
 * @param severities how loudly rules speak by their code, where the notebook itself does not say
 */
export function checkNotebook(notebook: Notebook, severities?: Severities): Finding[] {
  return checkWhole(whole(notebook), severities)
}

/** Every entry with its state resolved and its numbers worked out; names carry their units. */
export function exportNotebook(notebook: Notebook): Exported {
  return exportWhole(whole(notebook))
}

/** Which column of its logs is what, as `machine.logger` says; absent where it does not. For `analyseLog`. */
export function loggerOf(notebook: Notebook): LoggerMapping | undefined {
  return findLogger(whole(notebook))
}

/** What the notebook knows of either end, for `analyseLog`: travel in mm. */
export function logFactsOf(notebook: Notebook): NonNullable<LogRequest['facts']> {
  return findLogFacts(whole(notebook))
}

/** Rake, trail and wheelbase where the notebook has them, for `analyseLog`. */
export function logGeometryOf(notebook: Notebook): LogRequest['geometry'] {
  return findLogGeometry(whole(notebook))
}

function whole(notebook: Notebook): Whole {
  return notebook as unknown as Whole
}
