import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import Ajv from 'ajv'
import fc from 'fast-check'
import { parse } from 'yaml'
import { slotsOf } from '../../../../src/core/adjusters/adjuster'
import type { Answers, Architecture } from '../../../../src/core/adjusters/architectures/architecture'
import { architectures, findArchitecture } from '../../../../src/core/adjusters/architectures'
import { writeNotebook } from '../../../../src/core/adjusters/architectures/writeNotebook'
import { isTurned } from '../../../../src/core/adjusters/describeTurning'
import { seenTurning } from '../../../../src/core/adjusters/turning'
import { setSetting } from '../../../../src/core/notebook/edits/setSetting'
import { readNotebook } from '../../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../../src/core/text'

interface Written {
  format: number
  machine: { name: string; rear?: { springs?: number } }
  adjusters: Record<string, Record<string, unknown>>
  entries: { id: string; date: string; as_found: boolean; settings?: object }[]
}

const check = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true }).compile(JSON.parse(readFileSync('schemas/setup.schema.json', 'utf8')) as object)
const cautions = ['The service manual comes first.', 'Never force an adjuster past its seat, however sure you are that there must be another click behind it: the seat is what gives way.']
const write = (architecture: Architecture, answers: Answers = {}, name = 'Tern 650') => writeNotebook(architecture, { name, date: '2026-04-18', cautions, answers })

/** Every way to answer the questions of an architecture. */
function everyAnswer({ asks }: Architecture): Answers[] {
  return asks.reduce<Answers[]>((all, { key, choices }) => all.flatMap((answers) => choices.map(({ value }) => ({ ...answers, [key]: value }))), [{}])
}

const every = architectures.flatMap((architecture) => everyAnswer(architecture).map((answers) => ({ architecture, answers, text: write(architecture, answers) })))

describe('the architectures', () => {
  it('are at least eight, each with its own key, a label and one sentence', () => {
    assert.ok(architectures.length >= 8)
    assert.equal(new Set(architectures.map(({ key }) => key)).size, architectures.length)
    assert.equal(new Set(architectures.map(({ label }) => label)).size, architectures.length)
    for (const { key, about } of architectures) {
      assert.match(key, /^[a-z]+(-[a-z]+)*$/)
      assert.match(about, /^[A-Z][^.]*\.$/)
      assert.equal(findArchitecture(key)?.key, key)
    }
    assert.equal(findArchitecture('hovercraft'), undefined)
  })

  it('go from nothing adjustable to a split-function air fork with a dual-speed shock', () => {
    const controlled = (key: string) => Object.values((parse(write(findArchitecture(key)!)) as Written).adjusters).map(({ controls }) => controls)
    assert.deepEqual(new Set(controlled('nothing-adjustable')), new Set(['tyre_pressure']))
    const air = controlled('air-fork')
    for (const control of ['air_pressure', 'balance_pressure', 'low_speed_compression', 'high_speed_compression', 'rebound']) assert.ok(air.includes(control), control)
  })

  it('ask only what cannot be known otherwise, with a usual answer among the choices', () => {
    for (const { asks } of architectures) {
      assert.ok(asks.length <= 2)
      for (const { label, choices, usual } of asks) {
        assert.match(label, /\?$/)
        assert.ok(choices.length >= 2 && choices.some(({ value }) => value === usual))
      }
    }
  })

  it('write something else for every answer, and the usual for none or nonsense', () => {
    for (const architecture of architectures) {
      const texts = everyAnswer(architecture).map((answers) => write(architecture, answers))
      assert.equal(new Set(texts).size, texts.length, architecture.key)
      const usual = Object.fromEntries(architecture.asks.map(({ key, usual: value }) => [key, value]))
      assert.equal(write(architecture), write(architecture, usual))
      const nonsense = Object.fromEntries(architecture.asks.map(({ key }) => [key, 'purple']))
      assert.equal(write(architecture, nonsense), write(architecture, usual))
    }
  })

  for (const { architecture, answers, text } of every) {
    describe(`${architecture.key} ${Object.values(answers).join(' ')}`.trim(), () => {
      const written = parse(text) as Written
      const notebook = readNotebook(text)

      it('keeps to the schema, and nothing about it needs to be said', () => {
        assert.ok(check(written), JSON.stringify(check.errors, null, 1))
        assert.deepEqual(checkNotebook(notebook).map(({ code, message }) => `${code}: ${message}`), [])
      })

      it('begins with the cautions and ends with an entry to type into', () => {
        assert.ok(text.startsWith('# The service manual comes first.\n# Never force'))
        assert.equal(written.machine.name, 'Tern 650')
        assert.deepEqual(written.entries, [{ id: 'as-found', date: '2026-04-18', as_found: true }])
      })

      it('is tidy: lines of a readable length that end in a line feed, no blanks behind them', () => {
        assert.ok(text.endsWith('\n') && !text.endsWith('\n\n'))
        for (const line of text.split('\n')) assert.ok(line.length <= 110 && line === line.trimEnd() && !line.includes('\t') && !line.includes('\r'), line)
      })

      it('knows of everything that is turned which way to turn it, where it is and with what', () => {
        for (const adjuster of notebook.adjusters.values()) {
          if (!isTurned(adjuster)) continue
          assert.notEqual(seenTurning(adjuster.faces, adjuster.workedFrom, adjuster.closes).view, 'unknown')
          assert.ok(adjuster.faces && adjuster.place && adjuster.tool && adjuster.heldBy, adjuster.id)
        }
      })

      it('takes a position in every cell, one fact a line', () => {
        let filled = text
        for (const adjuster of notebook.adjusters.values()) {
          for (const { leg } of slotsOf(adjuster)) {
            const now = readNotebook(filled)
            filled = applyChanges(filled, setSetting(filled, now.entries[0]!, adjuster.id, leg, '3'))
          }
        }
        const findings = checkNotebook(readNotebook(filled)).map(({ code, message }) => `${code}: ${message}`)
        assert.deepEqual(findings, [])
        assert.ok(check(parse(filled)))
        assert.equal(Object.keys((parse(filled) as Written).entries[0]!.settings!).length, notebook.adjusters.size)
        assert.match(filled, /\n {4}settings:\n {6}\S/)
      })
    })
  }

  it('put one circuit in each leg, whichever is said', () => {
    for (const leg of ['left', 'right']) {
      const { adjusters } = parse(write(findArchitecture('split-damping')!, { rebound_leg: leg })) as Written
      assert.deepEqual(adjusters.fork_rebound!.legs, [leg])
      assert.deepEqual(adjusters.fork_compression!.legs, [leg === 'left' ? 'right' : 'left'])
      assert.match(String(adjusters.fork_rebound!.place), new RegExp(leg))
    }
  })

  // 1 soft to 7 hard on one machine (FJ-09 2014), 7 soft to 1 hard on another (XP560D service manual).
  it('let the steps of rear preload count either way', () => {
    for (const [answer, higherIs] of [['highest', 'more'], ['lowest', 'less']] as const) {
      const { adjusters } = parse(write(findArchitecture('rear-steps-only')!, { most_preload: answer })) as Written
      assert.equal(adjusters.rear_preload!.higher_is, higherIs)
    }
  })

  it('keep the machine’s name, whatever it is', () => {
    const names = ['Tern 650', 'a: b', '# 14', "Jon's", '"quoted"', 'true', 'no', '0815', '- dash', '{x}', 'back\\slash', 'Grüße 🏍', 'line\nbreak', '@home', 'x #1', 'null', '\u2028', '\u0085x', '& *']
    for (const name of names) assert.equal((parse(write(architectures[0]!, {}, name)) as Written).machine.name, name.trim() === '' ? 'My machine' : name.trim(), JSON.stringify(name))
    fc.assert(fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (name) => {
      assert.equal((parse(write(architectures[0]!, {}, name)) as Written).machine.name, name.trim() || 'My machine')
    }))
    assert.equal((parse(write(architectures[0]!, {}, '  ')) as Written).machine.name, 'My machine')
  })

  it('keep a date that is none as text, for the rules to speak about', () => {
    const written = parse(writeNotebook(architectures[0]!, { name: 'A', date: 'soon: "x"', cautions })) as Written
    assert.equal(written.entries[0]!.date, 'soon: "x"')
  })
})
