import assert from 'node:assert/strict'
import { analyseLog } from '../../src/core/logs/analyseLog'
import { logCsv } from '../../src/core/logs/report/logCsv'
import { logText } from '../../src/core/logs/report/logText'
import type { Choices } from '../core/grid/choices'

const headings = ['Time', 'time [s]', 'Fork', 'front_mm', 'Shock', 'rear %', 'Brake F', 'Lap', '"a, b"', '', 'Time', '__proto__', '=1+1', '\u001b[2J', '日本']
const odd = ['', '-', 'NaN', 'inf', '1e999', '-1e-999', '"', '""', '"x', '1,5', '1.5.2', '14:03:22.125', '0x10', '9'.repeat(60), 'null', '\u0000', '\ufeff', ' ', '\t', '#']

/** A logger’s file, more or less: its time runs on, its ends move, and here and there it is not what it should be. */
export function makeLog(choices: Choices): Uint8Array {
  const separator = choices.of([',', ';', '\t', ' ', '|'])
  const [lineEnd, rare] = [choices.of(['\n', '\n', '\r\n', '\r']), choices.of([3, 40, 100_000])]
  const columns = 1 + choices.below(7)
  const head = Array.from({ length: choices.below(3) }, () => choices.of(['a logger', '# x', '', 'one;two'])).concat(Array.from({ length: columns }, () => choices.of(headings)).join(separator))
  const rows = Array.from({ length: choices.below(400) }, (_, row) => Array.from({ length: columns }, (_each, column) => {
    if (choices.once(rare)) return choices.of(odd)
    return column === 0 ? (row / 100).toFixed(2) : String(choices.below(13_000) / 100)
  }).join(separator))
  const bytes = new Uint8Array(Buffer.from([...head, ...rows].join(lineEnd), choices.of(['utf8', 'utf8', 'latin1', 'utf16le'])))
  for (let left = choices.once(3) ? choices.below(30) : 0; left > 0; left--) bytes[choices.below(bytes.length)] = choices.below(256)
  return choices.once(5) ? bytes.subarray(0, choices.below(bytes.length + 1)) : bytes
}

/** Its statistics or what keeps them from being made; the same however the bytes come. */
export function driveLog(log: Uint8Array, choices: Choices): void {
  const reportIn = (size: number) => {
    const analysis = analyseLog({ facts: { front: { travelMm: 120 }, rear: { travelMm: 130 } } })
    for (let at = 0; at < log.length; at += size) if (!analysis.feed(log.slice(at, at + size))) break
    return analysis.end()
  }
  const report = reportIn(log.length + 1)
  assert.deepEqual(reportIn(1 + choices.below(200)), report, 'in pieces')
  assert.ok(report.statistics ?? report.problem, 'statistics or a problem')
  logText(report as Parameters<typeof logText>[0], 'x')
  const numbers = JSON.stringify(report.statistics ?? {}, (_, value: unknown) => (typeof value === 'number' && !Number.isFinite(value) ? 'NOT A NUMBER' : value))
  assert.ok(!numbers.includes('NOT A NUMBER'), numbers.slice(0, 300))
  if (report.statistics) logCsv(report.statistics)
}
