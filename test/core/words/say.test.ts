import assert from 'node:assert/strict'
import fc from 'fast-check'
import { phrase, say, speak, templateKey } from '../../../src/core/words/say'

describe('say', () => {
  afterEach(() => speak())

  const sag = (end: string, mm: number) => say`Sag of the ${end} is ${mm} mm`

  it('says the English text where no other language is spoken', () => {
    assert.equal(sag('fork', 12), 'Sag of the fork is 12 mm')
    assert.equal(say('Rider sag'), 'Rider sag')
    assert.equal(say`No value`, 'No value')
  })

  it('says the text of the catalogue, with its values where that has them', () => {
    speak({ 'Sag of the {0} is {1} mm': '{1} mm sind der Negativfederweg: {0}', 'Rider sag': 'Negativfederweg mit Fahrer', 'No value': 'Kein Wert' })
    assert.equal(sag('Gabel', 12), '12 mm sind der Negativfederweg: Gabel')
    assert.equal(sag('Federbein', 30), '30 mm sind der Negativfederweg: Federbein')
    assert.equal(say(phrase('Rider sag')), 'Negativfederweg mit Fahrer')
    assert.equal(say`No value`, 'Kein Wert')
  })

  it('stays English where the catalogue has nothing', () => {
    speak({ 'No value': 'Kein Wert' })
    assert.equal(sag('fork', 12), 'Sag of the fork is 12 mm')
    assert.equal(say('constructor'), 'constructor')
    assert.equal(say('__proto__'), '__proto__')
  })

  it('goes back to English, and to another catalogue, at the same place', () => {
    speak({ 'Sag of the {0} is {1} mm': 'A {0} {1}' })
    assert.equal(sag('a', 1), 'A a 1')
    speak({ 'Sag of the {0} is {1} mm': 'B {0} {1}' })
    assert.equal(sag('a', 1), 'B a 1')
    speak()
    assert.equal(sag('a', 1), 'Sag of the a is 1 mm')
  })

  it('takes a value for what it is, whatever is written in it', () => {
    fc.assert(fc.property(fc.string(), fc.double(), fc.boolean(), (text, number, other) => {
      speak(other ? { 'Sag of the {0} is {1} mm': 'Sag of the {0} is {1} mm' } : undefined)
      assert.equal(sag(text, number), `Sag of the ${text} is ${number} mm`)
    }))
  })

  it('says eleven values in their order', () => {
    const eleven = () => say`${0}${1}${2}${3}${4}${5}${6}${7}${8}${9}-${10}`
    speak({ [templateKey(['', '', '', '', '', '', '', '', '', '', '-', ''])]: '{10} {0}{1}{2}{3}{4}{5}{6}{7}{8}{9}' })
    assert.equal(eleven(), '10 0123456789')
  })
})
