import { spawn } from 'node:child_process'
import { readFileSync } from 'node:fs'

/** What one run of a program took. */
export interface Run {
  ms: number
  /** Peak of resident memory, where the system tells it. */
  peakMiB?: number
  out: string
}

/** One program among those compared: medians over its runs. */
export interface Measured {
  what: string
  version?: string
  ms?: number
  peakMiB?: number
  /** Why there is no figure. */
  absent?: string
  out?: string
}

/** Runs a program to its end, from its start on: what a person waits for. @throws Error with its words where it fails */
export function runOnce(command: string, args: readonly string[]): Promise<Run> {
  return new Promise((resolve, reject) => {
    const started = performance.now()
    const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'pipe'] })
    let [out, err, peakMiB] = ['', '', 0]
    // The system keeps the highest mark itself, so that seldom looking misses little.
    const watch = setInterval(() => peakMiB = Math.max(peakMiB, highWaterMark(child.pid) ?? 0), 15)
    child.stdout.on('data', (some: Buffer) => out += some.toString())
    child.stderr.on('data', (some: Buffer) => err += some.toString())
    child.on('error', reject)
    child.on('close', (code) => {
      clearInterval(watch)
      const ms = performance.now() - started
      if (code === 0) resolve({ ms, out, ...(peakMiB > 0 ? { peakMiB } : {}) })
      else reject(new Error(err.trim().split('\n').slice(-3).join(' ') || `ended with code ${code}`))
    })
  })
}

function highWaterMark(pid: number | undefined): number | undefined {
  try {
    const found = /^VmHWM:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))
    return found ? Number(found[1]) / 1024 : undefined
  } catch {
    return undefined
  }
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return (sorted[(sorted.length - 1) >> 1]! + sorted[sorted.length >> 1]!) / 2
}
