import type { CDPSession } from 'playwright-core'
import { pageFrames } from './frames'
import { settings } from './settings'
import { page } from './window'

let session: CDPSession | undefined
const scopes = new Set<string>()

/**
 * Takes away the editor's service worker, which lets its pages in, where no page is open. Each page brings one of its own, and the browser takes
 * a second to put it in the place of another (1.4 s to the grid, 0.4 s without), which at times never ends. Not where opening is measured.
 */
export async function forgetPageWorker(): Promise<void> {
  if (settings().measure || pageFrames(page()).length > 0) return
  const held = (session ??= await listen())
  await Promise.all([...scopes].map((scopeURL) => held.send('ServiceWorker.unregister', { scopeURL })))
}

async function listen(): Promise<CDPSession> {
  const made = await page().context().newCDPSession(page())
  made.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
    for (const { scopeURL, isDeleted } of registrations) {
      if (isDeleted) scopes.delete(scopeURL)
      else scopes.add(scopeURL)
    }
  })
  await made.send('ServiceWorker.enable')
  return made
}
