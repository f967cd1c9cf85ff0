import { headBytes } from './detectDialect'

/** The first bytes of a file, as many as tell how it is written. */
export async function headOf(chunks: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const head = new Uint8Array(headBytes)
  let held = 0
  for await (const chunk of chunks) {
    head.set(chunk.subarray(0, headBytes - held), held)
    held = Math.min(headBytes, held + chunk.length)
    if (held === headBytes) break
  }
  return head.subarray(0, held)
}
