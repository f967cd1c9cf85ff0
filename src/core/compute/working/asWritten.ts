import { say } from '../../words/say'
import { derive, given } from './derive'
import type { Outcome } from './result'

/** A number that is taken as someone wrote it. @example asWritten(say('rake'), '°', 26) */
export function asWritten(name: string, unit: string, value: number | undefined): Outcome {
  return derive<string>({ formula: name, unit, from: { [name]: given(name, unit, value) }, by: (values) => values[name]!, source: say('as written') })
}
