import { isMainThread } from 'node:worker_threads'
import { disk } from './disk'
import { start } from './run'

async function main(): Promise<void> {
  const { out, err, code } = await start(process.argv.slice(2), { ...disk, threadScript: __filename })
  if (err) process.stderr.write(err)
  process.exitCode = code
  // A reader that closes early, such as `head`, is no failure.
  process.stdout.on('error', () => undefined)
  process.stdout.write(out)
}

if (isMainThread) void main()
else void import('./threads')
