import assert from 'node:assert/strict'
import { existsSync, readFileSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import Ajv from 'ajv'
import { parse } from 'yaml'
import { describeTurning, isTurned } from '../../src/core/adjusters/describeTurning'
import { creepRecord } from '../../src/core/derived/creep'
import { readPosition } from '../../src/core/notation/position'
import { readQuantity } from '../../src/core/notation/quantity'
import { readNotebook } from '../../src/core/notebook/readNotebook'

type Loads = { front?: number; rear?: number }
interface Sag { extended: number; bike?: Reading; rider?: Reading }
type Reading = number | number[] | { lifted: number; pushed: number }
interface Entry {
  id: string | number
  date?: string
  from?: string | number
  as_found?: boolean
  settings?: Record<string, unknown>
  sag?: { front?: Sag; rear?: Sag }
  axle_loads?: { bike?: Loads; rider?: Loads }
  ride?: { log?: string }
  reason?: string
}
interface Notebook {
  machine: {
    front?: { travel: number; spring_rate?: number | string }
    rear: { travel: number; spring_rate: number | string; motion_ratio: number }
    geometry?: { rake?: number }
    axle_loads?: { bike: Loads; rider?: Loads }
  }
  adjusters: Record<string, Record<string, unknown>>
  entries: Entry[]
}

const folder = 'samples'
const names = readdirSync(folder).filter((name) => name.endsWith('.setup.yaml'))
const check = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true }).compile(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')) as object)
const notebooks = names.map((name) => ({ name, path: join(folder, name), notebook: parse(readFileSync(join(folder, name), 'utf8')) as Notebook }))
const newtonsPerKg = 9.80665

function mean(reading: Reading): number {
  const lengths = typeof reading === 'number' ? [reading] : Array.isArray(reading) ? reading : [reading.lifted, reading.pushed]
  return lengths.reduce((sum, length) => sum + length, 0) / lengths.length
}

function rate(value: number | string | undefined): number | undefined {
  return value === undefined ? undefined : readQuantity(String(value), 'stiffness').value!.base
}

/** How many mm more this end must sag with the rider than without, by its springs and the scales. */
function expectedDifference({ machine }: Notebook, entry: Entry, end: 'front' | 'rear'): number | undefined {
  const alone = entry.axle_loads?.bike?.[end] ?? machine.axle_loads?.bike[end]
  const aboard = entry.axle_loads?.rider?.[end] ?? machine.axle_loads?.rider?.[end]
  const spring = rate(machine[end]?.spring_rate)
  if (alone === undefined || aboard === undefined || spring === undefined) return undefined
  const perMm = end === 'rear' ? spring * machine.rear.motion_ratio ** 2 : (2 * spring) / Math.cos(((machine.geometry?.rake ?? 0) * Math.PI) / 180)
  return ((aboard - alone) * newtonsPerKg) / perMm
}

describe('the samples', () => {
  it('are four machines or more, with histories of 6 to 30 entries', () => {
    assert.ok(names.length >= 4)
    for (const { name, notebook } of notebooks) assert.ok(notebook.entries.length >= 6 && notebook.entries.length <= 30, `${name}: ${notebook.entries.length}`)
  })

  for (const { name, path, notebook } of notebooks) {
    it(`${name} keeps to the schema`, () => {
      assert.ok(check(notebook), JSON.stringify(check.errors, null, 1))
    })

    // An unquoted comma in `{…}` cuts a sentence in two, and the rest becomes a key without a value.
    it(`${name} has no key without a value`, () => {
      JSON.stringify(notebook, (key, value: unknown) => {
        assert.notEqual(value, null, key)
        return value
      })
    })

    it(`${name} names only files that exist`, () => {
      for (const entry of notebook.entries) if (entry.ride?.log) assert.ok(existsSync(join(dirname(path), entry.ride.log)), entry.ride.log)
    })

    it(`${name} writes only positions that can be read, of adjusters it defines`, () => {
      for (const entry of notebook.entries) {
        for (const [adjuster, value] of Object.entries(entry.settings ?? {})) {
          assert.ok(adjuster in notebook.adjusters, `${entry.id}: ${adjuster}`)
          for (const position of typeof value === 'object' ? Object.values(value as object) : [value]) assert.ok(readPosition(String(position)).value, `${entry.id}: ${String(position)}`)
        }
      }
    })

    it(`${name} branches only from entries before, and its days run forwards`, () => {
      const before: string[] = []
      let last = ''
      for (const entry of notebook.entries) {
        if (entry.from !== undefined) assert.ok(before.includes(String(entry.from)), String(entry.from))
        assert.ok(!before.includes(String(entry.id)), String(entry.id))
        before.push(String(entry.id))
        assert.ok(entry.date! >= last, String(entry.id))
        last = entry.date!
      }
    })

    it(`${name} has sags that its springs and its rider’s load explain, to 1.5 mm`, () => {
      let compared = 0
      for (const entry of notebook.entries) {
        for (const end of ['front', 'rear'] as const) {
          const sag = entry.sag?.[end]
          const expected = expectedDifference(notebook, entry, end)
          if (sag?.bike === undefined || sag.rider === undefined || expected === undefined) continue
          compared++
          const difference = mean(sag.bike) - mean(sag.rider)
          assert.ok(Math.abs(difference - expected) < 1.5, `${entry.id} ${end}: ${difference} for ${expected.toFixed(1)}`)
          assert.ok(sag.extended >= mean(sag.bike))
        }
      }
      assert.ok(compared >= 2, `${compared} compared`)
    })
  }

  it('tell of everything that is turned where it is, with what and which way to turn it', () => {
    for (const { path } of notebooks) {
      for (const adjuster of readNotebook(readFileSync(path, 'utf8')).adjusters.values()) {
        if (!isTurned(adjuster)) continue
        assert.ok(adjuster.faces && adjuster.place && adjuster.tool, `${path}: ${adjuster.id}`)
        assert.notEqual(describeTurning(adjuster)!.view, 'unknown')
      }
    }
  })

  it('have one detent that creeps all season, always outwards', () => {
    const tern = readNotebook(readFileSync(join(folder, 'tern-650.setup.yaml'), 'utf8'))
    const moving = creepRecord(tern).filter(({ pattern }) => pattern === 'keeps-moving')
    assert.deepEqual(moving.map(({ slot, oneWay, moved }) => [slot, oneWay, moved.map(({ by }) => by)]), [['shock_rebound', true, [2, 1, 2]]])
  })

  it('begin with what was found and go back at least once', () => {
    for (const { name, notebook } of notebooks) {
      assert.ok(notebook.entries[0]!.as_found, name)
      assert.ok(notebook.entries.some((entry) => entry.from !== undefined), name)
    }
  })

  it('show the arrangements of adjusters that differ most', () => {
    const all = notebooks.flatMap(({ notebook }) => Object.values(notebook.adjusters))
    const some = (facts: Record<string, unknown>) => all.some((adjuster) => Object.entries(facts).every(([key, value]) => JSON.stringify(adjuster[key]) === JSON.stringify(value)))
    const both = ['left', 'right']
    assert.ok(some({ on: 'fork', controls: 'rebound', legs: both }) && some({ on: 'fork', controls: 'compression', legs: both }))
    assert.ok(some({ on: 'fork', controls: 'rebound', legs: ['right'] }) && some({ on: 'fork', controls: 'compression', legs: ['left'] }))
    assert.ok(some({ on: 'shock', controls: 'rebound', faces: 'down', worked_from: 'above' }))
    assert.ok(some({ on: 'fork', controls: 'preload', faces: 'down' }))
    assert.ok(some({ controls: 'low_speed_compression' }) && some({ controls: 'high_speed_compression' }))
    assert.ok(some({ counts: 'steps', higher_is: 'less' }) && some({ counts: 'steps', higher_is: 'more' }))
    assert.ok(some({ counts: 'mm', controls: 'preload', higher_is: 'less' }))
    assert.ok(some({ controls: 'air_pressure' }))
    assert.ok(notebooks.some(({ notebook }) => Object.keys(notebook.adjusters).length === 1))
  })
})
