import type { GridFinding } from '../../../src/core/grid/view'
import type { Severity } from '../../../src/core/finding'
import type { GridModel } from './gridModel'
import { HEADER, LABELS, type Spot } from './spot'

const weight: Record<Severity, number> = { error: 0, warning: 1, info: 2 }

export const severities: readonly Severity[] = ['error', 'warning', 'info']

/** For the list: worst first, and among equals the newest entry first, then down the rows. */
export function listedFindings(model: GridModel): GridFinding[] {
  const spots = new Map(model.view.findings.list.map((finding) => [finding, spotOfFinding(model, finding)]))
  return [...model.view.findings.list].sort((a, b) => {
    const first = spots.get(a)
    const second = spots.get(b)
    return weight[a.severity] - weight[b.severity]
      || (second?.column ?? -2) - (first?.column ?? -2)
      || (first?.row ?? -2) - (second?.row ?? -2)
      || (a.line ?? 0) - (b.line ?? 0)
  })
}

/** Where a finding shows: its cell, else its entry's header, else its row's label; undefined when nowhere. */
export function spotOfFinding(model: GridModel, { row, column }: GridFinding): Spot | undefined {
  return row === undefined && column === undefined ? undefined : model.spotOf({ row, column })
}

/** The next spot with findings after one, entry by entry and down each, round and round. */
export function nextFinding(model: GridModel, from: Spot, back: boolean): Spot | undefined {
  const rank = ({ row, column }: Spot) => column * (model.ground.rows.length + 1) + (row - HEADER)
  const spots = model.view.findings.list.flatMap((finding) => spotOfFinding(model, finding) ?? [])
    .filter(({ row, column }) => !(row === HEADER && column === LABELS))
    .sort((a, b) => (back ? rank(b) - rank(a) : rank(a) - rank(b)))
  const here = rank(from)
  return spots.find((spot) => (back ? rank(spot) < here : rank(spot) > here)) ?? spots[0]
}
