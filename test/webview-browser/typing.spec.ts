import assert from 'node:assert/strict'
import { eachWith } from './grid'

const place = { row: 'shock_rebound', column: 'run-8' }

describe('what is typed', () => {
  const grid = eachWith()
  afterEach(() => assert.deepEqual(grid().complaints, []))

  it('shows as being written until the host has answered', async () => {
    await grid().page.evaluate(() => { host.delay = 400 })
    await grid().go(place)
    await grid().type('4 out')
    await grid().press('Enter')
    assert.equal(await grid().page.textContent('.is-waiting'), '4 out')
    await grid().page.waitForSelector('.is-waiting', { state: 'detached' })
    await grid().go(place)
    assert.match((await grid().current())!, /^4 out/)
  })

  it('stays with the reason when it is refused, and is offered again', async () => {
    await grid().go(place)
    await grid().type('bad luck')
    await grid().press('Enter')
    await grid().settle()
    await grid().go(place)
    assert.match((await grid().page.textContent('.refusal'))!, /is not a position/)
    assert.match((await grid().currentMore())!, /Not written/)
    await grid().press('Enter')
    assert.equal(await grid().page.inputValue('.editor'), 'bad luck')
    await grid().press('Escape')
    await grid().settle()
    assert.equal(await grid().page.locator('.refusal').count(), 0)
  })

  it('is kept and told of when nobody answers, and comes through when somebody does', async () => {
    await grid().page.evaluate(() => { host.silent = true })
    await grid().go(place)
    await grid().type('4 out')
    await grid().press('Enter')
    await grid().page.waitForSelector('.banner', { timeout: 4000 })
    assert.match((await grid().page.textContent('.banner'))!, /Not connected\..*4 out/)
    const { id } = (await grid().page.evaluate(() => host.received.find((message) => message.type === 'gesture'))) as { id: number }
    await grid().tell({ type: 'gestureAnswered', id })
    await grid().page.waitForSelector('.banner', { state: 'detached' })
  })

  it('is sent before a save, with the cell left open', async () => {
    await grid().go(place)
    await grid().type('4')
    await grid().tell({ type: 'pendingAsked', id: 3 })
    await grid().settle()
    const order = await grid().page.evaluate(() => host.received.slice(-2).map(({ type }) => type))
    assert.deepEqual(order, ['gesture', 'pendingSent'])
    assert.equal(await grid().page.inputValue('.editor'), '4')
  })

  it('in a header’s form is sent before a save as well', async () => {
    await grid().go({ row: 'fork_preload.left', column: 'run-8' })
    await grid().press('ArrowUp', 'F2')
    await grid().settle()
    await grid().type('renamed')
    await grid().tell({ type: 'pendingAsked', id: 3 })
    await grid().settle()
    const order = await grid().page.evaluate(() => host.received.slice(-2).map(({ type }) => type))
    assert.deepEqual(order, ['gesture', 'pendingSent'])
  })

  it('is committed when the focus goes elsewhere', async () => {
    await grid().go(place)
    await grid().type('4')
    await grid().page.getByRole('button', { name: 'Findings' }).focus()
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'setCell', ...place, text: '4' }])
  })

  it('survives a new view that comes in between, and the page being closed and opened again', async () => {
    await grid().go(place)
    await grid().type('4 o')
    await grid().show(await grid().page.evaluate(() => sampleView(9)))
    assert.equal(await grid().page.inputValue('.editor'), '4 o')
    await grid().page.waitForTimeout(150)
    await grid().page.evaluate(() => { host.silent = true })
    await grid().page.reload()
    await grid().page.waitForSelector('.editor, .refusal')
    const kept = await grid().page.evaluate(() => document.querySelector<HTMLInputElement>('.editor')?.value ?? document.querySelector('.is-active')!.textContent)
    assert.equal(kept, '4 o')
  })

  it('into a form survives the page being closed and opened again', async () => {
    await grid().go(place)
    await grid().page.getByRole('button', { name: 'Add entry' }).click()
    await grid().settle()
    await grid().press('Tab', 'Tab')
    await grid().type('left leg is harsh')
    await grid().page.waitForTimeout(150)
    await grid().page.reload()
    const reason = grid().page.getByRole('textbox', { name: 'Reason' })
    await reason.waitFor()
    assert.equal(await reason.inputValue(), 'left leg is harsh')
    await grid().press('Enter')
    const [gesture] = await grid().gesturesWhen(1)
    assert.ok(gesture?.kind === 'addEntry' && gesture.reason === 'left leg is harsh')
  })

  it('into a form is not pushed away by another', async () => {
    await grid().go(place)
    await grid().page.getByRole('button', { name: 'Add entry' }).click()
    await grid().settle()
    await grid().press('Tab', 'Tab')
    await grid().type('left leg is harsh')
    await grid().tell({ type: 'commandGiven', command: 'showCard' })
    await grid().settle()
    assert.equal(await grid().page.getByRole('textbox', { name: 'Reason' }).inputValue(), 'left leg is harsh')
  })

  it('is told above the grid when its entry is gone, and let go of there', async () => {
    await grid().go(place)
    await grid().type('4 o')
    await grid().show(await grid().page.evaluate(() => sampleView(3)))
    assert.match((await grid().page.textContent('.banner'))!, /no cell any more.*run-8, shock_rebound: 4 o/)
    await grid().page.getByRole('button', { name: 'Discard' }).click()
    await grid().page.waitForSelector('.banner', { state: 'detached' })
  })

  it('and refused, in a group that is folded, is told above the grid, and shown from there', async () => {
    await grid().go(place)
    await grid().type('bad luck')
    await grid().press('Enter')
    await grid().settle()
    await grid().tell({ type: 'commandGiven', command: 'toggleGroup' })
    await grid().page.getByRole('button', { name: 'Show', exact: true }).click()
    await grid().settle()
    assert.match((await grid().page.textContent('.refusal'))!, /is not a position/)
    assert.equal(await grid().page.locator('.banner').count(), 0)
  })

  it('and left behind by a page that is there no more is offered by the next one', async () => {
    await grid().go(place)
    await grid().type('4 o')
    await grid().page.waitForTimeout(150)
    await grid().reopen({ remember: true })
    assert.equal(await grid().page.inputValue('.editor'), '4 o')
    await grid().press('Enter')
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'setCell', ...place, text: '4 o' }])
  })

  it('is text, never HTML', async () => {
    const markup = '<img src=x onerror="document.title=1">&amp;'
    const view = await grid().page.evaluate(() => sampleView(3))
    view.title = markup
    view.columns[2]!.id = markup
    view.rows[1]!.label = markup
    view.cells[1]![2] = { state: 'set', text: markup, remark: markup, about: markup, findings: [1], worst: 'error' }
    view.findings[0]!.message = markup
    await grid().show(view)
    await grid().go({ row: view.rows[1]!.key, column: view.columns[2]!.key })
    assert.equal(await grid().page.locator('img').count(), 0)
    assert.equal(await grid().page.textContent('.is-active'), markup)
    assert.equal(await grid().page.textContent('h1'), markup)
  })

  it('is copied and pasted as tab-separated text, as one gesture', async () => {
    await grid().go({ row: 'fork_rebound.left', column: 'run-7' })
    await grid().press('Shift+ArrowDown', 'Shift+ArrowRight')
    const copied = await grid().page.evaluate(() => {
      const data = new DataTransfer()
      document.activeElement!.dispatchEvent(new ClipboardEvent('copy', { clipboardData: data, bubbles: true, cancelable: true }))
      return data.getData('text/plain')
    })
    assert.match(copied, /^[^\t\n]+\t[^\t\n]+\n[^\t\n]+\t[^\t\n]+$/)
    await grid().go({ row: 'shock_rebound', column: 'run-2' })
    await grid().page.evaluate((text) => {
      const data = new DataTransfer()
      data.setData('text/plain', text)
      document.activeElement!.dispatchEvent(new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true }))
    }, copied)
    const [gesture] = await grid().gesturesWhen(1)
    assert.ok(gesture?.kind === 'setCells')
    assert.deepEqual(gesture.cells.map(({ row, column }) => `${row} ${column}`), ['shock_rebound run-2', 'shock_rebound run-3', 'shock_low run-2', 'shock_low run-3'])
    assert.deepEqual(gesture.cells.map(({ text }) => text), copied.split(/[\t\n]/))
  })
})
