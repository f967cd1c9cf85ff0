import { disk } from './disk'
import { start } from './run'

/**
 * Runs the command line on this machine: prints what it says and sets the exit code.
 *
 * @param script the program itself, to be started again as a thread
 */
export async function program(args: readonly string[], script: string): Promise<void> {
  // A reader that closes early, such as `head`, is no failure.
  process.stdout.on('error', () => undefined)
  try {
    const colour = process.stdout.isTTY && process.stdout.hasColors()
    const { out, err, code } = await start(args, { ...disk, threadScript: script, colour })
    if (err) process.stderr.write(err)
    process.exitCode = code
    process.stdout.write(out)
  } catch (error) {
    process.stderr.write(`detent: this is a fault of the program; nothing was changed. Please report it with what you typed and this:\n${error instanceof Error ? error.stack : String(error)}\n`)
    process.exitCode = 3
  }
}
