// Child processes that never outlive us: each is started in a group of its own, remembered, and the whole group is
// ended when it is done with, when we exit, or when we are interrupted.
import { spawn, spawnSync } from 'node:child_process'

const windows = process.platform === 'win32'
const alive = new Set()

/**
 * Starts `command` as the head of its own process group, so that its own children can be ended with it.
 * @param {string} command
 * @param {string[]} args
 * @param {import('node:child_process').SpawnOptions} [options]
 */
export function startChild(command, args, options = {}) {
  const child = spawn(command, args, { detached: !windows, windowsHide: true, ...options })
  alive.add(child)
  // The group may hold grandchildren after its head is gone; sweep them too.
  child.once('exit', () => {
    signalGroup(child, 'SIGKILL')
    alive.delete(child)
  })
  return child
}

/** Asks the group of `child` to end, insists after `patienceMs`, and resolves when its head has exited. */
export async function endChild(child, patienceMs = 5000) {
  if (child.exitCode !== null || child.signalCode !== null || !child.pid) return
  const exited = new Promise(resolve => child.once('exit', resolve))
  signalGroup(child, 'SIGTERM')
  const insist = setTimeout(() => signalGroup(child, 'SIGKILL'), patienceMs)
  await exited
  clearTimeout(insist)
}

/** Ends the process with what `cleanUp` does first, whatever signal asks for it. A second signal ends it at once. */
export function endOnSignal(cleanUp) {
  let asked = false
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, async () => {
      if (asked) process.exit(130)
      asked = true
      await cleanUp().catch(() => undefined)
      process.exit(signal === 'SIGINT' ? 130 : 143)
    })
  }
}

function signalGroup(child, signal) {
  if (!child.pid) return
  try {
    if (windows) spawnSync('taskkill', ['/pid', String(child.pid), '/T', '/F'], { stdio: 'ignore' })
    else process.kill(-child.pid, signal)
  } catch {
    // The group is gone already, which is what was wanted.
  }
}

process.on('exit', () => {
  for (const child of alive) signalGroup(child, 'SIGKILL')
})
