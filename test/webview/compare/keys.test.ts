import assert from 'node:assert/strict'
import { readPageKey, readTableKey } from '../../../webview/compare/model/keys'

const press = (key: string, held = '') => ({ key, ctrlKey: held.includes('c'), metaKey: held.includes('m'), altKey: held.includes('a') })

describe('the keys of a comparison', () => {
  it('step through the history by brackets, however a keyboard types them', () => {
    assert.deepEqual(readPageKey(press('[')), { kind: 'step', newer: false })
    assert.deepEqual(readPageKey(press(']', 'ca')), { kind: 'step', newer: true })
    assert.deepEqual(readPageKey(press(']', 'a')), { kind: 'step', newer: true })
    assert.equal(readPageKey(press('[', 'c')), undefined)
    assert.equal(readPageKey(press('[', 'm')), undefined)
  })
  it('swap, filter, choose and list the turns by a letter, also with caps lock', () => {
    assert.deepEqual(['s', 'D', 't', 'l', 'r'].map((key) => readPageKey(press(key))?.kind), ['swap', 'filter', 'turns', 'choose', 'choose'])
    assert.deepEqual(readPageKey(press('R')), { kind: 'choose', side: 'right' })
  })
  it('leave the editor its own', () => {
    for (const held of ['c', 'm', 'a', 'ca']) assert.equal(readPageKey(press('s', held)), undefined)
    for (const key of ['x', 'F8', 'Tab', 'Escape', 'constructor']) assert.deepEqual([readPageKey(press(key)), readTableKey(press(key))], [undefined, undefined])
    assert.equal(readTableKey(press('ArrowLeft', 'a')), undefined)
    assert.equal(readTableKey(press('Enter', 'c')), undefined)
    assert.equal(readTableKey(press('PageDown', 'c')), undefined)
  })
  it('move about as in every table', () => {
    assert.deepEqual(readTableKey(press('ArrowDown')), { kind: 'move', move: { kind: 'step', lines: 1, columns: 0 } })
    assert.deepEqual(readTableKey(press('ArrowLeft', 'c')), { kind: 'move', move: { kind: 'lineStart' } })
    assert.deepEqual(readTableKey(press('ArrowDown', 'm')), { kind: 'move', move: { kind: 'last' } })
    assert.deepEqual(readTableKey(press('Home')), { kind: 'move', move: { kind: 'lineStart' } })
    assert.deepEqual(readTableKey(press('End', 'c')), { kind: 'move', move: { kind: 'last' } })
    assert.deepEqual(readTableKey(press('PageUp')), { kind: 'move', move: { kind: 'page', down: false } })
    assert.deepEqual(readTableKey(press('Enter')), { kind: 'open' })
  })
})
