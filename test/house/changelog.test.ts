import assert from 'node:assert/strict'
import { withRelease, wrongWith } from '../release/changelog'

const head = '# Changelog\n\nWhat a person notices.\n'

describe('a release', () => {
  it('has a version that follows the last one', () => {
    for (const next of ['0.1.1', '0.2.0', '1.0.0']) assert.equal(wrongWith('0.1.0', next), undefined)
    for (const next of ['0.1.0', '0.1.2', '0.3.0', '2.0.0', '0.2.1', 'v0.2.0', '0.2', '0.2.0-beta', '']) assert.match(wrongWith('0.1.0', next) ?? '', /not/)
  })

  it('tells what stands under Unreleased, and leaves older releases alone', () => {
    const before = `${head}\n## Unreleased\n\n- A card for air springs.\n\n## 0.1.0 (2026-04-18)\n\n- The first.\n`
    assert.equal(withRelease(before, { version: '0.2.0', date: '2026-05-02', subjects: ['Not told'] }),
      `${head}\n## Unreleased\n\n## 0.2.0 (2026-05-02)\n\n- A card for air springs.\n\n## 0.1.0 (2026-04-18)\n\n- The first.\n`)
  })

  it('tells the subjects of the commits where nothing was written', () => {
    assert.equal(withRelease(`${head}\n## Unreleased\n\n## 0.1.0 (2026-04-18)\n\n- The first.\n`, { version: '0.1.1', date: '2026-05-02', subjects: ['Two', 'One'] }),
      `${head}\n## Unreleased\n\n## 0.1.1 (2026-05-02)\n\n- Two\n- One\n\n## 0.1.0 (2026-04-18)\n\n- The first.\n`)
    assert.match(withRelease(head, { version: '0.1.0', date: '2026-05-02', subjects: ['One'] }), /^# Changelog\n\nWhat a person notices\.\n\n## Unreleased\n\n## 0\.1\.0 \(2026-05-02\)\n\n- One\n$/)
  })

  it('is refused where there is nothing to tell, or it was told already', () => {
    assert.throws(() => withRelease(head, { version: '0.1.0', date: '2026-05-02', subjects: [] }), /nothing to tell/)
    assert.throws(() => withRelease(`${head}\n## 0.1.0 (2026-04-18)\n`, { version: '0.1.0', date: '2026-05-02', subjects: ['x'] }), /already/)
  })
})
