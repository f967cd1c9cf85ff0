import assert from 'node:assert/strict'
import { cautionsFor } from '../../../src/core/adjusters/cautions'
import { changeWords } from '../../../src/core/adjusters/changeWords'
import { describeTurning } from '../../../src/core/adjusters/describeTurning'
import { howToCount } from '../../../src/core/adjusters/howToCount'
import { adviseNext } from '../../../src/core/advice/adviseNext'
import { cardFor } from '../../../src/core/card/cardFor'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { countOf } from '../../../src/core/rules/standings'
import { findingsOf } from '../rules/check'

/*
 * What makers' handbooks and tuners have published about adjusters, each as a notebook of that adjuster read from its
 * text to the end. Sources stand above each; where a test says "custom", it is common practice and nothing else.
 */
const notebookOf = (definition: string, ...positions: string[]) =>
  `format: 1\nadjusters:\n  x: {${definition}}\nentries:\n${positions.map((position, at) => `  - {id: e${at}, reason: by the handbook, settings: {x: ${position}}}\n`).join('')}`

function read(definition: string, ...positions: string[]) {
  const text = notebookOf(definition, ...positions)
  const notebook = readNotebook(text)
  const adjuster = notebook.adjusters.get('x')!
  const slot = adjuster.legs.length > 0 ? `x/${adjuster.legs[0]}` : 'x'
  return {
    adjuster, codes: findingsOf(text).map(({ code, severity }) => `${code} ${severity}`),
    counts: notebook.entries.map((entry) => countOf(entry.state.get(slot)?.setting)),
    lines: (at: number, heading: string) => cardFor(notebook, `settings/${slot}`, `e${at}`)!.sections.find((section) => section.heading === heading)?.lines ?? [],
    changes: notebook.entries.slice(1).map((entry, at) => {
      const by = countOf(entry.state.get(slot)?.setting)! - countOf(notebook.entries[at]!.state.get(slot)?.setting)!
      return changeWords(adjuster, by).split(': ')[1]
    }),
  }
}

describe('what handbooks say of damping', () => {
  // J. Siddall, "The Basics" (ktm950.info): damping is counted out from fully closed, the first click of any sort being 1.
  it('it is counted out from fully closed, where the first click is 1', () => {
    const { counts, adjuster } = read('on: fork, controls: rebound, counts: clicks, range: 20', 'closed', '1', '1 click out', '19 clicks in')
    assert.deepEqual(counts, [0, 1, 1, 1])
    assert.match(howToCount(adjuster), /counting the clicks: that is how far out it stood\. .*The first click out is 1/)
  })

  // YZF-R6 2023 owner's manual p. 5-24: rear rebound 23 soft, 12 standard, 1 hard; "turn the adjuster in direction (a)
  // until it stops, then count the clicks in direction (b)"; the 0-click and 1-click positions may be the same; it may
  // click beyond the stated spec.
  it('rebound goes from 23 soft over 12 to 1 hard; a click beyond the book is only a warning; 0 and 1 may be one place', () => {
    const definition = 'on: shock, controls: rebound, counts: clicks, range: 23'
    const { codes, changes, adjuster, lines } = read(definition, '23', '12', '1')
    assert.deepEqual(codes, ['left-at-stop info'])
    assert.deepEqual(changes, ['more rebound damping', 'more rebound damping'])
    assert.deepEqual(lines(1, 'Stands at').slice(-1), ['12 clicks left to turn in, 11 clicks to turn out'])
    assert.deepEqual(read(definition, '24').codes, ['beyond-range warning'])
    assert.deepEqual(read(`${definition}, range_is: measured`, '24').codes, ['beyond-range error'])
    assert.match(howToCount(adjuster), /Turn it in, lightly, until it seats, .*the seat and 1 may be the same place/)
  })

  // MT-09 rear shock: rebound 2 1/2 soft, 1 standard, 0 hard, in turns (motorcyclespecs.us, adjusting the shock absorber assembly).
  it('rebound goes from 2 1/2 turns soft over 1 to 0 hard', () => {
    const { counts, changes } = read('on: shock, controls: rebound, counts: turns, range: 2.5', '2 1/2', '1', '0')
    assert.deepEqual([counts, changes], [[2.5, 1, 0], ['more rebound damping', 'more rebound damping']])
  })

  // XP560D service manual p. 3-26: rebound 3 turns, 1.25 turns, fully in.
  it('rebound goes from 3 turns over 1 1/4 to fully in', () => {
    const { counts, changes } = read('on: shock, controls: rebound, counts: turns, range: 3', '3 turns out', '1 1/4', 'fully in')
    assert.deepEqual([counts, changes], [[3, 1.25, 0], ['more rebound damping', 'more rebound damping']])
  })

  // Navigator workshop manual p. E.21: standard 20 clicks from closed of 34 positions, softer by at most 14, harder by at most 20.
  it('rebound of 34 positions that stands at 20 has 14 left to go softer and 20 to go harder', () => {
    const { lines, counts } = read('on: shock, controls: rebound, counts: clicks, range: 34', '20 clicks from fully closed', '14 in')
    assert.deepEqual(counts, [20, 20])
    assert.deepEqual(lines(0, 'Stands at').slice(-1), ['20 clicks left to turn in, 14 clicks to turn out'])
  })

  // RR 4T workshop manual p. 20: fork 12 clicks from completely closed; low speed 21 of 21 and high speed 24 of 24 fully open.
  it('12 clicks from completely closed are 12 out; 21 of 21 are fully open', () => {
    assert.deepEqual(read('on: fork, controls: compression, counts: clicks', '12 from closed').counts, [12])
    for (const range of [21, 24]) {
      const { counts, codes } = read(`on: shock, controls: low_speed_compression, counts: clicks, range: ${range}`, String(range), 'fully open')
      assert.deepEqual([counts, codes], [[range, range], ['left-at-stop info', 'left-at-stop info']])
      assert.match(findingsOf(notebookOf(`on: shock, controls: rebound, counts: clicks, range: ${range}`, `${range}/${range}`))[0]!.fixes![0]!.title, new RegExp(`‘${range}’`))
    }
  })

  // Fork owner's manual 07295-27: nought is fully closed (clockwise), 20 clicks, a higher number is less damping; close it
  // first and then count; too much force destroys the sealing surfaces.
  it('from 0 closed to 20 open each click more is less damping', () => {
    const { changes, adjuster } = read('on: fork, controls: compression, counts: clicks, range: 20', ...Array.from({ length: 21 }, (_, at) => String(at)))
    assert.deepEqual(new Set(changes), new Set(['less compression damping']))
    assert.equal(describeTurning(adjuster)!.in.rotation, 'clockwise')
    assert.match(howToCount(adjuster), /^Turn it in, lightly, until it seats.* Never force it\.$/)
  })

  // FJ-09 2014 owner's manual p. 4-32: the number of clicks varies with production; check the actual count and scale.
  it('where the book and the machine differ, the count of the machine is asked for and then believed', () => {
    const book = findingsOf(notebookOf('on: shock, controls: rebound, counts: clicks, range: 20', '21'))
    assert.match(book[0]!.message, /book’s range of 20 clicks; count the range once and note it with `range_is: measured`/)
    const { codes, lines } = read('on: shock, controls: rebound, counts: clicks, range: 22, range_is: measured', '21')
    assert.deepEqual(codes, [])
    assert.match(lines(0, 'Stands at').join(), /95 % of its range of 22 clicks \(measured\)/)
  })

  // H-D service pages, NOTICE 00237a: never beyond the mechanical stops; too much force at either end damages the valves.
  // YZF-R1 2023, MT-09 and YZ125 2010 manuals: gas under pressure, do not open; Navigator: it must not be opened for any reason.
  it('the cautions: no force at either end, and a gas-charged shock is not opened', () => {
    const { adjuster } = read('on: shock, controls: rebound, counts: clicks')
    assert.match(cautionsFor(adjuster).join(' '), /never open it or its reservoir.*Seat it lightly: force at either end damages the valve/)
  })

  // YXZ1000R manual p. 4-35: uneven dampers, poor handling and loss of stability. Split-function forks: rebound in one leg,
  // compression in the other (lifeatlean.com, rebound damping adjustments).
  it('both legs are set alike, save for a fork whose legs do different work', () => {
    const pair = 'on: fork, legs: [left, right], controls: rebound, counts: clicks'
    assert.deepEqual(read(pair, '{left: 8, right: 10}').codes, ['legs-differ warning'])
    assert.match(cautionsFor(read(pair).adjuster).join(' '), /Keep both legs of a pair alike/)
    const split = 'format: 1\nadjusters:\n  r: {on: fork, legs: [right], controls: rebound, counts: clicks}\n  c: {on: fork, legs: [left], controls: compression, counts: clicks}\nentries:\n  - {id: a, settings: {r: 8, c: 10}}\n'
    assert.deepEqual(findingsOf(split), [])
    assert.doesNotMatch(cautionsFor(readNotebook(split).adjusters.get('r')!).join(' '), /both sides/)
  })
})

describe('what handbooks say of preload', () => {
  // J. Siddall, "The Basics": preload the opposite way, fully backed off is 0, then in mm.
  it('it is counted in from fully backed off, which is 0, in mm', () => {
    const { counts, adjuster } = read('on: shock, controls: preload, counts: mm, range: 12', 'backed off', '5 mm', '5 mm in', '7 mm out')
    assert.deepEqual(counts, [0, 5, 5, 5])
    assert.match(howToCount(adjuster), /from fully backed off, which is 0/)
  })

  // Serviceinfo.harley-davidson.com, Table 1: preload by rider and luggage, in half numbers from 1.0 to 14.0.
  it('stands at half numbers where it says so, and between them it does not', () => {
    const definition = 'on: shock, controls: preload, counts: dial, range: 14, step: 0.5'
    assert.deepEqual(read(definition, ...Array.from({ length: 27 }, (_, at) => (1 + at / 2).toFixed(1))).codes, [])
    assert.deepEqual(read(definition, '3.25').codes, ['fraction-of-step warning'])
    assert.deepEqual(read(definition.replace(', step: 0.5', ''), '3.5').codes, ['fraction-of-step warning'])
  })

  // YZF-R6 2023 p. 5-24 and YZF-R1 2023: the locknut is tightened to the specified torque after a change of preload.
  it('the locknut is tightened to its torque afterwards', () => {
    assert.match(cautionsFor(read('on: shock, controls: preload, counts: mm, higher_is: less, held_by: locknut').adjuster).join(' '), /tighten it to the manual’s torque afterwards/)
  })
})

describe('traps, where machines run against one another', () => {
  // Distance A: 77.5 soft, 78.5 standard, 85.5 hard (YZF-R1 2023; 84.9, 89.9, 92.9 on the YZF-R6 2023): longer is more
  // preload. On others the set length of the spring shrinks with preload.
  it('a set length that grows with preload, and one that shrinks with it', () => {
    for (const lengths of [['77.5', '78.5', '85.5'], ['84.9', '89.9', '92.9']]) {
      const grows = read('on: shock, controls: preload, counts: mm, higher_is: more, mm_per_turn: 1.5', ...lengths)
      assert.deepEqual([grows.changes, grows.codes], [['more preload', 'more preload'], []])
      assert.match(howToCount(grows.adjuster), /Here longer is more preload/)
      assert.equal(describeTurning(grows.adjuster)!.in.count, 'rises')
      const shrinks = read('on: shock, controls: preload, counts: mm, higher_is: less, mm_per_turn: 1.5', ...lengths)
      assert.deepEqual(shrinks.changes, ['less preload', 'less preload'])
      assert.match(howToCount(shrinks.adjuster), /Here longer is less preload/)
      assert.equal(describeTurning(shrinks.adjuster)!.in.count, 'falls')
    }
  })

  // Stepped ring 1 soft, 4 standard, 7 hard (FJ-09 2014 p. 4-32, MT-09 Tracer 2017 service manual p. 3-23); 7 soft,
  // 4 standard, 1 hard (XP560D service manual p. 3-26).
  it('a stepped ring of which 7 is the hardest, and one of which 7 is the softest', () => {
    const up = read('on: shock, controls: preload, counts: steps, range: 7, higher_is: more', 'step 1', '4', '7')
    const down = read('on: shock, controls: preload, counts: steps, range: 7, higher_is: less', 'step 1', '4', '7')
    assert.deepEqual([up.codes, down.codes], [[], []])
    assert.deepEqual([up.changes, down.changes], [['more preload', 'more preload'], ['less preload', 'less preload']])
    assert.deepEqual(up.lines(2, 'Stands at').slice(-1), ['0 left for more preload, 6 for less preload'])
    assert.deepEqual(down.lines(2, 'Stands at').slice(-1), ['6 left for more preload, 0 for less preload'])
  })

  // RR 4T workshop manual p. 20: the low-speed compression screw DEcreases clockwise; some older shocks as well (J. Siddall).
  it('clockwise that is more damping, and clockwise that is less', () => {
    const usual = describeTurning(read('on: shock, controls: low_speed_compression, counts: clicks, faces: up, worked_from: above').adjuster)!
    const against = describeTurning(read('on: shock, controls: low_speed_compression, counts: clicks, faces: up, worked_from: above, closes: anticlockwise').adjuster)!
    assert.deepEqual([usual.in.rotation, usual.in.gives], ['clockwise', 'more low-speed compression damping'])
    assert.deepEqual([against.out.rotation, against.out.gives], ['clockwise', 'less low-speed compression damping'])
  })
})

describe('what handbooks say of the fork’s height', () => {
  // CRF250R owner's manual p. 107: the groove of the outer tube in line with the top of the upper bridge; lower pinch bolts
  // 20 N·m. Over-tight lower pinch bolts bind the fork: J. Siddall.
  it('flush is 0, both sides are alike, and the bolts have their torque', () => {
    const definition = 'on: fork, legs: [left, right], controls: fork_height, counts: mm'
    const { counts, codes, adjuster } = read(definition, 'flush', '5')
    assert.deepEqual([counts, codes], [[0, 5], []])
    assert.deepEqual(read(definition, '{left: 5, right: 6}').codes, ['fork-height-uneven error'])
    assert.match(cautionsFor(adjuster).join(' '), /torque the pinch bolts to the manual: over-tight lower bolts bind the fork/)
    assert.match(howToCount(adjuster), /level with the clamp is 0/)
  })
})

describe('what tuners say of the order of work', () => {
  const machine = (settings: string, more = '') => `format: 1
machine: {use: track, front: {travel: 120}}
adjusters:
  fork_preload: {on: fork, legs: [left, right], controls: preload, counts: turns, range: 15, mm_per_turn: 1}
  fork_rebound: {on: fork, legs: [left, right], controls: rebound, counts: clicks, range: 20}
entries:
  - {id: found, as_found: true, settings: {fork_preload: 4, fork_rebound: 8}}
  - id: run-1
    reason: handbook
    settings: {${settings}}
${more}`

  // Trevitt, Sportbike Suspension Tuning (as summarised at missbusa.wordpress.com): one change at a time, and write it down.
  it('one thing is changed at a time, and its reason is written down', () => {
    assert.deepEqual(findingsOf(machine('fork_preload: 5')).map(({ code }) => code), [])
    assert.deepEqual(findingsOf(machine('fork_preload: 5, fork_rebound: 6')).map(({ code }) => code), ['several-changes'])
    assert.deepEqual(findingsOf(machine('fork_preload: 5').replace('    reason: handbook\n', '')).map(({ code }) => code), ['no-reason'])
  })

  // Rideapart.com (features/257984) and the H-D tuning page: sag by preload first, damping after that.
  it('sag is set before damping: the same bounce is only looked at once sag is right', () => {
    const bounce = '    bounce: {front: [40, 20, 10]}\n    ride: {front_travel_used: 110}\n'
    const topic = (sag: string) => {
      const notebook = readNotebook(machine('fork_preload: 5', `${bounce}    sag: {front: {extended: 152, ${sag}}}\n`))
      return adviseNext(notebook, notebook.entries.at(-1)!).topic
    }
    assert.equal(topic('bike: [118, 112], rider: [98, 90]'), 'sag')
    assert.equal(topic('bike: [130, 126], rider: [122, 117]'), 'rebound')
  })

  // Vtrhornmono.com, fork oil: write down preload, fork height and damping before dismantling; that is an entry as found.
  it('what was found is asked for no reason, and can be gone back to', () => {
    const found = machine('fork_preload: 5').replace(', as_found: true', '')
    assert.deepEqual(findingsOf(found).filter(({ place }) => place?.entry === 'found'), [])
    const { entries } = readNotebook(`${machine('fork_preload: 5')}  - {id: back, from: found, reason: back}\n`)
    assert.deepEqual(['fork_preload/left', 'fork_rebound/right'].map((slot) => countOf(entries.at(-1)!.state.get(slot)?.setting)), [4, 8])
  })
})
