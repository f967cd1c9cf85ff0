import type { ColumnName, LoggerMapping } from '../mapping/mapping'

/** A mapping as the lines of a notebook, to be put under `machine`. */
export function mappingText({ time, rateHz, front, rear, brake, lap }: LoggerMapping): string {
  const lines = [
    ...(time ? [`time: ${flow(time)}`] : []), ...(rateHz === undefined ? [] : [`rate: ${rateHz}`]),
    ...(front ? [`front: ${flow(front)}`] : []), ...(rear ? [`rear: ${flow(rear)}`] : []), ...(brake ? [`brake: ${flow(brake)}`] : []), ...(lap ? [`lap: ${flow(lap)}`] : []),
  ]
  return ['logger:', ...lines.map((line) => `  ${line}`)].join('\n')
}

/** With the column first, whatever order its keys came in. */
function flow<T extends { column: ColumnName }>({ column, ...others }: T): string {
  const pairs = [['column', column], ...Object.entries(others).filter(([, value]) => value !== undefined)] as [string, ColumnName][]
  return `{${pairs.map(([key, value]) => `${key}: ${plain(value)}`).join(', ')}}`
}

/** Quoted where YAML could take it for anything but the words they are; a quoted text of JSON is one of YAML too. */
function plain(value: ColumnName): string {
  const isWord = typeof value === 'string' && /^[a-z_][\w ]*$/i.test(value) && !/^(?:true|false|null|yes|no|on|off|y|n)$/i.test(value) && !value.endsWith(' ')
  return isWord ? value : JSON.stringify(value)
}
