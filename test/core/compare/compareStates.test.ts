import assert from 'node:assert/strict'
import fc from 'fast-check'
import { compareStates } from '../../../src/core/compare/compareStates'
import type { CompareOptions, CompareRow, Comparison } from '../../../src/core/compare/comparison'
import { buildGrid } from '../../../src/core/grid/buildGrid'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { fileUnits } from '../../../src/core/notation/displayUnits'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { ternSketch } from '../derived/ternSketch'
import { architectures, machinesOf, trials } from './randomStates'

const runs = 10
const at = (notebook: Notebook, key: string) => ({ notebook, entry: notebook.entries.find((each) => each.key === key)!, file: 'x' })
const rowsIn = ({ groups }: Comparison): CompareRow[] => groups.flatMap(({ rows }) => rows)
const row = (comparison: Comparison, key: string) => rowsIn(comparison).find((each) => each.key === key)!
const anyMachine = fc.constantFrom(...architectures).chain(machinesOf)
const inText = (text: string, from = 'as-found', to = 'run-1', options: CompareOptions = {}) => compareStates(at(readNotebook(text), from), at(readNotebook(text), to), options)
const two = (left: string, right: string, options: CompareOptions = {}) => compareStates({ notebook: readNotebook(left), file: 'a' }, { notebook: readNotebook(right), file: 'b' }, options)

/** Rows that say the same with the sides changed over. Keys are the left side's, so rows are told by where they stand. */
function assertMirrors(there: Comparison, back: Comparison): void {
  const named = (side: 'left' | 'right') => (each: CompareRow) => JSON.stringify([each[side].place?.row, each[side === 'left' ? 'right' : 'left'].place?.row])
  const theirs = new Map(rowsIn(back).map((each) => [named('right')(each), each]))
  assert.equal(theirs.size, rowsIn(there).length)
  for (const here of rowsIn(there)) {
    const other = theirs.get(named('left')(here))
    assert.ok(other, here.key)
    assert.deepEqual([other.left, other.right, other.different], [here.right, here.left, here.different], here.key)
    assert.equal(other.onlyIn, here.onlyIn === undefined ? undefined : here.onlyIn === 'left' ? 'right' : 'left')
    assert.equal(other.incomparable === undefined, here.incomparable === undefined)
    const [a, b] = [here.change, other.change]
    assert.equal(a === undefined, b === undefined, here.key)
    if (!a || !b) continue
    // One side may count in psi and the other in bar.
    const inOneUnit = here.left.text.replace(/[\d. ]+/, '') === here.right.text.replace(/[\d. ]+/, '')
    assert.ok((!inOneUnit || Math.abs(a.by + b.by) < 1e-9) && Math.abs((a.size ?? 0) - (b.size ?? 0)) < 1e-9 && Math.abs((a.share ?? 0) + (b.share ?? 0)) < 1e-9, here.key)
    assert.notEqual(a.direction, b.direction)
    assert.deepEqual([a.u, a.sure, a.sizeIs], [b.u, b.sure, b.sizeIs])
  }
  assert.equal(there.changes, back.changes)
  const told = (findings: { code: string; line: number; message: string }[]) => findings.map(({ code, line, message }) => `${line} ${code} ${message}`).sort()
  const found = ({ findings }: Comparison) => told([...findings.new, ...findings.foundBefore])
  const missed = ({ findings }: Comparison) => told([...findings.gone, ...findings.notReadAgain])
  assert.deepEqual([found(there), found(back)], [missed(back), missed(there)])
  assert.deepEqual(there.between.map(({ way, key }) => `${way === 'done' ? 'undone' : 'done'} ${key}`).reverse(), back.between.map(({ way, key }) => `${way} ${key}`))
}

describe('two states side by side', () => {
  it('have no difference where they are one', () => {
    fc.assert(fc.property(anyMachine, ({ text, notebook }) => {
      for (const comparison of [compareStates(at(notebook, 'a'), at(notebook, 'a')), compareStates(at(notebook, 'b'), at(readNotebook(text), 'b'))]) {
        assert.deepEqual(rowsIn(comparison).filter(({ different, change }) => different || change), [])
        assert.deepEqual([comparison.changes, comparison.between, comparison.findings], [0, [], { new: [], gone: [], notReadAgain: [], foundBefore: [] }])
      }
    }), trials(runs))
  })

  it('mirror one another when they change sides', () => {
    fc.assert(fc.property(anyMachine, ({ notebook }) => {
      assertMirrors(compareStates(at(notebook, 'a'), at(notebook, 'b')), compareStates(at(notebook, 'b'), at(notebook, 'a')))
    }), trials(runs))
    for (const [from, to] of [['as-found', 'run-1'], ['run-1', 'as-found']] as const) assertMirrors(inText(ternSketch, from, to), inText(ternSketch, to, from))
  })

  it('mirror one another over two machines of any kinds too', () => {
    fc.assert(fc.property(anyMachine, anyMachine, (one, other) => {
      const [a, b] = [at(one.notebook, 'a'), at(other.notebook, 'b')]
      const there = compareStates(a, b, { oneMachine: false })
      assertMirrors(there, compareStates(b, a, { oneMachine: false }))
      assert.equal(there.oneMachine, false)
      assert.equal(there.notes.length, 1)
    }), trials(runs))
  })

  it('have every row of either grid once, with the place where it stands in each', () => {
    fc.assert(fc.property(anyMachine, anyMachine, (one, other) => {
      const comparison = compareStates(at(one.notebook, 'a'), at(other.notebook, 'b'))
      for (const [side, { notebook }] of [['left', one], ['right', other]] as const) {
        const wanted = buildGrid(notebook, []).rows.filter(({ kind }) => kind !== 'group').map(({ key }) => key)
        const shown = rowsIn(comparison).flatMap((each) => each[side].place?.row ?? [])
        assert.equal(new Set(shown).size, shown.length)
        assert.deepEqual(wanted.filter((key) => !shown.includes(key)), [])
      }
    }), trials(runs))
  })
})

describe('a change of position', () => {
  it('is told in the adjuster’s own count, in the trade’s word, as a share of range and as a size', () => {
    const { change, left, right } = row(inText(ternSketch), 'settings/fork_rebound/right')
    assert.deepEqual([left.text, right.text], ['6 clicks out', '3 clicks out'])
    assert.deepEqual(change, { words: '3 clicks in: more rebound damping', by: -3, direction: 'more', gives: 'more rebound damping', share: 30, size: 0.3, sizeIs: 'range' })
  })

  it('is none where the same place is written otherwise, from the other end or in another unit', () => {
    const text = ternSketch.replace('settings: {fork_rebound: 3 out}', 'settings: {fork_rebound: 7 in, fork_preload: 0 flats in}')
    const left = row(inText(text), 'settings/fork_rebound/left')
    assert.deepEqual([left.different, left.left.text, left.left.written, left.right.written], [false, '3 clicks out', '3 out', '7 in'])
    assert.equal(row(inText(text), 'settings/fork_preload/left').different, false)
  })

  it('has a size by all that was ever recorded where the range is not known', () => {
    const text = ternSketch.replace('settings: {fork_rebound: 3 out}', 'settings: {fork_height: 7}').concat('  - id: run-2\n    settings: {fork_height: 9}\n')
    const { change } = row(inText(text), 'settings/fork_height/left')
    assert.deepEqual(change, { words: '+2 mm: tubes further up through the clamps', by: 2, direction: 'more', gives: 'tubes further up through the clamps', size: 0.5, sizeIs: 'record' })
  })

  it('counts both legs of a pair as one', () => {
    assert.equal(inText(ternSketch).changes, 1)
    assert.equal(inText(ternSketch.replace('{fork_rebound: 3 out}', '{fork_rebound: 5 out, fork_height: 6, shock_rebound: 8 out}')).changes, 3)
  })

  it('is told as being on one side alone, and not as a change, where the other knows nothing of it', () => {
    const { different, onlyIn, change } = row(inText(ternSketch.replace('from: as-found', 'from: gone')), 'settings/shock_rebound')
    assert.deepEqual([different, onlyIn, change], [true, 'left', undefined])
  })

  it('says what is missing where two notations of one adjuster have no ratio', () => {
    const { different, change, incomparable } = row(inText(ternSketch.replace('{fork_rebound: 3 out}', '{shock_rebound: 1 turn out}')), 'settings/shock_rebound')
    assert.deepEqual([different, change], [true, undefined])
    assert.equal(incomparable, 'These cannot be set against each other in one count: it needs clicks_per_turn.')
  })

  it('is found over a new range, a new end to count from or a new name of the adjuster', () => {
    const later = ternSketch.replaceAll('shock_rebound', 'rear_rebound').replace('counts: clicks, range: 22', 'counts: clicks, counted: in, range: 22').replace('rear_rebound: 7 out', 'rear_rebound: 15 in')
    const { different, left, right } = row(two(ternSketch, later), 'settings/shock_rebound')
    assert.deepEqual([different, left.place?.row, right.place?.row], [false, 'settings/shock_rebound', 'settings/rear_rebound'])
    const softer = row(two(ternSketch, later.replace('15 in', '10 in')), 'settings/shock_rebound').change
    assert.deepEqual([softer?.words, softer?.by], ['5 clicks out: less rebound damping', -5])
  })
})

describe('two machines', () => {
  const heron = ternSketch.replace('Tern 650', 'Heron 980').replace('range: 22', 'range: 44').replace('shock_rebound: 7 out', 'shock_rebound: 22 out')

  it('are told by their names, unless the caller knows better', () => {
    assert.equal(two(ternSketch, heron).oneMachine, false)
    assert.equal(two(ternSketch, heron, { oneMachine: true }).oneMachine, true)
    assert.equal(two(ternSketch, ternSketch).oneMachine, true)
    assert.equal(two('format: 1\n', 'format: 1 \n').oneMachine, false, 'nobody knows whose they are')
  })

  it('are compared by their shares of range, towards more of what is controlled, and say so', () => {
    const comparison = two(ternSketch, heron)
    const { change, left, right } = row(comparison, 'settings/shock_rebound')
    assert.deepEqual([left.at!.toFixed(3), right.at], [(15 / 22).toFixed(3), 0.5])
    assert.equal(change!.words, '18 % of range: less rebound damping')
    assert.ok(Math.abs(change!.by - 100 * (1 / 2 - 15 / 22)) < 1e-9)
    assert.match(comparison.notes[0]!, /A click of one is no click of the other/)
  })

  it('say which range is missing', () => {
    const { incomparable, change } = row(two(ternSketch, heron.replace(', range: 44', '')), 'settings/shock_rebound')
    assert.equal(change, undefined)
    assert.match(incomparable!, /the right side lacks its `range`/)
  })

  it('have no difference of the lengths that sag is measured by, but one of pressures', () => {
    const tyres = (text: string, bar: number) => text.replace('adjusters:', 'adjusters:\n  front_tyre: {on: tyres, controls: tyre_pressure, counts: bar}').replace('fork_height: 5\n', `fork_height: 5\n      front_tyre: ${bar}\n`)
    const comparison = compareStates(at(readNotebook(tyres(ternSketch, 2.1)), 'as-found'), at(readNotebook(tyres(heron, 2.4).replace('152', '160')), 'as-found'))
    assert.equal(row(comparison, 'settings/front_tyre').change?.words, '+0.3 bar: more tyre pressure')
    const extended = row(comparison, 'sag.front.extended')
    assert.deepEqual([extended.different, extended.change], [true, undefined])
    assert.equal(row(comparison, 'computed/front.rider_sag_mm').change?.words, '+8 mm')
  })
})

describe('a number that is worked out', () => {
  // Each sag of two readings to ±1 mm and an extended length to ±1 mm: u² = (1/√3)² · (1 + 1/2), as JCGM 100:2008, 5.1.2 has it.
  const u = Math.sqrt(1.5) / Math.sqrt(3)
  const later = (rider: string) => ternSketch.replace('reason:', `sag: {front: {extended: 152, rider: ${rider}}}\n    reason:`)

  it('changes by more than its uncertainty or within it', () => {
    const far = row(inText(later('[122, 114]')), 'computed/front.rider_sag_mm').change!
    assert.deepEqual([far.words, far.sure], ['−4 mm', true])
    assert.ok(Math.abs(far.u! - u * Math.SQRT2) < 1e-9)
    assert.equal(far.surely, 'more than twice its uncertainty of 1 mm')
    const near = row(inText(later('[119, 111]')), 'computed/front.rider_sag_mm').change!
    assert.deepEqual([near.words, near.sure, near.surely], ['−1 mm', false, 'within twice its uncertainty of 1 mm'])
  })

  it('is shown with its unit and ±, and stands alone where the other side has none', () => {
    const sag = row(inText(ternSketch), 'computed/front.rider_sag_mm')
    assert.deepEqual([sag.left.text, sag.right.text, sag.onlyIn], ['38 mm', '', 'left'])
    assert.match(row(inText(ternSketch), 'computed/front.wheel_rate_n_per_mm').left.text, /^[\d.]+ ± [\d.]+ N\/mm$|^$/)
    assert.equal(row(inText(ternSketch), 'computed/geometry.rake_deg').left.text, '24°')
  })

  it('is shown in the units someone asks for, the change too', () => {
    const { left, change } = row(inText(later('[122, 114]'), 'as-found', 'run-1', { units: { ...fileUnits, length: 'in' } }), 'computed/front.rider_sag_mm')
    assert.deepEqual([left.text, change!.words, change!.surely], ['1.5 in', '−0.16 in', 'more than twice its uncertainty of 0.04 in'])
    assert.ok(Math.abs(change!.by + 4) < 1e-9, 'in mm')
  })

  it('follows the fork through its clamps', () => {
    const { change } = row(inText(ternSketch.replace('{fork_rebound: 3 out}', '{fork_height: 15}')), 'computed/geometry.rake_deg')
    assert.equal(change!.direction, 'less')
    assert.match(change!.words, /^−0\.\d+°$/)
  })
})

describe('a side that cannot be compared', () => {
  it('is told with its error, its line and its text, and the other one is shown alone', () => {
    const comparison = two('format: 1\nmachine: {name: "Tern\n', ternSketch)
    assert.deepEqual([comparison.left.trouble?.text, comparison.left.entry], ['format: 1\nmachine: {name: "Tern\n', undefined])
    assert.ok(comparison.left.trouble!.line >= 2)
    assert.equal(row(comparison, 'settings/shock_rebound').right.text, '7 clicks out')
    assert.deepEqual([comparison.findings.new, comparison.between, comparison.expected], [[], [], []])
  })

  it('is told where it has no entries, or both are broken', () => {
    assert.equal(two('format: 1\n', ternSketch).left.trouble?.message, 'this notebook has no entries yet')
    assert.deepEqual(two('a: "', 'b: "').groups, [])
  })

  it('is said to be read-only where it is', () => {
    const notebook = readNotebook(ternSketch)
    assert.equal(compareStates({ notebook, file: 'main:x', readOnly: 'as it was in main' }, { notebook, file: 'x' }).left.readOnly, 'as it was in main')
  })
})

describe('what lies between', () => {
  const branched = `${ternSketch}  - id: run-2\n    from: as-found\n    settings: {shock_rebound: 9 out}\n    reason: back, and softer\n`

  it('goes back over what was tried to where both come from, and forth from there, with reasons', () => {
    const { between } = inText(branched, 'run-1', 'run-2')
    assert.deepEqual(between.map(({ way, key, reason, changes }) => [way, key, reason, changes]), [
      ['undone', 'run-1', 'right leg brought to the left', ['Fork rebound, right leg: 3 clicks in: more rebound damping']],
      ['done', 'run-2', 'back, and softer', ['Shock rebound: 2 clicks out: less rebound damping']],
    ])
  })

  it('is found over two versions of a notebook by the entries’ ids', () => {
    assert.deepEqual(two(ternSketch, branched).between.map(({ way, key }) => `${way} ${key}`), ['undone run-1', 'done run-2'])
  })
})
