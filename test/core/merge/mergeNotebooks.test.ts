import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { mergeNotebooks } from '../../../src/core/merge/mergeNotebooks'
import { merge, settledFor } from './merging'

const base = `# the Tern
format: 1
machine: {name: Tern 650}
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, range: 22}
  # the ring is worn
  shock_preload: {on: shock, controls: preload, counts: turns, range: 12}

entries:
  - id: as-found
    date: 2026-04-18
    settings:
      fork_rebound: {left: 3 out, right: 6 out}   # counted twice
      shock_rebound: 7 out
      shock_preload: 4 in
    reason: |
      as it came
      from the last owner

  - id: run-1
    date: 2026-04-18
    settings: {fork_rebound: 3 out, shock_rebound: 8 out}
    reason: right leg brought to the left

accepted:
  - {finding: several-changes, entry: run-1, reason: both were wrong}
`
/** The base with one thing said otherwise. */
const with_ = (from: string, to: string, text = base) => {
  assert.ok(text.includes(from), from)
  return text.replace(from, to)
}
const append = (entry: string, text = base) => with_('\n\naccepted:', `\n\n${entry}\naccepted:`, text)
const entryOf = (id: string, date: string, setting = 'fork_rebound: 5 out') => `  - id: ${id}\n    date: ${date}\n    settings: {${setting}}\n    reason: ${id} says why\n`

/** Merged without a conflict. */
function clean(ours: string, theirs: string, before = base): string {
  const { text, conflicts } = merge(before, ours, theirs)
  assert.deepEqual(conflicts, [])
  return text
}

function positions(text: string, id: string): Record<string, string> {
  const entry = readNotebook(text).entries.find(({ key }) => key === id)!
  return Object.fromEntries([...entry.state].map(([slot, { setting }]) => [slot, setting.node.text]))
}

describe('merging two versions of a notebook', () => {
  it('keeps an entry from each side, in the order of their days, each as it stood', () => {
    const ours = append(entryOf('o-1', '2026-04-20', 'fork_rebound: 5 out'))
    const theirs = append(entryOf('t-1', '2026-04-19', 'shock_rebound: 9 out'))
    const text = clean(ours, theirs)
    assert.deepEqual(readNotebook(text).entries.map(({ key }) => key), ['as-found', 'run-1', 't-1', 'o-1'])
    assert.deepEqual(positions(text, 'o-1'), positions(ours, 'o-1'))
    assert.deepEqual(positions(text, 't-1'), positions(theirs, 't-1'))
    // The one that came to stand below says what it comes from; the other still stands below it.
    assert.equal(text, append(`${entryOf('t-1', '2026-04-19', 'shock_rebound: 9 out')}\n${with_('\n    settings', '\n    from: run-1\n    settings', entryOf('o-1', '2026-04-20'))}`))
  })

  it('puts ours first where the days are the same or are not told', () => {
    for (const date of ['2026-04-20', 'someday']) {
      const text = clean(append(entryOf('o-1', date)), append(entryOf('t-1', date)))
      assert.deepEqual(readNotebook(text).entries.map(({ key }) => key), ['as-found', 'run-1', 'o-1', 't-1'])
    }
  })

  it('keeps several entries of each side with what they come from', () => {
    const ours = append(`${entryOf('o-1', '2026-04-19')}\n${entryOf('o-2', '2026-04-21', 'shock_preload: 5 in')}`)
    const theirs = append(`${entryOf('t-1', '2026-04-20', 'shock_rebound: 10 out')}\n${entryOf('t-2', '2026-04-22', 'shock_rebound: 11 out')}`)
    const text = clean(ours, theirs)
    assert.deepEqual(readNotebook(text).entries.map(({ key, parent }) => [key, parent?.key]), [
      ['as-found', undefined], ['run-1', 'as-found'], ['o-1', 'run-1'], ['t-1', 'run-1'], ['o-2', 'o-1'], ['t-2', 't-1'],
    ])
    for (const id of ['o-1', 'o-2']) assert.deepEqual(positions(text, id), positions(ours, id))
    for (const id of ['t-1', 't-2']) assert.deepEqual(positions(text, id), positions(theirs, id))
  })

  it('merges different adjusters of one entry, on lines of their own and in one line', () => {
    const text = clean(with_('shock_rebound: 7 out', 'shock_rebound: 6 out'), with_('shock_preload: 4 in', 'shock_preload: 5 in   # by hand'))
    assert.equal(text, with_('shock_preload: 4 in', 'shock_preload: 5 in   # by hand', with_('shock_rebound: 7 out', 'shock_rebound: 6 out')))
    const line = clean(with_('{fork_rebound: 3 out, shock_rebound: 8 out}', '{fork_rebound: 4 out, shock_rebound: 8 out}'), with_('8 out}', '9 out, shock_preload: 5 in}'))
    assert.match(line, /^ {4}settings: \{fork_rebound: 4 out, shock_rebound: 9 out, shock_preload: 5 in\}$/m)
    const legs = clean(with_('{left: 3 out,', '{left: 4 out,'), with_('right: 6 out}   # counted twice', 'right: 5 out}   # counted twice'))
    assert.match(legs, /fork_rebound: \{left: 4 out, right: 5 out\} {3}# counted twice$/m)
  })

  it('takes a pair out of one line where one side took it out', () => {
    const line = 'settings: {fork_rebound: 3 out, shock_rebound: 8 out}'
    for (const [one, other, both] of [
      ['settings: {shock_rebound: 8 out}', 'settings: {fork_rebound: 3 out, shock_rebound: 9 out}', 'settings: {shock_rebound: 9 out}'],
      ['settings: {fork_rebound: 3 out}', 'settings: {fork_rebound: 2 out, shock_rebound: 8 out}', 'settings: {fork_rebound: 2 out}'],
      ['settings: {}', 'settings: {fork_rebound: 3 out, shock_rebound: 8 out, shock_preload: 1 in}', 'settings: {shock_preload: 1 in}'],
    ] as const) {
      const text = clean(with_(line, one), with_(line, other))
      assert.equal(text, with_(line, both))
      assert.equal(clean(with_(line, other), with_(line, one)), with_(line, both))
    }
  })

  it('marks the same adjuster set twice at its line, as git would, and nothing beside it', () => {
    const ours = append(entryOf('o-1', '2026-04-20'), with_('shock_rebound: 7 out', 'shock_rebound: 6 out'))
    const { text, conflicts } = merge(base, ours, with_('shock_rebound: 7 out', 'shock_rebound: 9 out'))
    assert.equal(text, with_('      shock_rebound: 6 out\n', '<<<<<<< ours\n      shock_rebound: 6 out\n=======\n      shock_rebound: 9 out\n>>>>>>> theirs\n', ours))
    assert.deepEqual(conflicts, [{ line: 15, message: 'both sides changed shock_rebound of ‘as-found’' }])
    assert.equal(settledFor('ours', text), ours)
  })

  it('marks an adjuster that both set where it was not set before, and one that both set in one line', () => {
    const both = merge(base, with_('shock_preload: 4 in\n', 'shock_preload: 4 in\n      front_tyre: 2.1\n'), with_('shock_preload: 4 in\n', 'shock_preload: 4 in\n      front_tyre: 2.2\n'))
    assert.deepEqual(both.conflicts.map(({ message }) => message), ['both sides set front_tyre of ‘as-found’'])
    const line = merge(base, with_('shock_rebound: 8 out', 'shock_rebound: 9 out'), with_('shock_rebound: 8 out', 'shock_rebound: 10 out'))
    assert.deepEqual(line.conflicts, [{ line: 23, message: 'both sides changed shock_rebound in settings of ‘run-1’' }])
    assert.match(line.text, /<<<<<<< ours\n {4}settings: \{.*9 out\}\n=======\n {4}settings: \{.*10 out\}\n>>>>>>> theirs\n/)
  })

  it('marks an entry that both added under one name with something else in it, and keeps one that is alike once', () => {
    const [one, other] = [entryOf('run-2', '2026-04-20'), entryOf('run-2', '2026-04-20', 'shock_rebound: 9 out')]
    const { text, conflicts } = merge(base, append(one), append(other))
    assert.equal(text, append(`<<<<<<< ours\n${one}=======\n${other}>>>>>>> theirs\n`))
    assert.deepEqual(conflicts.map(({ message }) => message), ['both sides added entry ‘run-2’, each with something else in it'])
    assert.equal(clean(append(one), append(`${one}\n${entryOf('run-3', '2026-04-21')}`)), append(`${one}\n${entryOf('run-3', '2026-04-21')}`))
  })

  it('marks what one side took out and the other changed, and takes out what only one side touched', () => {
    const gone = with_(base.slice(base.indexOf('  - id: run-1'), base.indexOf('\naccepted:')), '')
    const { text, conflicts } = merge(base, gone, with_('right leg brought to the left', 'right leg and shock'))
    assert.match(conflicts[0]!.message, /one side took out entry ‘run-1’, which the other changed/)
    assert.match(text, /<<<<<<< ours\n=======\n[^]*right leg and shock\n>>>>>>> theirs\n/)
    assert.equal(clean(gone, with_('range: 22', 'range: 24')), with_('range: 22', 'range: 24', gone))
  })

  it('says so where an entry loses what it comes from', () => {
    const gone = with_(base.slice(base.indexOf('  - id: run-1'), base.indexOf('\naccepted:')), '').replace(/\naccepted[^]*/, '')
    const { text, conflicts } = merge(base, gone, append(entryOf('t-1', '2026-04-20', 'shock_preload: 5 in')))
    assert.match(conflicts[0]!.message, /entry ‘t-1’: say with `from` what each comes from/)
    assert.match(text, /<<<<<<< ours\n=======\n[^]*t-1 says why\n>>>>>>> theirs\n/)
  })

  it('leaves it to a person where both put an entry between two others', () => {
    const between = (id: string) => with_('  - id: run-1', `${entryOf(id, '2026-04-18')}\n  - id: run-1`)
    const { text, conflicts } = merge(base, between('o-1'), between('t-1'))
    assert.match(conflicts[0]!.message, /entry ‘o-1’, entry ‘t-1’: say with `from`/)
    assert.equal(settledFor('ours', text), between('o-1'))
    assert.equal(settledFor('theirs', text), between('t-1'))
  })

  it('lets two first entries stand side by side only where the second takes nothing over from the first', () => {
    const empty = 'format: 1\nadjusters:\n  shock_rebound: {on: shock, controls: rebound, counts: clicks}\nentries:\n'
    const first = (id: string, setting: string) => `${empty}  - id: ${id}\n    settings: {${setting}}\n    as_found: true\n`
    assert.deepEqual(merge(empty, first('a', 'shock_rebound: 3'), first('b', 'shock_rebound: 4')).conflicts, [])
    assert.equal(merge(empty, first('a', 'shock_rebound: 3'), first('b', '')).conflicts.length, 1)
    assert.deepEqual(merge(`${empty.trimEnd()} []\n`, first('a', 'shock_rebound: 3'), first('b', 'shock_rebound: 4')).conflicts, [])
  })

  it('merges what each added under a key that neither had', () => {
    const ours = with_('    reason: right leg', '    ride:\n      laps: 6\n    reason: right leg')
    const theirs = with_('    reason: right leg', '    ride:\n      felt: steadier\n    reason: right leg')
    assert.match(clean(ours, theirs), /ride:\n {6}laps: 6\n {6}felt: steadier\n/)
  })

  it('keeps comments and blank lines of both, and marks a comment that both rewrote', () => {
    const ours = with_('  # the ring is worn\n', '  # the ring is worn\n  # a new one is ordered\n')
    const theirs = with_('# the Tern\n', '# the Tern, number two\n\n', with_('\nentries:', '\n\n# newest last\nentries:'))
    const text = clean(ours, theirs)
    for (const line of ['# a new one is ordered', '# the Tern, number two\n\nformat', '\n\n\n# newest last\nentries:']) assert.ok(text.includes(line), line)
    const { conflicts } = merge(base, with_('# the Tern', '# my Tern'), with_('# the Tern', '# the team’s Tern'))
    assert.deepEqual(conflicts, [{ line: 1, message: 'both sides changed the comments above format' }])
  })

  it('merges prose line by line', () => {
    const text = clean(with_('      as it came\n', '      as it came, dusty\n      and late\n'), with_('from the last owner\n', 'from the last owner\n      # no comment\n'))
    assert.equal(readNotebook(text).entries[0]!.reason?.value, 'as it came, dusty\nand late\nfrom the last owner\n# no comment\n')
  })

  it('keeps Windows line ends, the byte order mark and a missing last line end', () => {
    const crlf = (text: string) => text.replaceAll('\n', '\r\n')
    const [ours, theirs] = [append(entryOf('o-1', '2026-04-20')), with_('range: 22', 'range: 24')]
    const merged = clean(ours, theirs)
    assert.equal(clean(crlf(ours), crlf(theirs), crlf(base)), crlf(merged))
    assert.equal(clean(crlf(ours), theirs), crlf(merged))
    assert.equal(clean(ours, crlf(theirs)), crlf(merged))
    assert.equal(clean(`\ufeff${ours}`, theirs), `\ufeff${merged}`)
    assert.equal(clean(ours, theirs.trimEnd()), merged.trimEnd())
    assert.equal(clean(crlf(ours), crlf(theirs.trimEnd()), crlf(base)), crlf(merged).trimEnd())
    const mixed = base.replace('format: 1\n', 'format: 1\r\n')
    assert.equal(clean(append(entryOf('o-1', '2026-04-20'), mixed), with_('range: 22', 'range: 24', mixed), mixed), merged.replace('format: 1\n', 'format: 1\r\n'))
    const clash = merge(crlf(base), crlf(with_('range: 22', 'range: 23')), crlf(theirs))
    assert.doesNotMatch(clash.text, /[^\r]\n/)
    assert.equal(clash.conflicts.length, 1)
  })

  it('merges by lines what does not parse, or is written in one line', () => {
    const broken = with_('machine: {name: Tern 650}', 'machine: {name: "Tern 650}')
    assert.equal(clean(broken, append(entryOf('t-1', '2026-04-20'))), append(entryOf('t-1', '2026-04-20'), broken))
    const { text, conflicts } = merge('a: [1\n', 'a: [2\n', 'a: [3\n')
    assert.equal(text, '<<<<<<< ours\na: [2\n=======\na: [3\n>>>>>>> theirs\n')
    assert.deepEqual(conflicts, [{ line: 1, message: 'both sides changed this' }])
    assert.equal(merge('{format: 1}\n', '{format: 1, a: 2}\n', '{format: 1, b: 2}\n').conflicts.length, 1)
  })

  it('keeps prose whose lines look like comments or keys with its entry', () => {
    const odd = with_('      from the last owner\n', '      from the last owner\n      # not a comment\n\n      id: not a key\n')
    assert.equal(clean(append(entryOf('o-1', '2026-04-20'), odd), with_('range: 22', 'range: 24', odd), odd), with_('range: 22', 'range: 24', append(entryOf('o-1', '2026-04-20'), odd)))
  })

  it('keeps blank lines with the value that owns them, when what stands below is taken out', () => {
    const owning = with_('    reason: |\n      as it came\n      from the last owner\n\n', '    reason: |+\n      as it came\n\n\n')
    const gone = with_(owning.slice(owning.indexOf('  - id: run-1'), owning.indexOf('accepted:')), '', owning)
    const text = clean(gone, with_('range: 22', 'range: 24', owning), owning)
    assert.equal(readNotebook(text).entries[0]!.reason?.value, 'as it came\n\n\n')
  })

  it('merges a long text by lines in good time, however often its lines say the same', function () {
    this.timeout(5_000)
    const long = `${'  - settings:\n      fork_rebound: 3 out\n    ride:\n'.repeat(2000)}x: [\n`
    const numbered = long.split('\n').map((line, at) => (at % 40 === 0 ? `${line} # ${at}` : line)).join('\n')
    const { text, conflicts } = merge(numbered, `# one\n${numbered}`, `${numbered}# other\n`)
    assert.deepEqual([text, conflicts], [`# one\n${numbered}# other\n`, []])
  })

  it('says so where the sides fit together in the text and not in what they say', () => {
    const renamed = base.replaceAll('shock_rebound', 'shock_return')
    const { text, conflicts } = merge(base, renamed, append(entryOf('t-1', '2026-04-20', 'shock_rebound: 9 out')))
    assert.deepEqual(conflicts.length, 1)
    assert.match(conflicts[0]!.message, /an error that neither side had: .*shock_rebound/)
    assert.match(text.split('\n')[conflicts[0]!.line - 1]!, /shock_rebound: 9 out/)
    assert.doesNotMatch(text, /<<<<<<</)
  })

  it('merges two notebooks that have no common beginning', () => {
    assert.equal(clean(base, base, ''), base)
    const { conflicts } = merge('', base, with_('range: 22', 'range: 24'))
    assert.deepEqual(conflicts.map(({ message }) => message), ['both sides set range in adjusters.shock_rebound'])
  })

  it('writes marks of the size and with the names it is told', () => {
    const { text } = mergeNotebooks({ base: 'a: 1\n', ours: 'a: 2\n', theirs: 'a: 3\n' }, { size: 9, ours: 'HEAD', theirs: '' })
    assert.equal(text, '<<<<<<<<< HEAD\na: 2\n=========\na: 3\n>>>>>>>>>\n')
  })
})
