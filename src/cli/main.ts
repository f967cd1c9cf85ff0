import { disk } from './disk'
import { start } from './run'

void start(process.argv.slice(2), disk).then(({ out, err, code }) => {
  if (err) process.stderr.write(err)
  process.exitCode = code
  // A reader that closes early, such as `head`, is no failure.
  process.stdout.on('error', () => undefined)
  process.stdout.write(out)
})
