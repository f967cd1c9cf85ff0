import assert from 'node:assert/strict'
import fc from 'fast-check'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { readQuery } from '../../../src/core/search/readQuery'
import { searchInSteps, searchNotebooks } from '../../../src/core/search/searchNotebooks'

const tern = readNotebook(`format: 1
machine: {name: Tern 650}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  shock_rebound: {on: shock, controls: rebound, counts: clicks}
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 12}
entries:
  - {id: as-found, date: 2026-03-28, as_found: true, settings: {fork_rebound: {left: 3 out, right: 6 out}, shock_rebound: 7 out, fork_preload: 2 in}}
  - {id: run-1, date: 2026-03-28, settings: {fork_rebound: 12 out}, reason: Harsh over the café’s kerb, ride: {felt: gone}}
  - {id: run-2, date: 2026-03-29, settings: {fork_rebound: 8 out}, reason: it wallows, ride: {felt: 'harsh again, but steady'}, verdict: keep, remarks: {fork_rebound: counted twice}}
  - {id: run-3, settings: {shock_rebound: 14 out}, notes: nothing to say}
  - {id: run-4, date: 2026-04-02, settings: {fork_rebound: 12 out, fork_preload: 10 in}, reason: soft once more}
`)
const heron = readNotebook(`format: 1
machine: {name: Heron 980}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: turns}
entries:
  - {id: one, date: 2026-03-30, settings: {fork_rebound: 1 1/2 out}, reason: harsh}
  - {id: two, date: 2026-03-31, reason: a second look}
`)
const all = [{ source: 'tern', notebook: tern }, { source: 'heron', notebook: heron }]
const look = (typed: string, sources = all) => searchNotebooks(sources, typed)
const keys = (typed: string, sources = all) => look(typed, sources).matches.map(({ entry }) => entry.key)

describe('the search over notebooks', () => {
  it('finds every word, in whatever field and case it stands, the newest entry first', () => {
    assert.deepEqual(keys('harsh'), ['one', 'run-2', 'run-1'])
    assert.deepEqual(keys('HARSH steady'), ['run-2'])
    assert.deepEqual(keys('harsh elsewhere'), [])
  })

  it('goes a notebook at a time where it is asked to, to the same end', () => {
    const steps = [...searchInSteps(all, 'harsh')]
    assert.equal(steps.length, 2)
    const end = searchInSteps(all, 'harsh')
    for (let left = steps.length; left > 0; left--) assert.equal(end.next().done, false)
    assert.deepEqual(end.next(), { done: true, value: look('harsh') })
  })

  it('takes no notice of accents and of the shape of apostrophes', () => {
    assert.deepEqual(keys("cafe's"), ['run-1'])
    assert.deepEqual(keys('café’s'), ['run-1'])
  })

  it('looks at ids, dates, verdicts, remarks, notes and the machine’s name', () => {
    assert.deepEqual([keys('run-3'), keys('2026-03-29'), keys('keep'), keys('counted twice'), keys('nothing to say')], [['run-3'], ['run-2'], ['run-2'], ['run-2'], ['run-3']])
    assert.deepEqual(keys('heron harsh'), ['one'])
    assert.deepEqual(keys('heron'), ['two', 'one'])
  })

  it('says in which words it was found', () => {
    assert.deepEqual(look('harsh').matches.map(({ found }) => found.map(({ label }) => label)), [['Reason'], ['Feel'], ['Reason']])
  })

  it('finds the positions asked for, in the adjuster’s own count, and says where they were set', () => {
    const { matches } = look('fork_rebound >= 12 out', [all[0]!])
    assert.deepEqual(matches.map(({ entry, stands }) => [entry.key, stands]), [['run-4', ['Fork rebound 12 clicks out']], ['run-1', ['Fork rebound 12 clicks out']]])
    assert.deepEqual(keys('shock rebound = 14', [all[0]!]), ['run-4', 'run-3'])
    assert.deepEqual(look('shock_rebound > 7 out', [all[0]!]).matches[0]!.stands, ['Shock rebound 14 clicks out (since run-3)'])
  })

  it('names the leg where the two stand differently', () => {
    assert.deepEqual(look('fork_rebound < 4 out', [all[0]!]).matches.map(({ stands }) => stands), [['Fork rebound left 3 clicks out']])
  })

  it('turns a comparison round that is counted from the other end', () => {
    assert.deepEqual(keys('fork_rebound >= 12 out', [all[0]!]), keys('fork_rebound <= 8 in', [all[0]!]))
    assert.deepEqual(keys('fork_rebound < 8 in', [all[0]!]), [])
  })

  it('answers when it last stood furthest one way, by each notebook’s own record', () => {
    assert.deepEqual(keys('softest fork_rebound'), ['run-4', 'two', 'one', 'run-1'])
    assert.deepEqual(keys('most fork_rebound', [all[0]!]), ['as-found'])
    assert.deepEqual(keys('least fork_preload', [all[0]!]), ['run-3', 'run-2', 'run-1', 'as-found'])
  })

  it('does not say of preload which way is softer', () => {
    const { matches, problems } = look('softest fork_preload', [all[0]!])
    assert.deepEqual([matches.length, problems], [0, ['‘softest’ says nothing clear of Fork preload: look for `least fork_preload` or `most fork_preload`']])
  })

  it('takes parts together', () => {
    assert.deepEqual(keys('soft and fork_rebound >= 12 out, fork_preload > 5 in'), ['run-4'])
    assert.deepEqual(keys('harsh and fork_rebound ≥ 12 out', [all[0]!]), ['run-1'])
  })

  it('says what of a question it cannot answer, and offers the name that was meant', () => {
    assert.deepEqual(look('fork_rebond > 3').problems, ['No notebook here has an adjuster ‘fork_rebond’; did you mean ‘fork_rebound’?'])
    assert.match(look('shock_rebound > 3 in', [all[0]!]).problems[0]!, /needs range/)
    assert.match(look('fork_rebound > soft', [all[0]!]).problems[0]!, /is no position/)
  })

  it('is silent about what one machine cannot answer as long as another can', () => {
    const { matches, problems } = look('fork_rebound >= 12 clicks out')
    assert.deepEqual([matches.map(({ entry }) => entry.key), problems], [['run-4', 'run-1'], []])
  })

  it('gives all there is, newest first, as long as nothing is asked', () => {
    for (const nothing of ['', '   ', ' , ']) assert.deepEqual(keys(nothing), ['run-4', 'two', 'one', 'run-3', 'run-2', 'run-1', 'as-found'])
  })

  it('never throws, whatever is typed and whatever is looked through', () => {
    const odd = ['', '{', 'entries: [3, {id: [], remarks: 3, ride: {felt: {}}}]', 'entries: [{remarks: {__proto__: x, 3: y}}]'].map((text) => ({ source: text, notebook: readNotebook(text) }))
    const bits = fc.constantFrom('fork_rebound', 'softest', 'most', '>=', '<', '=', '3 out', ' and ', ', ', '(', '\\', '__proto__', 'x')
    fc.assert(fc.property(fc.oneof(fc.string(), fc.array(bits).map((each) => each.join(' '))), (typed) => {
      const { matches } = look(typed, [...all, ...odd])
      assert.ok(matches.every(({ day }, at) => at === 0 || day.slice(0, 10) <= matches[at - 1]!.day.slice(0, 10)), 'newest first')
    }), { numRuns: 60 })
  })

  it('finds every entry by each of the words in its own reason', () => {
    for (const { notebook } of all) {
      for (const entry of notebook.entries) for (const word of entry.reason?.value.split(' ') ?? []) assert.ok(keys(word.replace(',', '')).includes(entry.key), word)
    }
  })
})

describe('a search as it is typed', () => {
  it('is words unless it compares or asks for an extreme', () => {
    assert.deepEqual(readQuery('Too soft'), { words: ['too', 'soft'], comparisons: [], extremes: [] })
    assert.deepEqual(readQuery('fork rebound>=3 out'), { words: [], comparisons: [{ adjuster: 'fork rebound', sign: '>=', position: '3 out' }], extremes: [] })
    assert.deepEqual(readQuery('softest Fork rebound'), { words: [], comparisons: [], extremes: [{ word: 'softest', adjuster: 'Fork rebound' }] })
  })
  it('takes half a comparison, as it is while one types, for words', () => {
    assert.deepEqual(readQuery('fork_rebound >=').comparisons, [])
    assert.deepEqual(readQuery('softest').words, ['softest'])
  })
})
