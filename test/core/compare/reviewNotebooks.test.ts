import assert from 'node:assert/strict'
import fc from 'fast-check'
import { reviewNotebooks } from '../../../src/core/compare/reviewNotebooks'
import { reviewReport } from '../../../src/core/compare/report/reviewReport'
import { reportText } from '../../../src/core/compare/report/reportText'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { ternSketch } from '../derived/ternSketch'
import { architectures, machinesOf, trials } from './randomStates'

const review = (before: string, after: string) => reviewNotebooks({ notebook: readNotebook(before), file: 'main:x' }, { notebook: readNotebook(after), file: 'x' })
const entries = (before: string, after: string) => review(before, after).entries.map(({ kind, key, from, was }) => [kind, key, ...(from ? [`from ${from}`] : []), ...(was ? [`was ${was}`] : [])].join(' '))
const told = (before: string, after: string) => reportText(reviewReport(review(before, after)))
const added = '  - id: run-2\n    date: 2026-04-19\n    settings: {shock_rebound: 9 out}\n    reason: it packed down\n'

describe('a review of two versions', () => {
  it('finds nothing between a version and itself, or itself in other words', () => {
    for (const after of [ternSketch, ternSketch.replace('# ', '#  '), ternSketch.replaceAll('\n', '\r\n'), ternSketch.replace('settings: {fork_rebound: 3 out}', 'settings:\n      fork_rebound: "3 out"   # both')]) {
      const { entries: listed, facts, findings } = review(ternSketch, after)
      assert.deepEqual([listed, facts, findings], [[], [], { new: [], gone: [], notReadAgain: [], foundBefore: [] }])
    }
    assert.match(told(ternSketch, ternSketch), /^Tern 650: nothing changed\n/)
  })

  it('sets each new entry against the one it comes from', () => {
    const [one, ...more] = review(ternSketch, ternSketch + added).entries
    assert.deepEqual([more.length, one!.kind, one!.key, one!.from, one!.reason], [0, 'added', 'run-2', 'run-1', 'it packed down'])
    assert.equal(one!.comparison!.left.entry?.key, 'run-1')
    assert.equal(one!.comparison!.changes, 1)
    assert.deepEqual(entries(ternSketch, `${ternSketch}${added}    from: as-found\n`), ['added run-2 from as-found'])
  })

  it('sets a changed entry against itself as it was, and says which of its lines are otherwise', () => {
    const [one] = review(ternSketch, ternSketch.replace('{fork_rebound: 3 out}', '{fork_rebound: 4 out}').replace('laps: 6', 'laps: 7')).entries
    assert.equal(one!.kind, 'changed')
    assert.deepEqual(one!.facts, [{ path: 'settings.fork_rebound', before: '3 out', after: '4 out' }, { path: 'ride.laps', before: '6', after: '7' }])
    assert.equal(one!.comparison!.changes, 1)
  })

  it('names entries that stand otherwise although nobody touched them', () => {
    assert.deepEqual(entries(ternSketch, ternSketch.replace('shock_rebound: 7 out', 'shock_rebound: 8 out')), ['changed as-found', 'affected run-1 from as-found'])
  })

  it('tells a change once that is carried on, however many entries it reaches', () => {
    const season = ternSketch + [2, 3, 4].map((day) => `  - {id: day-${day}, date: 2026-05-0${day}, reason: as before, settings: {fork_rebound: ${day} out}}\n`).join('')
    const text = told(season, season.replace('shock_rebound: 7 out', 'shock_rebound: 8 out'))
    assert.match(text, /run-1 to day-4 \(4 entries\): not touched themselves/)
    assert.match(text, /The same change as in as-found\./)
    assert.equal(text.match(/1 click out: less rebound damping/g)?.length, 1)
  })

  it('names entries that went, and those that only have a new name', () => {
    assert.deepEqual(entries(ternSketch + added, ternSketch), ['removed run-2 from run-1'])
    assert.deepEqual(entries(ternSketch + added, ternSketch + added.replace('run-2', 'soft')), ['renamed soft from run-1 was run-2'])
    assert.deepEqual(entries(ternSketch + added.replace('id: run-2', 'note: x'), ternSketch + added + added.replace('id: run-2', 'note: x')), ['added run-2 from run-1'], 'one without an id is told by what it says')
  })

  it('tells what is said otherwise about the machine, and what is accepted now', () => {
    const after = ternSketch.replace('range: 22', 'range: 24').replace('rider: {kitted_mass: 84}\n', '').concat('accepted:\n  - {finding: legs-differ, entry: as-found, reason: it came so}\n')
    assert.deepEqual(review(ternSketch, after).facts, [
      { path: 'adjusters.shock_rebound.range', before: '22', after: '24' },
      { path: 'rider.kitted_mass', before: '84' },
      { path: 'accepted legs-differ as-found', after: 'it came so' },
    ])
  })

  it('tells findings that are new and those that are gone, over the whole', () => {
    const { findings } = review(ternSketch, ternSketch + added.replace('9 out', '30 out').replace('    reason: it packed down\n', ''))
    assert.deepEqual(findings.new.map(({ code, entry }) => `${code} ${entry}`), ['no-reason run-2', 'beyond-range run-2'].sort((a, b) => a.localeCompare(b)).reverse())
    assert.deepEqual(findings.gone, [])
  })

  it('tells of a broken side and compares nothing', () => {
    const { before, entries: listed } = review('a: "', ternSketch)
    assert.ok(before.trouble)
    assert.deepEqual(listed, [])
  })

  it('says first what became of the entries, then each of them', () => {
    const text = told(ternSketch, ternSketch + added)
    assert.match(text, /^Tern 650: 1 entry added\n=+\nFrom: main:x\nTo: x\n\nEntries:\n {2}- run-2, 2026-04-19: added, comes from run-1\n\nrun-2, added, comes from run-1\nWhy: it packed down\n/)
    assert.match(text, /\n {2}Shock rebound +7 clicks out +9 clicks out +2 clicks out: less rebound damping \(9 % of range\)\n/)
    assert.match(told('format: 1\n', `format: 1\nentries:\n${added}`), /The first entry: there is nothing to compare it with\./)
  })

  it('names every entry that is new and none besides, whatever the machine', () => {
    fc.assert(fc.property(fc.constantFrom(...architectures).chain(machinesOf), fc.subarray(['a', 'b', 'c']), ({ text }, kept) => {
      const parts = text.split(/^(?= {2}- id: [abc]$)/m)
      // What a kept entry rests on may go, and then it is not the same any more.
      const before = parts[0]! + parts.slice(1).filter((part) => kept.some((id) => part.startsWith(`  - id: ${id}\n`))).join('')
      assert.deepEqual(review(before, text).entries.map(({ kind, key }) => `${kind} ${key}`), ['a', 'b', 'c'].filter((id) => !kept.includes(id)).map((id) => `added ${id}`))
    }), trials(8))
  })
})
