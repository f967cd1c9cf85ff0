import { open, type FileHandle } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { createGunzip } from 'node:zlib'
import { isParquet } from '../core/logs/reading/parquet/isParquet'
import { say } from '../core/words/say'
import { UsageError } from './outcome'
import { streamParquet } from './streamParquet'
import { why } from './why'

/** Read at once: large enough that asking costs nothing, small enough for the processor's caches. */
const chunkBytes = 1 << 19

/** The bytes of a file as they come, unpacked where they begin as gzip does, the columns of Parquet as text; `-` is standard input. A chunk is only good until the next is asked for. */
export async function* streamFile(path: string): AsyncGenerator<Uint8Array> {
  try {
    const raw = path === '-' ? (process.stdin as AsyncIterable<Uint8Array>) : readAhead(path)
    yield* unpacked(raw, path)
  } catch (error) {
    throw new UsageError(`${path}: ${isPacking(error) ? say('this packed file (gzip) is broken or cut short') : why(error)}`)
  }
}

/** Two buffers in turn: while one is worked on, the other is filled. */
async function* readAhead(path: string): AsyncGenerator<Uint8Array> {
  const file = await open(path, 'r')
  try {
    const buffers = [Buffer.allocUnsafe(chunkBytes), Buffer.allocUnsafe(chunkBytes)]
    let coming = fill(file, buffers[0]!)
    for (let turn = 1; ; turn++) {
      const chunk = await coming
      if (chunk.length === 0) return
      coming = fill(file, buffers[turn % 2]!)
      // Where the reader stops early the last filling is still under way; its failure is nobody's then.
      coming.catch(() => undefined)
      yield chunk
    }
  } finally {
    await file.close()
  }
}

async function fill(file: FileHandle, buffer: Buffer): Promise<Uint8Array> {
  const { bytesRead } = await file.read(buffer, 0, buffer.length, null)
  // A plain array of bytes: Buffer is another class, and two classes in one loop make it slow.
  return new Uint8Array(buffer.buffer, buffer.byteOffset, bytesRead)
}

async function* unpacked(chunks: AsyncIterable<Uint8Array>, path: string): AsyncGenerator<Uint8Array> {
  const source = chunks[Symbol.asyncIterator]()
  const first = await source.next()
  if (first.done) return
  const rest = { async *[Symbol.asyncIterator]() {
    yield first.value
    for (let next = await source.next(); !next.done; next = await source.next()) yield next.value
  } }
  try {
    if (isParquet(first.value)) yield* streamParquet(path, rest)
    else if (first.value[0] !== 0x1f || first.value[1] !== 0x8b) yield* rest
    else {
      const unpacking = createGunzip({ chunkSize: chunkBytes })
      const packed = Readable.from(copied(rest)).on('error', (error) => unpacking.destroy(error))
      for await (const chunk of packed.pipe(unpacking)) yield new Uint8Array((chunk as Buffer).buffer, (chunk as Buffer).byteOffset, (chunk as Buffer).length)
    }
  } finally {
    await source.return?.()
  }
}

/** The unpacking asks for more before it is done with what it has. */
async function* copied(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) yield chunk.slice()
}

function isPacking(error: unknown): boolean {
  return String((error as { code?: string }).code).startsWith('Z_')
}
