import assert from 'node:assert/strict'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { slotKey, slotsOf, type Facing, type Rotation } from '../../src/core/adjusters/adjuster'
import { architectures } from '../../src/core/adjusters/architectures'
import { writeNotebook } from '../../src/core/adjusters/architectures/writeNotebook'
import { isTurned } from '../../src/core/adjusters/describeTurning'
import type { Card } from '../../src/core/card/card'
import { cardFor } from '../../src/core/card/cardFor'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { directions, quarterTurned, rotationVector, seenFrom } from '../core/adjusters/seenFrom'

/** Every machine there is to look at: the samples, and one begun from each architecture. */
const machines = [
  ...readdirSync('samples').filter((name) => name.endsWith('.setup.yaml')).map((name) => ({ name, text: readFileSync(join('samples', name), 'utf8'), sample: true })),
  ...architectures.map((each) => ({ name: each.key, text: writeNotebook(each, { date: '2026-04-18', cautions: [] }), sample: false })),
]

/** What a notebook says of an adjuster, as a YAML library reads it. */
interface Facts {
  place?: string
  tool?: string
  faces?: Facing
  worked_from?: string
  closes?: Rotation
  inside?: string
}

interface Case { name: string; card: Card; facts: Facts; turned: boolean; sample: boolean }

/** The card of every adjuster and leg of a machine, in its last entry. */
function casesOf({ name, text, sample }: (typeof machines)[number]): Case[] {
  const notebook = readNotebook(text)
  const { adjusters } = parse(text) as { adjusters?: Record<string, Facts> }
  return [...notebook.adjusters.values()].flatMap((adjuster) => slotsOf(adjuster).map(({ leg }) => ({
    name: `${name} ${slotKey(adjuster.id, leg)}`, facts: adjusters![adjuster.id]!, turned: isTurned(adjuster), sample,
    card: cardFor(notebook, `settings/${slotKey(adjuster.id, leg)}`, notebook.entries.at(-1)!.key)!,
  })))
}

const cases = machines.flatMap(casesOf)
const said = ({ card }: Case, heading: string) => card.sections.find((section) => section.heading === heading)?.lines ?? []
const words: Record<Facing, string> = { up: 'up', down: 'down', front: 'towards the front', rear: 'towards the rear', left: 'to the machine’s left', right: 'to the machine’s right' }
const viewpoints: Record<string, RegExp> = {
  facing: /facing its head/, above: /from above/, below: /from below/, front: /from the front/, rear: /from behind/, left: /machine’s left/, right: /machine’s right/,
}

// A person who knows nothing of the machine has this card alone: what it is, where, with what, which way, how far, what to mind.
describe('the card of every adjuster of every sample and architecture', () => {
  it('is looked at in all of them', () => assert.ok(cases.length > 150 && cases.filter(({ sample }) => sample).length > 50, `${cases.length}`))

  for (const each of cases.filter(({ turned }) => turned)) {
    it(`${each.name}: names the rotation that vectors give, as it is seen from where it is worked`, () => {
      const { facts: { faces, worked_from: from = 'facing', closes = 'clockwise' } } = each
      assert.ok(faces, 'which way it faces')
      const pointing = new RegExp(`which points ${/^(up|down)$/.test(faces) ? faces : `to the ${faces}`}`)
      const head = directions[faces]!
      const eye = from === 'facing' ? head : directions[from]!
      const rotation = rotationVector(head, closes)
      const seen = seenFrom(eye, rotation)
      const [inward, outward, nearSide] = said(each, 'Which way')
      if (seen) {
        const opposite = seen === 'clockwise' ? 'anticlockwise' : 'clockwise'
        assert.ok(inward!.startsWith(`Turn it ${seen}, `) && outward!.startsWith(`Turn it ${opposite}, `), inward)
        for (const sentence of [inward!, outward!]) assert.match(sentence, viewpoints[from]!)
        if (from === 'facing') for (const sentence of [inward!, outward!]) assert.match(sentence, pointing)
        assert.doesNotMatch(nearSide ?? '', /nearest to you/)
        assert.equal(each.card.drawing!.seen, seen)
        return
      }
      assert.match(inward!, new RegExp(`^Face the head, ${pointing.source}: turn it ${closes} `))
      const moves = quarterTurned(eye, rotation)
      const towards = (Object.keys(words) as Facing[]).find((way) => directions[way]!.every((part, at) => part === moves[at]))!
      assert.match(nearSide!, viewpoints[from]!)
      assert.ok(nearSide!.includes(`nearest to you moves ${words[towards]} for more`), nearSide)
      assert.equal(each.card.drawing!.seen, undefined)
      // What is drawn is the head as seen facing it.
      assert.equal(seenFrom(head, rotation), each.card.drawing!.facing)
    })
  }

  for (const each of cases) {
    it(`${each.name}: says where it is, what each way does, how far it goes, how to count it and what to mind`, () => {
      const { card, facts, turned, sample } = each
      assert.ok(!turned || (facts.place && facts.tool), 'place and tool')
      for (const part of [facts.place, facts.tool]) if (part) assert.ok(card.subtitle?.includes(part), card.subtitle)
      assert.equal(said(each, 'What it does').length, 2)
      assert.equal(said(each, 'How to count it').length, 1)
      assert.ok(said(each, 'Take care').length > 0)
      assert.equal(said(each, 'Which way').length > 0, turned)
      assert.deepEqual(card.sections.filter(({ drawn }) => drawn).map(({ heading }) => heading), turned ? ['Which way'] : [])
      const stands = said(each, 'Stands at').join('\n')
      if (sample && turned && stands !== 'not recorded yet') assert.match(stands, /left to turn in, .* to turn out|left for more|how far it goes is not noted|it goes over/)
    })
  }

  for (const each of cases.filter(({ facts }) => facts.inside)) {
    it(`${each.name}: has what it sits inside of held still, and the other way round`, () => {
      assert.match(said(each, 'Two in one place').join(), /It sits inside ‘.*which must not turn along/)
      const outer = cases.find(({ name, card }) => name.split(' ')[0] === each.name.split(' ')[0] && said(each, 'Two in one place').join().includes(`‘${card.title.split(/, (?:left|right) leg/)[0]}’`))
      assert.match(said(outer!, 'Two in one place').join(), /sits inside it and must not turn along/)
    })
  }

  it('has nothing left open about which way its head faces', () => {
    for (const each of cases) assert.ok(!said(each, 'Which way').some((line) => line.includes('is not noted')), each.name)
  })

  it('shows that a head may be seen from its face, its back and its side', () => {
    const views = cases.filter(({ sample, turned }) => sample && turned).map((each) => said(each, 'Which way')[0]!)
    assert.ok(views.some((words) => words.startsWith('Turn it anticlockwise')) && views.some((words) => words.startsWith('Turn it clockwise')) && views.some((words) => words.startsWith('Face the head')))
  })
})
