/**
 * The door for scripts: read a notebook, export it as plain data, and make statistics of a log. Everything here is pure:
 * texts and bytes in, values out. `samples/scripts` shows it at work; what is not named here may change without notice.
 */
export { readNotebook } from './notebook/readNotebook'
export type { Entry, Notebook } from './notebook/notebook'
export { checkNotebook } from './rules/checkNotebook'
export type { Finding } from './finding'
export { exportNotebook, type Exported, type ExportedEntry } from './export/exportNotebook'
export { analyseLog, type LogAnalysis, type LogReport, type LogRequest } from './logs/analyseLog'
export type { LogStatistics } from './logs/statistics/logStatistics'
export type { LoggerMapping } from './logs/mapping/mapping'
export { usualOptions, type LogOptions } from './logs/options'
export { loggerOf, logFactsOf, logGeometryOf } from './derived/loggerOf'
