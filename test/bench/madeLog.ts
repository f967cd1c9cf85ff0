import { closeSync, existsSync, openSync, renameSync, writeFileSync, writeSync } from 'node:fs'
import { join } from 'node:path'
import { parquetWriteBuffer } from 'hyparquet-writer'
import { benchFolder } from './peers/install.mjs'

/** Numbers of a log of time, fork and shock at 1 kHz, the same every time; the arrays are used again. */
function* rowsOf(count: number): Generator<readonly [t: number, fork: number, shock: number]> {
  let [state, a, b] = [12345, 0, 0]
  const next = () => (state = (Math.imul(state, 1664525) + 1013904223) >>> 0) / 2 ** 32 - 0.5
  const row: [number, number, number] = [0, 0, 0]
  for (let at = 0; at < count; at++) {
    const t = at / 1000
    a += next() * 1.2 - a * 0.01
    b += next() * 1.1 - b * 0.01
    row[0] = t
    row[1] = Math.min(119, Math.max(0.3, 60 + 25 * Math.sin(t * 2) + 18 * Math.sin(t * 11.3) + a * 3))
    row[2] = Math.min(129, Math.max(0.3, 55 + 20 * Math.sin(t * 2 + 1) + 15 * Math.sin(t * 9.1) + b * 3))
    yield row
  }
}

/** A made log as text, written once. */
export function madeLog(rows: number, separator = ',', decimal = '.'): string {
  const file = join(benchFolder, `log-${rows}${separator === ',' ? '' : '-other'}.csv`)
  if (existsSync(file)) return file
  const partial = `${file}.${process.pid}`
  const handle = openSync(partial, 'w')
  let text = `${['Time', 'Fork', 'Shock'].join(separator)}\n`
  const field = (value: number, digits: number) => decimal === '.' ? value.toFixed(digits) : value.toFixed(digits).replace('.', decimal)
  for (const [t, fork, shock] of rowsOf(rows)) {
    text += field(t, 3) + separator + field(fork, 2) + separator + field(shock, 2) + '\n'
    if (text.length > 1 << 20) {
      writeSync(handle, text)
      text = ''
    }
  }
  writeSync(handle, text)
  closeSync(handle)
  renameSync(partial, file)
  return file
}

/** The same as a Parquet file of four columns, packed by Snappy, written once. */
export function madeParquet(rows: number): string {
  const file = join(benchFolder, `log-${rows}.parquet`)
  if (existsSync(file)) return file
  const [time, fork, shock, speed] = Array.from({ length: 4 }, () => new Float64Array(rows))
  let at = 0
  for (const [t, front, rear] of rowsOf(rows)) {
    time![at] = t
    fork![at] = Math.round(front * 100) / 100
    shock![at] = Math.round(rear * 100) / 100
    speed![at] = Math.round(800 + 300 * Math.sin(t / 7)) / 10
    at++
  }
  const columns = { Time: time!, Fork: fork!, Shock: shock!, Speed: speed! }
  writeFileSync(file, new Uint8Array(parquetWriteBuffer({ columnData: Object.entries(columns).map(([name, data]) => ({ name, data, type: 'DOUBLE' as const })), rowGroupSize: 100_000 })))
  return file
}
