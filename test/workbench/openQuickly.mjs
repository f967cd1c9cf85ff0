/**
 * Opens a file of the window's folder by its name, as a person does who types it.
 * @param {import('playwright-core').Page} page
 * @param {string} name
 * @throws an Error when it is not open after a minute
 */
export async function openQuickly(page, name) {
  for (const end = Date.now() + 60_000; Date.now() < end;) {
    await page.keyboard.press('Escape')
    await page.keyboard.press('ControlOrMeta+p')
    if (await tryOnce(page, name).catch(() => false)) return
  }
  throw new Error(`Waited in vain until ${name} is open`)
}

async function tryOnce(page, name) {
  const soon = { timeout: 5000 }
  await page.locator('.quick-input-widget input').waitFor(soon)
  await page.keyboard.type(name)
  await page.locator('.quick-input-list .monaco-list-row', { hasText: name }).first().waitFor(soon)
  await page.keyboard.press('Enter')
  // A window that is busy was seen to lose the key.
  await page.locator('.tab.active', { hasText: name }).waitFor(soon)
  return true
}
