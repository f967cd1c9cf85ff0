// The scenes that `npm run screenshots` takes pictures of. To add one, add an object here:
//   name    names the picture
//   file    what is open, a path in samples/
//   view    'grid' (when absent) or 'text'
//   act     what a person does before the picture is taken; optional. It receives
//             press(...keys), type(text)   real keys, wherever the focus is
//             grid()                       the grid's frame, as Playwright has it
//             webview(name)                the frame of another of our pages, such as 'compare'
//             page                         the whole window, as Playwright has it
//   readme  {theme, width, page}: `--readme` writes this one to samples/pictures/<name>.png, and with `page` a small one for the extension's page
/** @type {import('./screenshots.mjs').Scene[]} */
export const scenes = [
  { name: 'grid-dark', file: 'tern-650.setup.yaml', readme: { theme: 'dark', width: 1280, page: true } },
  { name: 'text', file: 'tern-650.setup.yaml', view: 'text', act: ({ press }) => press('Control+Home') },
  { name: 'charts-sag', file: 'tern-650.setup.yaml', act: async ({ press, grid }) => {
    await press('Control+k', 'Control+g')
    await (await grid()).locator('.chart-walk:focus').waitFor()
  } },
  { name: 'grid-find-filter', file: 'tern-650.setup.yaml', act: async ({ press, type, grid }) => {
    await press('Control+Shift+BracketLeft')
    const frame = await grid()
    await frame.locator('.is-folded').waitFor()
    await press('Control+Shift+l')
    await frame.locator('#filter-entries:focus').waitFor()
    await type('run')
    await press('Enter', 'Control+f')
    await frame.locator('#find-text:focus').waitFor()
    await type('out')
    await frame.locator('.tool-status', { hasText: / of | von / }).first().waitFor()
  } },
  { name: 'grid-menu', file: 'tern-650.setup.yaml', act: async ({ grid, page }) => {
    await (await grid()).locator('.cell.is-set').first().click({ button: 'right' })
    await page.locator('.context-view .monaco-menu').waitFor()
  } },
  { name: 'compare', file: 'tern-650.setup.yaml', readme: { theme: 'light', width: 1280 }, act: async ({ press, type, page, webview }) => {
    // The newest entry against the one it comes from; then what the new springs changed since the first baseline.
    await press('Control+k', 'Control+d')
    const compare = await webview('compare')
    await compare.locator('.cell:focus').waitFor()
    for (const [key, entry] of [['l', 'baseline'], ['r', 'new-springs']]) {
      await press(key)
      await page.locator('.quick-input-widget input').waitFor()
      await type(entry)
      await press('Enter')
      await compare.locator('.side-name', { hasText: entry }).waitFor()
      await compare.locator('.cell:focus').waitFor()
    }
    await press('Control+Home')
  } },
  { name: 'compare-machines', file: 'tern-650.setup.yaml', act: async ({ press, type, page, webview }) => {
    await press('Control+k', 'Control+d')
    const compare = await webview('compare')
    await compare.locator('.cell:focus').waitFor()
    await press('r')
    for (const answer of ['Another notebook', 'curlew-900.setup.yaml', '']) {
      await page.locator('.quick-input-widget input').waitFor()
      await type(answer)
      await page.locator('.quick-input-list .monaco-list-row', { hasText: answer }).first().waitFor()
      await page.waitForTimeout(300)
      await press('Enter')
    }
    await compare.locator('.banner').waitFor()
    await compare.locator('.cell:focus').waitFor()
    await press('d', 'Control+Home', 'ArrowRight', 'ArrowRight')
  } },
  { name: 'compare-broken', file: 'tern-650.setup.yaml', view: 'text', act: async ({ press, type, page, webview }) => {
    await press('Control+g')
    await page.locator('.quick-input-widget input').waitFor()
    await type('60')
    await press('Enter', 'Home')
    await type('  - [')
    await press('F1')
    await type('Compare Setup with Saved')
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Compare Setup with Saved' }).first().waitFor()
    await press('Enter')
    await (await webview('compare')).locator('.pane:visible').waitFor()
  } },
  { name: 'turns', file: 'tern-650.setup.yaml', act: async ({ press, type, page, webview }) => {
    await press('Control+k', 'Control+l')
    for (const [question, answer] of [['stand now', 'new-springs'], ['should it stand', 'baseline']]) {
      await page.locator('.quick-input-titlebar', { hasText: question }).waitFor()
      await type(answer)
      await page.locator('.quick-input-list .monaco-list-row', { hasText: answer }).first().waitFor()
      await page.waitForTimeout(300)
      await press('Enter')
    }
    await (await webview('turns')).locator('input.tick:focus').waitFor()
    await press('Space')
  } },
  { name: 'setups', file: 'tern-650.setup.yaml', act: async ({ press, type, page, grid }) => {
    await (await grid()).locator('[role=grid]').waitFor()
    await page.waitForTimeout(1000)
    await press('F1')
    await page.locator('.quick-input-widget input').waitFor()
    await type('Focus on Setups View')
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Setups' }).first().waitFor()
    await press('Enter')
    await page.locator('.monaco-list-row[aria-label^="Tern 650,"]').waitFor()
    await page.waitForTimeout(800)
    await press('Home', 'ArrowRight')
    await page.waitForTimeout(500)
  } },
  { name: 'sheet', file: 'tern-650.setup.yaml', act: async ({ press, type, page, grid }) => {
    await (await grid()).locator('[role=grid]').waitFor()
    await page.waitForTimeout(1000)
    await press('F1')
    await page.locator('.quick-input-widget input').waitFor()
    await type('Print Hand-over Sheet')
    await page.locator('.quick-input-list .monaco-list-row', { hasText: 'Print Hand-over Sheet' }).first().waitFor()
    await press('Enter')
    await page.locator('.tab', { hasText: 'Sheet' }).waitFor()
    await page.waitForTimeout(1500)
  } },
  { name: 'logs', file: 'tern-650.setup.yaml', act: async ({ press, grid, page }) => {
    const frame = await grid()
    await frame.locator('[role=grid]').waitFor()
    await press('Control+f')
    await frame.locator('#find-text:focus').waitFor()
    await page.keyboard.type('from the log')
    await page.waitForTimeout(1500)
    await press('Enter', 'Escape')
    await page.waitForTimeout(500)
  } },
  { name: 'charts-log', file: 'tern-650.setup.yaml', act: async ({ press, grid, page }) => {
    await press('Control+k', 'Control+g')
    const frame = await grid()
    await frame.locator('.chart-walk:focus').waitFor()
    await frame.locator('[role=tab]', { hasText: 'Log' }).click()
    await page.waitForTimeout(2000)
  } },
]
