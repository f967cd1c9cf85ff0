import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { manualPage } from '../../src/cli/manual'
import { usages } from '../../src/cli/usages'

describe('the manual page', () => {
  const page = manualPage()

  it('is the one that is made (npm run docs writes it anew)', () => {
    assert.equal(readFileSync('src/cli/detent.1', 'utf8').replaceAll('\r\n', '\n'), page)
  })

  it('has every command with its options, and nothing that troff takes for its own', () => {
    for (const text of Object.values(usages)) {
      const line = text.split('\n')[0]!
      assert.ok(page.includes(`.SS ${line.replaceAll('-', '\\-').replaceAll('…', '...')}`), line)
    }
    const requests = page.split('\n').filter((line) => line.startsWith('.')).map((line) => line.split(' ')[0]!)
    assert.deepEqual([...new Set(requests)].sort(), ['.B', '.I', '.PP', '.SH', '.SS', '.TH', '.TP'])
    assert.ok(!page.split('\n').some((line) => line.startsWith("'")))
    assert.ok(![...page.matchAll(/\\(.)/g)].some(([, escape]) => !'-e&'.includes(escape!)))
  })
})
