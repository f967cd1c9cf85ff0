/** Far longer than anything takes: on a machine that is short of time the editor was seen to need ten seconds for a page. */
const usualMs = 30_000

/**
 * Waits until `check` gives something truthy, and returns that. A check that throws counts as not yet.
 * @param what ends the sentence "Waited in vain until …"
 * @example await until('the file is clean', () => !document.isDirty)
 */
export async function until<T>(what: string, check: () => T | Promise<T>, timeoutMs = usualMs): Promise<NonNullable<T>> {
  const end = Date.now() + timeoutMs
  let last: unknown
  do {
    try {
      last = await check()
      if (last) return last as NonNullable<T>
    } catch (error) {
      last = error
    }
    await pause(40)
  } while (Date.now() < end)
  throw new Error(`Waited in vain until ${what} (${timeoutMs / 1000} s; last: ${last instanceof Error ? last.message : JSON.stringify(last)})`)
}

/** For what cannot be waited for: that nothing happens. */
export function pause(ms: number): Promise<void> {
  return new Promise(resolve => setTimeout(resolve, ms))
}
