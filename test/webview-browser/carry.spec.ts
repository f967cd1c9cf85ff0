import assert from 'node:assert/strict'
import { eachWith } from './grid'

describe('an entry carried by the pointer', () => {
  const grid = eachWith({ entries: 30 })
  const header = async (id: string) => (await grid().page.locator('.header-cell', { has: grid().page.getByText(id, { exact: true }) }).boundingBox({ timeout: 2000 }))!
  const carry = async (from: { x: number; y: number }, to: { x: number; y: number }) => {
    await grid().page.mouse.move(from.x, from.y)
    await grid().page.mouse.down()
    await grid().page.mouse.move(to.x, to.y, { steps: 5 })
  }
  const selected = () => grid().page.locator('.cell.is-selected').count()

  it('shows where it would come and goes there, with its selected header', async () => {
    const [from, to] = [await header('run-28'), await header('run-25')]
    await grid().page.mouse.click(from.x + 60, from.y + 30)
    await carry({ x: from.x + 60, y: from.y + 30 }, { x: to.x + 20, y: to.y + 30 })
    const line = (await grid().page.locator('.landing').boundingBox())!
    assert.ok(Math.abs(line.x - to.x) < 4, `${line.x}`)
    assert.equal(await grid().page.locator('.carried').innerText(), 'run-28')
    await grid().page.mouse.up()
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'moveEntry', column: 'run-28', by: -3 }])
    assert.equal(await grid().page.locator('.landing, .carried').count(), 0)
  })

  it('stays on Escape, and where it stands already', async () => {
    const [from, to] = [await header('run-28'), await header('run-25')]
    await carry({ x: from.x + from.width / 2, y: from.y + 5 }, { x: to.x + 20, y: to.y + 30 })
    await grid().press('Escape')
    assert.equal(await grid().page.locator('.landing, .carried').count(), 0)
    await grid().page.mouse.up()
    await carry({ x: from.x + from.width / 2, y: from.y + 5 }, { x: from.x + from.width + 20, y: to.y + 30 })
    assert.equal(await grid().page.locator('.landing').isVisible(), false)
    await grid().page.mouse.up()
    await grid().settle()
    assert.deepEqual(await grid().gestures(), [])
    assert.equal(await grid().page.evaluate(() => document.activeElement!.getAttribute('role')), 'grid')
  })

  it('goes on at the edge to what is out of sight', async () => {
    const from = await header('run-28')
    const labels = (await grid().page.locator('.labels').boundingBox())!
    await carry({ x: from.x + from.width / 2, y: from.y + 5 }, { x: labels.x + labels.width + 6, y: from.y + 30 })
    await grid().page.waitForFunction(() => document.querySelector('.scroller')!.scrollLeft === 0)
    await grid().page.mouse.move(labels.x + labels.width + 150, from.y + 30)
    await grid().page.mouse.up()
    assert.deepEqual(await grid().gesturesWhen(1), [{ kind: 'moveEntry', column: 'run-28', by: -27 }])
  })

  it('is none with another header, which selects columns, nor where nothing may be written', async () => {
    const [from, to] = [await header('run-26'), await header('run-27')]
    await carry({ x: from.x + 60, y: from.y + 30 }, { x: to.x + 60, y: to.y + 30 })
    await grid().page.mouse.up()
    assert.ok(await selected() > 20)
    await grid().page.evaluate(() => host.show({ ...sampleView(30), readOnly: 'a version to read' }))
    await grid().settle()
    await carry({ x: from.x + from.width / 2, y: from.y + 5 }, { x: to.x + 90, y: to.y + 30 })
    assert.equal(await grid().page.locator('.carried').count(), 0)
    await grid().page.mouse.up()
    assert.deepEqual(await grid().gestures(), [])
  })
})
