import type { Page } from 'playwright-core'

export function openQuickly(page: Page, name: string): Promise<void>
