import { judgeSag } from '../compute/sag/judgeSag'
import type { End, LoadCase } from '../compute/sag/loadCase'
import type { SagTarget } from '../compute/sag/sagTarget'
import { found, isMissing, type Outcome, type Result } from '../compute/working/result'
import { sagOf, sagTargetOf } from '../derived/sagOf'
import { printShown, sayIn, shownUnit, toShown, type DisplayUnits } from '../notation/displayUnits'
import type { Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import type { Chart } from './chart'
import { overEntries, type Followed } from './overEntries'
import type { ChartBand } from './view'

const loads = [{ load: 'bike', label: phrase('bike alone'), row: 'static_sag_mm' }, { load: 'rider', label: phrase('rider aboard'), row: 'rider_sag_mm' }] as const satisfies readonly { load: LoadCase; label: string; row: string }[]

/** Sag of one end over the entries, both load cases, each against the window it should lie in. */
export function sagChart(end: End): Chart {
  return {
    key: `sag_${end}`, group: 'sag',
    rows: ['static_sag_mm', 'static_sag_pct', 'rider_sag_mm', 'rider_sag_pct', 'friction_mm', 'preload', 'spring'].map((row) => `${end}.${row}`),
    build(notebook, _entry, units) {
      const targets = loads.map(({ load }) => sagTargetOf(notebook, end, load))
      const followed = loads.map(({ load, label, row }, place): Followed => {
        const target = found(targets[place]!)
        return {
          key: load, label, row: `${end}.${row}`, of: (entry) => sagOf(notebook, entry, end, load),
          ...(target ? { judge: { heading: say`Against ${windowWords(target, units)}`, brief: (result) => judgement(result, target, units), words: (result) => judgement(result, target, units, true) } } : {}),
        }
      })
      const drawn = overEntries(notebook, followed, { label: say('Sag'), unit: 'mm', digits: 1 }, units)
      return {
        key: `sag_${end}`, title: say`Sag, ${say(end)}`,
        about: say('Sag of each entry that measured it, against the windows it should lie in. The whiskers are one standard uncertainty.'),
        ...drawn, bands: bandsOf(targets, drawn.series.map(({ key }) => key), units), notes: windowNotes(targets),
        ...(drawn.series.length === 0 ? { wanting: wantingOf(notebook, end) } : {}),
      }
    },
  }
}

const windowWords = ({ lowMm, highMm }: SagTarget, units: DisplayUnits): string =>
  say`${printShown({ value: lowMm }, 'mm', 1, units)} to ${printShown({ value: highMm }, 'mm', 1, units)} ${shownUnit('mm', units)}`

/** 'in its window', '3 mm above its window', or without naming the window; each with 'perhaps' where twice the uncertainty would allow otherwise. */
function judgement(result: Result, target: SagTarget, units: DisplayUnits, named = false): string {
  const { where, byMm, sure } = judgeSag(result, target)
  const words = whereWords(where, sayIn(units)(byMm, 'mm'), named)
  return sure === false ? say`${words}, perhaps` : words
}

function whereWords(where: 'below' | 'within' | 'above', by: string, named: boolean): string {
  switch (where) {
    case 'within': return named ? say('in its window') : say('within')
    case 'below': return named ? say`${by} below its window` : say`${by} below`
    case 'above': return named ? say`${by} above its window` : say`${by} above`
  }
}

/** The windows of the sags that are drawn: one for a load case nobody measured would only be in the way. */
function bandsOf(targets: readonly Outcome<SagTarget>[], drawn: readonly string[], units: DisplayUnits): ChartBand[] {
  return loads.flatMap(({ load, label }, place) => {
    const target = found(targets[place]!)
    if (!target || (drawn.length > 0 && !drawn.includes(load))) return []
    const inUnits = (value: number) => toShown({ value }, 'mm', 1, units).value
    return [{ key: load, label: say`window, ${say(label)}: ${windowWords(target, units)}`, from: inUnits(target.lowMm), to: inUnits(target.highMm) }]
  })
}

function windowNotes(targets: readonly Outcome<SagTarget>[]): string[] {
  return loads.map(({ label }, place) => {
    const target = targets[place]!
    return isMissing(target) ? say`No window for the ${say(label)}: it needs ${target.missing.map((fact) => say(fact)).join(say(' and '))}.` : say`Window, ${say(label)}: ${say(target.source)}.`
  })
}

function wantingOf({ entries }: Notebook, end: End): string[] {
  return [
    entries.length === 0 ? say('There is no entry yet.') : say`No entry has measured the ${say(end)} sag.`,
    say('Measure one end three times: with the wheel off the ground, with the bike on its wheels alone, and with the rider aboard. ')
      + say`Write the lengths into an entry under ‘Sag, ${say(end)}’: extended, and after lifting and after pushing for each load.`,
  ]
}
