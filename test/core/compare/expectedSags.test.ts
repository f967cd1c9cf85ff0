import assert from 'node:assert/strict'
import { compareStates } from '../../../src/core/compare/compareStates'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { ternSketch } from '../derived/ternSketch'

const rear = '      rear: {extended: 600, bike: [590, 590], rider: [560, 560]}\n'
const withShock = ternSketch
  .replace('adjusters:\n', 'adjusters:\n  shock_preload: {on: shock, controls: preload, counts: mm, higher_is: less}\n')
  .replace('fork_height: 5\n    sag:\n', `fork_height: 5\n      shock_preload: 160\n    sag:\n${rear}`)
const expected = (settings: string, text = withShock) => {
  const notebook = readNotebook(text.replace('{fork_rebound: 3 out}', settings))
  return compareStates({ notebook, entry: notebook.entries[0]!, file: 'x' }, { notebook, file: 'x' }).expected.map(({ label, end, measured, expected: then, change }) => [label, end, measured, then, change].join(' '))
}

// Both from sag = load / rate − preload (G. Byrnes, Sag and Preload II), the rear through its motion ratio of 0.45.
describe('a sag that was not measured again', () => {
  it('is less by the preload turned in at the fork, mm for mm', () => {
    assert.deepEqual(expected('{fork_preload: 2 in}'), ['Static sag front 27 mm 25 mm −2 mm', 'Rider sag front 38 mm 36 mm −2 mm'])
  })

  it('is less at the wheel by the preload over the motion ratio', () => {
    assert.deepEqual(expected('{shock_preload: 155.5}'), ['Static sag rear 10 mm 0 mm −10 mm', 'Rider sag rear 40 mm 30 mm −10 mm'])
  })

  it('takes the mean over the legs by their springs, and a leg without adjuster as it stands', () => {
    assert.deepEqual(expected('{fork_preload: {left: 2 in}}'), ['Static sag front 27 mm 26 mm −1 mm', 'Rider sag front 38 mm 37 mm −1 mm'])
    const uneven = withShock.replace('spring_rate: 9.5', 'spring_rate: {left: 15, right: 5}')
    assert.deepEqual(expected('{fork_preload: {left: 2 in}}', uneven), ['Static sag front 27 mm 25.5 mm −1.5 mm', 'Rider sag front 38 mm 36.5 mm −1.5 mm'])
    const alone = uneven.replace('fork_preload: {on: fork, legs: [left, right]', 'fork_preload: {on: fork, legs: [left]')
    assert.deepEqual(expected('{fork_preload: 2 in}', alone), ['Static sag front 27 mm 25.5 mm −1.5 mm', 'Rider sag front 38 mm 36.5 mm −1.5 mm'])
  })

  it('goes on from the last time it was measured, wherever that was on the line', () => {
    const later = withShock
      .replace('    reason:', '    sag: {front: {extended: 152, rider: [120, 112]}}\n    reason:').replace('{fork_rebound: 3 out}', '{fork_preload: 2 in}')
      .concat('  - id: run-2\n    settings: {fork_rebound: 4 out}\n  - id: run-3\n    settings: {fork_preload: 5 in}\n')
    const between = (text: string, from: string, to: string) => {
      const notebook = readNotebook(text)
      const at = (key: string) => ({ notebook, entry: notebook.entries.find((each) => each.key === key)!, file: 'x' })
      return compareStates(at(from), at(to)).expected.map(({ label, measured, measuredIn, expected: then, change, about }) => [label, measured, measuredIn, then, change, about])
    }
    assert.deepEqual(between(later, 'run-2', 'run-3'), [
      ['Static sag', '27 mm', 'as-found', '22 mm', '−5 mm', 'from 27 mm in as-found and 5 mm more preload at the spring since; measure it'],
      ['Rider sag', '36 mm', 'run-1', '33 mm', '−3 mm', 'from 36 mm in run-1 and 3 mm more preload at the spring since; measure it'],
    ])
    assert.deepEqual(between(later, 'as-found', 'run-2')[1], ['Rider sag', '38 mm', undefined, '36 mm', '−2 mm', 'from 36 mm in run-1 and the same preload since; measure it'])
  })

  it('is not expected where it was measured, no preload moved, a thread is not known or a spring was changed', () => {
    assert.deepEqual(expected('{fork_rebound: 3 out}'), [])
    assert.deepEqual(expected('{fork_preload: 2 in}', withShock.replace('mm_per_turn: 1, ', '')), [])
    const springs = withShock.replace('adjusters:\n', 'adjusters:\n  fork_springs: {on: fork, legs: [left, right], controls: spring_rate, counts: N/mm}\n').replace('fork_height: 5\n', 'fork_height: 5\n      fork_springs: 9.5\n')
    assert.deepEqual(expected('{fork_preload: 2 in}', springs).length, 2)
    assert.deepEqual(expected('{fork_preload: 2 in, fork_springs: 10}', springs), [])
    assert.deepEqual(expected('{fork_preload: 2 in}\n    sag: {front: {extended: 152, bike: [130, 124], rider: [119, 111]}}'), [])
  })
})
