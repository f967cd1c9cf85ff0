import { parseArgs } from 'node:util'
import type { Severity } from '../core/finding'
import { checkFile, type CheckedFile } from './checkedFile'
import { checkPath } from './checkPath'
import { reportAsGithub, reportAsJson, reportAsText } from './checkReports'
import { reportAsSarif } from './checkSarif'
import { UsageError, type Outcome, type World } from './outcome'

const reports = { text: reportAsText, json: reportAsJson, github: reportAsGithub, sarif: reportAsSarif }
const formats = ['text', 'json', 'github', 'sarif'] as const
const thresholds = ['error', 'warning', 'info', 'never'] as const
const rank: Record<Severity, number> = { error: 3, warning: 2, info: 1 }

/** `detent check`, without a look at logs. */
export function check(args: readonly string[], world: World): Outcome {
  const { paths, ...how } = planOf(args)
  return reportOn(world.find(paths).map((path) => checkFile(path, world.read(path))), how, world.colour)
}

/** `detent check`, with the logs that lie beside the notebooks. */
export async function checkWithLogs(args: readonly string[], world: World): Promise<Outcome> {
  const { paths, logs, ...how } = planOf(args)
  const found = world.find(paths)
  const files = (world.threadScript === undefined ? undefined : world.checks?.(world.threadScript, found, logs)) ?? inTurn(found, logs, world)
  return reportOn(await files, how, world.colour)
}

async function inTurn(paths: readonly string[], logs: boolean, world: World): Promise<CheckedFile[]> {
  const files: CheckedFile[] = []
  for (const path of paths) files.push(await checkPath(path, logs, world))
  return files
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

function reportOn(files: readonly CheckedFile[], { format, failOn }: Pick<Plan, 'format' | 'failOn'>, colour = false): Outcome {
  const worst = Math.max(0, ...files.flatMap(({ findings }) => findings.map(({ severity }) => rank[severity])))
  const failed = failOn !== 'never' && worst >= rank[failOn]
  const none = files.length === 0 ? 'No notebook found: none of these folders holds a *.setup.yaml or *.setup.yml.\n' : undefined
  return { out: reports[format](files, colour), ...(none ? { err: none } : {}), code: failed ? 1 : 0 }
}

/** One of the words an option knows. @throws UsageError naming them */
export function oneOf<T extends string>(value: string, words: readonly T[], option: string): T {
  const found = words.find((word) => word === value)
  if (found === undefined) throw new UsageError(`${option} knows ${words.join(', ')}, not ‘${value}’`)
  return found
}
