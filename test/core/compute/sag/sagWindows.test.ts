import assert from 'node:assert/strict'
import { findSagWindow, listSagWindows } from '../../../../src/core/compute/sag/sagWindows'

const rows = [
  ['Thede & Parks: road race fork 25 to 35 mm', 'track', 'front', 'rider', 25, 35, 'mm'],
  ['Thede & Parks: street fork 30 to 35 mm', 'road', 'front', 'rider', 30, 35, 'mm'],
  ['Thede & Parks: full-size dirt fork 60 to 75 mm', 'motocross', 'front', 'rider', 60, 75, 'mm'],
  ['Thede & Parks: full-size dirt fork 60 to 75 mm', 'enduro', 'front', 'rider', 60, 75, 'mm'],
  ['Motor Cycle News (copy): rear alone, road 10 to 15 mm', 'road', 'rear', 'bike', 10, 15, 'mm'],
  ['Motor Cycle News (copy): rear alone, racing 5 to 10 mm', 'track', 'rear', 'bike', 5, 10, 'mm'],
  ['G. Byrnes: rear about 25 %, 25 to 35 mm', 'track', 'rear', 'rider', 25, 35, 'mm'],
  ['G. Byrnes: front 30 to 35 % of travel', 'touring', 'front', 'rider', 30, 35, 'percent'],
  ['R. Paul, Motor Cycle News 56(24): road 25 to 30 % with rider', 'road', 'rear', 'rider', 25, 30, 'percent'],
  ['J. Siddall: free sag 5 to 10 % of travel', 'adventure', 'rear', 'bike', 5, 10, 'percent'],
  ['dirtbikeblogger: rear alone 25 to 30 mm from 125 cc on', 'motocross', 'rear', 'bike', 25, 30, 'mm'],
  ['all-offroad: machine alone 30 to 40 mm', 'enduro', 'rear', 'bike', 30, 40, 'mm'],
  ['CRF250X 2006 owner’s manual, p. 120: 90 mm quick, 110 mm stable', 'enduro', 'rear', 'rider', 90, 110, 'mm'],
] as const

describe('findSagWindow', () => {
  for (const [source, use, end, load, low, high, unit] of rows) {
    it(`${source} (${use}, ${end}, ${load})`, () => {
      const window = findSagWindow(use, end, load)!
      assert.deepEqual([window.low, window.high, window.unit], [low, high, unit])
    })
  }

  it('Bike (UK), August 2019: machine alone 25 mm front lies within the road window, 10 to 12 mm rear in that of the rear', () => {
    const [front, rear] = [findSagWindow('road', 'front', 'bike')!, findSagWindow('road', 'rear', 'bike')!]
    assert.ok(front.low <= 25 && front.high >= 25 && rear.low <= 10 && rear.high >= 12)
  })

  it('Sport Rider: street 30 mm and track 25 mm, rider aboard in front, lie within their windows', () => {
    for (const [use, mm] of [['road', 30], ['track', 25]] as const) {
      const window = findSagWindow(use, 'front', 'rider')!
      assert.ok(window.low <= mm && window.high >= mm)
    }
  })

  it('ADV Pulse: about 30 % of rear travel lies within the adventure window', () => {
    const window = findSagWindow('adventure', 'rear', 'rider')!
    assert.deepEqual([window.low, window.high, window.unit], [25, 35, 'percent'])
  })

  it('sasquatchrider: 10 in of fork travel, a quarter to a third, is 2.5 to 3.3 in', () => {
    const window = findSagWindow('adventure', 'front', 'rider')!
    assert.deepEqual([window.low * 0.1, Number((window.high * 0.1).toFixed(1))], [2.5, 3.3])
  })

  it('CR125R 2007 handbook: one third of travel lies within the motocross window', () => {
    const window = findSagWindow('motocross', 'rear', 'rider')!
    assert.ok(window.unit === 'percent' && window.low < 100 / 3 && window.high > 100 / 3)
  })

  it('gives none where none was found in print', () => {
    assert.equal(findSagWindow('motocross', 'front', 'bike'), undefined)
  })
})

describe('listSagWindows', () => {
  it('says for every window who says so, with the low end below the high one and the bike’s below the rider’s', () => {
    const all = listSagWindows()
    assert.equal(all.length, 22)
    for (const { use, end, load, window } of all) {
      assert.ok(window.source.length > 10 && window.low < window.high, `${use} ${end} ${load}`)
      const rider = findSagWindow(use, end, 'rider')!
      if (load === 'bike' && rider.unit === window.unit) assert.ok(window.high <= rider.low, `${use} ${end}`)
    }
  })
})
