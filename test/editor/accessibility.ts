import axe from 'axe-core'
import type { Frame } from 'playwright-core'

/**
 * Looks for barriers in what a frame shows now, with axe-core.
 * @param except the names of rules not to apply; give the reason beside the call
 * @returns one line per barrier: the rule, its help and the element
 */
export async function barriersIn(frame: Frame, except: string[] = []): Promise<string[]> {
  await frame.evaluate(axe.source)
  const rules = Object.fromEntries(except.map(name => [name, { enabled: false }]))
  const violations = await frame.evaluate(async options => {
    const { violations } = await (globalThis as unknown as { axe: typeof axe }).axe.run(options)
    return violations.map(({ id, help, nodes }) => ({ id, help, elements: nodes.map(node => node.html.slice(0, 160)) }))
    // To name each element that nothing is wrong with takes as long as to look for what is.
  }, { rules, resultTypes: ['violations' as const], preload: false })
  return violations.flatMap(({ id, help, elements }) => elements.map(element => `${id}: ${help}: ${element}`))
}
