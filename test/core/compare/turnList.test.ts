import assert from 'node:assert/strict'
import fc from 'fast-check'
import { headSvg } from '../../../src/core/card/headSvg'
import { turnList } from '../../../src/core/compare/turnList'
import { turnListText } from '../../../src/core/compare/turnListText'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import type { Notebook } from '../../../src/core/notebook/notebook'
import { ternSketch } from '../derived/ternSketch'
import { architectures, machinesOf, trials } from './randomStates'
import { standingIn, turnByText, type Machine } from './theMachine'

const runs = 15
const entry = (notebook: Notebook, key: string) => notebook.entries.find((each) => each.key === key)!
const between = (notebook: Notebook, from: string, to: string) => turnList({ notebook, entry: entry(notebook, from), file: 'x' }, { notebook, entry: entry(notebook, to), file: 'x' })

/** Words show three digits behind the point. */
function assertStands(machine: Machine, wanted: Machine, near: number): void {
  assert.deepEqual([...machine.keys()], [...wanted.keys()])
  for (const [slot, count] of wanted) assert.ok(Math.abs(machine.get(slot)! - count) < near, `${slot} stands at ${machine.get(slot)} and not at ${count}`)
}

describe('the turn list', () => {
  for (const architecture of architectures) {
    it(`brings any state of ${architecture.key} to any other, by its printed words alone, and back again`, () => {
      let turned = 0
      fc.assert(fc.property(machinesOf(architecture), ({ notebook }) => {
        const [a, b] = [standingIn(notebook, entry(notebook, 'a')), standingIn(notebook, entry(notebook, 'b'))]
        const there = between(notebook, 'a', 'b')
        assert.deepEqual(there.cannot, [])
        turned += there.groups.length
        const atB = turnByText(a, turnListText(there), notebook)
        assertStands(atB, b, 0.002)
        assertStands(turnByText(atB, turnListText(between(notebook, 'b', 'a')), notebook), a, 0.004)
      }), trials(runs))
      assert.ok(turned > runs, 'there was something to turn')
    })
  }

  it('says in its figures what it says in words, and names the end it comes to', () => {
    fc.assert(fc.property(fc.constantFrom(...architectures).chain(machinesOf), ({ notebook }) => {
      const [a, b] = [standingIn(notebook, entry(notebook, 'a')), standingIn(notebook, entry(notebook, 'b'))]
      for (const { row, by, toCount } of between(notebook, 'a', 'b').groups.flatMap(({ steps }) => steps.flatMap(({ turns }) => turns))) {
        const slot = row.slice('settings/'.length)
        assert.ok(Math.abs(a.get(slot)! + by - toCount) < 1e-9)
        assert.equal(toCount, b.get(slot))
        assert.ok(Math.abs(by) > 1e-6, 'what stays is left out')
      }
    }), trials(runs))
  })

  it('is empty from a state to itself', () => {
    fc.assert(fc.property(fc.constantFrom(...architectures).chain(machinesOf), ({ notebook }) => {
      const list = between(notebook, 'a', 'a')
      assert.deepEqual([list.groups, list.cannot, list.cautions], [[], [], []])
      assert.match(turnListText(list), /Nothing to turn: it stands there already\./)
    }), trials(runs))
  })

  const list = (text: string, from = 'as-found', to = 'run-1') => between(readNotebook(text), from, to)
  const tern = ternSketch.replace(/settings: \{fork_rebound: 3 out\}/, 'settings: {fork_rebound: 5 out, shock_rebound: 4 out, fork_preload: 2 in}')

  it('goes from the stand to the fork, the shock, the chassis and the tyres', () => {
    const { groups } = list(tern)
    assert.deepEqual(groups.map(({ key }) => key), ['stand', 'fork', 'shock'])
    assert.deepEqual(groups[0]!.first, ['Put the machine on a stand that holds it safely, on level ground.'])
    assert.deepEqual(groups[1]!.steps.map(({ label }) => label), ['Fork preload', 'Fork rebound'], 'preload first: its hex carries the screw in its middle along')
  })

  it('puts both legs into one step, the left one first, each with its own movement', () => {
    const [, rebound] = list(tern).groups[1]!.steps
    assert.deepEqual(rebound!.turns.map(({ legWords, amount, from, to }) => [legWords, amount, from, to]), [
      ['left leg', '2 clicks out', '3 clicks out', '5 clicks out'],
      ['right leg', '1 click in', '6 clicks out', '5 clicks out'],
    ])
    assert.equal(rebound!.alike, false)
    assert.deepEqual(rebound!.turns.map(({ drawing, rotation }) => [drawing!.purpose, drawing!.facing === rotation]), [['turn out', true], ['turn in', true]], 'each is drawn the way it is turned')
    assert.equal(list(tern).groups[1]!.steps[0]!.alike, true)
  })

  it('says which way as it is seen from where one works, and how to check', () => {
    const shock = list(tern).groups[2]!.steps[0]!
    assert.equal(shock.place, 'shock foot')
    assert.deepEqual(shock.turns[0]!.drawing, { seen: 'anticlockwise', facing: 'anticlockwise', viewpoint: 'as you look down on it from above', purpose: 'turn in', text: shock.turns[0]!.how })
    assert.match(headSvg(shock.turns[0]!.drawing!), />turn in:<.*>anticlockwise</)
    assert.deepEqual([shock.turns[0]!.rotation, shock.turns[0]!.view, shock.turns[0]!.how], ['anticlockwise', 'back', 'Turn it anticlockwise, as you look down on it from above, to turn it in (more rebound damping).'])
    assert.equal(shock.turns[0]!.check, 'Check: 4 clicks out from closed, and 18 more to the other end.')
    assert.ok(shock.cautions.includes('The shock is gas-charged: never open it or its reservoir.'))
  })

  it('says first what lies beyond its range, and does not turn it', () => {
    const beyond = list(tern.replace('shock_rebound: 4 out', 'shock_rebound: 25 out'))
    assert.equal(beyond.groups.some(({ key }) => key === 'shock'), false)
    assert.deepEqual(beyond.cannot, [{
      row: 'settings/shock_rebound', label: 'Shock rebound', legWords: '', place: 'shock foot',
      why: 'it should stand at 25 clicks out, beyond its range of 22 clicks by the book',
      instead: 'Do not force it: go as far as it turns freely, count, and note the range as measured.',
    }])
    const text = turnListText(beyond)
    assert.ok(text.indexOf('Cannot be reached by turning') < text.indexOf('Take care') && text.indexOf('Take care') < text.indexOf('[ ]'))
  })

  it('says how to come to a position whose start is unknown or cannot be true: from its end', () => {
    for (const start of ['', 'shock_rebound: 30 out', 'shock_rebound: soft']) {
      const [one, ...more] = list(tern.replace('shock_rebound: 7 out', start || 'fork_height: 5').replace('      fork_height: 5\n    sag', '    sag')).cannot
      assert.deepEqual(more, [], start)
      assert.equal(one!.instead, 'Turn it in, lightly, until it seats; then back out, to 4 clicks out.')
    }
    const open = list(tern.replace('fork_preload: 0 in\n', 'steering: 1\n')).cannot
    assert.deepEqual(open.map(({ legWords, instead }) => [legWords, instead]), ['left leg', 'right leg'].map((leg) => [leg, 'Back it off fully; then turn it in, to 2 turns in.']))
  })

  it('says what fact is missing where two counts have no ratio', () => {
    const [one] = list(tern.replace('shock_rebound: 7 out', 'shock_rebound: 1 turn out')).cannot
    assert.equal(one!.why, 'where it stands now, ‘1 turn out’, is no count of this adjuster: it needs clicks_per_turn')
    const [goal] = list(tern.replace('shock_rebound: 4 out', 'shock_rebound: 1 turn out')).cannot
    assert.equal(goal!.why, 'where it should stand, ‘1 turn out’, is no count of this adjuster: it needs clicks_per_turn')
  })

  it('leaves alone what the wanted state does not tell, and says so', () => {
    const [one, ...more] = between(readNotebook(tern.replace('from: as-found', 'from: nowhere')), 'as-found', 'run-1').cannot
    assert.match(one!.why, /where it should stand is not recorded/)
    assert.equal(more.length, 1, 'both tubes’ height')
  })

  it('is refused for two machines, and for a text that does not parse', () => {
    const other = readNotebook(ternSketch.replace('Tern 650', 'Heron 980'))
    const notebook = readNotebook(ternSketch)
    assert.match(turnList({ notebook, file: 'tern' }, { notebook: other, file: 'heron' }).refused!, /^These are two machines, ‘Tern 650’ and ‘Heron 980’/)
    assert.match(turnList({ notebook, file: 'tern' }, { notebook: readNotebook('a: "b'), file: 'bad.yaml' }).refused!, /^bad\.yaml, line 1: /)
    assert.equal(turnList({ notebook, file: 'tern' }, { notebook: other, file: 'tern' }, { oneMachine: true }).refused, undefined)
  })

  it('carries the usual cautions, and says once what several steps would repeat', () => {
    const text = turnListText(list(tern))
    assert.match(text, /Ride slowly at first after a change\./)
    assert.match(text, /never force|Never force/)
    assert.equal(text.split('Seat it lightly').length, 2)
  })

  it('prints no control character of what a person wrote', () => {
    const text = turnListText(list(tern.replace('place: shock foot', 'place: "shock\\x1b[2J\\nfoot"')))
    assert.match(text, /Shock rebound · shock\[2J \/ foot/)
    assert.doesNotMatch(text, /\p{Cc}(?<!\n)/u)
  })
})
