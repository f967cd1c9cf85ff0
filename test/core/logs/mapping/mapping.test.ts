import assert from 'node:assert/strict'
import { proposeMapping } from '../../../../src/core/logs/mapping/proposeMapping'
import { resolveMapping, type Resolved } from '../../../../src/core/logs/mapping/resolveMapping'
import { toWheel } from '../../../../src/core/logs/mapping/toWheel'
import { readLeverage } from '../../../../src/core/compute/leverage/leverage'
import type { LoggerMapping } from '../../../../src/core/logs/mapping/mapping'
import { get, near } from '../../compute/near'

const columns = ['Time [s]', 'Fork', 'Shock', 'Brake F', 'Lap'].map((name) => ({ name }))
const facts = { front: { travelMm: 120 }, rear: { travelMm: 130, leverage: { motionRatio: 0.5 } } }
const resolve = (mapping: LoggerMapping) => resolveMapping({ time: { column: 'Time' }, ...mapping }, { columns }, facts)
const good = (mapping: LoggerMapping) => {
  const found = resolve(mapping)
  assert.ok(!('problems' in found), JSON.stringify(found))
  return found as Resolved
}
const problems = (mapping: LoggerMapping) => {
  const found = resolve(mapping)
  assert.ok('problems' in found)
  return found.problems.join('; ')
}
const mm = (mapping: LoggerMapping['front'], reading: number) => {
  const { factor, shift } = good({ front: mapping! }).ends.front!
  return reading * factor + shift
}

describe('resolveMapping', () => {
  it('meets a heading as written, without its unit, without its case, or by its place', () => {
    assert.equal(good({ front: { column: 'fork' } }).time!.column, 0)
    assert.equal(good({ front: { column: 2 } }).ends.front!.column, 1)
    assert.equal(good({ front: { column: '2' } }).ends.front!.column, 1)
  })

  it('makes travel of a reading: ± scale · (reading − offset)', () => {
    near(mm({ column: 'Fork', unit: 'in' }, 2), 50.8, 1e-12)
    near(mm({ column: 'Fork', unit: '%' }, 50), 60, 1e-12)
    near(mm({ column: 'Fork', unit: 'V', scale: 30, offset: 0.5 }, 2.5), 60, 1e-12)
    near(mm({ column: 'Fork', unit: 'V', scale: 30, offset: 4.5, direction: 'extension' }, 2.5), 60, 1e-12)
    assert.ok(!Object.is(mm({ column: 'Fork', direction: 'extension' }, 0), NaN))
  })

  it('says everything that is wrong at once, with the columns there are and the one that was meant', () => {
    assert.match(problems({ front: { column: 'Forks' } }), /front: there is no column ‘Forks’; ‘Fork’ is near\. There are Time \[s\], Fork, Shock, Brake F, Lap/)
    assert.match(problems({ front: { column: 'Fork', unit: 'V' }, rear: { column: 'Fork' } }), /front: readings in V need a scale/)
    assert.match(problems({ front: { column: 'Fork' }, rear: { column: 'fork' } }), /rear: the column ‘Fork’ is the front already/)
    assert.match(problems({ front: { column: 'Fork', scale: -3 } }), /above zero/)
    assert.match(problems({}), /no column is named/)
    assert.match(problems({ front: { column: 9 } }), /no column ‘9’/)
    const bare = resolveMapping({ front: { column: 2, unit: '%' }, rear: { column: 3, at: 'damper' } }, { columns }, {})
    assert.deepEqual('problems' in bare && bare.problems.map((problem) => problem.split(':')[0]), ['nothing says when the samples were taken', 'front', 'rear'])
  })

  it('brings the leverage where the rear is measured at the damper, and none at the front', () => {
    near(good({ rear: { column: 'Shock', at: 'damper' } }).ends.rear!.toWheel!.at(30), 60, 1e-12)
    assert.equal(good({ front: { column: 'Fork', at: 'damper' } }).ends.front!.toWheel, undefined)
  })
})

describe('toWheel', () => {
  it('is the leverage turned round: what it makes of the damper’s travel is the wheel’s', () => {
    const leverage = { table: [[0, 0], [40, 19.5], [80, 41], [130, 71]] as const }
    const there = get(readLeverage(leverage))
    const back = get(toWheel(leverage))
    for (let wheel = 0; wheel <= 130; wheel += 3.25) near(back.at(there.at(wheel)!.value), wheel, 1e-3)
  })

  it('goes on straight beyond the table, and counts', () => {
    const back = get(toWheel({ table: [[0, 0], [100, 50]] }))
    near(back.at(-1), -2, 1e-6)
    near(back.at(51), 102, 1e-6)
    assert.equal(back.all(Float64Array.of(10, 51, 60), new Float64Array(3), 3), 2)
  })
})

describe('proposeMapping', () => {
  const rows = (make: (i: number) => number[]) => Array.from({ length: 50 }, (_, i) => make(i))
  const propose = (names: string[], units: (string | undefined)[] = [], make?: (i: number) => number[]) =>
    proposeMapping({ columns: names.map((name, at) => ({ name, ...(units[at] ? { unit: units[at] } : {}) })) }, make ? rows(make) : [])

  it('finds time, fork, shock, brake and lap by their headings, in several languages', () => {
    const { mapping } = propose(['Time', 'Fork', 'Shock', 'Brake F', 'Lap'], ['s', 'mm', 'mm', 'bar'])
    assert.deepEqual([mapping.time, mapping.front!.column, mapping.rear!.column, mapping.brake!.column, mapping.lap!.column], [{ column: 'Time', unit: 's' }, 'Fork', 'Shock', 'Brake F', 'Lap'])
    for (const names of [['Zeit', 'Gabel', 'Federbein'], ['Temps', 'Fourche', 'Amortisseur'], ['Tempo', 'Forcella', 'Mono'], ['t', 'front_susp_pos', 'rear_susp_pos'], ['Timestamp', 'SuspFront', 'SuspRear']]) {
      const found = propose(names).mapping
      assert.deepEqual([found.time?.column, found.front?.column, found.rear?.column], names, names.join())
    }
  })

  it('takes the position among columns of one end, not its speed or brake', () => {
    const { mapping } = propose(['Time', 'Front wheel speed', 'Front brake', 'Front susp', 'Rear wheel speed', 'Rear pot'])
    assert.deepEqual([mapping.front!.column, mapping.rear!.column, mapping.brake!.column], ['Front susp', 'Rear pot', 'Front brake'])
  })

  it('tells seconds, milliseconds and clock times apart by unit and by look', () => {
    assert.equal(propose(['Time', 'Fork'], ['ms']).mapping.time!.unit, 'ms')
    assert.equal(propose(['Time', 'Fork'], [], (i) => [i * 5, 1]).mapping.time!.unit, 'ms')
    assert.equal(propose(['Time', 'Fork'], [], (i) => [i * 0.005, 1]).mapping.time!.unit, 's')
    assert.equal(propose(['Time', 'Fork'], [], () => [NaN, 1]).mapping.time!.unit, 'clock')
  })

  it('finds a time without a heading as the column that rises, and says what it is not sure of', () => {
    const found = propose(['column 1', 'Gabel V'], [], (i) => [i * 0.01, 2 + (i % 3)])
    assert.equal(found.mapping.time!.column, 'column 1')
    assert.deepEqual(found.mapping.front, { unit: 'V', column: 'Gabel V' })
    assert.match(found.unsure.join(), /look like volts/)
    assert.match(propose(['a', 'b']).unsure.join(), /no column rises.*no heading tells/)
  })
})
