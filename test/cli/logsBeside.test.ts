import assert from 'node:assert/strict'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { disk } from '../../src/cli/disk'
import { run, start } from '../../src/cli/run'

const folder = mkdtempSync(join(tmpdir(), 'detent-'))
const at = (name: string) => join(folder, name)
const notebook = (log: string, mapping = 'logger: {time: {column: t}, front: {column: fork}}') => `format: 1
machine:
  name: Tern 650
  front: {travel: 120}
  ${mapping}
entries:
  - id: one
    date: 2026-06-13
    ride: {front_travel_used: 70, log: ${log}}
`
const csv = `t,fork\n${Array.from({ length: 1000 }, (_, row) => `${row / 100},${row === 500 ? 120 : 60 + (row % 40)}`).join('\n')}\n`

describe('logs beside notebooks that are checked', () => {
  before(() => {
    mkdirSync(at('logs'))
    writeFileSync(at('logs/one.csv'), csv)
    writeFileSync(at('logs/prose.csv'), 'Dear diary,\nnothing happened.\n')
    symlinkSync(at('logs'), at('elsewhere'))
  })
  after(() => rmSync(folder, { recursive: true }))

  const checked = async (text: string, ...options: string[]) => {
    writeFileSync(at('a.setup.yaml'), text)
    const { out } = await start(['check', '--format', 'json', ...options, at('a.setup.yaml')], disk)
    const { files } = JSON.parse(out) as { files: { findings: { code: string; severity: string; message: string; line: number }[] }[] }
    return files[0]!.findings.map(({ code, severity, line }) => `${line} ${severity} ${code}`)
  }

  it('are read, and the rules speak of them at the entry that names them', async () => {
    assert.deepEqual(await checked(notebook('logs/one.csv')), ['9 warning tie-against-log', '9 info bottomed-in-log'])
  })

  it('are left alone where that is asked for, where they are not there, and where nobody said which column is what', async () => {
    assert.deepEqual(await checked(notebook('logs/one.csv'), '--no-logs'), [])
    assert.deepEqual(await checked(notebook('logs/two.csv')), [])
    assert.deepEqual(await checked(notebook('logs/one.csv', 'use: track')), [])
  })

  it('are told to be broken, folders or links', async () => {
    for (const log of ['logs/prose.csv', 'logs', 'elsewhere/one.csv']) assert.deepEqual(await checked(notebook(log)), ['9 warning log-unread'], log)
  })

  it('are told from one another by what they are, not by how they are called', async () => {
    writeFileSync(at('a.setup.yaml'), notebook('logs/one.csv'))
    const { out } = await start(['log', at('logs/../logs/one.csv'), '--notebook', at('a.setup.yaml')], disk)
    assert.match(out, /\nWhat the notebook makes of it:\n {2}warning: one: Front: the log says 120 mm, the tie 70 mm: .* \[tie-against-log\]\n {2}info: one: Front: the log shows it on its stop once/)
    const json = JSON.parse((await start(['log', at('logs/one.csv'), '--notebook', at('a.setup.yaml'), '--format', 'json'], disk)).out) as { findings: { code: string; entry: string }[] }
    assert.deepEqual(json.findings.map(({ code, entry }) => `${entry} ${code}`), ['one tie-against-log', 'one bottomed-in-log'])
    assert.doesNotMatch((await start(['log', at('logs/one.csv'), '--notebook', at('a.setup.yaml'), '--to', '4'], disk)).out, /makes of it/)
  })

  it('are not looked at where commands run at once', () => {
    writeFileSync(at('a.setup.yaml'), notebook('logs/one.csv'))
    assert.doesNotMatch(run(['check', at('a.setup.yaml')], disk).out, /log/)
  })
})
