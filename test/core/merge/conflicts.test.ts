import assert from 'node:assert/strict'
import { merge } from './merging'

const base = `# the Tern
format: 1
machine:
  name: Tern 650
  # at the front
adjusters:
  rebound: {on: shock, controls: rebound, counts: clicks}
entries:
  - id: run-1
    date: 2026-04-18
    settings:
      rebound: 3
    ride:
      laps: 6
      felt: calm
    # a remark

accepted:
  - {finding: several-changes, entry: run-1, reason: both were wrong}
# the end
`
const edit = (from: string, to: string) => {
  assert.ok(base.includes(from), from)
  return base.replace(from, to)
}
/** What is said where the sides write these in the place of something. */
const said = (from: string, ours: string, theirs: string) => merge(base, edit(from, ours), edit(from, theirs)).conflicts.map(({ message }) => message)

describe('what a conflict is about', () => {
  it('is told by its name, within its entry where it has one', () => {
    assert.deepEqual(said('rebound: 3', 'rebound: 4', 'rebound: 5'), ['both sides changed rebound of ‘run-1’'])
    assert.deepEqual(said('felt: calm', 'felt: nervous', 'felt: harsh'), ['both sides changed ride.felt of ‘run-1’'])
    assert.deepEqual(said('date: 2026-04-18', 'date: 2026-04-19', 'date: 2026-04-20'), ['both sides changed date of ‘run-1’'])
    assert.deepEqual(said('name: Tern 650', 'name: Tern 651', 'name: Tern 652'), ['both sides changed machine.name'])
    assert.deepEqual(said('format: 1', 'format: 1 # a', 'format: 1 # b'), ['both sides changed format'])
    assert.deepEqual(said('both were wrong', 'ours', 'theirs'), ['both sides changed reason in the acceptance of several-changes'])
  })

  it('may be comments: above something, below the last of a part, at the end', () => {
    assert.deepEqual(said('# the Tern', '# ours', '# theirs'), ['both sides changed the comments above format'])
    assert.deepEqual(said('# at the front', '# ours', '# theirs'), ['both sides changed the comments below machine'])
    assert.deepEqual(said('    # a remark', '    # ours', '    # theirs'), ['both sides changed the comments below entry ‘run-1’'])
    assert.deepEqual(said('# the end', '# ours', '# theirs'), ['both sides changed the comments below the rest'])
  })

  it('is never how many blank lines there are: the side with more of them has its way', () => {
    const lines = (count: number) => edit('# a remark\n\naccepted', `# a remark\n${'\n'.repeat(count)}accepted`)
    assert.deepEqual(merge(base, lines(3), lines(2)), { text: lines(3), conflicts: [] })
    assert.deepEqual(merge(base, lines(2), lines(3)), { text: lines(3), conflicts: [] })
    assert.deepEqual(merge(base, lines(0), lines(2)), { text: lines(2), conflicts: [] })
  })

  it('is a part that one side took out and the other changed, and not one whose blank lines alone it changed', () => {
    const gone = edit('accepted:\n  - {finding: several-changes, entry: run-1, reason: both were wrong}\n', '')
    assert.deepEqual(merge(base, gone, edit('both were wrong', 'theirs')).conflicts.map(({ message }) => message), ['one side took out accepted, which the other changed'])
    assert.deepEqual(merge(base, gone, edit('# a remark\n\n', '# a remark\n\n\n\n')).conflicts, [])
    assert.equal(merge(base, gone, edit('# a remark\n\n', '# a remark\n\n# why\n')).conflicts.length, 1)
  })

  it('is the whole of what one side wrote as a map and the other as words', () => {
    assert.deepEqual(said('    ride:\n      laps: 6\n      felt: calm\n', '    ride:\n      laps: 7\n      felt: calm\n', '    ride: calm\n'), ['both sides changed ride of ‘run-1’'])
  })
})
