import axe from 'axe-core'
import type { Frame } from 'playwright-core'

/**
 * Looks for barriers in what a frame shows now, with axe-core, through the browser's own console: a page's policy lets no other script in.
 * @param which what to look at, and what not
 * @returns one line per barrier: the rule, the element and what is wrong with it
 */
export async function violationsIn(frame: Frame, which: axe.RunOptions): Promise<string[]> {
  if (await frame.evaluate('typeof axe') === 'undefined') await frame.evaluate(axe.source)
  // To name each of the hundreds of elements that nothing is wrong with takes as long as to look for what is.
  const options: axe.RunOptions = { ...which, resultTypes: ['violations'], preload: false }
  const { violations } = await frame.evaluate((options) => (globalThis as unknown as { axe: { run(options: axe.RunOptions): Promise<axe.AxeResults> } }).axe.run(options), options)
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html, failureSummary }) => `${id}: ${html.slice(0, 160)} ${failureSummary ?? ''}`))
}

/** Of all that axe looks at, what depends on the theme. */
export const contrast: axe.RunOptions = { runOnly: ['color-contrast'] }
