import assert from 'node:assert/strict'
import { readEditKey, readMoveKey, type KeyPress } from '../../../webview/grid/model/keys'

function pressed(keys: string): KeyPress {
  const parts = keys.split('+')
  const has = (name: string) => parts.includes(name)
  return { key: parts.at(-1)!, ctrlKey: has('Ctrl'), metaKey: has('Meta'), shiftKey: has('Shift'), altKey: has('Alt'), altGraph: has('AltGr') }
}
const moveKind = (keys: string) => readMoveKey(pressed(keys))?.kind
const editKey = (keys: string, how: 'replace' | 'edit') => readEditKey(pressed(keys), how)

describe('keys while moving about', () => {
  it('leaves what belongs to the editor to the editor', () => {
    for (const keys of ['Ctrl+z', 'Ctrl+y', 'Ctrl+s', 'Ctrl+c', 'Ctrl+v', 'Ctrl+a', 'Meta+z', 'Meta+s', 'Ctrl+Shift+p', 'F1', 'F5', 'Alt+a', 'Ctrl+Enter', 'Ctrl+Tab', 'Ctrl+PageUp', 'Ctrl+F2', 'Control', 'Shift', 'CapsLock', 'Alt+ArrowLeft', 'Alt+ArrowDown', 'Shift+ ']) {
      assert.equal(moveKind(keys), undefined, keys)
    }
  })
  it('takes a character as the start of an edit, also one typed with AltGr or a dead key', () => {
    for (const keys of ['3', 'x', 'Shift+X', 'é', '½', 'Dead', 'Process', 'Ctrl+Alt+AltGr+@']) assert.equal(moveKind(keys), 'type', keys)
  })
  it('edits by Enter with all selected, by F2 with the caret at the end', () => {
    assert.deepEqual(readMoveKey(pressed('Enter')), { kind: 'edit', caret: 'all' })
    assert.deepEqual(readMoveKey(pressed('F2')), { kind: 'edit', caret: 'end' })
  })
  it('steps by arrows, jumps with Ctrl and draws a range with Shift', () => {
    assert.deepEqual(readMoveKey(pressed('ArrowDown')), { kind: 'step', rows: 1, columns: 0, extend: false })
    assert.deepEqual(readMoveKey(pressed('Ctrl+Shift+ArrowLeft')), { kind: 'edge', rows: 0, columns: -1, extend: true })
  })
  it('knows the ends of the row and of the grid', () => {
    assert.deepEqual(['Home', 'End', 'Ctrl+Home', 'Ctrl+End'].map(moveKind), ['rowStart', 'rowEnd', 'first', 'last'])
  })
  it('clears by Delete and Backspace, leaves by Escape, goes to findings by F8', () => {
    assert.deepEqual(['Delete', 'Backspace', 'Escape', 'F8', 'Shift+F8', 'Shift+F2'].map(moveKind), ['clear', 'clear', 'leave', 'finding', 'finding', 'remark'])
  })
})

describe('keys while editing', () => {
  it('commits by Enter down, Shift+Enter up, Tab right and Shift+Tab left', () => {
    const ways = ['Enter', 'Shift+Enter', 'Tab', 'Shift+Tab'].map((keys) => editKey(keys, 'edit'))
    assert.deepEqual(ways, ['down', 'up', 'right', 'left'].map((go) => ({ kind: 'commit', go })))
  })
  it('moves the caret by arrows, or commits and moves when the edit began by typing', () => {
    assert.equal(editKey('ArrowLeft', 'edit'), undefined)
    assert.deepEqual(editKey('ArrowLeft', 'replace'), { kind: 'commit', go: 'left' })
    assert.equal(editKey('Shift+ArrowLeft', 'replace'), undefined)
  })
  it('breaks the line by Alt+Enter and gives up by Escape', () => {
    assert.deepEqual(editKey('Alt+Enter', 'edit'), { kind: 'newLine' })
    assert.deepEqual(editKey('Escape', 'replace'), { kind: 'cancel' })
  })
  it('writes to all that is selected by Ctrl+Enter', () => {
    assert.deepEqual(['Ctrl+Enter', 'Meta+Enter'].map((keys) => editKey(keys, 'edit')), [{ kind: 'commitAll' }, { kind: 'commitAll' }])
  })
  it('leaves undo, save and the clipboard alone', () => {
    for (const keys of ['Ctrl+z', 'Ctrl+s', 'Ctrl+v', 'Ctrl+d', 'Alt+ArrowUp', 'Home', 'a']) assert.equal(editKey(keys, 'replace'), undefined, keys)
  })
})
