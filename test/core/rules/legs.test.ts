import assert from 'node:assert/strict'
import { codesOf, findingsOf, fixedBy, messagesOf } from './check'

const head = `format: 1
adjusters:
  pair: {on: fork, legs: [left, right], controls: rebound, counts: clicks}
  left_only: {on: fork, legs: [left], controls: compression, counts: clicks}
  right_only: {on: fork, legs: [right], controls: low_speed_compression, counts: clicks}
  shock: {on: shock, controls: rebound, counts: clicks}
entries:
`
const one = (settings: string) => `${head}  - {id: one, as_found: true, settings: {${settings}}}\n`

describe('unknown-leg', () => {
  const told = (settings: string) => messagesOf('unknown-leg', one(settings))[0]

  it('says which legs there are', () => {
    assert.match(told('pair: {lft: 4}')!, /has a left and a right leg, not ‘lft’$/)
    assert.match(told('left_only: {right: 4}')!, /is in the left leg only, not ‘right’$/)
    assert.match(told('right_only: {left: 4}')!, /is in the right leg only, not ‘left’$/)
    assert.match(told('shock: {left: 4}')!, /has no legs: write its position straight behind its name, not ‘left’$/)
  })

  it('offers the leg that was meant, unless that is set already', () => {
    assert.equal(fixedBy('unknown-leg', one('pair: {lft: 4}')), one('pair: {left: 4}'))
    assert.equal(fixedBy('unknown-leg', one('pair: {lft: 4, right: 5}')), one('pair: {left: 4, right: 5}'))
    assert.throws(() => fixedBy('unknown-leg', one('pair: {lft: 4, left: 5}')), /offers no fix/)
  })

  it('is silent where the definition’s own legs cannot be understood, and not where they are empty or a single one', () => {
    const count = (legs: string) => messagesOf('unknown-leg', one('pair: {lft: 4}').replace('[left, right]', legs)).length
    assert.deepEqual(['[left, up]', 'up', '{left: 1}', '[left, [right]]', '[]'].map(count), [0, 0, 0, 0, 0])
    assert.deepEqual(['left', '[left]'].map(count), [1, 1])
  })
})

describe('legs-differ', () => {
  const pairs = (...entries: string[]) => `${head}${entries.map((settings, at) => `  - {id: e${at}, as_found: true, settings: {${settings}}}\n`).join('')}`

  it('offers what either leg has for the other, and says which', () => {
    const text = one('pair: {left: 3, right: 6}')
    assert.deepEqual(findingsOf(text)[0]!.fixes!.map(({ title }) => title), ['Write ‘6’ for the left leg', 'Write ‘3’ for the right leg'])
    assert.deepEqual([0, 1].map((at) => fixedBy('legs-differ', text, at)), [text.replace('left: 3', 'left: 6'), text.replace('right: 6', 'right: 3')])
  })

  it('points at the leg that the entry sets', () => {
    const rows = (...entries: string[]) => findingsOf(pairs(...entries)).filter(({ code }) => code === 'legs-differ').map(({ place }) => place)
    assert.deepEqual(rows('pair: 3', 'pair: {left: 4}'), [{ entry: 'e1', row: 'settings/pair/left' }])
    assert.deepEqual(rows('pair: 3', 'pair: {right: 4}'), [{ entry: 'e1', row: 'settings/pair/right' }])
    assert.deepEqual(rows('pair: {left: 3, right: 4}', 'shock: 2'), [{ entry: 'e0', row: 'settings/pair/right' }])
  })

  it('says nothing of an entry that sets a leg to what cannot be read', () => {
    const codes = findingsOf(pairs('pair: {left: 3, right: 6}', 'pair: {right: four}')).map(({ code, place }) => `${code} ${place?.entry}`)
    assert.deepEqual(codes, ['legs-differ e0', 'unreadable-position e1'])
  })

  it('needs both legs, and both as a count', () => {
    for (const settings of ['pair: {left: 3}', 'pair: {right: 3}', 'pair: {left: 3, right: 2 turns}', 'pair: {left: 2 turns, right: 3}', 'left_only: 3', 'right_only: 4']) {
      assert.ok(!codesOf(one(settings)).includes('legs-differ'), settings)
    }
  })
})
