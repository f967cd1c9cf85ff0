import assert from 'node:assert/strict'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { streamFile } from '../../src/cli/streamFile'
import { aParquet, linesOf } from '../core/logs/reading/parquet/aParquet'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const text = Buffer.from(Array.from({ length: 200_000 }, (_, at) => `${at},${at % 97}\n`).join(''))

async function read(name: string, content: Uint8Array): Promise<Buffer> {
  writeFileSync(join(folder, name), content)
  const chunks: Buffer[] = []
  // Each chunk is only good until the next is asked for.
  for await (const chunk of streamFile(join(folder, name))) chunks.push(Buffer.from(chunk))
  return Buffer.concat(chunks)
}

describe('streamFile', () => {
  after(() => rmSync(folder, { recursive: true }))

  it('gives all bytes of a file in their order', async () => {
    assert.ok((await read('log.csv', text)).equals(text))
    assert.equal((await read('empty.csv', Buffer.alloc(0))).length, 0)
  })

  it('unpacks what begins as gzip does, whatever its name', async () => {
    assert.ok((await read('packed.csv', gzipSync(text))).equals(text))
  })

  it('refuses what is packed and broken or cut short, and what is not there', async () => {
    const packed = gzipSync(text)
    await assert.rejects(read('cut.gz', packed.subarray(0, packed.length / 2)), /cut\.gz: this packed file \(gzip\) is broken or cut short/)
    await assert.rejects(read('bad.gz', Buffer.concat([packed.subarray(0, 100), Buffer.alloc(500, 7)])), /broken or cut short/)
    await assert.rejects(streamFile(join(folder, 'none')).next(), /there is no such file/)
    await assert.rejects(streamFile(folder).next(), /this is a folder/)
  })

  it('makes text of the columns of Parquet, and refuses what is cut short', async () => {
    const data = Array.from({ length: 30_000 }, (_, at) => at / 8)
    const file = aParquet([{ name: 'Time', data, type: 'DOUBLE' }, { name: 'Fork', data, type: 'DOUBLE' }])
    const lines = (await read('log.csv', file)).toString().split('\n')
    assert.deepEqual(lines.slice(0, -1), await linesOf(file))
    assert.deepEqual([lines.length, lines.at(-2)], [30_003, '3749.875\t3749.875'])
    await assert.rejects(read('cut.parquet', file.subarray(0, file.length / 2)), /cut\.parquet: this Parquet file is broken or cut short/)
    await assert.rejects(read('head.parquet', file.subarray(0, 6)), /broken or cut short/)
  })

  it('lets go of a file when no more is wanted', async () => {
    writeFileSync(join(folder, 'more.csv'), text)
    for await (const chunk of streamFile(join(folder, 'more.csv'))) {
      assert.ok(chunk.length > 0)
      break
    }
  })
})
