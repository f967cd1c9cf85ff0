import assert from 'node:assert/strict'
import { eachWith } from './grid'

describe('rows that are pinned', () => {
  const grid = eachWith({ entries: 60, height: 480 })
  const pinRow = async (...rows: string[]) => {
    for (const row of rows) {
      await grid().go({ row, column: 'run-50' })
      await grid().tell({ type: 'commandGiven', command: 'pinRow' })
      await grid().settle()
    }
  }
  const boxOf = async (selector: string) => (await grid().page.locator(selector).first().boundingBox({ timeout: 2000 }))!
  const current = () => boxOf('.is-active')

  it('stay below the header however far one scrolls, and the current cell is never behind them', async () => {
    await pinRow('felt', 'shock_rebound')
    const header = await boxOf('.header-row')
    for (const key of ['Control+End', 'Control+Home', 'ArrowDown', 'PageDown', 'PageDown', 'ArrowUp', 'PageUp']) {
      await grid().press(key)
      await grid().settle()
      const labels = await grid().page.locator('.frozen .label-name').allInnerTexts()
      assert.deepEqual(labels, ['Rebound', 'Felt'], key)
      const frozen = await boxOf('.frozen')
      assert.ok(Math.abs(frozen.y - header.y - header.height) < 2, key)
      const { y, x, height, width } = await current()
      const isSeen = await grid().page.evaluate(([left, top]) => document.elementFromPoint(left!, top!)?.closest('.is-active') !== null, [x + width / 2, y + height / 2])
      assert.equal(isSeen, true, key)
    }
  })

  it('are walked through, written to, pressed and edited where they are seen', async () => {
    await pinRow('shock_rebound')
    await grid().go({ row: 'verdict', column: 'run-50' })
    const frozen = await boxOf('.frozen')
    await grid().page.mouse.click(700, frozen.y + 10)
    assert.match((await grid().current())!, /Rebound, run-/)
    await grid().press('F2')
    const editor = await boxOf('.editor')
    assert.ok(Math.abs(editor.y - frozen.y) < 3)
    await grid().press('Escape', 'Control+Home')
    assert.match((await grid().current())!, /Rebound, as-found/)
    await grid().type('2 out')
    await grid().press('Enter')
    const [gesture] = await grid().gesturesWhen(1)
    assert.deepEqual(gesture, { kind: 'setCell', row: 'shock_rebound', column: 'as-found', text: '2 out' })
  })

  it('and entries at once keep their corner, and are read in the order they are seen', async () => {
    await pinRow('shock_rebound')
    await grid().go({ row: 'verdict', column: 'run-7' })
    await grid().tell({ type: 'commandGiven', command: 'pinEntry' })
    await grid().go({ row: 'verdict', column: 'run-9' })
    await grid().tell({ type: 'commandGiven', command: 'pinEntry' })
    await grid().press('Control+End')
    await grid().settle()
    const [label, pins] = [await boxOf('.frozen .label'), await grid().page.locator('.frozen .cell.is-pinned').all()]
    assert.equal(pins.length, 2)
    let right = label.x + label.width
    for (const pin of pins) {
      const box = (await pin.boundingBox())!
      assert.ok(Math.abs(box.x - right) < 2 && Math.abs(box.y - label.y) < 2, `${box.x} ${box.y}`)
      right = box.x + box.width
    }
    const read = await grid().page.evaluate(() => {
      const rows = document.querySelector('.grid')!.getAttribute('aria-owns')!.split(' ').map((id) => document.getElementById(id)!)
      const columns = rows[1]!.getAttribute('aria-owns')!.split(' ').map((id) => document.getElementById(id)!.getAttribute('aria-colindex'))
      return { rows: rows.slice(0, 2).map((row) => row.getAttribute('aria-rowindex')), columns: columns.slice(0, 3) }
    })
    assert.deepEqual(read, { rows: ['1', '2'], columns: ['1', '2', '3'] })
  })

  it('leave room for others: what is more than that scrolls', async () => {
    await grid().tell({ type: 'commandGiven', command: 'selectAll' })
    await grid().tell({ type: 'commandGiven', command: 'pinRow' })
    await grid().tell({ type: 'commandGiven', command: 'pinEntry' })
    await grid().settle()
    const [frozen, scroller] = [await boxOf('.frozen'), await boxOf('.scroller')]
    assert.ok(frozen.height > 50 && frozen.height < scroller.height * 0.6)
    await grid().press('Control+End')
    await grid().settle()
    const { x, y, height } = await current()
    assert.equal(await grid().page.evaluate(([left, top]) => document.elementFromPoint(left!, top!)?.closest('.is-active') !== null, [x + 20, y + height / 2]), true)
  })
})
