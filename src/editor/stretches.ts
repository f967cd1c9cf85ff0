/** So long, in ms, something may go on before others are let go first: less than a frame. */
const stretchMs = 12

/** Cuts long work into short stretches: what it gives is awaited between two pieces of the work, and lets others go first when it is time to. */
export function stretches(): () => Promise<void> {
  let began = performance.now()
  return async () => {
    if (performance.now() - began < stretchMs) return
    await new Promise((resolve) => setTimeout(resolve))
    began = performance.now()
  }
}
