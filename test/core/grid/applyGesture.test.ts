import assert from 'node:assert/strict'
import { applyGesture, suggestId } from '../../../src/core/grid/applyGesture'
import { findingIds } from '../../../src/core/grid/findingIds'
import type { Gesture } from '../../../src/core/grid/gesture'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../src/core/text'
import { eachCase, edited, head, inEntry, refusal, set } from './editing'
import { busyMs } from '../../busyMs'

describe('cells that are written together', () => {
  it('may be of one entry, where they touch the same lines', () => {
    const cells = [['settings/fork/left', '3'], ['settings/fork/right', '4'], ['settings/shock', '5'], ['sag.front.bike.lifted', '128'], ['sag.front.bike.pushed', '122'], ['ride.felt', 'good\nso far']]
    const gesture: Gesture = { kind: 'setCells', cells: cells.map(([row, text]) => ({ column: 'a', row: row!, text: text! })) }
    assert.equal(inEntry('  - id: a # one\n', gesture), `  - id: a # one
    settings:
      fork: {left: 3, right: 4}
      shock: 5
    sag:
      front: {bike: [128, 122]}
    ride:
      felt: |-
        good
        so far
`)
  })

  it('may be of several entries, and clear some', () => {
    const cells = ['a', 'b', 'c'].flatMap((column, at) => [{ column, row: 'settings/shock', text: String(at + 4) }, { column, row: 'settings/fork/left', text: at === 1 ? '' : '1' }])
    assert.equal(inEntry('  - id: a\n    settings: {fork: 3}\n  - {id: b, settings: {fork: 3}}\n  - id: c\n', { kind: 'setCells', cells }),
      '  - id: a\n    settings: {fork: {left: 1, right: 3}, shock: 4}\n  - {id: b, settings: {fork: {right: 3}, shock: 5}}\n  - id: c\n    settings:\n      shock: 6\n      fork: {left: 1}\n')
  })

  it('are written all or not at all', () => {
    const cells = [{ column: 'a', row: 'settings/shock', text: '4' }, { column: 'a', row: 'computed/front.static_sag_mm', text: '3' }]
    assert.equal(refusal(`${head}entries:\n  - id: a\n`, { kind: 'setCells', cells }), 'this is worked out from the other cells')
  })

  it('are cleared together, down to the last', () => {
    const cells = ['settings/fork/left', 'settings/fork/right', 'settings/shock', 'reason'].map((row) => ({ column: 'a', row }))
    assert.equal(inEntry('  - id: a\n    settings: {fork: 3, shock: 4}\n    reason: x\n  - id: b\n', { kind: 'clearCells', cells }), '  - id: a\n  - id: b\n')
  })

  it('are cleared as far as they can be where that is asked for, each of the others with its reason', () => {
    const cells = ['a', 'b', 'c'].map((column) => ({ column, row: 'settings/shock' }))
    const text = `${head}entries:\n  - id: a\n    settings: {shock: &same 3}\n    reason: x\n  - id: b\n    settings: {shock: *same}\n    reason: x\n  - id: c\n    settings: {shock: 4}\n    reason: x\n`
    assert.match(refusal(text, { kind: 'clearCells', cells }), /another place stands for a value in here/)
    const answer = applyGesture(readNotebook(text), [], { kind: 'clearCells', cells, partly: true })
    assert.equal(answer.changes && applyChanges(text, answer.changes), text.replace('    settings: {shock: *same}\n', '').replace('    settings: {shock: 4}\n', ''))
    assert.deepEqual(answer.changes && answer.left?.map(({ column, row }) => [column, row]), [['a', 'settings/shock']])
    assert.match(refusal(text, { kind: 'clearCells', cells: cells.slice(0, 1), partly: true }), /another place stands for a value in here/)
  })

  it('are two hundred in well under the time one waits', () => {
    const rows = Array.from({ length: 40 }, (_, at) => `  a${at}: {on: shock, controls: rebound, counts: clicks}\n`).join('')
    const text = `format: 1\nadjusters:\n${rows}entries:\n${Array.from({ length: 5 }, (_, at) => `  - id: e${at}\n`).join('')}`
    const cells = Array.from({ length: 200 }, (_, at) => ({ column: `e${at % 5}`, row: `settings/a${at % 40}`, text: String(at) }))
    const notebook = readNotebook(text)
    assert.ok(busyMs(() => assert.ok(applyGesture(notebook, [], { kind: 'setCells', cells }).changes)) < 3000)
  })
})

describe('the head of an entry', () => {
  const header = (field: 'date' | 'reason', text: string): Gesture => ({ kind: 'setHeader', column: 'a', field, text })
  eachCase([
    ['takes a date', '  - id: a\n    settings: {shock: 3}\n', header('date', ' 2026-04-18 '), '  - id: a\n    date: 2026-04-18\n    settings: {shock: 3}\n'],
    ['keeps the quotes of a date', "  - id: a\n    date: '2026-04-18'\n", header('date', '2026-04-19'), "  - id: a\n    date: '2026-04-19'\n"],
    ['loses a date', '  - date: 2026-04-18 # Fen\n    id: a\n', header('date', ''), '  - # Fen\n    id: a\n'],
    ['takes a reason', '  - id: a\n', header('reason', '#1: "why"'), '  - id: a\n    reason: \'#1: "why"\'\n'],
    ['loses a reason', '  - {id: a, reason: x}\n', header('reason', ' '), '  - {id: a}\n'],
  ])
})

describe('a remark', () => {
  const remark = (row: string, text: string): Gesture => ({ kind: 'annotate', column: 'a', row, text })
  eachCase([
    ['stands under the name of what it is about', '  - id: a\n', remark('settings/fork/left', ' worn: "again" #2 '), '  - id: a\n    remarks:\n      fork/left: \'worn: "again" #2\'\n'],
    ['may run over several lines', '  - id: a\n', remark('sag.front.bike.lifted', 'one\ntwo'), '  - id: a\n    remarks:\n      sag.front.bike.lifted: |-\n        one\n        two\n'],
    ['may be about a cell that is worked out', '  - id: a\n', remark('computed/front.static_sag_mm', 'x'), '  - id: a\n    remarks:\n      computed/front.static_sag_mm: x\n'],
    ['is replaced', '  - id: a\n    remarks: {shock: old}\n', remark('settings/shock', 'new'), '  - id: a\n    remarks: {shock: new}\n'],
    ['goes, and the remarks with the last of them', '  - id: a\n    remarks: {shock: old}\n', remark('settings/shock', ' '), '  - id: a\n'],
  ])

  it('is left alone where it is about more than this cell', () => {
    assert.equal(refusal(`${head}entries:\n  - id: a\n    remarks: {fork: old}\n`, remark('settings/fork/left', '')), 'this remark is about `fork` as a whole; change it in the text')
    assert.equal(refusal(`${head}entries:\n  - id: a\n`, remark('group/fork', 'x')), 'there is no such row any more')
  })
})

describe('a gesture', () => {
  it('is refused while the text has an error, with the error', () => {
    assert.match(refusal(`${head}entries:\n  - id: a\n  - {\n`, set('reason', 'x')), /^The text has an error, so the grid does not write: /)
  })

  it('is refused on a newer format', () => {
    assert.match(refusal('format: 2\nentries:\n  - id: a\n', set('reason', 'x')), /newer format/)
  })

  it('applies a fix of a finding', () => {
    const text = `${head}entries:\n  - id: a\n    settings: {shok: 3}\n`
    const notebook = readNotebook(text)
    const findings = checkNotebook(notebook)
    const finding = findingIds(findings)[findings.findIndex(({ code }) => code === 'unknown-adjuster')]!
    const { changes } = applyGesture(notebook, findings, { kind: 'applyFix', finding, fix: 0 })
    assert.equal(applyChanges(text, changes!), text.replace('shok', 'shock'))
    assert.equal(applyGesture(notebook, findings, { kind: 'applyFix', finding, fix: 9 }).refused, 'this finding is gone')
    assert.equal(applyGesture(notebook, findings, { kind: 'applyFix', finding: -1, fix: 0 }).refused, 'this finding is gone')
  })

  it('begins a notebook only in an empty file', () => {
    const begin = (text: string, start = 'split-damping') => applyGesture(readNotebook(text), [], { kind: 'begin', start, date: '2026-04-18', name: 'Tern' })
    assert.match(begin('format: 1\n').refused ?? '', /holds something already/)
    assert.match(begin('', 'no-such-kind').refused ?? '', /no such kind/)
    for (const text of ['', '\n \n', '\ufeff']) {
      const written = applyChanges(text, begin(text).changes!)
      assert.deepEqual(checkNotebook(readNotebook(written)), [])
      assert.match(written, /name: Tern\n/)
    }
    const commented = applyChanges('# the green one\n', begin('# the green one\n').changes!)
    assert.ok(commented.startsWith('# the green one\n\n'))
    assert.deepEqual(checkNotebook(readNotebook(commented)), [])
  })

  it('says where to look after a new entry', () => {
    const answer = applyGesture(readNotebook('format: 1\n'), [], { kind: 'addEntry', date: '2026-04-18' })
    assert.deepEqual(answer.changes && answer.reveal, { column: 'as-found', row: 'sag.front.extended' })
  })

  it('does not mind an entry in another entry’s words', () => {
    assert.equal(edited('format: 1\nentries:\n  - id: a\n    notes: |\n      - id: b\n        reason: x\n  - id: b\n', { kind: 'setHeader', column: 'b', field: 'reason', text: 'y' }),
      'format: 1\nentries:\n  - id: a\n    notes: |\n      - id: b\n        reason: x\n  - id: b\n    reason: y\n')
  })
})

describe('the id offered for the next entry', () => {
  const after = (...ids: string[]) => suggestId(readNotebook(`entries: [${ids.map((id) => `{id: ${id}}`).join(', ')}]\n`))

  it('counts on from the last that counts', () => {
    assert.equal(after(), 'as-found')
    assert.equal(after('as-found'), 'run-1')
    assert.equal(after('as-found', 'run-1'), 'run-2')
    assert.equal(after('fa-3', 'june'), 'fa-4')
    assert.equal(after('run-2', 'run-1'), 'run-3')
    assert.equal(after('7'), '8')
  })
})
