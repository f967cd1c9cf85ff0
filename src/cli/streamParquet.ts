import { open, type FileHandle } from 'node:fs/promises'
import { say } from '../core/words/say'

/** The columns of a Parquet file as text. What tells of them stands at its end: what comes by itself, as standard input does, is gathered first. */
export async function* streamParquet(path: string, chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  const { parquetText } = await import('./parquet')
  const encoder = new TextEncoder()
  const file = path === '-' ? undefined : await open(path, 'r')
  try {
    for await (const text of parquetText(file ? await byPlace(file) : await gathered(chunks), say)) yield encoder.encode(text)
  } finally {
    await file?.close()
  }
}

async function byPlace(file: FileHandle) {
  const { size } = await file.stat()
  return {
    byteLength: size,
    async slice(from: number, to = size) {
      const bytes = new Uint8Array(Math.max(0, to - from))
      const { bytesRead } = await file.read(bytes, 0, bytes.length, from)
      return bytesRead === bytes.length ? bytes.buffer : bytes.buffer.slice(0, bytesRead)
    },
  }
}

async function gathered(chunks: AsyncIterable<Uint8Array>): Promise<ArrayBuffer> {
  const parts: Uint8Array<ArrayBuffer>[] = []
  for await (const chunk of chunks) parts.push(chunk.slice())
  return new Blob(parts).arrayBuffer()
}
