import assert from 'node:assert/strict'
import { eachWith } from './grid'

describe('an entry that is pinned', () => {
  const grid = eachWith({ entries: 60 })
  const boxOf = (text: string) => grid().page.locator('.header-cell', { has: grid().page.locator('.header-id').getByText(text, { exact: true }) }).boundingBox({ timeout: 2000 })
  const pin = async (column: string) => {
    await grid().go({ row: 'shock_rebound', column })
    await grid().tell({ type: 'commandGiven', command: 'pinEntry' })
    await grid().settle()
  }

  it('stays beside the labels however far one scrolls, with its cells, and the current cell is never behind it', async () => {
    await pin('run-7')
    const labels = (await grid().page.locator('.labels').boundingBox())!
    for (const key of ['End', 'Home', 'ArrowRight', 'End', 'ArrowLeft', 'Home']) {
      await grid().press(key)
      await grid().settle()
      const pinned = (await boxOf('run-7'))!
      assert.ok(Math.abs(pinned.x - labels.x - labels.width) < 2, key)
      const current = (await grid().page.locator('.is-active').boundingBox())!
      assert.ok(current.x >= pinned.x + pinned.width - 2 || Math.abs(current.x - pinned.x) < 2, `${key}: ${current.x}`)
      assert.equal(await grid().page.evaluate(([x, y]) => document.elementFromPoint(x!, y!)?.closest('.cell')?.classList.contains('is-pinned'), [pinned.x + 20, current.y + 8]), true, key)
    }
  })

  it('is walked into, written to and read out as the others are', async () => {
    await pin('run-7')
    await grid().press('End', 'Home')
    assert.match((await grid().current())!, /Rebound, run-7/)
    await grid().type('4 out')
    await grid().press('Enter')
    const [gesture] = await grid().gesturesWhen(1)
    assert.deepEqual(gesture, { kind: 'setCell', row: 'shock_rebound', column: 'run-7', text: '4 out' })
    assert.equal(await grid().page.locator('[role=row]').nth(3).locator('[aria-colindex="2"]').count() <= 1, true)
    const active = await grid().page.getAttribute('.grid', 'aria-activedescendant')
    assert.equal(await grid().page.evaluate((id) => document.getElementById(id!)!.classList.contains('is-pinned'), active), true)
  })

  it('is pressed and opened where it is seen, also when scrolled far', async () => {
    await pin('run-7')
    await grid().press('End')
    await grid().settle()
    const pinned = (await boxOf('run-7'))!
    await grid().page.mouse.click(pinned.x + 30, pinned.y + pinned.height + 60)
    assert.match((await grid().current())!, /run-7/)
    await grid().press('F2')
    const editor = (await grid().page.locator('.editor').boundingBox())!
    assert.ok(Math.abs(editor.x - pinned.x) < 2)
  })
})

describe('whole rows and entries by the pointer', () => {
  const grid = eachWith()
  const selected = () => grid().page.evaluate(() => new Set([...document.querySelectorAll('.cell.is-selected')].map((cell) => cell.getAttribute('aria-colindex'))).size)
  const header = async (text: string) => (await grid().page.locator('.header-cell', { hasText: text }).boundingBox())!

  it('are selected by Ctrl on a header, by Shift up to another, and by drawing over headers', async () => {
    await grid().page.locator('.header-cell', { hasText: 'run-4' }).click({ modifiers: ['Control'] })
    assert.equal(await selected(), 1)
    await grid().page.locator('.header-cell', { hasText: 'run-6' }).click({ modifiers: ['Shift'] })
    assert.equal(await selected(), 3)
    const [from, to] = [await header('run-5'), await header('run-6')]
    await grid().page.mouse.move(from.x + 40, from.y + 20)
    await grid().page.mouse.down()
    await grid().page.mouse.move(to.x + 40, to.y + 20, { steps: 4 })
    await grid().page.mouse.up()
    assert.equal(await selected(), 2)
    await grid().press('Delete')
    const [gesture] = await grid().gesturesWhen(1)
    assert.equal(gesture!.kind, 'clearCells')
  })

  it('are selected row by row on the labels', async () => {
    await grid().page.locator('.label', { hasText: 'Ride height' }).click({ modifiers: ['Control'] })
    const rows = () => grid().page.evaluate(() => new Set([...document.querySelectorAll('.cell.is-selected')].map((cell) => cell.parentElement!.getAttribute('aria-rowindex'))).size)
    assert.equal(await rows(), 1)
    await grid().page.locator('.label', { hasText: 'Tyre, rear' }).click({ modifiers: ['Shift'] })
    assert.equal(await rows(), 3)
  })
})
