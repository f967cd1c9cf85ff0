import assert from 'node:assert/strict'
import fc from 'fast-check'
import { migrateNotebook } from '../../../src/core/migrate/migrateNotebook'
import { migrations } from '../../../src/core/migrate/migrations'
import { currentFormat, readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { applyChanges } from '../../../src/core/text'

const old = `# kept by Oda
format: 0   # the draft
bike: {name: Tern 650}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, "count": clicks, range: 10}  # count
entries:
  - id: as-found
    positions: {fork_rebound: 3 out} # bike, why
    why: |
      positions: as they were
`
const now = `# kept by Oda
format: 1   # the draft
machine: {name: Tern 650}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 10}  # count
entries:
  - id: as-found
    settings: {fork_rebound: 3 out} # bike, why
    reason: |
      positions: as they were
`

function migrated(text: string): string {
  const answer = migrateNotebook(text)
  assert.ok('changes' in answer, JSON.stringify(answer))
  return applyChanges(text, answer.changes)
}

describe('bringing a notebook to the format of today', () => {
  it('changes what has another name since, and neither comments nor values of the same words', () => {
    assert.equal(migrated(old), now)
    assert.equal(migrated(old.replaceAll('\n', '\r\n')), now.replaceAll('\n', '\r\n'))
    assert.deepEqual(checkNotebook(readNotebook(now)), [])
  })

  it('leaves a notebook of today alone, to the byte', () => {
    assert.deepEqual(migrateNotebook(now), { from: 1, changes: [] })
  })

  it('has a step from every format to the next', () => {
    assert.deepEqual(migrations.map(({ from }) => from), Array.from({ length: currentFormat }, (_, at) => at))
  })

  it('composes steps into changes of the first text', () => {
    const further = [{ from: -1, says: '', changes: () => [{ start: 0, end: 13, text: '# of the team' }] }, ...migrations]
    const answer = migrateNotebook(old.replace('format: 0', 'format: -1'), further)
    assert.ok('changes' in answer && answer.from === -1)
    assert.equal(applyChanges(old.replace('format: 0', 'format: -1'), answer.changes), now.replace('# kept by Oda', '# of the team'))
  })

  it('says why it cannot, and where, and changes nothing', () => {
    const refused = (text: string) => {
      const answer = migrateNotebook(text)
      return 'refused' in answer ? `${answer.refused} (${text.slice(answer.range.start, answer.range.end)})` : 'migrated'
    }
    assert.match(refused(old.replace('format: 0', 'format: 7')), /^format 7 is newer than 1.* \(7\)$/)
    assert.match(refused(old.replace('format: 0', 'format: 0.5')), /^there is no format 0\.5 \(0\.5\)$/)
    assert.match(refused(old.replace('format: 0', 'format: -3')), /^there is no format -3/)
    assert.match(refused(old.replace('bike:', 'machine: {name: x}\nbike:')), /^both `bike` and `machine` stand here; keep one of them/)
    assert.match(refused('machine: {name: x}\n'), /does not say its format/)
    assert.match(refused('format: 0\nbike: [\n'), /./)
    assert.match(refused(''), /does not say its format/)
  })

  it('changes shared groups once, where they stand', () => {
    const text = 'format: 0\nentries:\n  - &a {id: one, why: x}\n  - *a\n'
    assert.equal(migrated(text), 'format: 1\nentries:\n  - &a {id: one, reason: x}\n  - *a\n')
  })

  it('never throws, whatever is written', () => {
    fc.assert(fc.property(fc.array(fc.constantFrom(...old.split(/(?<=\s)/), '[', '*x ', '&x ', '- ', '\t'), { maxLength: 40 }), (pieces) => {
      migrateNotebook(`format: 0\n${pieces.join('')}`)
    }), { numRuns: 200 })
  })

  it('is asked for by the one finding of such a notebook, whose fix it is', () => {
    const [finding, ...more] = checkNotebook(readNotebook(old))
    assert.deepEqual([finding!.code, finding!.severity, more.length], ['older-format', 'error', 0])
    assert.equal(applyChanges(old, finding!.fixes![0]!.changes), now)
  })
})
