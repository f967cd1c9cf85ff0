import type { Page } from 'playwright-core'
import { contrast, violationsIn } from '../violations'

/**
 * What axe finds in a page as it is now, one line each; all of it, or what depends on the theme.
 * @param except the name of a rule not to apply; give the reason beside the call
 */
export function barriers(page: Page, all = true, except?: string): Promise<string[]> {
  return violationsIn(page.mainFrame(), all ? { rules: except === undefined ? {} : { [except]: { enabled: false } } } : contrast)
}
