import * as vscode from 'vscode'
import { analyseLog } from '../../core/logs/analyseLog'
import { headOf } from '../../core/logs/reading/headOf'
import { isParquet } from '../../core/logs/reading/parquet/isParquet'
import { say } from '../../core/words/say'
import { loadParquet } from './loadParquet'
import { Stopped, type LogReader } from './logReader'

/** So much is worked on at once, a few ms; then whoever types has the turn. */
const pieceBytes = 256 * 1024
/** A file system that is no disk hands files over whole, and memory is not ours alone. */
const mostBytes = 256 * 1024 * 1024

/** Reads logs in the thread everything runs in, a piece at a time: where there is no other, as in a browser. */
export const readHere = (extension: vscode.Uri): LogReader => ({
  async fingerprint({ uri, size }) {
    if (size > mostBytes) throw new Error(say('this log is too large to be read in a browser; open the folder on a computer'))
    const bytes = await vscode.workspace.fs.readFile(vscode.Uri.parse(uri))
    return [...new Uint8Array(await crypto.subtle.digest('SHA-256', bytes as Uint8Array<ArrayBuffer>))].map((byte) => byte.toString(16).padStart(2, '0')).join('')
  },

  async head({ uri }) {
    return headOf(unpacked(await vscode.workspace.fs.readFile(vscode.Uri.parse(uri)), extension))
  },

  async analyse({ uri }, request, { signal, progress }) {
    const analysis = analyseLog(request)
    let done = 0
    for await (const piece of unpacked(await vscode.workspace.fs.readFile(vscode.Uri.parse(uri)), extension)) {
      if (signal.aborted) throw new Stopped()
      if (!analysis.feed(piece)) break
      progress(done += piece.length)
      await new Promise((resolve) => setTimeout(resolve, 0))
    }
    return analysis.end()
  },

  dispose: () => undefined,
})

async function* unpacked(bytes: Uint8Array, extension: vscode.Uri): AsyncGenerator<Uint8Array> {
  if (isParquet(bytes)) return yield* parquetPieces(bytes, extension)
  if (bytes[0] !== 0x1f || bytes[1] !== 0x8b) return yield* pieces(bytes)
  const stream = new Blob([bytes as Uint8Array<ArrayBuffer>]).stream().pipeThrough(new DecompressionStream('gzip')).getReader()
  try {
    for (let read = await stream.read(); !read.done; read = await stream.read()) yield* pieces(read.value)
  } catch {
    throw new Error(say('this packed file (gzip) is broken or cut short'))
  }
}

function* pieces(bytes: Uint8Array): Generator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += pieceBytes) yield bytes.subarray(at, at + pieceBytes)
}

async function* parquetPieces(bytes: Uint8Array, extension: vscode.Uri): AsyncGenerator<Uint8Array> {
  const { parquetText } = await loadParquet(extension)
  const encoder = new TextEncoder()
  for await (const text of parquetText(new Uint8Array(bytes).buffer, say)) yield* pieces(encoder.encode(text))
}
