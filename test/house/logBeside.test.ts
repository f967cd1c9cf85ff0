import assert from 'node:assert/strict'
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { disk } from '../../src/cli/disk'
import { readLogPath } from '../../src/core/notation/logPath'

describe('the log that an entry names', () => {
  const folder = mkdtempSync(join(tmpdir(), 'detent-'))
  const notebook = join(folder, 'garage', 'tern.setup.yaml')
  before(() => {
    for (const each of ['garage/logs', 'elsewhere']) mkdirSync(join(folder, each), { recursive: true })
    for (const each of ['garage/logs/run.csv', 'elsewhere/secret.csv']) writeFileSync(join(folder, each), 'Time\n')
    symlinkSync(join(folder, 'elsewhere'), join(folder, 'garage/linked'))
    symlinkSync(join(folder, 'elsewhere/secret.csv'), join(folder, 'garage/logs/link.csv'))
  })
  after(() => rmSync(folder, { recursive: true }))

  it('is found beside the notebook and below', () => {
    assert.deepEqual(disk.logBeside!(notebook, 'logs/run.csv'), { path: join(folder, 'garage/logs/run.csv') })
    assert.equal(disk.logBeside!(notebook, 'logs/none.csv'), undefined)
  })

  it('is not looked for by way of a link, be it the file or a folder', () => {
    for (const path of ['linked/secret.csv', 'logs/link.csv']) assert.match((disk.logBeside!(notebook, path) as { why: string }).why, /link to somewhere else, which is not followed/)
  })

  it('never leads out of the folder', () => {
    const outside = [
      '../elsewhere/secret.csv', 'logs/../../elsewhere/secret.csv', '..', '..\\elsewhere\\secret.csv', 'logs\\..\\..\\x', '/etc/passwd', '\\\\server\\share\\x.csv', '//server/share/x.csv', 'C:\\x.csv', 'c:/x.csv', 'C:x.csv', '~/x.csv', '~root/x.csv',
      'file:///etc/passwd', 'https://evil.invalid/x.csv', 'vscode-remote://x/y', 'logs/\u0000x', 'logs/\n../x', './../x', 'logs/./../../x', ' ../x', '', '.', 'logs/',
    ]
    for (const path of outside) assert.equal(readLogPath(path).value, undefined, JSON.stringify(path))
  })
})
