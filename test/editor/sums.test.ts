import assert from 'node:assert/strict'
import * as vscode from 'vscode'
import { goToCell, openInGrid, told } from './openInGrid'
import { until } from './waiting'
import { page, press, screenshot, type } from './window'
import { textOf } from './workspace'

const tern = `format: 1
machine:
  name: Tern 650
  use: track
  front: {travel: 120, spring_rate: 9.5, unsprung_mass: 17}
  rear: {travel: 130, spring_rate: 95, motion_ratio: 0.45, unsprung_mass: 20}
  geometry: {rake: 24, fork_offset: 30, wheelbase: 1400, front_radius: 300, rear_radius: 315}
rider: {kitted_mass: 84}
adjusters:
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 12, mm_per_turn: 1, place: fork caps, tool: 19 mm hex, faces: up}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22, place: shock foot, faces: down, worked_from: above}
entries:
  - id: as-found
    date: 2026-04-18
    as_found: true
    settings: {fork_preload: 0 in, shock_rebound: 7 out}   # counted twice
    sag:
      front: {extended: 152, bike: [128, 122], rider: [118, 110]}
`

describe('the sums in the grid', () => {
  it('come from bounce heights and weights as they are typed, and nothing else of the file changes', async () => {
    const { uri, grid } = await openInGrid(tern)
    await goToCell(uri, grid, 'bounce.front', 'as-found')
    await type('40, 14, 5')
    await press('Enter')
    await until('the heights are written', async () => (await textOf(uri)).includes('front: [40, 14, 5]'))
    await goToCell(uri, grid, 'computed/bounce.front.damping_ratio', 'as-found')
    await told(grid, 'Damping ratio front', '0.31 ± 0.02', 'swings 35 % past its rest')

    await goToCell(uri, grid, 'axle_loads.bike.front', 'as-found')
    await type('89.5')
    await press('Enter')
    await type('88.5')
    await press('Enter')
    await until('the weights are written', async () => /bike: \{front: 89\.5, rear: 88\.5\}/.test(await textOf(uri)))
    await goToCell(uri, grid, 'computed/loads.bike_front_pct', 'as-found')
    await told(grid, 'Front share bike alone', '50.3 %')
    await goToCell(uri, grid, 'computed/bounce.front.natural_hz', 'as-found')
    await told(grid, 'Natural frequency front', 'Hz')

    await goToCell(uri, grid, 'bounce.front', 'as-found')
    await type('[40, 15, 5, 2]')
    await press('Enter')
    await until('only what differs was written', async () => (await textOf(uri)).includes('front: [40, 15, 5, 2]'))
    const text = await textOf(uri)
    assert.ok(text.startsWith(tern.trimEnd().slice(0, tern.indexOf('    sag:'))) && text.includes('# counted twice'))
  })

  it('are shown in the unit that a setting asks for, at once, while the file and what is typed stay as they are', async () => {
    const { uri, grid } = await openInGrid(tern)
    const settings = vscode.workspace.getConfiguration('detent.display')
    await goToCell(uri, grid, 'computed/front.rider_sag_mm', 'as-found')
    await told(grid, '38 mm', '3 mm above 25 to 35 mm')
    try {
      await settings.update('length', 'in', vscode.ConfigurationTarget.Global)
      await told(grid, '1.5 in', '0.12 in above 0.98 to 1.38 in')
      await goToCell(uri, grid, 'sag.front.extended', 'as-found')
      await told(grid, '152 mm')
      await settings.update('rate', 'lb/in', vscode.ConfigurationTarget.Global)
      await goToCell(uri, grid, 'computed/front.wheel_rate_n_per_mm', 'as-found')
      await told(grid, 'lb/in')
      await screenshot('sums in inches')
      assert.equal(await textOf(uri), tern)
    } finally {
      await settings.update('length', undefined, vscode.ConfigurationTarget.Global)
      await settings.update('rate', undefined, vscode.ConfigurationTarget.Global)
    }
    await told(grid, 'N/mm')
  })

  it('lead to one next step, from the palette and by key, with its reason; Escape gives the keyboard back', async () => {
    const { uri, grid } = await openInGrid(tern)
    await goToCell(uri, grid, 'settings/shock_rebound', 'as-found')
    await press('F1')
    await page().locator('.quick-input-widget input').first().waitFor()
    await page().locator('.quick-input-list .monaco-list-row').first().waitFor()
    await type('Detent: What Next')
    await page().locator('.quick-input-list .monaco-list-row', { hasText: 'What Next' }).first().waitFor()
    await press('Enter')
    const dialog = grid.getByRole('dialog', { name: 'What next, after as-found?' })
    await dialog.waitFor()
    await dialog.getByText('A starting point').waitFor()
    const text = (await dialog.textContent()) ?? ''
    for (const part of ['A starting point', 'Turn Fork preload: 8 turns in, to 8 turns in.', 'Because', 'What to expect', 'Assumes', 'One change at a time']) assert.ok(text.includes(part), part)
    await screenshot('what next')
    await press('Escape')
    await dialog.waitFor({ state: 'detached' })
    await type('8 out')
    await press('Enter')
    await until('the keyboard is back in the grid', async () => (await textOf(uri)).includes('shock_rebound: 8 out'))
    await press('ControlOrMeta+k', 'ControlOrMeta+j')
    await dialog.waitFor()
  })
})
