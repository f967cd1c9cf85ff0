import { parseArgs } from 'node:util'
import type { Severity } from '../core/finding'
import { readNotebook } from '../core/notebook/readNotebook'
import { checkFile, type CheckedFile } from './checkedFile'
import { reportAsGithub, reportAsJson, reportAsText } from './checkReports'
import { reportAsSarif } from './checkSarif'
import { withLogsBeside } from './logsBeside'
import { UsageError, type Outcome, type World } from './outcome'

export const checkUsage = `detent check PATHS… [--format text|json|github|sarif] [--fail-on error|warning|info|never] [--no-logs]

Runs the rules over notebooks. A folder stands for every *.setup.yaml and *.setup.yml below it, - for standard input.
Logs that entries name are read where they lie beside the notebook, unless --no-logs says otherwise.
github puts each finding beside its line in a pull request; sarif is SARIF 2.1.0, with the fixes that findings carry.
Exit code: 0 clean, 1 a finding at or above --fail-on (default: error), 2 usage or unreadable input.`

const reports = { text: reportAsText, json: reportAsJson, github: reportAsGithub, sarif: reportAsSarif }
const formats = ['text', 'json', 'github', 'sarif'] as const
const thresholds = ['error', 'warning', 'info', 'never'] as const
const rank: Record<Severity, number> = { error: 3, warning: 2, info: 1 }

/** `detent check`, without a look at logs. */
export function check(args: readonly string[], world: World): Outcome {
  const { paths, ...how } = planOf(args)
  return reportOn(world.find(paths).map((path) => checkFile(path, world.read(path))), how)
}

/** `detent check`, with the logs that lie beside the notebooks. */
export async function checkWithLogs(args: readonly string[], world: World): Promise<Outcome> {
  const { paths, logs, ...how } = planOf(args)
  const files: CheckedFile[] = []
  for (const path of world.find(paths)) {
    const text = world.read(path)
    const notebook = readNotebook(text)
    files.push(checkFile(path, text, logs ? await withLogsBeside(path, notebook, world) : notebook))
  }
  return reportOn(files, how)
}

interface Plan {
  paths: string[]
  logs: boolean
  format: (typeof formats)[number]
  failOn: (typeof thresholds)[number]
}

function planOf(args: readonly string[]): Plan {
  const { values, positionals: paths } = parseArgs({
    args: [...args], allowPositionals: true,
    options: { format: { type: 'string', default: 'text' }, 'fail-on': { type: 'string', default: 'error' }, 'no-logs': { type: 'boolean', default: false } },
  })
  const format = oneOf(values.format!, formats, '--format')
  const failOn = oneOf(values['fail-on']!, thresholds, '--fail-on')
  if (paths.length === 0) throw new UsageError('check: name files or folders; . is this folder')
  return { paths, logs: !values['no-logs'], format, failOn }
}

function reportOn(files: readonly CheckedFile[], { format, failOn }: Pick<Plan, 'format' | 'failOn'>): Outcome {
  const worst = Math.max(0, ...files.flatMap(({ findings }) => findings.map(({ severity }) => rank[severity])))
  const failed = failOn !== 'never' && worst >= rank[failOn]
  const none = files.length === 0 ? 'No notebook found: none of these folders holds a *.setup.yaml or *.setup.yml.\n' : undefined
  return { out: reports[format](files), ...(none ? { err: none } : {}), code: failed ? 1 : 0 }
}

/** One of the words an option knows. @throws UsageError naming them */
export function oneOf<T extends string>(value: string, words: readonly T[], option: string): T {
  const found = words.find((word) => word === value)
  if (found === undefined) throw new UsageError(`${option} knows ${words.join(', ')}, not ‘${value}’`)
  return found
}
