import axe from 'axe-core'
import type { Frame } from 'playwright-core'
import { themes } from './themes'

type Theme = keyof typeof themes

/**
 * Looks for barriers in what a frame shows now, with axe-core.
 * @param except the names of rules not to apply; give the reason beside the call
 * @returns one line per barrier: the rule, its help and the element
 */
export function barriersIn(frame: Frame, except: string[] = []): Promise<string[]> {
  return violationsIn(frame, { rules: Object.fromEntries(except.map(name => [name, { enabled: false }])) })
}

/** The same in one theme after another, as many times as there are: all of it in the first, and what depends on colours in the others. */
export async function barriersInThemes(frame: Frame, wear: (theme: Theme) => Promise<void>): Promise<string[]> {
  const found: string[] = []
  for (const [at, theme] of (Object.keys(themes) as Theme[]).entries()) {
    await wear(theme)
    const here = await (at === 0 ? barriersIn(frame) : violationsIn(frame, { runOnly: ['color-contrast'] }))
    found.push(...here.map(line => `${theme}: ${line}`))
  }
  return found
}

async function violationsIn(frame: Frame, which: axe.RunOptions): Promise<string[]> {
  if (await frame.evaluate('typeof axe') === 'undefined') await frame.evaluate(axe.source)
  const violations = await frame.evaluate(async options => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(options)
    return violations.map(({ id, help, nodes }) => ({ id, help, elements: nodes.map(node => node.html.slice(0, 160)) }))
    // To name each element that nothing is wrong with takes as long as to look for what is.
  }, { ...which, resultTypes: ['violations' as const], preload: false })
  return violations.flatMap(({ id, help, elements }) => elements.map(element => `${id}: ${help}: ${element}`))
}
