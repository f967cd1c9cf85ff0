import assert from 'node:assert/strict'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { checkNotebook } from '../../../src/core/rules/checkNotebook'
import { complete } from '../../../src/language/completion/complete'
import type { Completion } from '../../../src/language/completion/completion'
import { aNotebook } from '../aNotebook'
import { marked } from '../marked'

function itemsAt(source: string): { text: string; offset: number; items: Completion[]; range: { start: number; end: number } } {
  const { text, offset } = marked(source)
  const notebook = readNotebook(text)
  const found = complete(notebook, offset, checkNotebook(notebook), readNotebook(aNotebook))
  return { text, offset, items: found?.items ?? [], range: found?.range ?? { start: offset, end: offset } }
}

/** What is offered, best first, as `label` or `label (detail)`; a source may end in `…` to leave the rest open. */
function check(source: string, expected: string[]) {
  const wantsDetail = expected.some((each) => each.includes('('))
  const found = itemsAt(source).items.map(({ label, detail }) => (wantsDetail ? `${label} (${detail ?? ''})` : label))
  const open = expected.at(-1) === '…'
  assert.deepEqual(open ? found.slice(0, expected.length - 1) : found, open ? expected.slice(0, -1) : expected)
}

/** The line, or lines, that come of taking an offer; `¦` where the cursor goes. */
function checkTaken(source: string, label: string, expected: string) {
  const { text, items, range } = itemsAt(source)
  const item = items.find((each) => each.label === label)
  assert.ok(item, `‘${label}’ is offered`)
  const plain = item.snippet ? item.insert.replace(/\$(\d|\{\d\})/g, '¦').replace(/\\([\\$}])/g, '$1') : item.insert
  const result = text.slice(0, range.start) + plain + text.slice(range.end)
  const from = source.lastIndexOf('\n', source.indexOf('|')) + 1
  assert.equal(result.slice(from, from + expected.length), expected)
}

/** Below the invented machine. */
const below = (lines: string) => aNotebook + lines
const entry = (lines: string) => below(`  - id: run-2\n${lines.replace(/^/gm, '    ')}`)
const setting = (value: string) => entry(`settings: {${value}`)

describe('complete', () => {
  describe('keys', () => {
    it('offers the keys of the notebook that are missing', () => check('format: 1\n|', ['machine', 'rider', 'adjusters', 'entries', '…']))
    it('offers the keys of a group, with what was typed', () => check('machine:\n  name: x\n  fr|', ['use', 'service_manual', 'front', 'rear', '…']))
    it('offers keys inside of braces', () => check('rider: {name: x, |}', ['kitted_mass', 'notes']))
    it('offers keys from every part of a group', () => check('machine: {front: {|', ['spring_rate', 'air', 'travel', '…']))
    it('offers what makes an adjuster', () => check('adjusters:\n  a: {on: fork, |', ['label', 'legs', 'controls', 'counts', '…']))
    it('offers what it can sit inside of: what is turned, and not itself', () =>
      check(aNotebook.replace('clicks_per_turn: 8}', 'inside: |}'), ['fork_rebound', 'fork_preload', 'shock_cam']))
    it('offers nothing among sentences', () => check('notes: some |words', []))
    it('offers nothing in a comment', () => check('machine:\n  # fr|', []))
    it('tells what a key is for', () => {
      const about = itemsAt('rider: {|').items.find(({ label }) => label === 'kitted_mass')?.about
      assert.match(about ?? '', /helmet/)
    })
    it('puts a value behind a key', () => checkTaken('machine:\n  na|', 'name', '  name: '))
    it('begins a group on the next line', () => checkTaken('machine:\n  fr|', 'front', '  front:\n    '))
    it('begins a group in braces inside of braces', () => checkTaken('machine: {fr|}', 'front', 'machine: {front: {¦}}'))
    it('begins a list of groups with a dash', () => checkTaken('format: 1\nent|', 'entries', 'entries:\n  - '))
    it('begins a group of an item under its keys', () => checkTaken('entries:\n  - id: a\n    set|', 'settings', '    settings:\n      '))
    it('begins a group right behind the dash', () => checkTaken('entries:\n  - set|', 'settings', '  - settings:\n      '))
    it('makes room for two lengths', () => checkTaken('entries:\n  - sag: {front: {bi|', 'bike', '  - sag: {front: {bike: [¦, ¦]'))
    it('says yes where there is nothing else to say', () => checkTaken('entries:\n  - id: a\n    as|', 'as_found', '    as_found: true'))
    it('leaves the colon alone that stands there', () => checkTaken('machine:\n  na|: x', 'name', '  name: x'))
    it('keeps the line ends of the text', () => checkTaken('machine:\r\n  fr|', 'front', '  front:\r\n    '))
    it('shapes a new adjuster', () => checkTaken('adjusters:\n  |', 'new adjuster', '  ¦:\n    on: ¦\n    controls: ¦\n    counts: ¦'))
    it('shapes a new entry behind its dash', () => checkTaken('entries:\n  - |', 'new entry', '  - id: ¦\n    date: '))
    it('shapes a new entry with its dash', () => checkTaken(below('  |'), 'new entry', '  - id: ¦\n    date: '))
  })

  describe('settings', () => {
    it('offers the adjusters, first those nobody knows the position of, with what they count in and where they stand', () =>
      check(entry('settings:\n  |'), [
        'shock_length (mm · not recorded yet)', 'shock_cam (steps · not recorded yet)', 'left_air (psi · not recorded yet)',
        'fork_rebound (clicks out · stands at 3 out)', 'fork_preload (turns in · stands at 4 turns in)', 'shock_rebound (clicks out · stands at 7)',
      ]))
    it('tells legs apart that differ', () =>
      check(aNotebook.replace('settings: {fork_rebound: {right: 3 out}}', 'settings: {fork_p|: 1}'), ['shock_length (mm · not recorded yet)', 'shock_cam (steps · not recorded yet)', 'left_air (psi · not recorded yet)', 'fork_rebound (clicks out · stands at left 3 out, right 6 out)', '…']))
    it('leaves out what is set here already', () => check(setting('fork_rebound: 2 out, shock_rebound: 6, |'), ['shock_length', 'shock_cam', 'left_air', 'fork_preload']))
    it('sees what is set further down', () => check(entry('settings:\n  |\n  shock_cam: step 2\n  left_air: 90'), ['shock_length', 'fork_rebound', 'fork_preload', 'shock_rebound']))
    it('works where the brace is not closed and more follows', () => check(aNotebook.replace('settings: {fork_rebound: {right: 3 out}}', 'settings: {fork|'), ['shock_length', 'shock_cam', 'left_air', 'fork_rebound', '…']))
    it('borrows the adjusters of the last good text where its own are lost', () => check('adjusters: [\nentries:\n  - settings: {|', ['fork_rebound', 'fork_preload', '…']))
    it('offers the legs of a pair', () => check(setting('fork_rebound: {|'), ['left (the left leg · stands at 3 out)', 'right (the right leg · stands at 3 out)']))
    it('offers the other leg only', () => check(setting('fork_rebound: {left: 2 out, |'), ['right']))
    it('offers the one leg that there is', () => check(setting('left_air: {|'), ['left']))
    it('offers no leg where there are none', () => check(setting('shock_rebound: {|'), []))
    it('offers no key under an adjuster that is not known', () => check(setting('nothing: {|'), []))
    it('writes the adjuster with its colon', () => checkTaken(setting('fork_re|'), 'fork_rebound', '    settings: {fork_rebound: '))
  })

  describe('positions', () => {
    it('offers where it stands, a step either way with what it gives, and how it is counted', () =>
      check(setting('shock_rebound: |'), [
        '7 (as in found)', '6 (1 click in: more rebound damping)', '8 (1 click out: less rebound damping)', '… out (Shock rebound)', '… clicks out (Shock rebound)',
      ]))
    it('offers a pair leg by leg too', () => check(setting('fork_rebound: |'), ['3 out', '2 out', '4 out', '… out', '… clicks out', '{left, right}']))
    it('writes a unit where it was written before', () => check(setting('fork_preload: |'), ['4 turns in', '3 3/4 turns in', '4 1/4 turns in', '… turns in', '… in', '{left, right}']))
    it('offers no step beyond the stop', () => check(aNotebook.replace('shock_rebound: 7\n', 'shock_rebound: 0\n') + '  - settings: {shock_rebound: |', ['0', '1', '… out', '… clicks out']))
    it('offers no step beyond the range', () => check(aNotebook.replace('shock_rebound: 7\n', 'shock_rebound: 22\n') + '  - settings: {shock_rebound: |', ['22', '21', '… out', '… clicks out']))
    it('offers what the other leg was set to', () => check(setting('fork_rebound: {left: 5 out, right: |'), ['5 out (like the left leg)', '3 out (as in run-1)', '…']))
    it('offers only how it is counted where nobody knows the position', () => check(setting('shock_cam: |'), ['step …']))
    it('offers every notation of a number, other ones converted', () =>
      check(setting('shock_rebound: 2|'), ['2 (is 2 clicks out)', '2 out (Shock rebound)', '2 clicks out (Shock rebound)', '2 in (is 20 clicks out)', '2 turns out (is 16 clicks out)']))
    it('offers turns, flats and mm of preload', () =>
      check(setting('fork_preload: 6|'), ['6 (is 6 turns in)', '6 turns in (Fork preload)', '6 in (Fork preload)', '6 out (is 9 turns in)', '6 flats in (is 1 turn in)', '6 mm in (is 6 turns in)']))
    it('offers no notation that lies beyond the range', () => check(setting('shock_rebound: 21|'), ['21', '21 out', '21 clicks out', '21 in']))
    it('keeps a fraction as it is typed', () => check(setting('fork_preload: 1 3/4|'), ['1 3/4', '1 3/4 turns in', '1 3/4 in', '…']))
    it('keeps a decimal as it is typed', () => check(setting('fork_preload: 1.50|'), ['1.50', '1.50 turns in', '1.50 in', '…']))
    it('offers pressures converted', () => check(setting('left_air: 6|'), ['6 (is 6 psi)', '6 psi (Left air)', '6 bar (is 87.023 psi)', '6 kPa (is 0.87 psi)']))
    it('offers no bare number where a word is typed', () => check(setting('shock_rebound: 2 c|'), ['2 out', '…']))
    it('offers a step by its number', () => check(setting('shock_cam: 4|'), ['4', 'step 4']))
    it('writes the converted count', () => checkTaken(setting('shock_rebound: 2 i|'), '2 in', '    settings: {shock_rebound: 20 clicks out'))
    it('puts the cursor before the unit', () => checkTaken(setting('shock_rebound: |'), '… out', '    settings: {shock_rebound: ¦ out'))
    it('replaces the whole value', () => checkTaken(setting('shock_rebound: 2| clicks in, left_air: 3}'), '2 out', '    settings: {shock_rebound: 2 out, left_air: 3}'))
    it('puts the blank behind the colon', () => checkTaken(entry('settings:\n  shock_rebound:|'), '7', '      shock_rebound: 7'))
    it('offers nothing for an adjuster that is not known', () => check(setting('nothing: |'), []))
  })

  describe('references', () => {
    it('offers the entries to come from, the nearest first', () => check(entry('from: |'), ['run-1 (2026-04-18)', 'found (2026-04-18)']))
    it('offers none that comes from this one', () => check(aNotebook.replace('as_found: true', 'from: |'), []))
    it('keeps the quotes of an id', () => checkTaken('entries:\n  - id: "9"\n  - id: b\n    from: |', '9', '    from: "9"'))
    it('quotes an id that braces would cut', () => checkTaken('entries:\n  - id: a, b\n  - {id: c, from: |', 'a, b', '  - {id: c, from: "a, b"'))
    it('offers the entries for an acceptance, first those with the finding', () => check(below('accepted:\n  - finding: legs-differ\n    entry: |'), ['found', 'run-1']))
    it('offers the findings to accept, first those found here', () => check(below('accepted:\n  - finding: |'), ['legs-differ (warning · found here)', '…']))
    it('offers the rules as keys', () => check(below('rules:\n  le|'), ['legs-differ', 'fork-height-uneven', '…']))
    it('offers no rule twice', () => check(below('rules: {legs-differ: off, |'), ['fork-height-uneven', 'adjuster-crept', '…']))
    it('offers what an acceptance can be about', () => check(below('accepted:\n  - about: |'), ['fork_rebound', 'fork_rebound/left', 'fork_rebound/right', '…']))
    it('offers what a remark can be about', () => checkTaken(entry('remarks: {fork_rebound/l|'), 'fork_rebound/left', '    remarks: {fork_rebound/left: '))
  })

  describe('choices and units', () => {
    it('offers how loudly a rule speaks', () => check(below('rules:\n  legs-differ: |'), ['error (a fault)', 'warning (worth a look)', 'info (said quietly)', 'off (not said at all)']))
    it('offers what can be controlled, with its words', () => check('adjusters:\n  a: {controls: |', ['preload (spring preload)', 'rebound (rebound damping)', 'compression (compression damping)', '…']))
    it('offers verdicts', () => check(entry('verdict: |'), ['keep', 'go back', 'try again']))
    it('offers yes and no', () => check(entry('as_found: |'), ['true', 'false']))
    it('offers the legs as a list', () => check('adjusters:\n  a:\n    legs: |', ['[left, right]', '[left]', '[right]']))
    it('offers the legs in a list', () => check('adjusters:\n  a: {legs: [left, |', ['left', 'right']))
    it('offers the legs under dashes', () => check('adjusters:\n  a:\n    legs:\n      - |', ['left', 'right']))
    it('offers the format', () => check('format: |', ['1']))
    it('offers units behind a number, first what a bare one is in', () =>
      check('rider: {kitted_mass: 84|', ['84 kg (mass; what a bare number is in)', '84 lb (mass)']))
    it('offers spring rates', () => check('machine:\n  rear:\n    spring_rate: 95 |', ['95 N/mm', '95 kgf/mm', '95 lbf/in']))
    it('offers lengths in a reading', () => check('entries:\n  - sag: {front: {bike: [128, 12|', ['12 mm', '12 cm', '12 inch', '12 ft', '12 m']))
    it('offers lengths and shares in a window', () => check('machine: {front: {targets: {static_sag: [8|', ['8 mm', '8 cm', '8 inch', '8 ft', '8 m', '8 %']))
    it('offers no unit before a number', () => check('rider: {kitted_mass: |', []))
    it('offers today as a date', () => checkTaken(entry('date: |'), 'today', '    date: ¦CURRENT_YEAR'.replace('¦CURRENT_YEAR', '$CURRENT_YEAR')))
  })
})
