import type { FileMetaData, SchemaElement } from 'hyparquet/src/types.js'
import { numberFrom } from '../fieldText'

/** A column of a Parquet file, and how its values are written as fields of a table. */
export interface TextColumn {
  /** As the file calls it. */
  name: string
  heading: string
  unit: string
  write: (value: unknown) => string
}

/** Times come from the library as they stand in the file: its own would be cut to milliseconds. */
export const timesAsNanoseconds = {
  timestampFromMilliseconds: (time: bigint) => BigInt(time) * 1_000_000n,
  timestampFromMicroseconds: (time: bigint) => BigInt(time) * 1000n,
  timestampFromNanoseconds: (time: bigint) => BigInt(time),
}

/** The columns that hold one value a row; lists and structures have no place in a table of numbers. */
export function textColumns({ schema }: FileMetaData): TextColumn[] {
  return top(schema).filter(isFlat).map((element, at) => {
    const name = nameOf(element)
    // A heading that is a number would be taken for a row, one that begins so for a remark.
    const isHeading = name !== '' && !name.startsWith('#') && numberFrom(name, '.') === undefined
    return { name: element.name, heading: isHeading ? name : `column ${at + 1}`, ...writing(element) }
  })
}

/** So many columns that are left out are named. */
const mostNamed = 50

/** The names of the others. */
export function unreadColumns({ schema }: FileMetaData): string[] {
  const names = top(schema).filter((element) => !isFlat(element)).map((element) => nameOf(element).slice(0, 100))
  return names.length > mostNamed ? [...names.slice(0, mostNamed), '…'] : names
}

const nameOf = ({ name }: SchemaElement): string => name.replace(/[\t\r\n"]/g, ' ').trim()
const isFlat = ({ type, repetition_type: repetition }: SchemaElement): boolean => type !== undefined && repetition !== 'REPEATED'

/** The schema is a tree in the order of its leaves, each telling how many stand below it. */
function top(schema: readonly SchemaElement[]): SchemaElement[] {
  const found: SchemaElement[] = []
  for (let at = 1; at < schema.length; at = behind(schema, at)) found.push(schema[at]!)
  return found
}

function behind(schema: readonly SchemaElement[], at: number): number {
  let next = at + 1
  for (let below = schema[at]?.num_children ?? 0; below > 0 && next < schema.length; below--) next = behind(schema, next)
  return next
}

function writing({ type, logical_type: logical, converted_type: converted }: SchemaElement): Pick<TextColumn, 'unit' | 'write'> {
  if (type === 'INT96' || logical?.type === 'TIMESTAMP' || converted?.startsWith('TIMESTAMP')) return { unit: 's', write: secondsOfDay() }
  const units = logical?.type === 'TIME' ? logical.unit : converted === 'TIME_MILLIS' ? 'MILLIS' : converted === 'TIME_MICROS' ? 'MICROS' : undefined
  if (units === undefined) return { unit: '', write: asField }
  const perS = { MILLIS: 1e3, MICROS: 1e6, NANOS: 1e9 }[units]
  return { unit: 's', write: (value) => (value === undefined || value === null ? '' : String(Number(value) / perS)) }
}

/** Seconds since the midnight (UTC) before the first time: since 1970 a double has no more than a quarter of a microsecond for them. */
function secondsOfDay(): (value: unknown) => string {
  const day = 86_400_000_000_000n
  let midnight: bigint | undefined
  return (value) => {
    if (typeof value !== 'bigint') return ''
    midnight ??= (value / day) * day
    return String(Number(value - midnight) / 1e9)
  }
}

function asField(value: unknown): string {
  if (typeof value === 'number' || typeof value === 'bigint') return String(value)
  if (typeof value === 'boolean') return value ? '1' : '0'
  if (value instanceof Date) return String(value.getTime() / 1000)
  // What is written in words may be a time of day; nothing in it may part fields or lines.
  return typeof value === 'string' ? value.slice(0, 100).replace(/[\t\r\n"#]/g, ' ') : ''
}
