import assert from 'node:assert/strict'
import { eachWith } from './grid'

const newest = (row: string) => ({ row, column: 'run-8' })

describe('the grid by keyboard', () => {
  const grid = eachWith()
  afterEach(() => assert.deepEqual(grid().complaints, []))

  it('has the newest entry’s first setting as its current cell, told by aria-activedescendant', async () => {
    assert.equal(await grid().current(), '4 in, Preload left, run-8')
    assert.equal(await grid().page.getAttribute('[role=grid]', 'aria-activedescendant'), await grid().page.getAttribute('.is-active', 'id'))
    assert.equal(await grid().page.evaluate(() => document.activeElement?.getAttribute('role')), 'grid')
  })

  it('loses no character when typing replaces, commits by Enter and goes down', async () => {
    await grid().go(newest('fork_rebound.left'))
    await grid().type('12 out')
    await grid().press('Enter')
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'setCell', ...newest('fork_rebound.left'), text: '12 out' }])
    assert.match((await grid().current())!, /Rebound right, run-8$/)
  })

  it('walks down the newest entry by a number and Tab', async () => {
    await grid().go(newest('sag.front.extended'))
    for (const text of ['152', '128', '118']) {
      await grid().type(text)
      await grid().press('Tab')
    }
    const gestures = await grid().gesturesWhen(3)
    assert.deepEqual(gestures.map((gesture) => gesture.kind === 'setCell' && [gesture.row, gesture.text]), [['sag.front.extended', '152'], ['sag.front.bike', '128'], ['sag.front.rider', '118']])
  })

  it('edits what is there by F2 with the caret at the end, and moves the caret by arrows', async () => {
    await grid().go(newest('shock_rebound'))
    const before = await grid().page.evaluate(() => document.querySelector('.is-active')!.textContent!)
    await grid().press('F2', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'Backspace')
    await grid().type('7')
    await grid().press('Enter')
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'setCell', ...newest('shock_rebound'), text: `7${before.slice(1)}` }])
  })

  it('commits and moves by an arrow when the edit began by typing', async () => {
    await grid().go(newest('shock_rebound'))
    await grid().type('5')
    await grid().press('ArrowLeft')
    assert.equal((await grid().gesturesWhen(1)).length, 1)
    assert.match((await grid().current())!, /Rebound, run-7$/)
  })

  it('gives up by Escape and changes nothing', async () => {
    await grid().go(newest('shock_rebound'))
    await grid().type('99')
    await grid().press('Escape')
    await grid().settle()
    assert.deepEqual(await grid().gestures(), [])
    assert.equal(await grid().page.evaluate(() => document.activeElement?.getAttribute('role')), 'grid')
  })

  it('undoes within the input and keeps that from the editor', async () => {
    await grid().page.evaluate(() => window.addEventListener('keydown', ({ key, ctrlKey }) => { if (ctrlKey && key === 'z') document.title = 'leaked' }))
    await grid().go(newest('shock_rebound'))
    await grid().press('F2')
    await grid().type('xyz')
    await grid().press('Control+z')
    const text = await grid().page.inputValue('.editor')
    assert.ok(!text.endsWith('xyz'), text)
    assert.notEqual(await grid().page.title(), 'leaked')
  })

  it('lets undo, redo, save and the palette through to the editor while moving about', async () => {
    await grid().page.evaluate(() => {
      const seen: string[] = []
      Object.assign(window, { seen })
      window.addEventListener('keydown', (event) => {
        seen.push(event.defaultPrevented ? `${event.key}, swallowed` : event.key)
        event.preventDefault()
      })
    })
    await grid().press('Control+z', 'Control+y', 'Control+s', 'Control+Shift+P', 'F1')
    const seen = await grid().page.evaluate(() => (window as unknown as { seen: string[] }).seen)
    assert.deepEqual(seen, ['Control', 'z', 'Control', 'y', 'Control', 's', 'Control', 'Shift', 'P', 'F1'])
  })

  it('reaches header and labels, and edits a header’s name, date and reason in a form', async () => {
    await grid().go(newest('fork_preload.left'))
    await grid().press('ArrowUp')
    assert.equal(await grid().current(), 'run-8')
    await grid().press('Enter')
    await grid().settle()
    await grid().type('last-run')
    await grid().press('Tab')
    await grid().type('2026-05-01')
    await grid().press('Enter')
    assert.deepEqual(await grid().gesturesWhen(2), [
      { kind: 'setHeader', column: 'run-8', field: 'date', text: '2026-05-01' }, { kind: 'setHeader', column: 'run-8', field: 'id', text: 'last-run' },
    ])
    assert.equal(await grid().current(), 'last-run')
    await grid().press('ArrowDown', 'Control+ArrowLeft', 'ArrowLeft')
    assert.equal(await grid().current(), 'Preload left')
    assert.match((await grid().currentMore())!, /counted as turns in/)
  })

  it('clears the selected cells by Delete, as one gesture', async () => {
    await grid().go({ row: 'fork_preload.left', column: 'as-found' })
    await grid().press('Shift+ArrowDown', 'Shift+ArrowDown', 'Delete')
    const gestures = await grid().gesturesWhen(1)
    assert.deepEqual(gestures, [{ kind: 'clearCells', cells: ['fork_preload.left', 'fork_preload.right', 'fork_rebound.left'].map((row) => ({ row, column: 'as-found' })), partly: true }])
  })

  it('jumps to the ends of rows and of the grid', async () => {
    await grid().press('Control+Home')
    assert.match((await grid().current())!, /Preload left, as-found$/)
    await grid().press('End')
    assert.match((await grid().current())!, /Preload left, run-8$/)
    await grid().press('Control+End')
    assert.match((await grid().current())!, /Next, run-8$/)
    await grid().press('PageUp', 'Home')
    assert.match((await grid().current())!, /as-found$/)
  })

  it('leaves by Escape to the bar, and comes back by Shift+Tab or Tab', async () => {
    await grid().press('Escape')
    assert.equal(await grid().page.evaluate(() => document.activeElement?.closest('.actions') !== null), true)
  })

  it('is left by Tab after the last cell', async () => {
    await grid().press('Control+End', 'Tab')
    assert.notEqual(await grid().page.evaluate(() => document.activeElement?.getAttribute('role')), 'grid')
  })

  it('goes round the findings by F8 and says them', async () => {
    await grid().press('Control+Home', 'F8')
    assert.match((await grid().current())!, /Rebound right, as-found$/)
    assert.match((await grid().currentMore())!, /Warning: The legs differ/)
    await grid().press('Shift+F8')
    assert.match((await grid().current())!, /run-8$/)
  })

  it('chooses from a list, by arrows or by typing', async () => {
    await grid().go(newest('verdict'))
    await grid().press('Enter', 'ArrowDown', 'ArrowDown', 'Enter')
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'setCell', ...newest('verdict'), text: 'go back' }])
    await grid().go(newest('verdict'))
    await grid().type('k')
    await grid().press('Enter')
    assert.deepEqual((await grid().gesturesWhen(2))[1], { kind: 'setCell', ...newest('verdict'), text: 'keep' })
  })

  it('breaks lines in prose by Alt+Enter and commits by Enter', async () => {
    await grid().go(newest('note'))
    await grid().type('first')
    await grid().press('Alt+Enter')
    await grid().type('second')
    await grid().press('Enter')
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'setCell', ...newest('note'), text: 'first\nsecond' }])
  })

  it('writes a remark by Shift+F2', async () => {
    await grid().go(newest('shock_rebound'))
    await grid().press('Shift+F2')
    await grid().settle()
    await grid().type('detent feels worn')
    await grid().press('Control+Enter')
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'annotate', ...newest('shock_rebound'), text: 'detent feels worn' }])
    await grid().settle()
    assert.match((await grid().currentMore())!, /Remark: detent feels worn/)
  })
})
