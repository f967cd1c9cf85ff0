import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import type { EntryRule } from '../../../src/core/rules/rule'
import { codesOf, findingsOf, source } from './check'

const uneven = source`
  format: 1
  adjusters:
    fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks}
  entries:
    - id: as-found
      settings: {fork_rebound: {left: 3, right: 6}}
`
const severityOf = (text: string, said?: Map<string, 'error' | 'warning' | 'info' | 'off'>) => findingsOf(text, said).map(({ severity }) => severity)

describe('checkNotebook', () => {
  it('gives a finding the severity of its rule', () => {
    assert.deepEqual(severityOf(uneven), ['warning'])
  })

  it('gives it the severity it is asked for', () => {
    assert.deepEqual(severityOf(uneven, new Map([['legs-differ', 'info']])), ['info'])
  })

  it('lets the notebook decide over what it is asked for', () => {
    assert.deepEqual(severityOf(`${uneven}rules: {legs-differ: error}\n`, new Map([['legs-differ', 'off']])), ['error'])
  })

  it('is silent about a rule that is off, by the notebook or by what it is asked for', () => {
    assert.deepEqual(codesOf(`${uneven}rules: {legs-differ: off}\n`), [])
    assert.deepEqual(codesOf(uneven, new Map([['legs-differ', 'off']])), [])
  })

  it('lets a severity that was asked for win over one that a finding brings along', () => {
    const text = uneven.replace('{left: 3, right: 6}', 'closed')
    assert.deepEqual(severityOf(text), ['warning'])
    assert.deepEqual(severityOf(text.replace('settings', 'as_found: true\n    settings')), ['info'])
    assert.deepEqual(severityOf(text.replace('settings', 'as_found: true\n    settings'), new Map([['left-at-stop', 'error']])), ['error'])
  })

  it('says where in the grid a finding is', () => {
    assert.deepEqual(findingsOf(uneven)[0]!.place, { entry: 'as-found', row: 'settings/fork_rebound/right' })
  })

  it('says the entry too where a rule looked at the notebook as a whole', () => {
    assert.deepEqual(findingsOf('format: 1\nentries: [{id: 1}, {id: 1}]\n').map(({ place }) => place), [{ entry: '#2' }])
  })

  it('tells findings in the order of the text', () => {
    const starts = findingsOf(`rules: {no-raeson: off}\n${uneven}accepted: [{finding: no-reason}]\n`).map(({ range }) => range.start)
    assert.equal(starts.length, 3)
    assert.deepEqual(starts, [...starts].sort((a, b) => a - b))
  })

  it('says only what is wrong with the text when that does not parse', () => {
    assert.deepEqual(codesOf(`${uneven}rules: {legs-differ: error\n`), ['yaml-syntax'])
  })

  it('says of a newer format only that it is newer', () => {
    assert.deepEqual(codesOf(uneven.replace('format: 1', 'format: 2')), ['newer-format'])
  })

  it('says nothing about an empty text, or one of comments alone', () => {
    assert.deepEqual([codesOf(''), codesOf('# to be written\n'), codesOf('---\n')], [[], [], []])
  })

  it('asks only the rules it is given', () => {
    const rule: EntryRule = { code: 'always', severity: 'info', says: '', why: '', checkEntry: ({ range }) => [{ message: 'here', range }] }
    assert.deepEqual(checkNotebook(readNotebook(uneven), new Map(), [rule]).map(({ code, place }) => [code, place]), [['always', { entry: 'as-found' }]])
  })
})

describe('a notebook that is checked again', () => {
  const saying = (code: string, lengths: readonly number[] = [1]): EntryRule => ({
    code, severity: 'info', says: '', why: '', checkEntry: ({ range: { start } }) => lengths.map((length) => ({ message: 'here', range: { start, end: start + length } })),
  })
  const [one, two, three] = [saying('one'), saying('two'), saying('three')]

  it('is told as loudly as is asked for this time', () => {
    const notebook = readNotebook(uneven)
    const severities = (said?: 'error' | 'info' | 'off') => checkNotebook(notebook, said && new Map([['legs-differ', said]])).map(({ severity }) => severity)
    assert.deepEqual([severities(), severities('error'), severities(), severities('info'), severities('off')], [['warning'], ['error'], ['warning'], ['info'], []])
  })

  it('is told by the rules that are asked this time, if only one of them is another', () => {
    const notebook = readNotebook(uneven)
    const codes = (...rules: EntryRule[]) => checkNotebook(notebook, new Map(), rules).map(({ code }) => code)
    assert.deepEqual([codes(one, two), codes(one, three), codes(two, one), codes(one), codes(one, two)], [['one', 'two'], ['one', 'three'], ['two', 'one'], ['one'], ['one', 'two']])
  })

  it('is not asked again for what the same rules told', () => {
    let asked = 0
    const counting: EntryRule = { ...one, checkEntry: () => (asked++, []) }
    const notebook = readNotebook(uneven)
    for (const rules of [[counting, two], [one], [counting, two]]) checkNotebook(notebook, new Map(), rules)
    assert.equal(asked, 1)
  })

  it('tells the shorter of two that begin alike first', () => {
    assert.deepEqual(checkNotebook(readNotebook(uneven), new Map(), [saying('long', [5, 2]), saying('short', [1])]).map(({ range }) => range.end - range.start), [1, 2, 5])
  })
})

describe('a finding about no entry', () => {
  it('has no place in the grid', () => {
    assert.ok(!('place' in findingsOf('format: 1\nmachine: {front: {travel: 0}}\n')[0]!))
  })
})
