import { isMissing, reasons, type Outcome } from '../compute/working/result'
import { geometryOf, type Stance } from '../derived/geometryOf'
import type { Entry, Notebook } from '../notebook/notebook'
import { phrase, say } from '../words/say'
import type { Chart } from './chart'
import { overEntries, type Followed } from './overEntries'

interface Line {
  key: 'rakeDeg' | 'trailMm'
  row: string
  title: string
  unit: '°' | 'mm'
  digits: number
  /** What a rider may feel, about: less than it should not fill the picture. Our own choice. */
  span: number
}

const stances: readonly { stance: Stance; label: string; group: string }[] = [
  { stance: 'figures', label: phrase('as it stands'), group: 'geometry' }, { stance: 'riderSag', label: phrase('at rider sag'), group: 'geometry_at_rider_sag' },
]

function geometryChart({ key, row, title, unit, digits, span }: Line): Chart {
  return {
    key: row, group: 'geometry', rows: stances.map(({ group }) => `${group}.${row}`),
    build(notebook, _entry, units) {
      const followed = stances.map(({ stance, label, group }): Followed => ({ key: stance, label, row: `${group}.${row}`, of: (entry) => geometryOf(notebook, entry, stance)[key] }))
      const drawn = overEntries(notebook, followed, { label: title, unit, digits, span }, units)
      const hasSag = drawn.series.some((series) => series.key === 'riderSag')
      return {
        key: row, title: say(title), bands: [], ...drawn,
        about: say`${say(title)} of each entry after fork height, ride height and tyres, and sunk by its rider sag where both ends were measured.`,
        notes: hasSag || drawn.series.length === 0 ? [] : [say('At rider sag it can be told in an entry that measures the rider sag of both ends.')],
        ...(drawn.series.length === 0 ? { wanting: wantingOf(notebook, (entry) => geometryOf(notebook, entry)[key], title) } : {}),
      }
    },
  }
}

function wantingOf({ entries }: Notebook, of: (entry: Entry) => Outcome, title: string): string[] {
  const missing = reasons(...entries.map(of).filter(isMissing))
  return [
    entries.length === 0 ? say('There is no entry yet.') : say`${say(title)} needs: ${missing.map((fact) => say(fact)).join(', ')}.`,
    say('Write what the manual or a measurement gives under `machine: geometry`: rake, fork offset, front and rear wheel radius, wheelbase. ')
      + say('Fork height and ride height of the entries then move it.'),
  ]
}

/** Rake over the entries. */
export const rakeChart = geometryChart({ key: 'rakeDeg', row: 'rake_deg', title: phrase('Rake'), unit: '°', digits: 2, span: 0.5 })

/** Trail over the entries. */
export const trailChart = geometryChart({ key: 'trailMm', row: 'trail_mm', title: phrase('Trail'), unit: 'mm', digits: 1, span: 5 })
