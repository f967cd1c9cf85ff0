import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { AxeResults } from 'axe-core'
import type { Page } from 'playwright-core'

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/**
 * What axe finds in a page as it is now, one line each; all of it, or what depends on the theme.
 * @param except the name of a rule not to apply; give the reason beside the call
 */
export async function barriers(page: Page, all = true, except?: string): Promise<string[]> {
  // Through the browser's own console: the page's policy lets no other script in.
  if (await page.evaluate('typeof axe') === 'undefined') await page.evaluate(axe)
  const rules = all ? { rules: except === undefined ? {} : { [except]: { enabled: false } } } : { runOnly: ['color-contrast'] }
  // To name each of the hundreds of elements that nothing is wrong with takes as long as to look for what is.
  const options = { ...rules, resultTypes: ['violations'], preload: false }
  const results = await page.evaluate((options) => (globalThis as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run(options), options)
  return results.violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`))
}
