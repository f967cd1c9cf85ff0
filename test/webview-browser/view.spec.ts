import assert from 'node:assert/strict'
import { eachWith, OpenGrid } from './grid'

describe('the grid by pointer and over time', () => {
  const grid = eachWith()
  afterEach(() => assert.deepEqual(grid().complaints, []))
  const cellBox = async (row: string, column: string) => {
    await grid().go({ row, column })
    return (await grid().page.locator('.is-active').boundingBox())!
  }

  it('draws a range with the mouse and edits by a double click', async () => {
    const from = await cellBox('fork_rebound.left', 'run-5')
    const to = await cellBox('fork_compression.left', 'run-6')
    const { mouse } = grid().page
    await mouse.move(from.x + 20, from.y + 8)
    await mouse.down()
    await mouse.move(to.x + 20, to.y + 8, { steps: 4 })
    await mouse.up()
    assert.equal(await grid().page.locator('[role=gridcell][aria-selected=true]').count(), 6)
    await mouse.dblclick(from.x + 20, from.y + 8)
    assert.equal(await grid().page.locator('.editor').count(), 1)
  })

  it('keeps selection and scroll when rows come above and entries come before', async () => {
    const { page } = grid()
    await grid().show(await page.evaluate(() => sampleView(60)))
    await grid().go({ row: 'sag.rear.static', column: 'run-30' })
    await grid().settle()
    const before = await page.locator('.is-active').boundingBox()
    await page.evaluate(() => {
      const view = sampleView(60)
      view.rows.splice(1, 0, { ...view.rows[1]!, key: 'new-row', label: 'New' })
      view.cells.splice(1, 0, view.cells[1]!.map((cell) => ({ ...cell })))
      view.columns.splice(0, 0, { ...view.columns[0]!, key: 'new-entry', id: 'new-entry' })
      for (const row of view.cells) if (row.length > 0) row.unshift({ ...row[0]! })
      host.show(view)
    })
    assert.match((await grid().current())!, /Rear, static sag, run-30$/)
    assert.deepEqual(await page.locator('.is-active').boundingBox(), before)
  })

  it('stands where it stood when it is closed and opened again', async () => {
    const { page } = grid()
    await page.goto(`${page.url().split('?')[0]}?entries=60`)
    await page.waitForSelector('#app:not(.is-loading)')
    await grid().go({ row: 'felt', column: 'run-20' })
    await page.getByRole('button', { name: 'Findings' }).click()
    await page.waitForTimeout(200)
    const before = await page.evaluate(() => [document.querySelector('.scroller')!.scrollLeft, document.querySelector('.scroller')!.scrollTop])
    await page.reload()
    await page.waitForSelector('#app:not(.is-loading)')
    assert.match((await grid().current())!, /Felt, run-20$/)
    assert.deepEqual(await page.evaluate(() => [document.querySelector('.scroller')!.scrollLeft, document.querySelector('.scroller')!.scrollTop]), before)
    assert.equal(await page.locator('.findings').isVisible(), true)
  })

  it('shows one changed cell without touching any other element', async () => {
    const { page } = grid()
    await page.waitForTimeout(300)
    await page.evaluate(() => {
      const touched = new Set<Node>()
      Object.assign(window, { touched })
      new MutationObserver((records) => {
        for (const { target } of records) touched.add(target instanceof Element ? target : target.parentElement!)
      }).observe(document.querySelector('.grid')!, { subtree: true, childList: true, characterData: true, attributes: true })
      host.setCell({ row: 'shock_low', column: 'run-6' }, { state: 'set', text: '19 out', changed: true })
    })
    await grid().settle()
    const touched = await page.evaluate(() => [...(window as unknown as { touched: Set<Element> }).touched].map((element) => element.textContent))
    assert.deepEqual(touched, ['19 out'])
  })

  it('lists findings, worst first, and goes to the cell of one', async () => {
    const { page } = grid()
    await page.getByRole('button', { name: 'Findings' }).click()
    assert.match((await page.textContent('.finding-line'))!, /^The fork stands.*Height, run-8$/)
    await page.focus('.findings-list')
    await grid().press('ArrowDown', 'Enter')
    assert.match((await grid().current())!, /Rebound right, run-8$/)
    await page.locator('.finding-line', { hasText: 'colour' }).click()
    assert.deepEqual(await page.evaluate(() => host.received.at(-1)), { type: 'openText', line: 4 })
  })

  it('applies a fix, and accepts a finding with a reason and not without', async () => {
    const { page } = grid()
    await grid().go({ row: 'fork_rebound.right', column: 'run-8' })
    await page.click('text=Set the right leg to 3 out')
    await page.click('.detail >> text=Accept with reason…')
    await grid().settle()
    await grid().press('Enter')
    assert.match((await page.textContent('.form-trouble'))!, /reason is needed/)
    await grid().type('left one leg apart to try it')
    await grid().press('Enter')
    const id = await page.evaluate(() => host.view.findings.find(({ row, column }) => row === 'fork_rebound.right' && column === 'run-8')!.id)
    assert.deepEqual(await grid().gesturesWhen(2), [
      { kind: 'applyFix', finding: id, fix: 0 }, { kind: 'acceptFinding', finding: id, reason: 'left one leg apart to try it' },
    ])
  })

  it('adds an entry and goes to its first setting', async () => {
    await grid().page.click('text=Add entry')
    await grid().settle()
    await grid().press('Tab', 'Tab')
    await grid().type('one click softer')
    await grid().press('Enter')
    const [gesture] = await grid().gesturesWhen(1)
    assert.ok(gesture?.kind === 'addEntry')
    assert.deepEqual([gesture.id, gesture.reason], ['run-9', 'one click softer'])
    assert.match(gesture.date, /^\d{4}-\d\d-\d\d$/)
    assert.match((await grid().current())!, /Preload left, run-9$/)
  })
})

describe('a notebook that cannot be edited', () => {
  const grid = eachWith()

  it('is shown as last understood when broken, and leads to the line', async () => {
    await grid().page.evaluate(() => host.show({ ...sampleView(9), state: 'broken', trouble: { message: 'A key is missing its colon.', line: 31 } }))
    await grid().settle()
    await grid().type('4')
    await grid().press('Delete')
    assert.equal(await grid().page.locator('.editor').count(), 0)
    assert.deepEqual(await grid().gestures(), [])
    assert.match((await grid().page.textContent('.banner'))!, /missing its colon\. Shown as last understood/)
    await grid().page.click('text=Line 31')
    assert.deepEqual(await grid().page.evaluate(() => host.received.at(-1)), { type: 'openText', line: 31 })
  })

  it('is read only when its format is newer', async () => {
    await grid().page.evaluate(() => host.show({ ...sampleView(9), state: 'newer', readOnly: 'Its format is 2, this program knows 1.' }))
    await grid().settle()
    await grid().type('4')
    assert.equal(await grid().page.locator('.editor').count(), 0)
    assert.match((await grid().page.textContent('.banner'))!, /Its format is 2/)
  })
})

describe('a notebook that has nothing yet', () => {
  const grid = eachWith()

  it('offers ways to begin', async () => {
    await grid().page.evaluate(() => host.show({ title: '', state: 'empty', columns: [], rows: [], cells: [], findings: [], cautions: [], beginnings: [{ key: 'both', label: 'Both circuits in both legs', about: 'As most forks.' }] }))
    await grid().settle()
    await grid().page.click('text=Both circuits in both legs')
    const [gesture] = await grid().gesturesWhen(1)
    assert.ok(gesture?.kind === 'begin' && gesture.start === 'both')
  })

  it('offers to add the first entry once it has adjusters', async () => {
    await grid().page.evaluate(() => host.show(sampleView(0)))
    await grid().settle()
    await grid().page.click('text=Add the first entry')
    await grid().settle()
    await grid().press('Enter')
    const [gesture] = await grid().gesturesWhen(1)
    assert.ok(gesture?.kind === 'addEntry' && gesture.id === 'run-1')
  })

  it('offers nothing where the text was never understood, and does not say that it was', async () => {
    await grid().show(await grid().page.evaluate(() => ({ ...sampleView(0), state: 'broken' as const, trouble: { message: 'a key is missing its colon', line: 3 } })))
    assert.equal(await grid().page.locator('.first-entry').isVisible(), false)
    assert.match((await grid().page.textContent('.banner'))!, /missing its colon\. There is nothing to show until the text is mended\.Line 3/)
  })
})

describe('the size of the page', () => {
  it('does not depend on the size of the notebook', async () => {
    const counts: number[] = []
    for (const entries of [30, 3000]) {
      const grid = await OpenGrid.open({ entries, width: 2560, height: 1440 })
      counts.push(await grid.page.evaluate(() => document.querySelectorAll('*').length))
      await grid.close()
    }
    assert.equal(counts[0], counts[1])
    assert.ok(counts[0]! < 1500, String(counts[0]))
  })

  it('may be narrow, or zoomed in, without anything being out of reach', async () => {
    for (const [width, height] of [[800, 600], [640, 400]] as const) {
      const grid = await OpenGrid.open({ width, height })
      await grid.page.getByRole('button', { name: 'Findings' }).click()
      const outside = await grid.page.evaluate(() => ({
        wide: document.documentElement.scrollWidth > innerWidth,
        buttons: [...document.querySelectorAll('.actions > *')].filter((button) => button.getBoundingClientRect().right > innerWidth).length,
        room: document.querySelector('.scroller')!.clientHeight,
      }))
      assert.deepEqual([outside.wide, outside.buttons], [false, 0])
      assert.ok(outside.room >= 80, String(outside.room))
      await grid.close()
    }
  })

  it('has cells and rows in reading order once scrolling rests', async () => {
    const grid = await OpenGrid.open({ entries: 300, height: 500 })
    await grid.page.evaluate(() => document.querySelector('.scroller')!.scrollTo(7777, 333))
    await grid.page.waitForTimeout(400)
    const order = await grid.page.evaluate(() => document.querySelector('[role=grid]')!.getAttribute('aria-owns')!.split(' ')
      .map((id) => document.getElementById(id)!)
      .map((row) => [
        Number(row.getAttribute('aria-rowindex')),
        row.getAttribute('aria-owns')!.split(' ').map((id) => document.getElementById(id)!).filter((cell) => cell.offsetParent).map((cell) => Number(cell.getAttribute('aria-colindex'))),
      ] as const))
    const rows = order.map(([row]) => row)
    assert.deepEqual(rows, [...rows].sort((a, b) => a - b))
    for (const [, columns] of order) {
      assert.equal(columns[0], 1)
      assert.deepEqual(columns, [...columns].sort((a, b) => a - b))
    }
    await grid.close()
  })

  it('has no gap in sight, wherever it is scrolled to', async () => {
    const grid = await OpenGrid.open({ entries: 3000, height: 600 })
    const gaps = await grid.page.evaluate(async () => {
      const scroller = document.querySelector('.scroller')!
      const { left, top } = scroller.getBoundingClientRect()
      let found = 0
      for (let at = 0; at < 60; at++) {
        scroller.scrollTo(at * 6411, (at * 97) % 700)
        await new Promise(requestAnimationFrame)
        for (const [x, y] of [[scroller.clientWidth - 30, 60], [270, scroller.clientHeight - 20], [700, 300]] as const) {
          // Two px apart: one of them may be the line between rows.
          if (![y, y + 2].some((down) => document.elementFromPoint(left + x, top + down)?.closest('.cell, .row-group'))) found++
        }
      }
      return found
    })
    assert.equal(gaps, 0)
    await grid.close()
  })
})
