import type { Outcome } from './outcome'

/** Whether what is printed may be coloured. */
export function mayColour(): boolean {
  return process.stdout.isTTY && process.stdout.hasColors()
}

/** Does the work on this machine: prints what it says and sets the exit code. */
export async function onThisMachine(work: () => Promise<Outcome>): Promise<void> {
  // A reader that closes early, such as `head`, is no failure.
  process.stdout.on('error', () => undefined)
  try {
    const { out, err, code } = await work()
    if (err) process.stderr.write(err)
    process.exitCode = code
    process.stdout.write(out)
  } catch (error) {
    process.stderr.write(`detent: this is a fault of the program; nothing was changed. Please report it with what you typed and this:\n${error instanceof Error ? error.stack : String(error)}\n`)
    process.exitCode = 3
  }
}
