import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { controls } from '../../src/core/adjusters/controls'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../src/core/rules/checkNotebook'
import { applyChanges } from '../../src/core/text'
import { codeActions, type CodeAction } from '../../src/language/codeActions'
import { aNotebook } from './aNotebook'
import { marked } from './marked'

function actionsAt(source: string): { text: string; actions: CodeAction[] } {
  const { text, offset } = marked(source)
  const notebook = readNotebook(text)
  return { text, actions: codeActions(notebook, checkNotebook(notebook), { start: offset, end: offset }) }
}

/** What is offered where `|` stands. */
function check(source: string, expected: string[]) {
  assert.deepEqual(actionsAt(source).actions.map(({ title }) => title), expected)
}

/** How the text ends after taking an offer, the cursor as `|` where it is put. */
function checkTaken(source: string, title: string, expected: string) {
  const { text, actions } = actionsAt(source)
  const action = actions.find((each) => each.title === title)
  assert.ok(action, `‘${title}’ is offered among ${actions.map((each) => each.title).join('; ')}`)
  const after = applyChanges(text, action.changes)
  const shown = action.cursor === undefined ? after : `${after.slice(0, action.cursor)}|${after.slice(action.cursor)}`
  assert.equal(shown.slice(-expected.length), expected)
}

const entry = (lines: string) => `${aNotebook}  - id: run-2\n${lines.replace(/^(?=.)/gm, '    ')}`

describe('codeActions', () => {
  describe('the repairs that findings carry', () => {
    it('convert a count from the other end', () => checkTaken(entry('settings: {shock_rebound: |15 in}\nreason: x\n'), 'Write ‘7 clicks out’', '{shock_rebound: 7 clicks out}\n    reason: x\n'))
    it('convert a count in another unit', () => checkTaken(entry('settings: {shock_rebound: |1 turn out}\nreason: x\n'), 'Write ‘8 clicks out’', '{shock_rebound: 8 clicks out}\n    reason: x\n'))
    it('match the other leg', () => checkTaken(entry('settings: {fork_rebound: {left: |2 out}}\nreason: x\n'), 'Write ‘3 out’ for the left leg', '{fork_rebound: {left: 3 out}}\n    reason: x\n'))
    it('take the nearest name', () => checkTaken(entry('settings: {shock_reb|ond: 7}\n'), 'Write ‘shock_rebound’', '{shock_rebound: 7}\n'))
    it('are meant where there is but one', () => assert.equal(actionsAt(entry('settings: {shock_reb|ond: 7}\n')).actions[0]!.preferred, true))
    it('are not meant where there are several', () => assert.equal(actionsAt(entry('settings: {fork_rebound: {left: |2 out}}\n')).actions[0]!.preferred, false))
    it('are offered only where the finding stands', () => check(entry('sett|ings: {shock_rebond: 7}\n'), []))
  })

  describe('adding a reason', () => {
    it('puts it where it belongs, with the cursor behind it', () =>
      checkTaken(`${aNotebook}  - id: ru|n-2\n    settings: {shock_rebound: 9}\n    ride: {laps: 3}\n`, 'Add a reason', '    settings: {shock_rebound: 9}\n    reason: |\n    ride: {laps: 3}\n'))
    it('is what is meant', () => assert.equal(actionsAt(`${aNotebook}  - id: ru|n-2\n    settings: {shock_rebound: 9}\n`).actions[0]!.preferred, true))
    it('fills one that is empty', () => checkTaken(`${aNotebook}  - id: ru|n-2\n    settings: {shock_rebound: 9}\n    reason:\n`, 'Add a reason', '    reason: |\n'))
    it('fills one of empty quotes', () => checkTaken(`${aNotebook}  - id: ru|n-2\n    settings: {shock_rebound: 9}\n    reason: ""\n`, 'Add a reason', '    reason: "|"\n'))
    it('puts it in quotes inside of braces, where a comma would cut it', () => checkTaken(`${aNotebook}  - {id: ru|n-2, settings: {shock_rebound: 9}}\n`, 'Add a reason', '{id: run-2, settings: {shock_rebound: 9}, reason: "|"}\n'))
    it('keeps line ends', () => checkTaken(`${aNotebook}  - id: ru|n-2\n    settings: {shock_rebound: 9}\n`.replaceAll('\n', '\r\n'), 'Add a reason', '9}\r\n    reason: |\r\n'))
    it('adds the one an acceptance lacks', () => checkTaken(`${aNotebook}accepted:\n  - finding: |legs-differ\n    entry: found\n`, 'Add the reason', '  - finding: legs-differ\n    entry: found\n    reason: |\n'))
    it('adds it inside of braces', () => checkTaken(`${aNotebook}accepted:\n  - {finding: |legs-differ, entry: found}\n`, 'Add the reason', '  - {finding: legs-differ, entry: found, reason: "|"}\n'))
    it('is not offered where an anchor shares the entry', () => check('adjusters:\n  a: {on: shock, controls: rebound, counts: clicks}\nentries:\n  - {id: f, settings: {a: 1}}\n  - &x {id: |g, settings: {a: 2}}\nnotes: *x\nformat: 1\n', ['Accept no-reason in ‘g’, with a reason']))
  })

  describe('accepting', () => {
    it('writes what is accepted, and leaves the reason to be written', () =>
      checkTaken(aNotebook.replace('left: 3 out', 'left: 3| out').replace('right: 6 out}', 'right: 6 out}').replace('{left: 3| out, right: 6 out}', '{left: 3 out, right: |6 out}'),
        'Accept legs-differ in ‘found’, with a reason', 'accepted:\n  - finding: legs-differ\n    entry: found\n    about: fork_rebound/right\n    reason: |\n'))
    it('adds to those that stand there', () =>
      checkTaken(`${aNotebook.replace('right: 6 out', 'right: |6 out')}accepted:\n  - {finding: no-reason, entry: run-1, reason: x}\n`, 'Accept legs-differ in ‘found’, with a reason',
        '  - finding: legs-differ\n    entry: found\n    about: fork_rebound/right\n    reason: |\n'))
    it('says that it is for the whole notebook where the finding has no entry', () => check(`${aNotebook}som|ething: 1\n`, ['Accept unknown-key everywhere in this notebook, with a reason']))
    it('is not offered for what reading finds', () => check(`${aNotebook}notes: |[]\n`, []))
    it('takes one out that accepts nothing any more', () =>
      checkTaken(`${aNotebook}accepted:\n  - {finding: legs-differ, entry: found, reason: x}\n  - {finding: |no-reason, entry: found, reason: x}\n`, 'Take this acceptance out', 'accepted:\n  - {finding: legs-differ, entry: found, reason: x}\n'))
    it('takes the list out with the only one', () => checkTaken(`${aNotebook}accepted:\n  - {finding: |no-reason, entry: found, reason: x}\n`, 'Take this acceptance out', 'reason: brought to the left\n'))
  })

  describe('a fact that is missing', () => {
    it('is noted on the adjuster, with the cursor where its number goes', () => {
      const { text, actions } = actionsAt(entry('settings: {fork_rebound: |1 turn out}\nreason: x\n'))
      const action = actions.find(({ title }) => title === 'Note `clicks_per_turn` on Fork rebound, to convert it')
      assert.ok(action)
      const after = applyChanges(text, action.changes)
      assert.equal(`${after.slice(0, action.cursor)}|${after.slice(action.cursor)}`.split('\n')[3]!.slice(-43), 'tool: flat screwdriver, clicks_per_turn: |}')
    })
  })

  describe('an adjuster that is set and not defined', () => {
    const defines = (source: string) => actionsAt(source).actions.map(({ title }) => title).filter((title) => title.startsWith('Define'))
    /** What is written under `adjusters` by taking an offer, the cursor as `|`. */
    const defined = (source: string, title: string) => {
      const { text, actions } = actionsAt(source)
      const action = actions.find((each) => each.title === title)
      assert.ok(action, `‘${title}’ is offered among ${actions.map((each) => each.title).join('; ')}`)
      const after = applyChanges(text, action.changes)
      const findings = checkNotebook(readNotebook(after))
      assert.ok(!findings.some(({ code }) => code === 'unknown-adjuster'))
      const shown = action.cursor === undefined ? after : `${after.slice(0, action.cursor)}|${after.slice(action.cursor)}`
      return { line: shown.slice(shown.indexOf('left_air:'), shown.indexOf('entries:')).split('\n')[1]!.trim(), codes: findings.map(({ code }) => code).filter((code) => code === 'wrong-shape') }
    }

    it('is defined at once where its name and its value say all there is to say', () => {
      const source = entry('settings: {shock_comp|ression: 9 clicks out}\n')
      assert.deepEqual(defines(source), ['Define ‘shock_compression’: compression damping, in clicks'])
      assert.equal(actionsAt(source).actions.find(({ title }) => title.startsWith('Define'))!.preferred, true)
      assert.deepEqual(defined(source, 'Define ‘shock_compression’: compression damping, in clicks'), { line: 'shock_compression: {on: shock, controls: compression, counts: clicks}', codes: [] })
    })
    it('is asked what it counts in where no unit is written', () =>
      assert.deepEqual(defined(entry('settings: {shock_comp|ression: 9 out}\n'), 'Define ‘shock_compression’ as compression damping'), { line: 'shock_compression: {on: shock, controls: compression, counts: |}', codes: ['wrong-shape'] }))
    it('is asked whether it is in both legs where one value is written at the fork', () => {
      const source = entry('settings: {fork_comp|ression: 9 clicks out}\n')
      assert.deepEqual(defines(source), ['Define ‘fork_compression’, in both legs, as compression damping', 'Define ‘fork_compression’, just one, as compression damping'])
      assert.equal(defined(source, defines(source)[0]!).line, 'fork_compression: {on: fork, legs: [left, right], controls: compression, counts: clicks}')
      assert.equal(defined(source, defines(source)[1]!).line, 'fork_compression: {on: fork, controls: compression, counts: clicks}')
    })
    it('is asked where it sits first, where its name says neither', () =>
      assert.deepEqual(defined(entry('settings: {red_kn|ob: 9}\n'), 'Define ‘red_knob’ as steering damping'), { line: 'red_knob: {on: |, controls: steering_damper}', codes: ['wrong-shape'] }))
    it('is offered as each thing it can be where its name leaves a doubt', () => {
      assert.deepEqual(defines(entry('settings: {fork_s|ide: 2 bar}\n')), ['Define ‘fork_side’ as air pressure, main chamber', 'Define ‘fork_side’ as air pressure, balance chamber'])
      assert.equal(defines(entry('settings: {red_kn|ob: 9}\n')).length, controls.length)
    })
    it('is offered beside the name that was probably meant', () =>
      assert.deepEqual(actionsAt(entry('settings: {shock_re|boun: 9 clicks out}\n')).actions.map(({ title }) => title).slice(0, 2), ['Write ‘shock_rebound’', 'Define ‘shock_reboun’ as spring preload']))
    it('is not offered for a name that could be no key, nor where a list stands in place of the adjusters', () => {
      assert.deepEqual(defines(entry('settings: {"knob, l|eft": 9}\n')), [])
      assert.deepEqual(defines('format: 1\nadjusters: []\nentries:\n  - settings: {shock_re|bound: 9 clicks out}\n'), [])
    })
    it('is defined in a notebook that has no adjusters yet', () =>
      checkTaken('format: 1\nentries:\n  - settings: {shock_re|bound: 9 clicks out}\n', 'Define ‘shock_rebound’: rebound damping, in clicks', 'adjusters:\n  shock_rebound: {on: shock, controls: rebound, counts: clicks}\n'))
    it('is defined with the line ends of Windows', () =>
      checkTaken('format: 1\r\nentries:\r\n  - settings: {shock_re|bound: 9 clicks out}\r\n', 'Define ‘shock_rebound’: rebound damping, in clicks', 'adjusters:\r\n  shock_rebound: {on: shock, controls: rebound, counts: clicks}\r\n'))
  })

  it('offers only what is carried in a newer format', () => {
    const { actions } = actionsAt(aNotebook.replace('format: 1', 'format: |2'))
    assert.deepEqual(actions.map(({ title }) => title), [])
  })
  it('offers nothing in a broken text but what is carried', () => check(`${aNotebook}accepted: |[\n`, []))

  describe('on every wrong notebook of the rules', () => {
    const folder = 'test/fixtures/rules'
    const read = readdirSync(folder).filter((name) => name.endsWith('.yaml')).map((name) => {
      const notebook = readNotebook(readFileSync(`${folder}/${name}`, 'utf8'))
      return { name, notebook, findings: checkNotebook(notebook) }
    })
    // What can be mended without knowing more than the notebook does, or by a person's own words.
    const mendable = [
      'fork-height-uneven', 'legs-differ', 'wrong-unit', 'fraction-of-step', 'sag-lengths-swapped', 'no-reason',
      'entry-without-id', 'duplicate-entry', 'parent-loop', 'accepted-without-reason', 'accepted-for-nothing',
    ]
    for (const code of mendable) {
      it(`has something to do about ${code}`, () => {
        const found = read.flatMap(({ notebook, findings }) => findings.filter((finding) => finding.code === code).map((finding) => ({ notebook, finding })))
        assert.ok(found.length > 0)
        for (const { notebook, finding } of found) {
          const actions = codeActions(notebook, [finding], finding.range).filter(({ title }) => !title.startsWith('Accept '))
          assert.ok(actions.length > 0, finding.message)
        }
      })
    }

    it('leaves a text that can be read', () => {
      for (const { name, notebook, findings } of read.filter((each) => !each.notebook.broken)) {
        for (const { title, changes } of codeActions(notebook, findings, { start: 0, end: notebook.text.length })) {
          const after = applyChanges(notebook.text, changes)
          const now = readNotebook(after)
          assert.equal(now.broken, undefined, `${name}: ${title}`)
          assert.ok(!after.includes('\ue000'))
        }
      }
    })
  })
})
