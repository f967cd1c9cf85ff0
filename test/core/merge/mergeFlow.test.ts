import assert from 'node:assert/strict'
import { merge } from './merging'

const notebook = (settings: string, rest = '') => `format: 1
adjusters:
  rebound: {on: shock, controls: rebound, counts: clicks}
  preload: {on: shock, controls: preload, counts: turns}
entries:
  - id: run-1
    settings:${settings}
    reason: why
${rest}`
/** The line of the settings after the merge, and what is in dispute. */
function merged(base: string, ours: string, theirs: string) {
  const { text, conflicts } = merge(notebook(base), notebook(ours), notebook(theirs))
  return { line: /^ {4}settings:(.*)$/m.exec(text)![1], about: conflicts.map(({ message }) => message) }
}
const joined = (base: string, ours: string, theirs: string) => {
  const { line, about } = merged(base, ours, theirs)
  assert.deepEqual(about, [])
  return line
}

describe('what is written in one line', () => {
  it('is merged pair by pair, with the blanks and commas that we wrote', () => {
    assert.equal(joined(' {rebound: 1, preload: 2}', ' {rebound: 3,   preload: 2 }', ' {rebound: 1, preload: 4}'), ' {rebound: 3,   preload: 4 }')
    assert.equal(joined(' {rebound: 1}', ' {rebound: 1 , }', ' {rebound: 2}'), ' {rebound: 2 , }')
    assert.equal(joined(' {rebound: 1}', ' {rebound:   1}', ' {rebound: 2}'), ' {rebound:   2}')
  })

  it('has pairs that the sides added each behind what it followed there', () => {
    assert.equal(joined(' {rebound: 1}', ' {preload: 2, rebound: 1}', ' {rebound: 1, tyre: 3}'), ' {preload: 2, rebound: 1, tyre: 3}')
    assert.equal(joined(' {}', ' {rebound: 1}', ' {preload: 2}'), ' {rebound: 1, preload: 2}')
  })

  it('names the pairs that both changed, each by its own key, at any depth', () => {
    assert.deepEqual(merged(' {rebound: 1, preload: 2}', ' {rebound: 3, preload: 4}', ' {rebound: 5, preload: 6}').about, ['both sides changed rebound, preload in settings of ‘run-1’'])
    assert.deepEqual(merged(' {rebound: {left: 1, right: 2}}', ' {rebound: {left: 3, right: 2}}', ' {rebound: {left: 4, right: 2}}').about, ['both sides changed left in settings of ‘run-1’'])
    assert.deepEqual(merged(' {rebound: 1, preload: 2}', ' {preload: 2}', ' {rebound: 3, preload: 2}').about, ['both sides changed rebound in settings of ‘run-1’'])
    assert.deepEqual(merged(' {rebound: 1}', ' {rebound: 1, preload: 2}', ' {rebound: 1, preload: 3}').about, ['both sides changed preload in settings of ‘run-1’'])
  })

  it('keeps a comment behind it that one side wrote, beside a value of the other; and leaves two to a person', () => {
    assert.equal(joined(' {rebound: 1}', ' {rebound: 2}', ' {rebound: 1}   # by hand'), ' {rebound: 2}   # by hand')
    assert.equal(joined(' {rebound: 1}   # one', ' {rebound: 2}   # one', ' {rebound: 1}   # other'), ' {rebound: 2}   # other')
    assert.equal(merged(' {rebound: 1}', ' {rebound: 2}   # one', ' {rebound: 1}   # other').about.length, 1)
  })

  it('is left to a person where more than pairs stands between the braces, or something is shared', () => {
    const change = (text: string) => merged(text.replace('R', '1').replace('P', '2'), text.replace('R', '3').replace('P', '2'), text.replace('R', '1').replace('P', '4')).about.length
    assert.equal(change(' {rebound: R, preload: P}'), 0)
    for (const text of [' {rebound: &a R, preload: P}', ' &a {rebound: R, preload: P}', ' {rebound: R, # a\n      preload: P}', ' {rebound: R, ? preload : P}']) assert.equal(change(text), 1, text)
  })

  it('is one with what is written in lines only where one side alone changed it', () => {
    const lines = '\n      rebound: 1\n      preload: 2'
    assert.equal(merge(notebook(' {rebound: 1, preload: 2}'), notebook(lines), notebook(' {rebound: 1, preload: 2}')).text, notebook(lines))
    assert.equal(merged(' {rebound: 1, preload: 2}', lines, ' {rebound: 3, preload: 2}').about.length, 1)
  })

  it('is alike where both added the same, and merged where they added different pairs; their comments must be alike', () => {
    const entry = (settings: string) => notebook(' {rebound: 1}', `    ride: ${settings}\n`)
    const added = (ours: string, theirs: string) => merge(notebook(' {rebound: 1}'), entry(ours), entry(theirs))
    assert.deepEqual(added('{laps: 6}', '{felt: calm}'), { text: entry('{laps: 6, felt: calm}'), conflicts: [] })
    assert.deepEqual(added('{laps: 6} # a', '{felt: calm} # a'), { text: entry('{laps: 6, felt: calm} # a'), conflicts: [] })
    assert.deepEqual(added('{laps: 6} # a', '{felt: calm} # b').conflicts.map(({ message }) => message), ['both sides set ride of ‘run-1’'])
    assert.deepEqual(added('{laps: 6}', '{laps: 7}').conflicts.map(({ message }) => message), ['both sides set laps in ride of ‘run-1’'])
  })
})
