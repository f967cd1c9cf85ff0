import { fileUnits } from '../notation/displayUnits'
import type { Entry, Notebook } from '../notebook/notebook'
import { charts } from '.'
import { phrase, say } from '../words/say'
import { entryLookedAt } from './lookedAt'
import type { ChartGroup, ChartsView } from './view'

const groups: ChartsView['groups'] = [{ key: 'sag', label: phrase('Sag') }, { key: 'force', label: phrase('Force over travel') }, { key: 'geometry', label: phrase('Rake and trail') }, { key: 'log', label: phrase('Log') }]

/**
 * The charts of a group. `entryKey` names the entry looked at; one that is not there counts as the last. `between` names
 * the first and the last of a run of entries that were chosen together.
 */
export function buildCharts(notebook: Notebook, group: ChartGroup, entryKey?: string, units = fileUnits, between: readonly string[] = []): ChartsView {
  const beside = runOf(notebook, between)
  const entry = entryLookedAt(notebook, entryKey)
  return {
    group, groups: groups.map(({ key, label }) => ({ key, label: say(label) })),
    charts: charts.filter((chart) => chart.group === group && (chart.wanted?.(notebook, entry, beside) ?? true)).map((chart) => chart.build(notebook, entry, units, beside)),
    ...(ofOne.has(group) && entry ? { ofEntry: entry.key } : {}),
  }
}

/** Groups whose charts change with the entry looked at. */
const ofOne: ReadonlySet<ChartGroup> = new Set<ChartGroup>(['force', 'log'])

function runOf({ entries }: Notebook, between: readonly string[]): readonly Entry[] {
  const [from, to] = [between[0], between.at(-1)].map((key) => entries.findIndex((entry) => entry.key === key)) as [number, number]
  return between.length < 2 || from < 0 || to < 0 ? [] : entries.slice(from, to + 1)
}

/** The group of charts that draws a row of the grid. @example chartOfRow('computed/front.rider_sag_mm') // 'sag' */
export function chartOfRow(row: string): ChartGroup | undefined {
  return charts.find(({ rows }) => rows.some((key) => row === `computed/${key}`))?.group
}
