import assert from 'node:assert/strict'
import { withLogs } from '../../../src/core/derived/logOf'
import type { Finding } from '../../../src/core/finding'
import type { ReadLog } from '../../../src/core/logs/atHand'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'

/** As much of an end's statistics as rules look at. */
interface End {
  travelMm?: number
  position?: { deepestMm: number; deepestPct?: number }
  bottoming?: { times: number; withinMm: number; places: { atS: number }[] }
  packing?: { packed: number; trains: number; worstMm: number; places: { atS: number }[] }
}

/** What is found where the log of a ride is as told: from 10 s on, so long. */
function found(front: End, forS = 100, ride = ''): Finding[] {
  const statistics = { front: { column: 'Fork', position: { deepestMm: 0 }, ...front }, sampling: { fromS: 10, toS: 10 + forS } }
  const log = { state: 'read', stamp: 'one', statistics } as unknown as ReadLog
  const notebook = readNotebook(`format: 1\nmachine: {front: {travel: 120}}\nentries:\n  - {id: a, as_found: true, ride: {log: a.csv${ride}}}\n`)
  return checkNotebook(withLogs(notebook, new Map([['a.csv', log]])))
}
const told = (...of: Parameters<typeof found>) => found(...of).map(({ code, message }) => `${code}: ${message}`)

describe('bottomed-in-log', () => {
  const stop = (times: number) => ({ bottoming: { times, withinMm: 1.25, places: times > 0 ? [{ atS: 12.34 }, { atS: 20 }] : [] } })

  it('says when and how near, and takes once for what it should be', () => {
    assert.match(told(stop(1))[0]!, /^bottomed-in-log: Front: .* once, at 12\.3 s \(within 1\.3 mm\): as it should be/)
    assert.match(told(stop(2))[0]!, /Front: .* 2 times, first at 12\.3 s \(within 1\.3 mm\): look at sag/)
  })

  it('points at the log, and in the grid at the row of that end', () => {
    assert.deepEqual(found(stop(1))[0]!.place, { entry: 'a', row: 'computed/log.front_bottomed' })
  })

  it('has nothing to say of an end that was not on its stop, or that nobody looked at', () => {
    assert.deepEqual([told(stop(0)), told({})], [[], []])
  })
})

describe('packing-down', () => {
  const packs = (packed: number, trains: number) => told({ packing: { packed, trains, worstMm: 7, places: [{ atS: 12.34 }] } }).length

  it('begins with the third run of hits', () => {
    assert.deepEqual([packs(2, 4), packs(3, 4)], [0, 1])
  })

  it('begins with a quarter of the runs', () => {
    assert.deepEqual([packs(3, 13), packs(3, 12), packs(9, 37), packs(9, 36)], [0, 1, 0, 1])
  })

  it('has nothing to say where no run is told, or nobody looked', () => {
    assert.deepEqual(told({ packing: { packed: 3, trains: 3, worstMm: 7, places: [] } }), [])
  })
})

describe('travel-left-over', () => {
  const left = (pct: number | undefined, forS?: number, travelMm: number | undefined = 120) =>
    told({ ...(travelMm ? { travelMm } : {}), position: { deepestMm: 70.4, ...(pct === undefined ? {} : { deepestPct: pct }) } }, forS)

  it('speaks below two thirds of the travel, and not at them', () => {
    assert.match(left(66.6)[0]!, /^travel-left-over: Front: never past two thirds of the travel in this log \(70 of 120 mm\)/)
    assert.deepEqual([left(200 / 3), left(90)], [[], []])
  })

  it('speaks of a log of a minute, and of none that is shorter', () => {
    assert.deepEqual([left(50, 60).length, left(50, 59.9).length], [1, 0])
  })

  it('needs the travel, and the share of it', () => {
    assert.deepEqual([left(50, 100, 0), left(undefined)], [[], []])
  })
})

describe('tie-against-log', () => {
  const against = (tie: number, deepestMm: number, travelMm?: number) => told({ position: { deepestMm, deepestPct: 90 }, ...(travelMm ? { travelMm } : {}) }, 100, `, front_travel_used: ${tie}`)

  it('says which of the two is deeper, and what that comes from', () => {
    assert.match(against(100, 80)[0]!, /Front: the tie says 100 mm, the log 80 mm: the tie was moved/)
    assert.match(against(80, 100)[0]!, /Front: the log says 100 mm, the tie 80 mm: the tie slid back/)
  })

  it('allows 5 mm either way, and a twentieth of a longer travel', () => {
    assert.deepEqual([against(85, 80), against(75, 80), against(94, 80, 280)], [[], [], []])
    assert.deepEqual([against(86, 80).length, against(74, 80).length, against(95, 80, 280).length], [1, 1, 1])
  })
})

describe('log-outside', () => {
  const outside = (path: string) => checkNotebook(readNotebook(`format: 1\nentries:\n  - {id: a, as_found: true, ride: {log: '${path}'}}\n`)).filter(({ code }) => code === 'log-outside')

  it('says the path as it is to be written, and writes it so', () => {
    const [{ message, fixes }] = outside(' logs\\run.csv ') as [Finding]
    assert.match(message, /^‘logs\\run\.csv’ .*: logs\/run\.csv$/)
    assert.deepEqual(fixes!.map(({ changes }) => changes.map(({ text }) => text)), [['logs/run.csv']])
  })

  it('offers no way where there is none', () => {
    const [{ message, fixes }] = outside(' ../run.csv ') as [Finding]
    assert.match(message, /^‘\.\.\/run\.csv’ leads out of this notebook’s folder; keep logs beside it, or below$/)
    assert.equal(fixes, undefined)
  })

  it('has nothing to say of a log that is yet to be named', () => {
    assert.deepEqual([outside(''), outside('  ')], [[], []])
  })
})
