import type { StateSource, TurnsView } from '../../../src/protocol'

/** What outlives the page: which list it shows, so that it can be made anew after a reload, and what is ticked. */
export interface SavedState {
  sources?: TurnSources
  ticked: string[]
  large: boolean
}

export type TurnSources = TurnsView['sources']

/** Reads what an earlier life of the page, perhaps of an older version, left behind. Anything odd is left out. */
export function readSavedState(saved: unknown): SavedState {
  if (!isRecord(saved)) return { ticked: [], large: false }
  const sources = isRecord(saved.sources) && isSource(saved.sources.from) && isSource(saved.sources.to) ? { from: saved.sources.from, to: saved.sources.to } : undefined
  return {
    ...(sources ? { sources } : {}), large: saved.large === true,
    ticked: Array.isArray(saved.ticked) ? saved.ticked.filter((tick) => typeof tick === 'string') : [],
  }
}

/** Whether two lists are of the same two states. */
export function sameSources(a: TurnSources | undefined, b: TurnSources): boolean {
  const key = ({ from, to }: TurnSources) => JSON.stringify([from, to].map(({ uri, entry, revision, saved }) => [uri, entry, revision, saved]))
  return a !== undefined && key(a) === key(b)
}

const isSource = (value: unknown): value is StateSource => isRecord(value) && typeof value.uri === 'string' && ['string', 'undefined'].includes(typeof value.entry) && ['string', 'undefined'].includes(typeof value.revision)
const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value)
