import assert from 'node:assert/strict'
import { readFileSync, readdirSync } from 'node:fs'
import { join } from 'node:path'

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

  it('makes no code and no markup of words', () => {
    assert.deepEqual(places(running), [])
  })

  it('works in a workspace that is not trusted, and says so', () => {
    const { capabilities } = JSON.parse(readFileSync('package.json', 'utf8')) as { capabilities: { untrustedWorkspaces: { supported: boolean } } }
    assert.equal(capabilities.untrustedWorkspaces.supported, true)
  })
})
