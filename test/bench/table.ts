import type { Measured } from './measure'

/** A ratio between two that were measured in the same run, and the limit it is held to. */
export interface Target {
  what: string
  ratio?: number
  /** `atMost` for what is to be small, `atLeast` for what is to be large. */
  atMost?: number
  atLeast?: number
}

export interface Benchmark {
  name: string
  title: string
  measured: Measured[]
  targets: Target[]
}

/** `undefined` where one of the two could not be measured. */
export function isMet({ ratio, atMost = Infinity, atLeast = -Infinity }: Target): boolean | undefined {
  return ratio === undefined ? undefined : ratio <= atMost && ratio >= atLeast
}

/** Below a tenth of a second in milliseconds. */
const printTime = (ms: number) => (ms < 100 ? `${ms.toFixed(2)} ms` : `${(ms / 1000).toFixed(3)} s`)

/** A benchmark for people. */
export function benchmarkText({ title, measured, targets }: Benchmark): string {
  const rows = measured.map(({ what, version, ms, peakMiB, absent }) => [
    version ? `${what} ${version}` : what, ms === undefined ? `absent: ${absent ?? 'no figure'}` : printTime(ms), peakMiB === undefined ? '' : `${Math.round(peakMiB)} MiB`,
  ])
  const widths = [0, 1].map((at) => Math.max(...rows.map((row) => row[at]!.length)))
  const lines = rows.map(([what, time, memory]) => `  ${what!.padEnd(widths[0]!)}  ${time!.padStart(Math.min(widths[1]!, 12))}  ${memory!.padStart(9)}`.trimEnd())
  const held = targets.map((target) => {
    const met = isMet(target)
    const limit = target.atMost !== undefined ? `<= ${target.atMost}` : target.atLeast !== undefined ? `>= ${target.atLeast}` : 'no target at this size'
    const mark = limit.startsWith('no') || met === undefined ? '    ' : met ? 'met ' : 'MISS'
    return `  ${mark} ${target.what}: ${target.ratio === undefined ? 'not measured' : target.ratio.toFixed(2)} (${limit})`
  })
  return [title, ...lines, ...held].join('\n')
}
