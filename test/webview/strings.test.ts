import assert from 'node:assert/strict'
import { english, say, wordAs } from '../../webview/grid/strings'

describe('the words of the grid', () => {
  afterEach(() => wordAs({}))

  it('are English unless the host words them otherwise, key by key', () => {
    wordAs({ 'form.save': 'Speichern' })
    assert.equal(say('form.save'), 'Speichern')
    assert.equal(say('form.cancel'), english['form.cancel'])
  })
  it('have their values filled in, whatever stands in them', () => {
    assert.equal(say('cell.place', '{1} $&', 'run-1'), '{1} $&, run-1')
  })
})
