/** What the runner tells the suite, through one environment variable that the extension host inherits. */
export interface SuiteSettings {
  /** Where the window's browser listens for the Chrome DevTools protocol. */
  debuggingPort: number
  /** The folder that the editor has open; each test gets a folder of its own below it. */
  workspace: string
  /** The pristine samples that each test's folder is a copy of. */
  samples: string
  /** Folder for pictures of the window. */
  pictures: string
  /** File that receives the sums as JSON. */
  results: string
  /** Run only the tests whose title contains this; empty for all. */
  grep: string
  /** What is measured runs, not what is tested. */
  measure: boolean
  /** The extension runs in the browser's host, not in this one. */
  web: boolean
}

/** Reads them. Throws when the suite was not started by its runner. */
export function settings(): SuiteSettings {
  const text = process.env.DETENT_SUITE
  if (!text) throw new Error('Start the editor tests with `npm test -- --editor`.')
  return JSON.parse(text) as SuiteSettings
}
