import type { End } from '../compute/sag/loadCase'
import { frictionOf, sagOf, sagPercentOf } from '../derived/sagOf'
import type { Computed } from './computedRow'

/** Sag and friction of one end. */
export function computedSag(end: End): Computed[] {
  const group = `sag_${end}` as const
  return [
    { key: `${end}.static_sag_mm`, group, label: 'Static sag', detail: 'bike alone', unit: 'mm', digits: 1, compute: (notebook, entry) => sagOf(notebook, entry, end, 'bike'),
      about: 'Extended length less the mean of the two lengths with the bike alone, which averages the friction.' },
    { key: `${end}.static_sag_pct`, group, label: 'Static sag', detail: 'of travel', unit: '%', digits: 1, compute: (notebook, entry) => sagPercentOf(notebook, entry, end, 'bike'),
      about: 'Static sag as a share of the travel of this end.' },
    { key: `${end}.rider_sag_mm`, group, label: 'Rider sag', detail: 'rider aboard', unit: 'mm', digits: 1, compute: (notebook, entry) => sagOf(notebook, entry, end, 'rider'),
      about: 'Extended length less the mean of the two lengths with the rider aboard, which averages the friction.' },
    { key: `${end}.rider_sag_pct`, group, label: 'Rider sag', detail: 'of travel', unit: '%', digits: 1, compute: (notebook, entry) => sagPercentOf(notebook, entry, end, 'rider'),
      about: 'Rider sag as a share of the travel of this end.' },
    { key: `${end}.friction_mm`, group, label: 'Friction band', unit: 'mm', digits: 1, compute: (notebook, entry) => frictionOf(notebook, entry, end),
      about: 'How far apart the end comes to rest after lifting and after pushing: rider aboard where measured, else the bike alone.' },
  ]
}
