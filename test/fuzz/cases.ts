// The child of run.ts: runs a case, says what came of it, and waits to be told to go on.
import type { Broken } from './runCase'
import { runCase } from './runCase'

/** What came of a case, as plain data. */
export interface Told {
  kind: string
  size: number
  ms: Record<string, number>
  memory: number
  broken: { driver: string; message: string; stack: string; input: string; bytes: boolean }[]
}

let number = Number(process.argv[2])
process.on('message', run)
run()

function run(): void {
  const { kind, size, ms, broken } = runCase(number++)
  process.send!({ kind, size, ms, memory: process.memoryUsage.rss(), broken: broken.map(tell) } satisfies Told)
}

function tell({ driver, error, input }: Broken): Told['broken'][number] {
  const bytes = typeof input !== 'string'
  const message = error instanceof Error ? error.message || error.name : String(error)
  return { driver, message, stack: error instanceof Error ? (error.stack ?? '') : '', input: bytes ? Buffer.from(input).toString('base64') : input, bytes }
}
