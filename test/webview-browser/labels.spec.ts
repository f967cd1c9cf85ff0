import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { buildGrid } from '../../src/core/grid/buildGrid'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { speak } from '../../src/core/words/say'
import { eachWith } from './grid'

const german = Object.assign({}, ...readdirSync('src/words/de').map((file) => JSON.parse(readFileSync(`src/words/de/${file}`, 'utf8')) as Record<string, string>)) as Record<string, string>
const samples = readdirSync('samples').filter((name) => name.endsWith('.setup.yaml'))

function viewOf(sample: string) {
  const notebook = readNotebook(readFileSync(`samples/${sample}`, 'utf8'))
  return buildGrid(notebook, checkNotebook(notebook))
}

describe('the labels of the rows', () => {
  const grid = eachWith({ entries: 9 })
  const current = async () => (await grid().page.locator('.is-active').first().boundingBox())!
  const labels = async () => (await grid().page.locator('.labels').boundingBox())!
  /** Labels in sight of which a part is cut off, or runs out of its row or over its neighbour. */
  const cut = () => grid().page.evaluate(() => [...document.querySelectorAll<HTMLElement>('.labels .label')].filter((label) => {
    if (!label.offsetParent) return false
    const parts = [...label.querySelectorAll<HTMLElement>('span')].filter((part) => part.textContent)
    const room = label.getBoundingClientRect()
    const isOut = parts.some((part) => part.getBoundingClientRect().right > room.right || part.getBoundingClientRect().bottom > room.bottom + 1 || part.scrollWidth > part.clientWidth + 1)
    return isOut || label.scrollHeight > label.clientHeight + 1
  }).map((label) => label.innerText))

  afterEach(() => speak())

  for (const [language, words] of [['English', undefined], ['German', german]] as const) {
    for (const width of [1280, 800, 640]) {
      it(`are whole in ${language} at ${width} px, in every sample`, async () => {
        speak(words)
        await grid().page.setViewportSize({ width, height: 800 })
        for (const sample of samples) {
          await grid().show(viewOf(sample))
          for (const key of ['Control+Home', 'PageDown', 'PageDown', 'PageDown', 'PageDown']) {
            await grid().press(key)
            await grid().settle()
            assert.deepEqual(await cut(), [], `${sample} after ${key}`)
          }
        }
      })
    }
  }

  it('leave a narrow page to the entries', async () => {
    await grid().page.setViewportSize({ width: 640, height: 600 })
    await grid().show(viewOf('tern-650.setup.yaml'))
    assert.ok((await labels()).width <= 640 * 0.38 + 1)
  })

  it('are drawn wider by their edge and by keys, stay so, and are as before on a double click', async () => {
    const before = await labels()
    const edge = [before.x + before.width - 1, before.y - 20] as const
    await grid().page.mouse.move(...edge)
    await grid().page.mouse.down()
    await grid().page.mouse.move(edge[0] + 70, edge[1], { steps: 3 })
    await grid().page.mouse.up()
    await grid().settle()
    assert.ok(Math.abs((await labels()).width - before.width - 70) < 2)
    assert.deepEqual(await grid().gestures(), [])
    await grid().page.reload()
    await grid().page.waitForSelector('#app:not(.is-loading)')
    assert.ok(Math.abs((await labels()).width - before.width - 70) < 2)
    await grid().page.locator('.grid').focus()
    await grid().press('Home', 'ArrowLeft')
    await grid().tell({ type: 'commandGiven', command: 'narrowColumn' })
    await grid().settle()
    assert.ok(Math.abs((await labels()).width - before.width - 54) < 2)
    await grid().page.mouse.dblclick(before.x + before.width + 53, edge[1])
    await grid().settle()
    assert.equal((await labels()).width, before.width)
  })

  it('have their heading above them where one comes up to a group’s first row', async () => {
    await grid().page.setViewportSize({ width: 900, height: 420 })
    await grid().press('Control+End')
    await grid().press('Control+Home')
    await grid().settle()
    assert.equal(await grid().page.evaluate(() => document.querySelector('.scroller')!.scrollTop), 0)
    await grid().press('Control+End')
    for (let step = 0; step < 25; step++) {
      await grid().press('ArrowUp')
      await grid().settle()
      const { x, y } = await current()
      const above = await grid().page.evaluate(([left, top]) => document.elementFromPoint(left!, top! - 8)?.closest('.row, .label')?.className, [x + 10, y])
      assert.ok(above, `step ${step}`)
      const first = await grid().page.evaluate(() => {
        const active = document.querySelector<HTMLElement>('.is-active')!.closest('.row')!
        const at = Number(active.getAttribute('aria-rowindex'))
        const heading = document.querySelector(`.row-group[aria-rowindex="${at - 1}"]`)
        return !heading || heading.getBoundingClientRect().top >= document.querySelector('.header-row')!.getBoundingClientRect().bottom - 1
      })
      assert.equal(first, true, `step ${step}`)
    }
  })
})
