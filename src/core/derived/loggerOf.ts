import type { PlaneGeometry } from '../compute/geometry/attitude'
import { found } from '../compute/working/result'
import { timeUnits, type ChannelMapping, type ColumnName, type EndFacts, type EndName, type LoggerMapping } from '../logs/mapping/mapping'
import { factAt } from '../notebook/machine'
import type { Notebook } from '../notebook/notebook'
import { nodeAt, scalarAt } from '../notebook/tree'
import { solvedSteeringOf } from './geometryOf'
import { travelOf } from './sagOf'
import { leverageOf } from './springsFitted'

const logger = ['machine', 'logger']

/** Which column is what, as the notebook's machine says; `undefined` where it says nothing. What has the wrong shape is left out. */
export function loggerOf(notebook: Notebook): LoggerMapping | undefined {
  if (nodeAt(notebook.root, logger)?.kind !== 'map') return undefined
  const column = (...path: string[]) => columnAt(notebook, path)
  const [time, brake, lap] = [column('time'), column('brake'), column('lap')]
  const unit = timeUnits.find((each) => each === wordAt(notebook, ['time', 'unit']))
  const [rateHz, on] = [numberAt(notebook, ['rate']), numberAt(notebook, ['brake', 'on'])]
  const [front, rear] = [channelAt(notebook, 'front'), channelAt(notebook, 'rear')]
  return {
    ...(time === undefined ? {} : { time: { column: time, ...(unit ? { unit } : {}) } }), ...(rateHz === undefined ? {} : { rateHz }),
    ...(front ? { front } : {}), ...(rear ? { rear } : {}),
    ...(brake === undefined ? {} : { brake: { column: brake, ...(on === undefined ? {} : { on }) } }), ...(lap === undefined ? {} : { lap: { column: lap } }),
  }
}

/** What the machine says of its ends, for a log of it. */
export function logFactsOf(notebook: Notebook): Record<EndName, EndFacts> {
  const [front, rear, leverage] = [travelOf(notebook, 'front'), travelOf(notebook, 'rear'), leverageOf(notebook)]
  return {
    front: front === undefined ? {} : { travelMm: front },
    rear: { ...(rear === undefined ? {} : { travelMm: rear }), ...(leverage ? { leverage } : {}) },
  }
}

/** The machine's figures for the attitude, as they hold with both ends extended and nothing moved; `undefined` where one is missing. */
export function logGeometryOf(notebook: Notebook): PlaneGeometry | undefined {
  const { rakeDeg, offsetMm, frontRadiusMm } = found(solvedSteeringOf(notebook))?.values ?? {}
  const [wheelbaseMm, rearRadiusMm] = ['wheelbase', 'rear_radius'].map((key) => factAt(notebook, ['machine', 'geometry', key], 'length')?.base)
  if (!rakeDeg || !offsetMm || !frontRadiusMm || wheelbaseMm === undefined || rearRadiusMm === undefined) return undefined
  return { rakeDeg: rakeDeg.value, offsetMm: offsetMm.value, frontRadiusMm: frontRadiusMm.value, wheelbaseMm, rearRadiusMm }
}

function channelAt(notebook: Notebook, end: EndName): ChannelMapping | undefined {
  const column = columnAt(notebook, [end])
  if (column === undefined) return undefined
  const [unit, direction, at] = [wordAt(notebook, [end, 'unit']), wordAt(notebook, [end, 'direction']), wordAt(notebook, [end, 'at'])]
  const [scale, offset] = [numberAt(notebook, [end, 'scale']), numberAt(notebook, [end, 'offset'])]
  return {
    column, ...(unit === undefined ? {} : { unit }), ...(scale === undefined ? {} : { scale }), ...(offset === undefined ? {} : { offset }),
    ...(direction === 'extension' || direction === 'compression' ? { direction } : {}), ...(at === 'damper' || at === 'wheel' ? { at } : {}),
  }
}

function columnAt(notebook: Notebook, path: readonly string[]): ColumnName | undefined {
  const node = scalarAt(notebook.root, [...logger, ...path, 'column'])
  if (!node || node.text.trim() === '') return undefined
  return typeof node.value === 'number' ? node.value : node.text
}

function wordAt(notebook: Notebook, path: readonly string[]): string | undefined {
  return scalarAt(notebook.root, [...logger, ...path])?.text
}

function numberAt(notebook: Notebook, path: readonly string[]): number | undefined {
  const value = scalarAt(notebook.root, [...logger, ...path])?.value
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined
}
