// Child processes that never outlive us. Each runs below a guard (guard.mjs) at the head of a process group of its own;
// the guard holds a pipe to us and ends the whole group when that breaks, so that even our own violent death leaves nothing.
import { spawn, spawnSync } from 'node:child_process'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const windows = process.platform === 'win32'
const guard = join(dirname(fileURLToPath(import.meta.url)), 'guard.mjs')

/**
 * Starts a program below a guard; its output is what the returned process puts out, its code that one's code.
 * @param {string} command
 * @param {string[]} args
 * @param {{cwd?: string, env?: object, output?: 'pipe' | 'inherit'}} [options] `output` is 'pipe' unless told otherwise
 */
export function startChild(command, args, { cwd, env, output = 'pipe' } = {}) {
  const child = spawn(process.execPath, [guard, command, ...args], { cwd, env, detached: !windows, windowsHide: true, stdio: ['pipe', output, output] })
  child.stdin.on('error', () => undefined)
  // The group may hold grandchildren after its head is gone; sweep them too.
  child.once('exit', () => signalGroup(child.pid, 'SIGKILL'))
  return child
}

/** Asks the group of `child` to end, insists after `patienceMs`, and resolves when its head has exited. */
export async function endChild(child, patienceMs = 5000) {
  if (child.exitCode !== null || child.signalCode !== null || !child.pid) return
  const exited = new Promise(resolve => child.once('exit', resolve))
  signalGroup(child.pid, 'SIGTERM')
  const insist = setTimeout(() => signalGroup(child.pid, 'SIGKILL'), patienceMs)
  await exited
  clearTimeout(insist)
}

/** On the first signal that asks us to end, does `cleanUp` first; a second one ends us at once. */
export function endOnSignal(cleanUp) {
  let asked = false
  const end = async code => {
    if (asked) process.exit(code)
    asked = true
    await cleanUp().catch(() => undefined)
    process.exit(code)
  }
  for (const [signal, code] of [['SIGINT', 130], ['SIGTERM', 143], ['SIGHUP', 129]]) process.on(signal, () => end(code))
  // npm puts a shell between itself and us, and a signal to npm ends that shell alone.
  const parent = process.ppid
  if (process.env.npm_lifecycle_event) setInterval(() => process.ppid !== parent && !asked && end(143), 1000).unref()
}

/** Signals a whole process group, by its head; on Windows, which has no groups, ends the tree below it. */
export function signalGroup(head, signal) {
  try {
    if (windows) spawnSync('taskkill', ['/pid', String(head), '/T', '/F'], { stdio: 'ignore' })
    else process.kill(-head, signal)
  } catch {
    // The group is gone already, which is what was wanted.
  }
}
