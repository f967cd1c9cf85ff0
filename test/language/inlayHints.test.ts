import assert from 'node:assert/strict'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { inlayHints } from '../../src/language/inlayHints'
import { aNotebook } from './aNotebook'

/** The last line of a text with its hints in it, as `⟨…⟩`. */
function check(line: string, expected: string, before = aNotebook) {
  const text = `${before}  - ${line}\n`
  const notebook = readNotebook(text)
  const start = text.lastIndexOf('  - ')
  const hints = inlayHints(notebook, { start, end: text.length })
  let shown = text
  for (const { at, label } of [...hints].reverse().sort((a, b) => b.at - a.at)) shown = `${shown.slice(0, at)} ⟨${label}⟩${shown.slice(at)}`
  assert.equal(shown.slice(start + 4, -1), expected)
}

describe('inlayHints', () => {
  describe('of the other notation', () => {
    it('count damping from the other end', () => check('settings: {shock_rebound: 7}', 'settings: {shock_rebound: 7 ⟨= 15 in⟩}'))
    it('give turns of preload in mm', () => check('settings: {fork_preload: 4 in}', 'settings: {fork_preload: 4 in ⟨= 4 mm⟩}'))
    it('say nothing about no turns at all', () => check('settings: {fork_preload: 0 in}', 'settings: {fork_preload: 0 in ⟨−4 · less preload⟩}'))
    it('give another unit in the adjuster’s own', () => check('settings: {fork_preload: 24 flats in}', 'settings: {fork_preload: 24 flats in ⟨= 4 turns in⟩}'))
    it('give another end in the adjuster’s own', () => check('settings: {shock_rebound: 15 in}', 'settings: {shock_rebound: 15 in ⟨= 7 clicks out⟩}'))
    it('give another pressure in the adjuster’s own', () => check('settings: {left_air: 6 bar}', 'settings: {left_air: 6 bar ⟨= 87.023 psi⟩}'))
    it('say nothing where the range is not known', () => check('settings: {shock_cam: step 3}', 'settings: {shock_cam: step 3}'))
    it('say nothing beyond the range', () => check('settings: {shock_rebound: 40}', 'settings: {shock_rebound: 40 ⟨+33 · less rebound damping⟩}'))
    it('say nothing about a value that cannot be read', () => check('settings: {shock_rebound: soft}', 'settings: {shock_rebound: soft}'))
  })

  describe('of the change', () => {
    it('say by how much, and more or less of what', () => check('settings: {shock_rebound: 9}', 'settings: {shock_rebound: 9 ⟨= 13 in⟩ ⟨+2 · less rebound damping⟩}'))
    it('count in turns as the trade does', () => check('settings: {fork_preload: 5 1/2 in}', 'settings: {fork_preload: 5 1/2 in ⟨= 5.5 mm⟩ ⟨+1 1/2 · more preload⟩}'))
    it('say it once for both legs', () => check('settings: {fork_rebound: 2 out}', 'settings: {fork_rebound: 2 out ⟨= 8 in⟩ ⟨−1 · more rebound damping⟩}'))
    it('say it for the leg that changed', () =>
      check('{from: found, settings: {fork_rebound: 3 out}}', '{from: found, settings: {fork_rebound: 3 out ⟨= 7 in⟩ ⟨right −3 · more rebound damping⟩}}'))
    it('say it for each leg where they changed differently', () =>
      check('{from: found, settings: {fork_rebound: 4 out}}', '{from: found, settings: {fork_rebound: 4 out ⟨= 6 in⟩ ⟨left +1 · less rebound damping, right −2 · more rebound damping⟩}}'))
    it('say it at each leg’s own value', () =>
      check('settings: {fork_rebound: {left: 2, right: 4}}', 'settings: {fork_rebound: {left: 2 ⟨= 8 in⟩ ⟨−1 · more rebound damping⟩, right: 4 ⟨= 6 in⟩ ⟨+1 · less rebound damping⟩}}'))
    it('say nothing where nothing changed', () => check('settings: {shock_rebound: 7 clicks out}', 'settings: {shock_rebound: 7 clicks out ⟨= 15 in⟩}'))
    it('say nothing where nobody knew before', () => check('settings: {shock_length: 300}', 'settings: {shock_length: 300}'))
    it('know a dial on which higher is less', () => {
      const dial = aNotebook.replace('counts: steps', 'counts: steps, higher_is: less').replace('shock_rebound: 7\n', 'shock_cam: step 5\n')
      check('settings: {shock_cam: step 2}', 'settings: {shock_cam: step 2 ⟨−3 · more preload⟩}', dial)
    })
  })

  it('tell more to whoever points at them', () => {
    const notebook = readNotebook(`${aNotebook}  - settings: {shock_rebound: 9}\n`)
    const [notation, change] = inlayHints(notebook, { start: aNotebook.length, end: notebook.text.length })
    assert.equal(notation!.about, 'Counted in from fully open: its range is 22 clicks, by the book.')
    assert.equal(change!.about, '7 in found. Less rebound damping: the suspension extends faster after it was compressed.')
  })
  it('keep to the lines that are shown', () => {
    const notebook = readNotebook(aNotebook)
    assert.deepEqual(inlayHints(notebook, { start: 0, end: aNotebook.indexOf('entries:') }), [])
    assert.equal(inlayHints(notebook, { start: aNotebook.indexOf('run-1'), end: aNotebook.length }).length, 2)
  })
  it('stay where they are sure while the text is broken', () => {
    const text = `${aNotebook.replace('{right: 3 out}}', '{right: 3 out')}  - settings: {shock_rebound: 9}\n`
    const notebook = readNotebook(text)
    assert.ok(notebook.broken)
    const hints = inlayHints(notebook, { start: 0, end: text.length })
    assert.ok(hints.length > 0)
    assert.ok(hints.every(({ at }) => at < text.indexOf('run-1')))
  })
})
