// Runs the program named by its arguments and ends the whole process group when the pipe from its parent breaks.
import { spawn } from 'node:child_process'
import { signalGroup } from './children.mjs'

const [command, ...args] = process.argv.slice(2)
const child = spawn(command, args, { stdio: ['ignore', 'inherit', 'inherit'] })
child.once('error', error => {
  console.error(error.message)
  process.exit(127)
})
child.once('exit', code => process.exit(code ?? 1))

process.stdin.resume()
for (const event of ['end', 'error']) process.stdin.once(event, () => signalGroup(process.pid, 'SIGKILL'))
// A signal to the group reaches the program too; we stay until it has ended.
for (const signal of ['SIGTERM', 'SIGINT', 'SIGHUP']) process.on(signal, () => undefined)
