import assert from 'node:assert/strict'
import fc from 'fast-check'
import type { Gesture } from '../../../src/core/grid/gesture'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { applyChanges } from '../../../src/core/text'
import { Choices } from './choices'
import { randomGesture } from './randomGesture'
import { inverseOf, make, standing, standings } from './undone'
import { writeRandomNotebook } from './writeRandomNotebook'

const head = `format: 1
adjusters:
  fork: {on: fork, legs: [left, right], controls: rebound, counts: clicks}
  shock: {on: shock, controls: rebound, counts: clicks} # the rear
entries:
`
const three = `  # first of all
  - id: a
    as_found: true
    settings: {fork: 3, shock: 4}
      # further in: a's
  # about b
  - id: b # why
    settings: {shock: 5}

  - id: c
    settings: {shock: 6}
`

/** A gesture on the entries, with either line end, and why it is refused. */
function entries(before: string, gesture: Gesture): string {
  const { answer, text } = make(head + before, gesture)
  if (answer.refused !== undefined) return answer.refused
  const crlf = make((head + before).replaceAll('\n', '\r\n'), gesture)
  assert.equal(crlf.text, text.replaceAll('\n', '\r\n'))
  assert.ok(text.startsWith(head))
  return text.slice(head.length)
}

describe('an entry moved in the file', () => {
  it('takes its comments along, and what each comes from is said where it must be', () => {
    assert.equal(entries(three, { kind: 'moveEntry', column: 'c', by: -1 }), `  # first of all
  - id: a
    as_found: true
    settings: {fork: 3, shock: 4}
      # further in: a's
  - id: c
    from: b
    settings: {shock: 6}

  # about b
  - id: b # why
    from: a
    settings: {shock: 5}
`)
  })
  it('goes back by the other way, but for the names that stay', () => {
    const moved = entries(three, { kind: 'moveEntry', column: 'c', by: -1 })
    assert.equal(entries(moved, { kind: 'moveEntry', column: 'c', by: 1 }), three.replace('id: b # why\n', 'id: b # why\n    from: a\n').replace('id: c\n', 'id: c\n    from: b\n'))
  })
  const four = '  - {id: a}\n\n  # about b\n  - {id: b, from: a}\n  - {id: c, from: a}\n\n  # Sunday\n\n  - {id: d, from: a}\n'
  it('goes over several, and what stands between entries stays there', () => {
    assert.equal(entries(four, { kind: 'moveEntry', column: 'b', by: 2 }), '  - {id: a}\n\n  - {id: c, from: a}\n  - {id: d, from: a}\n\n  # Sunday\n\n  # about b\n  - {id: b, from: a}\n')
    assert.equal(entries(four, { kind: 'moveEntry', column: 'd', by: -2 }), '  - {id: a}\n\n  - {id: d, from: a}\n  # about b\n  - {id: b, from: a}\n\n  # Sunday\n\n  - {id: c, from: a}\n')
  })
  it('leaves the bytes of those it goes over alone', () => {
    const { answer } = make(`${head}  - id: a\n${'bcdef'.replace(/./g, (id) => `  - {id: ${id}, from: a, ride: {laps: 6}}\n`)}`, { kind: 'moveEntry', column: 'f', by: -4 })
    assert.equal(answer.changes!.reduce((sum, { start, end, text }) => sum + end - start + text.length, 0), 2 * '  - {id: f, from: a, ride: {laps: 6}}\n'.length)
  })
  it('moves at the end of a text without a last line end', () => {
    assert.equal(entries('  - {id: a}\n  - {id: b, from: a}\n  - {id: c, from: a}', { kind: 'moveEntry', column: 'b', by: 1 }), '  - {id: a}\n  - {id: c, from: a}\n  - {id: b, from: a}')
  })
  it('is refused where it cannot keep what stands', () => {
    assert.equal(entries(three, { kind: 'moveEntry', column: 'a', by: -1 }), '‘a’ is the first entry already')
    assert.equal(entries(three, { kind: 'moveEntry', column: 'c', by: 1 }), '‘c’ is the last entry already')
    assert.equal(entries(three, { kind: 'moveEntry', column: 'a', by: 1 }), '‘a’ begins the history and comes from no entry, so it stays where it is')
    assert.match(entries('  - id: a\n  - date: 2026-05-01\n  - id: c\n', { kind: 'moveEntry', column: 'c', by: -1 }), /^‘c’ comes from ‘#2’, which has no id/)
    assert.match(entries('  - id: a\n    settings: &x {shock: 1}\n  - id: b\n    from: a\n    settings: &y {shock: 1}\n  - id: c\n    from: a\n    settings: *y\n', { kind: 'moveEntry', column: 'c', by: -1 }), /shared/)
    assert.match(make('entries: [{id: a}, {id: b}]\n', { kind: 'moveEntry', column: 'b', by: -1 }).answer.refused ?? '', /in one line/)
    assert.match(make('entries:\n  - id: a\n  - id: b\n  - {}\naccepted:\n  - {finding: x, entry: "#3", reason: y}\n', { kind: 'moveEntry', column: 'b', by: 1 }).answer.refused ?? '', /by its place/)
    assert.equal(entries(three, { kind: 'moveEntry', column: 'b', by: 9 }), '‘b’ is the last entry already')
  })
})

describe('an entry written once more', () => {
  it('says the same under a new name, and those behind come from what they came from', () => {
    assert.equal(entries(three, { kind: 'duplicateEntry', column: 'b', date: '2026-05-01' }), three
      .replace('    settings: {shock: 5}\n\n', '    settings: {shock: 5}\n  - id: run-1 # why\n    date: 2026-05-01\n    settings: {shock: 5}\n\n')
      .replace('id: c\n', 'id: c\n    from: b\n'))
  })
  it('is not found so and no baseline', () => {
    assert.equal(entries('  - id: a\n    as_found: true\n    baseline: true\n    settings: {shock: 4}\n', { kind: 'duplicateEntry', column: 'a', date: '2026-05-01' }),
      '  - id: a\n    as_found: true\n    baseline: true\n    settings: {shock: 4}\n  - id: run-1\n    date: 2026-05-01\n    settings: {shock: 4}\n')
  })
  it('may be written in braces', () => {
    assert.equal(entries('  - {id: a, settings: {shock: 4}}', { kind: 'duplicateEntry', column: 'a', date: '2026-05-01' }), '  - {id: a, settings: {shock: 4}}\n  - {id: run-1, date: 2026-05-01, settings: {shock: 4}}')
  })
})

describe('an entry put behind another', () => {
  it('comes from it, with a blank line where its neighbours have one', () => {
    assert.equal(entries(three, { kind: 'insertEntry', column: 'b', date: '2026-05-01', id: 'x: y', reason: 'wet' }), three
      .replace('    settings: {shock: 5}\n', '    settings: {shock: 5}\n  - id: "x: y"\n    date: 2026-05-01\n    reason: wet\n').replace('id: c\n', 'id: c\n    from: b\n'))
  })
  it('stands at the end behind the last', () => {
    assert.equal(entries('  -   id: a', { kind: 'insertEntry', column: 'a', date: '2026-05-01' }), '  -   id: a\n  -   id: run-1\n      date: 2026-05-01')
  })
  it('is refused where its name is taken', () => {
    assert.equal(entries(three, { kind: 'insertEntry', column: 'b', date: '2026-05-01', id: 'c' }), '‘c’ names another entry already')
  })
})

describe('an adjuster taken out', () => {
  const out = (text: string, id: string, withPositions: boolean) => {
    const { answer, text: after } = make(text, { kind: 'removeAdjuster', id, withPositions })
    return answer.refused ?? after
  }
  it('goes with its line where nothing uses it', () => {
    assert.equal(out(`${head}  - id: a\n    settings: {fork: 3}\n`, 'shock', false), `${head.replace('  shock: {on: shock, controls: rebound, counts: clicks} # the rear\n', '  # the rear\n')}  - id: a\n    settings: {fork: 3}\n`)
  })
  it('is refused in use, and takes all its positions along where that is wanted', () => {
    assert.equal(out(head + three, 'shock', false), 'Shock is set in ‘a’, ‘b’, ‘c’; its positions would be lost')
    const after = out(`${head}  - id: a\n    settings:\n      fork: {left: 1, right: 2}\n      shock: 4\n    remarks: {fork/left: worn, shock: x}\n`, 'fork', true)
    assert.equal(after.slice(after.indexOf('entries')), 'entries:\n  - id: a\n    settings:\n      shock: 4\n    remarks: {shock: x}\n')
  })
  it('is refused where another sits in it or it is gone', () => {
    assert.match(out(`${head.replace('clicks} #', 'clicks, inside: fork} #')}  - id: a\n`, 'fork', true), /sit inside/)
    assert.equal(out(head, 'gone', true), 'there is no such adjuster any more')
  })
})

describe('adjusters in another order', () => {
  const said = `format: 1
adjusters:
  # both caps
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns}   # by hand
  shock_rebound:
    on: shock
    controls: rebound
    counts: clicks
    # at the foot

  # one leg
  fork_rebound: {on: fork, legs: [right], controls: rebound, counts: clicks, label: Rebound}
entries:
  - id: a
    settings: {fork_preload: 3, shock_rebound: 4, fork_rebound: {right: 5}}
`
  const changed = (text: string, gesture: Gesture) => {
    const { answer, text: after } = make(text, gesture)
    return answer.refused ?? after
  }
  const move = (id: string, toward: 'up' | 'down', text = said) => changed(text, { kind: 'moveAdjuster', id, toward })
  const order = (text: string) => [...readNotebook(text).adjusters.keys()]

  it('go past those of their place, with what is written about them, and leave all else as it is', () => {
    const up = move('fork_rebound', 'up')
    assert.equal(up, said.replace(/ {2}# both caps[^]*Rebound\}\n/, `  # one leg
  fork_rebound: {on: fork, legs: [right], controls: rebound, counts: clicks, label: Rebound}
  # both caps
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns}   # by hand

  shock_rebound:
    on: shock
    controls: rebound
    counts: clicks
    # at the foot
`))
    assert.deepEqual(order(up), ['fork_rebound', 'fork_preload', 'shock_rebound'])
    assert.deepEqual(order(move('fork_rebound', 'down', up)), ['fork_preload', 'fork_rebound', 'shock_rebound'])
  })
  it('stay where they are at the ends of their place', () => {
    assert.equal(move('fork_preload', 'up'), 'Fork preload is the first of its place already')
    assert.equal(move('shock_rebound', 'down'), 'Shock rebound is the last of its place already')
    assert.equal(move('gone', 'up'), 'there is no such adjuster any more')
  })
  it('are not touched where they are written in one line or share a value', () => {
    assert.match(move('a', 'down', 'adjusters: {a: {on: fork, controls: rebound}, b: {on: fork, controls: preload}}\n'), /in one line/)
    assert.match(move('b', 'up', 'adjusters:\n  a: {on: &x fork, controls: rebound, counts: clicks}\n  b: {on: *x, controls: preload, counts: turns}\n'), /another place stands for/)
  })
  it('are written once more under a name and a label of their own', () => {
    const twice = changed(said, { kind: 'duplicateAdjuster', id: 'fork_rebound' })
    assert.equal(twice, said.replace('label: Rebound}\n', 'label: Rebound}\n  fork_rebound_2: {on: fork, legs: [right], controls: rebound, counts: clicks, label: Rebound 2}\n'))
    assert.deepEqual(order(changed(twice, { kind: 'duplicateAdjuster', id: 'fork_rebound_2' })), ['fork_preload', 'shock_rebound', 'fork_rebound', 'fork_rebound_2', 'fork_rebound_3'])
    const shock = changed(said, { kind: 'duplicateAdjuster', id: 'shock_rebound' })
    assert.equal(shock, said.replace('    # at the foot\n', '    # at the foot\n  shock_rebound_2:\n    on: shock\n    controls: rebound\n    counts: clicks\n    # at the foot\n'))
  })
})

const tape = fc.array(fc.nat(9999), { maxLength: 900, size: 'max' })
const runs = 40 * Number(process.env['DETENT_RUNS'] ?? 1)
const seed = Number(process.env['DETENT_SEED'] ?? 20260418)

/** A tidy notebook, for what most random ones are too odd for. */
function tidyNotebook(choices: Choices): string {
  const ids = ['a', 'b', 'c', 'd', 'e'].slice(0, 2 + choices.below(4))
  const one = (id: string, at: number) => [
    choices.once(4) ? `  # about ${id}\n` : '', `  - id: ${id}${choices.once(4) ? ' # why' : ''}\n`, at > 1 && choices.once(3) ? `    from: ${ids[choices.below(at)]}\n` : '',
    choices.once(3) ? '' : `    settings: {shock: ${choices.below(9)}${choices.once(2) ? `, fork: ${choices.below(9)} out` : ''}}\n`, choices.once(5) ? '    notes: |+\n      x\n\n' : '', choices.once(4) ? '\n' : '',
  ].join('')
  return `${choices.once(5) ? head.replaceAll('\n', '\r\n') : head}${ids.map(one).join('')}`
}

/** One of the gestures that change what there is, or any other. */
function anyGesture(text: string, choices: Choices): Gesture {
  const notebook = readNotebook(text)
  const keys = notebook.entries.map(({ key }) => key)
  const column = keys.length === 0 ? 'nowhere' : choices.of(keys)
  const slots = [...notebook.adjusters.values()].flatMap(({ id, legs }) => (legs.length === 0 ? [id] : legs.map((leg) => `${id}/${leg}`)))
  const row = slots.length === 0 ? 'reason' : `settings/${choices.of(slots)}`
  switch (choices.below(10)) {
    case 8: return { kind: 'moveAdjuster', id: row.slice('settings/'.length).replace(/\/\w+$/, ''), toward: choices.once(2) ? 'up' : 'down' }
    case 9: return { kind: 'duplicateAdjuster', id: row.slice('settings/'.length).replace(/\/\w+$/, '') }
    case 0: return { kind: 'moveEntry', column, by: choices.below(7) - 3 }
    case 1: return { kind: 'duplicateEntry', column, date: '2026-05-01' }
    case 2: return { kind: 'insertEntry', column, date: '2026-05-01' }
    case 3: return { kind: 'removeAdjuster', id: row.slice('settings/'.length).replace(/\/\w+$/, ''), withPositions: true }
    case 4: return { kind: 'nudge', cells: [{ column, row }], toward: choices.once(2) ? 'more' : 'less' }
    case 5: return { kind: 'setBothLegs', column, row, text: '4' }
    default: return randomGesture(notebook, choices)
  }
}

describe('any sequence of gestures', () => {
  it('and as many undos give the identical bytes; the order of the file changes where nothing stands', function () {
    this.timeout(60_000)
    const done = new Map<string, number>()
    fc.assert(fc.property(tape, (numbers) => {
      const choices = new Choices(numbers)
      const written = choices.once(3) ? writeRandomNotebook(choices) : tidyNotebook(choices)
      if (readNotebook(written).broken) return
      const texts = [written]
      const undos = []
      for (let at = 0; at < 6; at++) {
        const before = texts.at(-1)!
        const gesture = anyGesture(before, choices)
        const { answer, text } = make(before, gesture)
        if (!answer.changes) continue
        done.set(gesture.kind, (done.get(gesture.kind) ?? 0) + 1)
        assert.ok(!readNotebook(text).broken, `${gesture.kind} breaks\n${before}\n---\n${text}`)
        keepsStanding(before, text, gesture)
        undos.push(inverseOf(before, answer.changes))
        texts.push(text)
      }
      let now = texts.at(-1)!
      for (const undo of undos.reverse()) {
        texts.pop()
        now = applyChanges(now, undo)
        assert.equal(now, texts.at(-1))
      }
      assert.equal(now, written)
    }), { numRuns: runs, seed, endOnFailure: process.env['DETENT_SHRINK'] === undefined })
    for (const kind of ['moveEntry', 'duplicateEntry', 'insertEntry', 'removeAdjuster', 'duplicateAdjuster', 'nudge', 'setBothLegs']) assert.ok((done.get(kind) ?? 0) > 3, `${kind}: ${done.get(kind)}`)
  })
})

function keepsStanding(before: string, after: string, { kind }: Gesture): void {
  if (kind === 'moveAdjuster' || kind === 'duplicateAdjuster') assert.deepEqual(standings(readNotebook(after)), standings(readNotebook(before)))
  if (kind !== 'moveEntry' && kind !== 'duplicateEntry' && kind !== 'insertEntry') return
  const [old, now] = [readNotebook(before), readNotebook(after)]
  const sorted = (all: unknown[]) => all.map((each) => JSON.stringify(each)).sort()
  const names = new Set(old.entries.map(({ id }) => id?.value))
  const kept = now.entries.filter(({ id }) => names.has(id?.value))
  assert.deepEqual(sorted(kept.map(standing)), sorted(standings(old)))
  assert.equal(now.entries.length, old.entries.length + (kind === 'moveEntry' ? 0 : 1))
}
