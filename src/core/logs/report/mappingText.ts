import type { ColumnName, LoggerMapping } from '../mapping/mapping'

/** One line below `logger`: its key, what stands behind it, and the values it is made of where they are several. */
export interface MappingPart {
  key: 'time' | 'rate' | 'front' | 'rear' | 'brake' | 'lap'
  text: string
  values?: [string, ColumnName][]
}

/** A mapping as the lines of a notebook, to be put under `machine`. */
export function mappingText(mapping: LoggerMapping): string {
  return ['logger:', ...mappingParts(mapping).map(({ key, text }) => `  ${key}: ${text}`)].join('\n')
}

/** The lines one by one. */
export function mappingParts({ time, rateHz, front, rear, brake, lap }: LoggerMapping): MappingPart[] {
  const part = (key: MappingPart['key'], said: { column: ColumnName } | undefined): MappingPart[] => (said ? [{ key, text: flow(valuesOf(said)), values: valuesOf(said) }] : [])
  return [
    ...part('time', time), ...(rateHz === undefined ? [] : [{ key: 'rate' as const, text: String(rateHz) }]),
    ...part('front', front), ...part('rear', rear), ...part('brake', brake), ...part('lap', lap),
  ]
}

/** With the column first, whatever order its keys came in. */
function valuesOf<T extends { column: ColumnName }>({ column, ...others }: T): [string, ColumnName][] {
  return [['column', column], ...Object.entries(others).filter(([, value]) => value !== undefined)] as [string, ColumnName][]
}

const flow = (pairs: readonly [string, ColumnName][]): string => `{${pairs.map(([key, value]) => `${key}: ${plainValue(value)}`).join(', ')}}`

/** Quoted where YAML could take it for anything but the words they are; a quoted text of JSON is one of YAML too. */
export function plainValue(value: ColumnName): string {
  const isWord = typeof value === 'string' && /^[a-z_][\w ]*$/i.test(value) && !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(value) && !value.endsWith(' ')
  return isWord ? value : JSON.stringify(value)
}
