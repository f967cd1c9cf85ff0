import assert from 'node:assert/strict'
import { cardFor } from '../../../src/core/card/cardFor'
import { cardMarkdown } from '../../../src/core/card/cardMarkdown'
import { headSvg } from '../../../src/core/card/headSvg'
import { readNotebook } from '../../../src/core/notebook/readNotebook'

const text = `format: 1
adjusters:
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20, range_is: measured, clicks_per_turn: 8, faces: up, worked_from: above, place: fork caps, tool: flat screwdriver, held_by: ball}
  shock_rebound: {on: shock, controls: rebound, counts: clicks, faces: down, worked_from: above, held_by: o_ring, condition: worn}
  side_knob: {on: shock, controls: compression, counts: clicks, faces: left, worked_from: above}
  fork_height: {on: fork, legs: [left, right], controls: fork_height, counts: mm}
entries:
  - id: base
    baseline: true
    settings: {fork_rebound: 8 out, shock_rebound: 7 out, fork_height: 5}
  - id: run-1
    settings: {fork_rebound: 10 out}
  - id: found
    as_found: true
    settings: {shock_rebound: 9 out}
`
const notebook = readNotebook(text)
const sections = (row: string, entry?: string) => Object.fromEntries(cardFor(notebook, row, entry)!.sections.map(({ heading, lines }) => [heading, lines]))

describe('the card of an adjuster', () => {
  it('says what it is, in which leg, where, with what tool, and what holds it', () => {
    const card = cardFor(notebook, 'settings/fork_rebound/right', 'run-1')!
    assert.equal(card.title, 'Fork rebound, right leg')
    assert.equal(card.subtitle, 'fork caps · flat screwdriver · held by a ball detent')
  })

  it('says where it stands in every notation its ratios allow, its share of the range, and what is left each way', () => {
    assert.deepEqual(sections('settings/fork_rebound/right', 'run-1')['Stands at'], [
      '10 clicks out', 'the same as 10 clicks in, 1 1/4 turns out', '50 % of its range of 20 clicks (measured)', '10 clicks left to turn in, 10 clicks to turn out',
    ])
  })

  it('says what changed since the entry it comes from and since the baseline, in the trade’s words', () => {
    assert.deepEqual(sections('settings/fork_rebound/left', 'run-1')['Changed'], ['since base: 2 clicks out: less rebound damping'])
    assert.deepEqual(sections('settings/fork_rebound/left', 'found')['Changed'], ['not since run-1', 'since base (baseline): 2 clicks out: less rebound damping'])
  })

  it('says which way to turn it as seen from where it is worked: a head facing down closes anticlockwise from above', () => {
    const card = cardFor(notebook, 'settings/shock_rebound', 'base')!
    assert.equal(sections('settings/shock_rebound', 'base')['Which way']![0], 'Turn it anticlockwise, as you look down on it from above, to turn it in (more rebound damping).')
    assert.deepEqual(card.drawing, { seen: 'anticlockwise', facing: 'clockwise', viewpoint: 'as you look down on it from above', text: sections('settings/shock_rebound')['Which way']![0] })
  })

  it('has one face the head where it is only seen from the side', () => {
    assert.match(sections('settings/side_knob')['Which way']![0]!, /^Face the head, which points to the left: turn it clockwise/)
    assert.equal(cardFor(notebook, 'settings/side_knob')!.drawing!.seen, undefined)
  })

  it('shows a detent that does not hold as a record over time', () => {
    assert.match(sections('settings/shock_rebound', 'found')['Over time']!.join(), /2 clicks out/)
    assert.equal(sections('settings/fork_rebound/left', 'found')['Over time'], undefined)
  })

  it('says how a head seen from the side moves before one’s eyes', () => {
    assert.equal(sections('settings/side_knob')['Which way']![2], 'As you work it from above, the side of it nearest to you moves towards the rear for more compression damping, towards the front for less compression damping.')
  })

  it('says by its figure whether it was the right way, where it has one of its own', () => {
    const way = (adjuster: string) => cardFor(readNotebook(`format: 1\nadjusters:\n  x: {on: shock, ${adjuster}}\n`), 'settings/x')!.sections[0]!.lines.at(-1)
    assert.equal(way('controls: preload, counts: steps, higher_is: less'), 'For more preload the step’s number falls; if it does not, turn it the other way.')
    assert.equal(way('controls: preload, counts: mm, higher_is: more'), 'For more preload the length rises; if it does not, turn it the other way.')
    assert.equal(way('controls: rebound, counts: dial'), 'For more rebound damping its figure rises; if it does not, turn it the other way.')
    assert.doesNotMatch(way('controls: rebound, counts: clicks')!, /the other way/)
  })

  it('comes in the order of what is asked at the machine, with the drawing beside the words it draws', () => {
    const card = cardFor(notebook, 'settings/shock_rebound', 'found')!
    assert.deepEqual(card.sections.map(({ heading }) => heading), ['Which way', 'What it does', 'Stands at', 'Changed', 'Over time', 'How to count it', 'Take care'])
    assert.deepEqual(card.sections.filter(({ drawn }) => drawn).map(({ heading }) => heading), ['Which way'])
    const markdown = cardMarkdown(card, '![drawn](x)')
    assert.ok(markdown.indexOf('*Which way*') < markdown.indexOf('![drawn](x)') && markdown.indexOf('![drawn](x)') < markdown.indexOf('*What it does*'))
  })

  it('has the other of two in one place held still, right below the way to turn it', () => {
    const two = readNotebook(`format: 1\nadjusters:\n  hex: {on: shock, controls: high_speed_compression, counts: turns}\n  screw: {on: shock, controls: low_speed_compression, counts: clicks, inside: hex}\n`)
    for (const row of ['settings/hex', 'settings/screw']) {
      const card = cardFor(two, row)!
      const at = card.sections.findIndex(({ heading }) => heading === 'Which way')
      assert.equal(card.sections[at + 1]!.heading, 'Two in one place')
      assert.match(card.sections[at + 1]!.lines.join(), /must not turn along: hold (it|that) still/)
      assert.ok(!card.sections.at(-1)!.lines.some((line) => line.includes('turn along')), 'said once')
    }
  })

  it('tells first what contradicts itself in its definition', () => {
    const wrong = readNotebook('format: 1\nadjusters:\n  x: {on: shock, controls: rebound, counts: clicks, step: 30, range: 20}\n')
    assert.deepEqual(cardFor(wrong, 'settings/x')!.sections[0], { heading: 'Mend its definition first', lines: ['Its smallest `step` of 30 is more than its whole `range` of 20 clicks.'], caution: true })
  })

  it('speaks of shocks where there are two of them', () => {
    const twins = readNotebook('format: 1\nadjusters:\n  p: {on: shock, legs: [left, right], controls: preload, counts: steps}\n')
    assert.equal(cardFor(twins, 'settings/p/left')!.title, 'P, left shock')
  })

  describe('says where it stands and how far it may go', () => {
    const stands = (adjuster: string, position: string) => {
      const read = readNotebook(`format: 1\nadjusters:\n  x: {on: shock, ${adjuster}}\nentries:\n  - {id: a, settings: {x: ${position}}}\n`)
      return cardFor(read, 'settings/x', 'a')!.sections.find(({ heading }) => heading === 'Stands at')!.lines
    }

    it('in turns, flats, mm, and the rings that show', () => assert.deepEqual(stands('controls: preload, counts: turns, range: 8, mm_per_turn: 1.5, mm_per_ring: 3', '2 in'),
      ['2 turns in', 'the same as 6 turns out, 12 flats in, 3 mm in, 3 rings out', '25 % of its range of 8 turns (the book’s)', '6 turns left to turn in, 2 turns to turn out']))
    it('in turns in, of rings that show', () => assert.deepEqual(stands('controls: preload, counts: rings, range: 4, mm_per_turn: 1.5, mm_per_ring: 3', '3').slice(0, 2), ['3 rings out', 'the same as 1 ring in, 2 turns in, 12 flats in, 3 mm in']))
    it('in steps of a cam, whichever way they are numbered', () => {
      assert.deepEqual(stands('controls: preload, counts: steps, range: 7, higher_is: more', 'step 3'), ['step 3', 'of 7 steps (the book’s)', '4 left for more preload, 2 for less preload'])
      assert.deepEqual(stands('controls: preload, counts: steps, range: 7, range_is: measured, higher_is: less', 'step 3'), ['step 3', 'of 7 steps (counted here)', '2 left for more preload, 4 for less preload'])
    })
    it('in the singular and in fractions', () => assert.equal(stands('controls: rebound, counts: turns, range: 1.75', '1').at(-1), '1 turn left to turn in, 3/4 turn to turn out'))
    it('without a share of what begins anywhere', () => assert.deepEqual(stands('controls: preload, counts: mm, higher_is: more, range: 8', '77.5'), ['77.5 mm', 'it goes over 8 mm (the book’s)']))
    it('with a word where nobody counted how far it goes, save for what is only measured', () => {
      assert.deepEqual(stands('controls: rebound, counts: clicks', '7'), ['7 clicks out', 'how far it goes is not noted: count it once from end to end'])
      assert.deepEqual(stands('controls: preload, counts: mm, higher_is: less', '186'), ['186 mm', 'how far it goes is not noted: measure it once at both its ends'])
      assert.deepEqual(stands('controls: air_pressure, counts: bar', '10').slice(-1), ['10 bar'])
    })
  })

  it('turns nothing on what is only measured, and never says that preload changes a rate', () => {
    assert.equal(sections('settings/fork_height/left', 'base')['Which way'], undefined)
    const preload = readNotebook('adjusters:\n  p: {on: fork, controls: preload, counts: turns}\n')
    assert.match(cardMarkdown(cardFor(preload, 'settings/p')!), /rate stays the same/)
  })

  it('always ends with the cautions that belong to it', () => {
    for (const slot of ['fork_rebound/left', 'shock_rebound', 'fork_height/right']) assert.equal(cardFor(notebook, `settings/${slot}`)!.sections.at(-1)!.caution, true)
  })

  it('is text in Markdown and in the drawing, whatever a file says', () => {
    const hostile = readNotebook('adjusters:\n  x: {on: fork, controls: rebound, counts: clicks, label: "[a](command:x) <img src=x> `b`", place: "</svg><script>"}\n')
    const card = cardFor(hostile, 'settings/x')!
    const markdown = cardMarkdown(card)
    assert.doesNotMatch(markdown, /(?<!\\)\[a|(?<!\\)<img|(?<!\\)<script/)
    assert.doesNotMatch(headSvg({ ...card.drawing!, text: '"><script>', viewpoint: '<b>' }), /<script>|<b>/)
  })

  it('has none for an adjuster or a row that is not there', () => {
    for (const row of ['settings/none', 'settings/fork_rebound/middle', 'nothing', 'settings/']) assert.equal(cardFor(notebook, row, 'base'), undefined)
  })
})
