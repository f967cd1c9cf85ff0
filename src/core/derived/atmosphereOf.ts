import { seaLevelBar, standardAtmosphere } from '../compute/pressure/standardAtmosphere'
import { factIn } from '../notebook/machine'
import type { Entry } from '../notebook/notebook'
import { say } from '../words/say'

/** The pressure of the air around on an entry's day, bar, by its altitude; of sea level where none is noted, which is said. */
export function atmosphereOf(entry: Entry): { bar: number; known: boolean; assumptions: string[] } {
  const mm = factIn(entry.node, ['conditions', 'altitude'], 'length')?.base
  const bar = mm === undefined ? undefined : standardAtmosphere(mm / 1000)
  return bar === undefined
    ? { bar: seaLevelBar, known: false, assumptions: [say('air pressure of sea level, since no altitude is noted')] }
    : { bar, known: true, assumptions: [say`air pressure of the standard atmosphere at ${Math.round(mm! / 1000)} m`] }
}
