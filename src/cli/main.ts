import { disk } from './disk'
import { run } from './run'

const { out, err, code } = run(process.argv.slice(2), disk)
if (err) process.stderr.write(err)
process.exitCode = code
// A reader that closes early, such as `head`, is no failure.
process.stdout.on('error', () => undefined)
process.stdout.write(out)
