import type { Frame, Page } from 'playwright-core'

/** Matches the element that every grid webview marks its grid with. */
export const gridMark = '[data-detent="grid"]'

/** The frames of pages of extensions: the innermost ones, which the editor gives this name. To ask any frame takes a while, which is spared the others. */
export function pageFrames(page: Page): Frame[] {
  return page.frames().filter((frame) => frame.url().includes('/fake.html'))
}

/** The frames of the window in which an element that matches `selector` can be seen now, from left to right. */
export async function framesWith(page: Page, selector: string): Promise<Frame[]> {
  const found: { frame: Frame; x: number }[] = []
  for (const frame of pageFrames(page)) {
    const element = frame.locator(selector).first()
    if (await element.count().catch(() => 0) === 0) continue
    const box = await element.boundingBox({ timeout: 500 }).catch(() => null)
    if (box) found.push({ frame, x: box.x })
  }
  return found.sort((a, b) => a.x - b.x).map(({ frame }) => frame)
}
