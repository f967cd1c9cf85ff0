import assert from 'node:assert/strict'
import { readdirSync } from 'node:fs'
import { dirname } from 'node:path'
import type { Frame } from 'playwright-core'
import * as vscode from 'vscode'
import { slotKey, slotsOf } from '../../src/core/adjusters/adjuster'
import { isTurned } from '../../src/core/adjusters/describeTurning'
import { cardFor } from '../../src/core/card/cardFor'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { barriersIn } from './accessibility'
import { until } from './waiting'
import { gridFrame, page, press, resize, screenshot, takeKeyboard, wear } from './window'
import { openGrid, openText, sample, textOf } from './workspace'

async function open(name: string): Promise<Frame> {
  await openGrid(sample(name))
  const grid = await gridFrame()
  await grid.locator('[role=grid]').waitFor()
  await takeKeyboard(grid)
  await press('ControlOrMeta+Home')
  return grid
}

const dialog = (grid: Frame) => grid.locator('[role=dialog]')
const isFocused = (grid: Frame, selector: string) => grid.evaluate<boolean>(`document.activeElement?.matches(${JSON.stringify(selector)}) === true`)
const currentName = (grid: Frame) => grid.locator('.is-active').getAttribute('aria-label')

async function openCard(grid: Frame): Promise<void> {
  await press('ControlOrMeta+k', 'ControlOrMeta+i')
  await dialog(grid).waitFor()
}

async function closeCard(grid: Frame): Promise<void> {
  await press('Escape')
  await until('the card is gone', async () => (await dialog(grid).count()) === 0)
}

const samples = () => readdirSync(dirname(sample('tern-650.setup.yaml').fsPath)).filter((name) => name.endsWith('.setup.yaml')).sort()

describe('the card of a cell', () => {
  it('opens on its key as a named dialog that says at once where it is and which way to turn it, and Escape goes back to the cell', async () => {
    const grid = await open('tern-650.setup.yaml')
    const cell = await currentName(grid)
    await openCard(grid)
    await until('the card has the keyboard', () => isFocused(grid, '[role=dialog] [role=document]'))
    // What a screen reader is given, as the browser's own tree of accessibility has it.
    const tree = await dialog(grid).ariaSnapshot()
    assert.match(tree, /^- dialog "Fork preload, left leg":\n\s+- document:/)
    for (const heading of ['Fork preload, left leg', 'Which way', 'Two in one place', 'What it does', 'Stands at', 'How to count it', 'Take care']) assert.match(tree, new RegExp(`- heading "${heading}"`))
    assert.match(tree, /Turn it clockwise, as you look down on it from above, to turn it in \(more preload\)\./)
    assert.doesNotMatch(tree, /- img/)
    const described = await grid.evaluate<string>(`document.querySelector('[role=dialog] [role=document]').getAttribute('aria-describedby').split(' ').map((id) => document.getElementById(id).textContent).join(' ')`)
    assert.match(described, /fork caps · 19 mm hex.*Which way.*Turn it clockwise.*Turn it anticlockwise/)
    assert.deepEqual(await barriersIn(grid), [])
    await press('ArrowDown', 'PageDown', 'Tab')
    assert.ok(await isFocused(grid, '[role=dialog] [role=document]'), 'the keyboard stays in the card')
    await closeCard(grid)
    await until('the grid has the keyboard again', () => isFocused(grid, '[role=grid], [role=grid] *'))
    assert.equal(await currentName(grid), cell)
    await press('ArrowDown')
    await until('the arrows move again', async () => (await currentName(grid)) !== cell)
  })

  for (const name of ['curlew-900', 'dunlin-600', 'heron-980', 'snipe-350', 'tern-650', 'wren-250']) {
    it(`tells of every adjuster of ${name} what it is, where, which way to turn it and how far it goes`, async () => {
      const grid = await open(`${name}.setup.yaml`)
      await press('End')
      const notebook = readNotebook(await textOf(sample(`${name}.setup.yaml`)))
      const wanted = new Map([...notebook.adjusters.values()].flatMap((adjuster) => slotsOf(adjuster).map(({ leg }) => {
        const card = cardFor(notebook, `settings/${slotKey(adjuster.id, leg)}`, notebook.entries.at(-1)!.key)!
        return [card.title, { card, turned: isTurned(adjuster) }] as const
      })))
      for (let steps = wanted.size; steps > 0; steps--) {
        await openCard(grid)
        const title = (await dialog(grid).getAttribute('aria-label')) ?? ''
        const { card, turned } = wanted.get(title) ?? assert.fail(`${title} is no adjuster that is left`)
        const shown = (await dialog(grid).innerText()).replace(/\s+/g, ' ')
        for (const words of [card.subtitle ?? '', ...card.sections.flatMap(({ heading, lines }) => [heading, ...lines])]) assert.ok(shown.includes(words.replace(/\s+/g, ' ')), `${title}: ${words}`)
        assert.equal(await dialog(grid).locator('svg').count(), turned ? 1 : 0, title)
        wanted.delete(title)
        await closeCard(grid)
        await press('ArrowDown')
      }
      assert.deepEqual([...wanted.keys()], [])
    })
  }

  it('is every sample’s', () => assert.deepEqual(samples(), ['curlew-900', 'dunlin-600', 'heron-980', 'snipe-350', 'tern-650', 'wren-250'].map((name) => `${name}.setup.yaml`)))

  for (const theme of ['light', 'dark', 'hc-black'] as const) {
    it(`has its drawing in the colour of its words, in ${theme}`, async () => {
      await wear(theme)
      const grid = await open('heron-980.setup.yaml')
      await press('End')
      for (let at = 0; at < 9; at++) await press('ArrowDown')
      await openCard(grid)
      const [stroke, words] = await grid.evaluate<string[]>(`[getComputedStyle(document.querySelector('[role=dialog] svg')).stroke, getComputedStyle(document.querySelector('[role=dialog] section p')).color]`)
      assert.equal(stroke, words)
      assert.deepEqual(await barriersIn(grid), [])
      await screenshot(`card ${theme}`)
      await closeCard(grid)
    })
  }

  for (const [width, height] of [[1280, 800], [800, 600]] as const) {
    it(`comes when the pointer rests on a cell, whole or with a word that there is more, at ${width} by ${height}`, async () => {
      await resize(width, height)
      const grid = await open('tern-650.setup.yaml')
      await grid.locator('.is-active').hover()
      const card = grid.locator('.card-hover')
      await card.waitFor()
      const { inside, cut, told } = await grid.evaluate<{ inside: boolean; cut: boolean; told: boolean }>(`(() => {
        const card = document.querySelector('.card-hover')
        const box = card.getBoundingClientRect()
        const last = [...card.querySelectorAll('section')].at(-1).getBoundingClientRect()
        return {
          inside: box.left >= 0 && box.top >= 0 && box.right <= innerWidth && box.bottom <= innerHeight,
          cut: last.bottom > box.bottom || last.right > box.right, told: card.querySelector('.card-more') !== null,
        }
      })()`)
      await screenshot(`card under the pointer ${width}`)
      assert.deepEqual([inside, told], [true, cut])
      assert.ok(width < 1280 || !cut, 'in a usual window it is whole')
      // What comes and goes with the pointer is no landmark.
      assert.deepEqual(await barriersIn(grid, ['region']), [])
    })
  }

  it('in the text has its drawing in sight, below the way to turn it', async () => {
    const document = await openText(sample('heron-980.setup.yaml'))
    const at = document.positionAt(document.getText().lastIndexOf('shock_rebound:') + 3)
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>('vscode.executeHoverProvider', document.uri, at)
    const markdown = hovers.flatMap(({ contents }) => contents).map((content) => (content as vscode.MarkdownString).value).join('\n')
    const places = ['*Which way*', '![', '*What it does*', '*Stands at*'].map((words) => markdown.indexOf(words))
    assert.deepEqual(places, [...places].sort((a, b) => a - b))
    assert.ok(places.every((place) => place >= 0))
    vscode.window.activeTextEditor!.selection = new vscode.Selection(at, at)
    vscode.window.activeTextEditor!.revealRange(new vscode.Range(at, at), vscode.TextEditorRevealType.InCenter)
    await page().getByText(`Ln ${at.line + 1}, Col`).waitFor()
    await vscode.commands.executeCommand('editor.action.showHover')
    const picture = page().locator('.monaco-hover img').first()
    await picture.waitFor()
    await until('the hover has its place', async () => ((await picture.boundingBox())?.y ?? -1) > 0)
    // Where the eye falls first: it is seen without scrolling.
    const [seen, box] = [await picture.boundingBox(), await page().locator('.monaco-hover').first().boundingBox()]
    assert.ok(seen!.y >= box!.y && seen!.y + seen!.height <= box!.y + box!.height, JSON.stringify({ seen, box }))
    await screenshot('hover in the text')
  })
})
