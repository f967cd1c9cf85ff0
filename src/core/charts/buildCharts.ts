import { fileUnits } from '../notation/displayUnits'
import type { Notebook } from '../notebook/notebook'
import { charts } from '.'
import { phrase, say } from '../words/say'
import type { ChartGroup, ChartsView } from './view'

const groups: ChartsView['groups'] = [{ key: 'sag', label: phrase('Sag') }, { key: 'force', label: phrase('Force over travel') }, { key: 'geometry', label: phrase('Rake and trail') }]

/** The charts of a group. `entryKey` names the entry looked at; one that is not there counts as the last. */
export function buildCharts(notebook: Notebook, group: ChartGroup, entryKey?: string, units = fileUnits): ChartsView {
  const entry = notebook.entries.find(({ key }) => key === entryKey) ?? notebook.entries.at(-1)
  return {
    group, groups: groups.map(({ key, label }) => ({ key, label: say(label) })),
    charts: charts.filter((chart) => chart.group === group).map((chart) => chart.build(notebook, entry, units)),
    ...(group === 'force' && entry ? { ofEntry: entry.key } : {}),
  }
}

/** The group of charts that draws a row of the grid. @example chartOfRow('computed/front.rider_sag_mm') // 'sag' */
export function chartOfRow(row: string): ChartGroup | undefined {
  return charts.find(({ rows }) => rows.some((key) => row === `computed/${key}`))?.group
}
