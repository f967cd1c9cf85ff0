import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { busyMs } from '../busyMs'
import { chance } from './chance'
import { driveLog, makeLog } from './driveLog'
import { drivers } from './drivers'
import { kinds, makeText, type Kind } from './makeCase'

/** A case that broke a promise: what was done with which text. */
export interface Broken {
  number: number
  kind: Kind | 'log'
  driver: string
  error: unknown
  input: string | Uint8Array
}

export interface Ran {
  kind: Kind | 'log'
  size: number
  /** Reading, checking and everything else, ms. */
  ms: Record<string, number>
  broken: Broken[]
}

/** The case of a number: every ninth or so is a log, all others are notebooks that everything is done with. */
export function runCase(number: number): Ran {
  const choices = chance(number)
  const turn = number % (kinds.length + 1)
  const ran: Ran = { kind: kinds[turn] ?? 'log', size: 0, ms: {}, broken: [] }
  let input: string | Uint8Array = ''
  const attempt = (driver: string, act: () => void) => {
    ran.ms[driver] = busyMs(() => {
      try {
        act()
      } catch (error) {
        ran.broken.push({ number, kind: ran.kind, driver, error, input })
      }
    })
  }
  if (ran.kind === 'log') {
    const log = (input = makeLog(choices))
    attempt('log', () => driveLog(log, choices))
  } else {
    const text = (input = makeText(ran.kind, choices))
    let notebook = readNotebook('')
    let findings: ReturnType<typeof checkNotebook> = []
    attempt('reading', () => (notebook = readNotebook(text)))
    attempt('rules', () => (findings = checkNotebook(notebook)))
    // Each by its own choices, so that what is done with a text does not depend on what was done before.
    for (const [name, drive] of Object.entries(drivers)) attempt(name, () => drive({ text, notebook, findings }, chance(number + 1, 800)))
  }
  ran.size = input.length
  return ran
}
