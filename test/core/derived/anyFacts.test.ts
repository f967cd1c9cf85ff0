import assert from 'node:assert/strict'
import fc from 'fast-check'
import { adviceCard } from '../../../src/core/advice/adviceCard'
import { cardFor } from '../../../src/core/card/cardFor'
import { isMissing } from '../../../src/core/compute/working/result'
import { exportNotebook } from '../../../src/core/export/exportNotebook'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import { computedRows } from '../../../src/core/grid/computed'
import { fileUnits, type DisplayUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'

/** What may stand where a figure belongs: one that could be, one that could not, and none at all. */
const hostile = ['0', '-1', '-120', '1e-300', '1e308', '-1e308', '.inf', '-.inf', '.nan', 'null', '""', 'text', '12 parsecs', '4.5 in', '[1]', '{a: 1}', '89.999999', '90', '180', '1e-9', '"5 %"', '0x1F', '99999999999999999999']
const odd = fc.constantFrom(...hostile)
const figure = (low: number, high: number) => fc.oneof({ weight: 5, arbitrary: fc.double({ min: low, max: high, noNaN: true }).map((value) => String(Number(value.toFixed(2)))) }, { weight: 1, arbitrary: odd })
const maybe = (key: string, value: fc.Arbitrary<string>) => fc.option(value, { nil: undefined }).map((text) => (text === undefined ? [] : [`${key}: ${text}`]))
const group = (...facts: fc.Arbitrary<string[]>[]) => fc.tuple(...facts).map((lists) => `{${lists.flat().join(', ')}}`)
const list = (of: fc.Arbitrary<string>, most: number) => fc.array(of, { maxLength: most }).map((items) => `[${items.join(', ')}]`)

const coil = group(maybe('wire', figure(2, 14)), maybe('outer_diameter', figure(20, 90)), maybe('active_coils', figure(3, 30)), maybe('shear_modulus', figure(70, 90)))
const stack = group(maybe('soft_rate', figure(2, 90)), maybe('stiff_rate', figure(2, 90)), maybe('soft_travel', figure(1, 60)))
const air = group(maybe('seal_diameter', figure(20, 60)), maybe('bore', figure(20, 60)), maybe('oil_level', figure(20, 250)), maybe('spring_volume', figure(0, 200)), maybe('pressure', figure(0, 12)), maybe('exponent', figure(1, 1.4)), maybe('legs', fc.constantFrom('1', '2', '3')))
const window = list(figure(0, 100), 3)
const end = [maybe('travel', figure(50, 320)), maybe('spring_preload', figure(0, 30)), maybe('unsprung_mass', figure(10, 30)), maybe('spring', coil), maybe('stack', stack), maybe('targets', group(maybe('static_sag', window), maybe('rider_sag', window)))]
const leverage = list(list(figure(0, 200), 3), 6)
const loads = group(maybe('front', figure(60, 150)), maybe('rear', figure(60, 170)), maybe('front_lifted', figure(60, 170)), maybe('lift', figure(50, 600)))
const axleLoads = group(maybe('bike', loads), maybe('rider', loads))
const machine = group(
  maybe('use', fc.constantFrom('road', 'track', 'motocross', 'enduro', 'adventure', 'touring', 'racing')),
  maybe('front', group(...end, maybe('spring_rate', fc.oneof(figure(3, 20), group(maybe('left', figure(3, 20)), maybe('right', figure(3, 20))))), maybe('air', air))),
  maybe('rear', group(...end, maybe('spring_rate', figure(30, 150)), maybe('motion_ratio', figure(0.2, 1)), maybe('springs', fc.constantFrom('1', '2', '0')), maybe('leverage', leverage))),
  maybe('geometry', group(maybe('rake', figure(15, 40)), maybe('trail', figure(50, 150)), maybe('fork_offset', figure(0, 60)), maybe('wheelbase', figure(1000, 1800)), maybe('front_radius', figure(200, 400)), maybe('rear_radius', figure(200, 400)))),
  maybe('axle_loads', axleLoads), maybe('mass_height', figure(300, 900)), maybe('reading_resolution', figure(0.1, 3)),
)
const reading = fc.oneof(figure(300, 600), list(figure(300, 600), 3), group(maybe('lifted', figure(300, 600)), maybe('pushed', figure(300, 600))))
const sag = group(maybe('extended', figure(500, 650)), maybe('bike', reading), maybe('rider', reading))
const bounce = fc.oneof(list(figure(0.5, 60), 5), group(maybe('heights', list(figure(0.5, 60), 5)), maybe('seconds', figure(0.1, 3))))
const settings = group(maybe('fork_preload', figure(0, 12)), maybe('fork_height', figure(-5, 20)), maybe('shock_length', figure(0, 20)), maybe('fork_springs', figure(3, 20)), maybe('fork_air', figure(0, 150)), maybe('fork_oil', figure(40, 200)), maybe('front_tyre', figure(0, 4)))
const entry = group(
  maybe('as_found', fc.constantFrom('true', 'false')), maybe('baseline', fc.constantFrom('true', 'false')), maybe('settings', settings),
  maybe('sag', group(maybe('front', sag), maybe('rear', sag))), maybe('axle_loads', axleLoads), maybe('bounce', group(maybe('front', bounce), maybe('rear', bounce))),
  maybe('tyres', group(maybe('front_radius', figure(200, 400)), maybe('rear_radius', figure(200, 400)))),
  maybe('conditions', group(maybe('air', figure(-20, 45)), maybe('altitude', fc.oneof(figure(0, 9e6), fc.constantFrom('650 m', '99 km'))))),
  maybe('ride', group(maybe('front_travel_used', figure(0, 320)), maybe('rear_travel_used', figure(0, 320)), maybe('front_tyre_hot', figure(0, 5)), maybe('rear_tyre_hot', figure(0, 5)))),
)

const notebooks = fc.tuple(machine, maybe('kitted_mass', figure(40, 140)), fc.array(entry, { minLength: 1, maxLength: 3 })).map(([facts, rider, entries]) => `format: 1
machine: ${facts}
rider: {${rider.join('')}}
adjusters:
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 12, mm_per_turn: 1}
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
  shock_length: {on: shock, controls: ride_height, counts: mm}
  fork_springs: {on: fork, controls: spring_rate, counts: N/mm}
  fork_air: {on: fork, legs: [left], controls: air_pressure, counts: psi}
  fork_oil: {on: fork, controls: oil_level, counts: mm}
  front_tyre: {on: tyres, controls: tyre_pressure, counts: bar}
entries:
${entries.map((each) => `  - ${each}`).join('\n')}
`)

const inches: DisplayUnits = { length: 'in', rate: 'lb/in', force: 'lbf', mass: 'lb', pressure: 'psi', temperature: '°F' }
const runs = 40 * Number(process.env['DETENT_RUNS'] ?? 1)

function isSound(text: string): void {
  assert.doesNotMatch(text, /NaN|Infinity|undefined|\[object|null/, text)
}

describe('whatever a notebook says of a machine', () => {
  it('every row that is worked out is a finite number in its unit, or a reason why there is none', () => {
    const told = { broken: 0, numbers: 0, reasons: 0 }
    fc.assert(fc.property(notebooks, (text) => {
      const notebook = readNotebook(text)
      if (notebook.broken) told.broken++
      for (const each of notebook.entries) {
        for (const row of computedRows) {
          const outcome = 'compute' in row ? row.compute(notebook, each) : row.say(notebook, each, fileUnits)
          told[isMissing(outcome) ? 'reasons' : 'numbers']++
          if (isMissing(outcome)) {
            assert.ok(outcome.missing.length > 0 && outcome.missing.every((reason) => reason.length > 0), row.key)
            outcome.missing.forEach(isSound)
          } else if ('value' in outcome) {
            assert.ok(Number.isFinite(outcome.value), `${row.key}: ${outcome.value}\n${text}`)
            assert.ok(outcome.u === undefined || (Number.isFinite(outcome.u) && outcome.u >= 0), `${row.key}: ± ${outcome.u}\n${text}`)
            assert.equal(outcome.unit, (row as { unit: string }).unit, row.key)
          } else isSound(outcome.text)
        }
      }
    }), { numRuns: runs })
    assert.ok(told.broken === 0 && told.numbers > runs && told.reasons > runs, JSON.stringify(told))
  })

  it('cells, cards, advice, findings and the export say nothing that is no number', () => {
    fc.assert(fc.property(notebooks, fc.constantFrom(fileUnits, inches), (text, units) => {
      const notebook = readNotebook(text)
      const findings = checkNotebook(notebook)
      findings.forEach(({ message }) => isSound(message))
      const view = buildGrid(notebook, findings, units)
      view.cells.forEach((row, at) => view.rows[at]!.kind === 'computed' && row.forEach(({ text: shown, about }) => isSound(`${shown} ${about ?? ''}`)))
      for (const { key } of notebook.entries) {
        for (const row of computedRows) cardFor(notebook, `computed/${row.key}`, key, units)?.sections.forEach(({ lines }) => lines.forEach((line) => isSound(line.replace(/‘[^’]*’/g, ''))))
        adviceCard(notebook, notebook.entries.find((each) => each.key === key)!, units).sections.forEach(({ lines }) => lines.forEach(isSound))
      }
      JSON.stringify(exportNotebook(notebook), (_key, value: unknown) => {
        assert.ok(typeof value !== 'number' || Number.isFinite(value), text)
        assert.notEqual(value, null, text)
        return value
      })
    }), { numRuns: runs })
  })
})
