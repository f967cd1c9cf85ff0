import type { Frame } from 'playwright-core'
import { contrast, violationsIn } from '../violations'
import { themes } from './themes'
import { wear } from './window'

/**
 * Looks for barriers in what a frame shows now.
 * @param except the names of rules not to apply; give the reason beside the call
 * @returns one line per barrier
 */
export function barriersIn(frame: Frame, except: string[] = []): Promise<string[]> {
  return violationsIn(frame, { rules: Object.fromEntries(except.map(name => [name, { enabled: false }])) })
}

/** The same in one theme after another: all of it in the first, and what depends on the theme in the others. */
export async function barriersInThemes(frame: Frame): Promise<string[]> {
  const found: string[] = []
  for (const [at, theme] of (Object.keys(themes) as (keyof typeof themes)[]).entries()) {
    await wear(theme)
    const here = await (at === 0 ? barriersIn(frame) : violationsIn(frame, contrast))
    found.push(...here.map(line => `${theme}: ${line}`))
  }
  return found
}
