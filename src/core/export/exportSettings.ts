import { slotKey, type Adjuster, type Leg } from '../adjusters/adjuster'
import { ownCount } from '../adjusters/convert'
import type { End } from '../notation/position'
import type { Entry, Notebook, Setting } from '../notebook/notebook'
import { plainNumber } from './plainNumber'

/** Where an adjuster stands: a count in its own unit, and the direction it is counted in; absent where it has none. */
export interface ExportedPosition {
  value: number
  unit: string
  counted?: 'out' | 'in'
}

/** By adjuster: a position, or one for each leg where it has legs. */
export type ExportedSettings = Record<string, ExportedPosition | Partial<Record<Leg, ExportedPosition>>>

const directions: Record<End, 'out' | 'in'> = { closed: 'out', open: 'in' }

/** Every position an entry stands in, set there or carried, in the notebook's order of adjusters; unknown ones are absent. */
export function exportSettings({ adjusters }: Notebook, entry: Entry): ExportedSettings {
  const at = (adjuster: Adjuster, leg?: Leg) => exportPosition(entry.state.get(slotKey(adjuster.id, leg))?.setting)
  const settings = [...adjusters.values()].flatMap((adjuster): [string, ExportedSettings[string]][] => {
    if (adjuster.legs.length === 0) {
      const position = at(adjuster)
      return position ? [[adjuster.id, position]] : []
    }
    const legs = adjuster.legs.flatMap((leg) => {
      const position = at(adjuster, leg)
      return position ? [[leg, position] as const] : []
    })
    return legs.length > 0 ? [[adjuster.id, Object.fromEntries(legs)]] : []
  })
  // `fromEntries` defines properties, so that an adjuster called `__proto__` is one like any other.
  return Object.fromEntries(settings)
}

/** In the adjuster's own count; as it was written where that cannot be turned into it. */
function exportPosition(setting: Setting | undefined): ExportedPosition | undefined {
  const position = setting?.reading.value
  if (!setting || !position) return undefined
  const { adjuster } = setting
  const { count } = ownCount(position, adjuster)
  const { amount, unit = adjuster.counts, end } = count === undefined ? position : { amount: count, unit: adjuster.counts, end: adjuster.end }
  return { value: plainNumber(amount), unit: unit.symbol, ...(end === undefined ? {} : { counted: directions[end] }) }
}
