import { frictionZone, judgeFriction } from '../compute/sag/friction'
import { judgeSag } from '../compute/sag/judgeSag'
import type { End, LoadCase } from '../compute/sag/loadCase'
import { found, type Result } from '../compute/working/result'
import { frictionOf, sagOf, sagPercentOf, sagTargetOf, useOf } from '../derived/sagOf'
import { printShown, sayIn, type DisplayUnits } from '../notation/displayUnits'
import type { Notebook } from '../notebook/notebook'
import { say } from '../words/say'
import type { Computed } from './computedRow'

/** Sag and friction of one end. */
export function computedSag(end: End): Computed[] {
  const group = `sag_${end}` as const
  return [
    { key: `${end}.static_sag_mm`, group, label: 'Static sag', detail: 'bike alone', unit: 'mm', digits: 1, compute: (notebook, entry) => sagOf(notebook, entry, end, 'bike'),
      note: (notebook, _entry, sag, units) => againstWindow(notebook, end, 'bike', sag, units),
      about: 'Extended length less the mean of the two lengths with the bike alone, which averages the friction.' },
    { key: `${end}.static_sag_pct`, group, label: 'Static sag', detail: 'of travel', unit: '%', digits: 1, compute: (notebook, entry) => sagPercentOf(notebook, entry, end, 'bike'),
      about: 'Static sag as a share of the travel of this end.' },
    { key: `${end}.rider_sag_mm`, group, label: 'Rider sag', detail: 'rider aboard', unit: 'mm', digits: 1, compute: (notebook, entry) => sagOf(notebook, entry, end, 'rider'),
      note: (notebook, _entry, sag, units) => againstWindow(notebook, end, 'rider', sag, units),
      about: 'Extended length less the mean of the two lengths with the rider aboard, which averages the friction.' },
    { key: `${end}.rider_sag_pct`, group, label: 'Rider sag', detail: 'of travel', unit: '%', digits: 1, compute: (notebook, entry) => sagPercentOf(notebook, entry, end, 'rider'),
      about: 'Rider sag as a share of the travel of this end.' },
    { key: `${end}.friction_mm`, group, label: 'Friction band', unit: 'mm', digits: 1, compute: (notebook, entry) => frictionOf(notebook, entry, end), note: (notebook, _entry, band, units) => againstZone(notebook, end, band, units),
      about: 'How far apart the end comes to rest after lifting and after pushing: rider aboard where measured, else the bike alone.' },
  ]
}

/** Where a sag lies against its window, and who says that this is the window. */
function againstWindow(notebook: Notebook, end: End, load: LoadCase, sag: Result, units: DisplayUnits): string | undefined {
  const window = found(sagTargetOf(notebook, end, load))
  if (!window) return undefined
  const figure = sayIn(units)
  const { where, byMm, sure } = judgeSag(sag, window)
  const range = say`${printShown({ value: window.lowMm }, 'mm', 1, units)} to ${figure(window.highMm, 'mm')} (${say(window.source)})`
  if (where === 'within') return say`within ${range}`
  return `${figure(byMm, 'mm')} ${say(where)} ${range}${sure === false ? say(', within the uncertainty') : ''}`
}

function againstZone(notebook: Notebook, end: End, band: Result, units: DisplayUnits): string | undefined {
  const use = useOf(notebook)
  const zone = use && frictionZone(end, use)
  if (!zone) return undefined
  const usual = say`${printShown({ value: zone.lowMm }, 'mm', 1, units)} to ${sayIn(units)(zone.highMm, 'mm')} (${zone.source})`
  switch (judgeFriction(band.value, zone)) {
    case 'low': return say`less than the usual ${usual}`
    case 'usual': return say`within the usual ${usual}`
    case 'high': return say`more than the usual ${usual}`
  }
}
