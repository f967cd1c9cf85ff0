/** What a command came to: what it prints and its exit code. Commands print nothing themselves, so that they are tested without a process. */
export interface Outcome {
  out: string
  err?: string
  /** 0 clean, 1 findings at or above the threshold, 2 usage or unreadable input. */
  code: 0 | 1 | 2
}

/** Something the person has to put right: told on standard error, exit code 2. */
export class UsageError extends Error {}

/** The world as commands see it. */
export interface World {
  /** @throws UsageError where it cannot be read */
  read: (path: string) => string
  /** Writes a new file. @throws UsageError where one is there already, or it cannot be written */
  create: (path: string, text: string) => void
  /** This day, `YYYY-MM-DD`. */
  today: () => string
  /** The notebooks under files and folders, sorted; a file named itself is taken whatever its name. */
  find: (paths: readonly string[]) => string[]
}
