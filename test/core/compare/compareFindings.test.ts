import assert from 'node:assert/strict'
import { compareAllFindings } from '../../../src/core/compare/compareFindings'
import { compareStates } from '../../../src/core/compare/compareStates'
import { readNotebook } from '../../../src/core/notebook/readNotebook'
import { ternSketch } from '../derived/ternSketch'

const findings = (text: string, from: string, to: string) => {
  const notebook = readNotebook(text)
  const at = (key: string) => ({ notebook, entry: notebook.entries.find((each) => each.key === key)!, file: 'x' })
  const { new: fresh, gone, notReadAgain, foundBefore } = compareStates(at(from), at(to)).findings
  return { new: fresh.map(({ code }) => code), gone: gone.map(({ code }) => code), notReadAgain: notReadAgain.map(({ code }) => code), foundBefore: foundBefore.map(({ code }) => code) }
}

describe('findings of two states', () => {
  it('are gone when what they said is mended', () => {
    assert.ok(findings(ternSketch, 'as-found', 'run-1').gone.includes('legs-differ'))
  })

  it('stay while the position stands that they are about, whichever entry set it', () => {
    const carried = ternSketch.replace('{fork_rebound: 3 out}', '{shock_rebound: 8 out}')
    assert.ok(!findings(carried, 'as-found', 'run-1').gone.includes('legs-differ'))
    assert.ok(!findings(carried, 'run-1', 'as-found').new.includes('legs-differ'))
  })

  it('of a pair are gone when only the other leg moved', () => {
    const other = ternSketch.replace('{fork_rebound: 3 out}', '{fork_rebound: {left: 6 out}}')
    assert.ok(findings(other, 'as-found', 'run-1').gone.includes('legs-differ'))
  })

  it('are neither gone nor there where nobody measured again', () => {
    const { gone, notReadAgain } = findings(ternSketch, 'as-found', 'run-1')
    assert.ok(notReadAgain.includes('rider-sag-window'))
    assert.ok(!gone.includes('rider-sag-window'))
    const again = findings(ternSketch.replace('reason:', 'sag: {front: {extended: 152, rider: [124, 118]}}\n    reason:'), 'as-found', 'run-1')
    assert.ok(again.gone.includes('rider-sag-window') && !again.notReadAgain.includes('rider-sag-window'))
  })

  it('are not new where they stood already when that was last measured', () => {
    const measured = (id: string, rider: string) => `  - id: ${id}\n    date: 2026-04-19\n    sag: {front: {extended: 152, rider: ${rider}}}\n`
    const again = findings(ternSketch + measured('run-2', '[116, 110]'), 'run-1', 'run-2')
    assert.ok(again.foundBefore.includes('rider-sag-window') && !again.new.includes('rider-sag-window'))
    const anew = findings(ternSketch + measured('good', '[124, 118]') + '  - id: x\n    date: 2026-04-19\n' + measured('run-2', '[116, 110]'), 'x', 'run-2')
    assert.ok(anew.new.includes('rider-sag-window') && !anew.foundBefore.includes('rider-sag-window'))
  })

  it('of two whole versions are told by code, entry and row, each as often as it is found', () => {
    const [before, after] = [ternSketch, ternSketch.replace('    reason: right leg brought to the left\n', '').replace('right: 6 out', 'right: 4 out')]
    const compared = compareAllFindings({ notebook: readNotebook(before), file: 'x' }, { notebook: readNotebook(after), file: 'x' })
    assert.deepEqual(compared.new.map(({ code, entry, line }) => [code, entry, line]), [['no-reason', 'run-1', after.slice(0, after.indexOf('id: run-1')).split('\n').length]])
    assert.deepEqual(compared.gone, [])
  })
})
