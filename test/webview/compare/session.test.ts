import assert from 'node:assert/strict'
import { sideName, summaryOf } from '../../../webview/compare/model/describe'
import { readSavedState } from '../../../webview/compare/model/savedState'
import { openSession, pairOf, stateIn, tern, viewOf } from './views'

const rebound = 'settings/fork_rebound/right'

describe('an open comparison', () => {
  it('stands on the first row that differs', () => {
    assert.deepEqual(openSession(pairOf('as-found', 'run-1')).session.active, { line: rebound, column: 'label' })
  })

  it('stands where one stood when the page was hidden', () => {
    const saved = readSavedState({ active: { line: 'reason', column: 'right' }, scrollTop: 40 })
    assert.deepEqual(openSession(pairOf('as-found', 'run-1'), saved).session.active, { line: 'reason', column: 'right' })
  })

  it('opens the cell of the side one stands on, and the right one from label and change', () => {
    const { session, sent } = openSession(pairOf('as-found', 'run-1'))
    for (const column of ['left', 'right', 'label', 'change'] as const) {
      session.select({ line: rebound, column })
      assert.equal(session.do({ kind: 'open' }), true)
    }
    assert.deepEqual(sent.map((message) => (message.type === 'placeOpened' ? [message.side, message.place.column, message.place.row] : message)), [
      ['left', 'as-found', rebound], ['right', 'run-1', rebound], ['right', 'run-1', rebound], ['right', 'run-1', rebound],
    ])
  })

  it('opens the side that has a cell, and nothing where there is none', () => {
    const { session, sent } = openSession(pairOf('run-1', 'run-2'))
    const gone = session.lines.find(({ kind, left }) => kind === 'way' || left.place === undefined)!
    session.select({ line: gone.key, column: 'left' })
    assert.equal(session.do({ kind: 'open' }), false)
    assert.deepEqual(sent, [])
  })

  it('opens a finding about no cell at its line', () => {
    const { session, sent } = openSession(viewOf(stateIn(tern, 'run-1'), stateIn(tern.replace('format: 1', 'format: 1\nmashine: {}'), 'run-1', 'b.setup.yaml')))
    const finding = session.lines.find(({ kind, right }) => kind === 'finding' && right.text.includes('mashine'))!
    session.select({ line: finding.key, column: 'right' })
    session.do({ kind: 'open' })
    assert.deepEqual(sent, [{ type: 'lineOpened', side: 'right', line: 2 }])
  })

  it('hides what is alike, tells the host and whoever listens, and stays on its row', () => {
    const { session, sent, said } = openSession(pairOf('as-found', 'run-1'))
    const all = session.lines.length
    session.do({ kind: 'filter' })
    assert.ok(session.lines.length < all && session.hidden > 0)
    assert.deepEqual([sent, session.active], [[{ type: 'filterSet', onlyDifferences: true }], { line: rebound, column: 'label' }])
    assert.match(said[0]!, /^Only differences: \d+ rows$/)
    session.do({ kind: 'filter' })
    assert.deepEqual([session.lines.length, session.hidden], [all, 0])
  })

  it('takes the filter as the host keeps it', () => {
    const { session, show } = openSession({ ...pairOf('as-found', 'run-1'), onlyDifferences: true })
    assert.ok(session.lines.every(({ kind, different }) => kind === 'group' || different))
    show(pairOf('as-found', 'run-1'))
    assert.ok(session.lines.some(({ kind, different }) => kind !== 'group' && !different))
  })

  it('steps where there is a pair to step to, and says where there is none', () => {
    const { session, sent, said } = openSession(pairOf('as-found', 'run-1'))
    session.do({ kind: 'step', newer: true })
    session.do({ kind: 'step', newer: false })
    assert.deepEqual([sent, said], [[{ type: 'stepped', newer: true }], ['There is no older pair of entries']])
  })

  it('says which pair it is now and what differs, and what differs now when that has changed', () => {
    const { said, show } = openSession(pairOf('as-found', 'run-1'))
    show(pairOf('run-1', 'run-2'))
    assert.deepEqual(said, ['run-1 to run-2: 1 position differs'])
    show(pairOf('run-1', 'run-2'))
    assert.equal(said.length, 1)
    show(pairOf('run-1', 'run-2', tern.replace('{fork_preload: 6 in}', '{fork_preload: 6 in, shock_rebound: 8 out}')))
    assert.match(said[1]!, /^2 positions differ/)
  })

  it('keeps its row from pair to pair', () => {
    const { session, show } = openSession(pairOf('as-found', 'run-1'))
    session.select({ line: 'settings/shock_rebound', column: 'change' })
    show(pairOf('run-1', 'run-3'))
    assert.deepEqual(session.active, { line: 'settings/shock_rebound', column: 'change' })
  })

  it('asks for turns only where the host can list them', () => {
    const { session, sent } = openSession({ ...pairOf('as-found', 'run-1'), turnList: false })
    assert.equal(session.do({ kind: 'turns' }), false)
    assert.deepEqual(sent, [])
    assert.equal(openSession(pairOf('as-found', 'run-1')).session.do({ kind: 'turns' }), true)
  })

  it('does nothing yet while it has been told nothing', () => {
    const { session } = openSession(pairOf('as-found', 'run-1'))
    session.view = undefined
    session.lines = []
    for (const key of [{ kind: 'open' }, { kind: 'turns' }, { kind: 'step', newer: true }, { kind: 'move', move: { kind: 'first' } }] as const) assert.equal(session.do(key), false)
  })
})

describe('what the sides are called', () => {
  const name = (view: Parameters<typeof sideName>[0]) => [sideName(view, 'left'), sideName(view, 'right')]
  const run1 = stateIn(tern, 'run-1')
  it('is their entries, where these differ', () => {
    assert.deepEqual(name(pairOf('as-found', 'run-1')), ['as-found', 'run-1'])
  })
  it('is what tells them apart, where they are one entry', () => {
    assert.deepEqual(name(viewOf(run1, run1, { left: { revision: 'HEAD' } })), ['run-1 at HEAD', 'run-1'])
    assert.deepEqual(name(viewOf(run1, run1, { left: { saved: true }, right: { revision: '' } })), ['run-1 as saved', 'run-1 as staged'])
    assert.deepEqual(name(viewOf(run1, run1, { left: { revision: '0123456789'.repeat(4) } }))[0], 'run-1 at 0123456')
    assert.deepEqual(name(viewOf(stateIn(tern, 'run-1', 'a/one.setup.yaml'), stateIn(tern, 'run-1', 'a/two.setup.yaml'))), ['run-1 one.setup.yaml', 'run-1 two.setup.yaml'])
  })
  it('is the file, where a side cannot be read', () => {
    const view = viewOf(stateIn('a: [', undefined, 'bikes/x.setup.yaml'), run1)
    assert.equal(sideName(view, 'left'), 'x.setup.yaml')
    assert.equal(summaryOf(view), 'Only run-1 can be read; it is shown alone.')
    assert.equal(summaryOf(viewOf(stateIn('a: ['), stateIn(''))), 'Neither side can be read.')
  })
})

describe('what a page kept while it was hidden', () => {
  it('is read with care', () => {
    for (const odd of [undefined, null, 7, [], { active: 3 }, { active: { line: 4 } }, { scrollTop: 'far' }, { scrollTop: -1 }, { scrollTop: Infinity }]) {
      assert.deepEqual(readSavedState(odd), { scrollTop: 0 })
    }
    assert.deepEqual(readSavedState({ scrollTop: 12, active: { line: '__proto__', column: 'nowhere' } }), { scrollTop: 12, active: { line: '__proto__', column: 'label' } })
  })
})
