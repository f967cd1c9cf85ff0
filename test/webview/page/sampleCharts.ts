import type { ChartGroup, ChartSeries, ChartView, ChartsView } from '../../../src/core/charts/view'

const axis = (label: string, unit: string, digits = 0) => ({ label, unit, digits })
const chart = (key: string, series: ChartSeries[], more: Partial<ChartView> = {}): ChartView => ({
  key, title: key, about: `An invented chart of ${key}.`, x: axis('Place', 'mm'), y: axis('Share', '%', 1), bands: [], notes: [], table: { columns: ['Place', 'Share'], rows: [['1', '2']] }, series, ...more,
})

/** Invented charts of every form that can be drawn, sorted into the groups that there are. */
export function sampleCharts(group: ChartGroup): ChartsView {
  const charts = { sag: [overEntries()], force: [histograms(), loop()], geometry: [trace()] }[group]
  return { group, groups: [{ key: 'sag', label: 'Entries' }, { key: 'force', label: 'Bars and loops' }, { key: 'geometry', label: 'A long trace' }], charts, ...(group === 'force' ? { ofEntry: 'run-8' } : {}) }
}

function overEntries(): ChartView {
  const names = Array.from({ length: 9 }, (_, at) => `run-${at}`)
  const of = (key: string, base: number): ChartSeries => ({
    key, label: key, form: 'line', x: names.map((_, at) => at), y: names.map((_, at) => base + ((at * 7) % 5)), u: names.map(() => 1.5), entries: names, row: 'fork_rebound.left', said: names.map((name, at) => `${name}, ${key}: ${base + ((at * 7) % 5)} ± 1.5 mm`),
  })
  return chart('sag', [of('bike alone', 18), of('rider aboard', 33)], {
    x: { label: 'Entry', unit: '', digits: 0, names }, y: axis('Sag', 'mm', 1), bands: [{ key: 'b', label: 'window, bike alone', from: 15, to: 25 }, { key: 'r', label: 'window, rider aboard', from: 25, to: 35 }],
    table: { columns: ['Entry', 'Bike alone, mm'], rows: names.map((name, at) => [name, String(18 + ((at * 7) % 5))]) },
  })
}

/** Three distributions of a velocity, one over the other. */
function histograms(): ChartView {
  const x = Array.from({ length: 41 }, (_, at) => (at - 20) * 100)
  const bell = (centre: number, width: number) => x.map((v) => 12 * Math.exp(-(((v - centre) / width) ** 2)))
  const of = (key: string, y: number[]): ChartSeries => ({ key, label: key, form: 'bars', x, y })
  return chart('velocity', [of('run-6', bell(-100, 500)), of('run-7', bell(0, 350)), of('run-8', bell(250, 600))], { x: axis('Velocity', 'mm/s') })
}

/** A line whose x goes to and fro. */
function loop(): ChartView {
  const turns = Array.from({ length: 200 }, (_, at) => (at / 199) * 4 * Math.PI)
  return chart('loop', [{ key: 'loop', label: 'front over rear', form: 'line', x: turns.map((a) => 60 + 50 * Math.sin(a)), y: turns.map((a) => 50 + 30 * Math.sin(a + 0.8) + a) }])
}

/** Travel over time as a logger has it, far more points than there are pixels. */
function trace(): ChartView {
  const seconds = Array.from({ length: 120_000 }, (_, at) => at / 1000)
  const of = (key: string, phase: number): ChartSeries => ({ key, label: key, form: 'line', x: seconds, y: seconds.map((t) => 60 + 25 * Math.sin(t * 3 + phase) + 15 * Math.sin(t * 47)) })
  return chart('travel', [of('front', 0), of('rear', 1)], { x: axis('Time', 's', 3), y: axis('Travel', 'mm', 1) })
}
