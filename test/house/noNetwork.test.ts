import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'

const sources = ['src', 'webview'].flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts')).map((name) => join(folder, name)))
const reaching = /\b(?:fetch|importScripts)\s*\(|\bnew (?:XMLHttpRequest|WebSocket|EventSource|WebTransport|RTCPeerConnection)\b|\bsendBeacon\b/
const modules = /from '(?:node:)?(?:https?|http2|net|tls|dgram|dns)(?:\/promises)?'|import\('(?:node:)?(?:https?|http2|net|tls|dgram|dns)/
const running = /\beval\s*\(|\bnew Function\b|\.innerHTML\b|\.outerHTML\b|\binsertAdjacentHTML\b|\bdocument\.write\b/
const telling = /createTelemetryLogger|TelemetryReporter|machineId|sendTelemetry/

/** Places of a pattern in our own code, comments apart. */
const places = (pattern: RegExp) => sources.flatMap((file) => readFileSync(file, 'utf8').split('\n').flatMap((line, at) => (pattern.test(line.replace(/\/\/.*|^\s*\*.*/, '')) ? [`${file}:${at + 1}: ${line.trim()}`] : [])))

describe('the program', () => {
  it('asks no network for anything and tells nobody anything', () => {
    assert.ok(sources.length > 300)
    assert.deepEqual(places(reaching), [])
    assert.deepEqual(places(modules), [])
    assert.deepEqual(places(telling), [])
  })

  it('reads logs on a thread, and by libraries, that have nothing to reach a network with', async () => {
    const { metafile, outputFiles } = await build({
      entryPoints: ['src/cli/threads.ts', 'src/cli/parquet.ts'], outdir: 'nowhere', bundle: true, write: false, metafile: true, format: 'cjs', platform: 'node', target: 'node20', external: ['./parquet'],
    })
    const needed = new Set(Object.values(metafile.outputs).flatMap(({ imports }) => imports.map(({ path }) => path.replace('node:', ''))))
    assert.deepEqual([...needed].filter((name) => !['fs', 'fs/promises', 'stream', 'zlib', 'worker_threads', 'crypto', './parquet'].includes(name)), [])
    assert.ok(needed.has('worker_threads') && outputFiles.every(({ text }) => text.length > 5000))
    for (const { text, path } of outputFiles) assert.doesNotMatch(text, reaching, path)
  }).timeout(20_000)

  it('makes no code and no markup of words', () => {
    assert.deepEqual(places(running), [])
  })

  it('works in a workspace that is not trusted, and says so', () => {
    const { capabilities } = JSON.parse(readFileSync('package.json', 'utf8')) as { capabilities: { untrustedWorkspaces: { supported: boolean } } }
    assert.equal(capabilities.untrustedWorkspaces.supported, true)
  })
})
