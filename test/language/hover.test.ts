import assert from 'node:assert/strict'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { hoverAt } from '../../src/language/hover'
import { aNotebook } from './aNotebook'
import { marked } from './marked'

/** What is shown where `|` stands: it must match, and be about that text. */
function check(source: string, about: string | undefined, expected: RegExp = /./) {
  const { text, offset } = marked(source)
  const hover = hoverAt(readNotebook(text), offset)
  assert.equal(hover && text.slice(hover.range.start, hover.range.end), about)
  if (hover) assert.match(hover.markdown, expected)
}

const at = (what: string, text = aNotebook) => text.replace(what.replace('|', ''), what)

describe('hoverAt', () => {
  describe('on keys and choices', () => {
    it('says what a key is for', () => check(at('mac|hine:'), 'machine', /^The machine this notebook belongs to\.$/))
    it('says what a key in braces is for', () => check(at('clicks_|per_turn'), 'clicks_per_turn', /How many clicks one turn makes/))
    it('says it for a key in a list item', () => check(at('rea|son:'), 'reason', /Why this was changed/))
    it('says what a choice says, and what is chosen', () => check(at('controls: re|bound'), 'rebound', /^\*\*rebound\*\*: rebound damping\n\nWhat it changes\.$/))
    it('says what a verdict says', () => check(`${aNotebook}    verdict: ke|ep\n`, 'keep', /it stays as it is/))
    it('says what a rule looks for, where its loudness is set', () => check(`${aNotebook}rules: {legs-d|iffer: off}\n`, 'legs-differ', /The two legs of a pair stand differently\.\n\n/))
    it('says how loud a rule is', () => check(`${aNotebook}rules: {legs-differ: o|ff}\n`, 'off', /not said at all/))
    it('says what a rule looks for, where it is accepted', () => check(`${aNotebook}accepted:\n  - finding: legs-di|ffer\n`, 'legs-differ', /^\*\*legs-differ\*\* \(warning\)/))
    it('says nothing about words', () => check(at('brought| to'), undefined))
    it('says nothing about a key that is not known', () => check('format: 1\nsome|thing: x\n', undefined))
    it('says nothing on a blank line', () => check('format: 1\n|\nmachine: {}\n', undefined))
    it('says nothing in an empty text', () => check('|', undefined))
    it('marks what the schema alone says', () => {
      const { text, offset } = marked(at('mac|hine:'))
      assert.equal(hoverAt(readNotebook(text), offset)?.fromSchema, true)
    })
  })

  describe('on settings', () => {
    it('shows the card on the value of one leg', () => check(at('right: 3| out'), '3 out', /^\*\*Fork rebound, right leg\*\*/))
    it('shows the card on the leg', () => check(at('{ri|ght: 3 out'), 'right', /^\*\*Fork rebound, right leg\*\*[^]*Stands at/))
    it('shows the card of both legs on one value for them', () => check(at('4 tu|rns in'), '4 turns in', /^\*\*Fork preload, both legs\*\*[^]*Stands at/))
    it('shows the card on the name', () => check(at('shock_reb|ound: 7'), 'shock_rebound', /^\*\*Shock rebound\*\*[^]*7 clicks out/))
    it('shows what it is on the name of a pair that is set leg by leg', () => check(at('fork_re|bound: {left: 3'), 'fork_rebound', /^\*\*Fork rebound\*\*\s[^]*flat screwdriver/))
    it('tells where it stands in the entry under the pointer', () => check(`${aNotebook}  - settings: {shock_rebound: 9|}\n`, '9', /9 clicks out[^]*2 clicks out: less rebound damping/))
    it('has a drawing', () => {
      const { text, offset } = marked(at('4 tu|rns in'))
      assert.equal(hoverAt(readNotebook(text), offset)?.card?.drawing?.facing, 'clockwise')
    })
    it('shows the format’s words for an adjuster that is not known', () => check(`${aNotebook}  - settings: {noth|ing: 9}\n`, 'nothing', /Where it stands/))
  })

  describe('on names', () => {
    it('shows the card where an adjuster is defined', () => check(at('  fork_pre|load: {on'), 'fork_preload', /^\*\*Fork preload\*\*/))
    it('shows the card where a remark is about it', () => check(`${aNotebook}    remarks: {fork_pre|load/left: x}\n`, 'fork_preload', /^\*\*Fork preload\*\*/))
    it('tells the story of an entry where another comes from it', () =>
      check(`${aNotebook}  - from: ru|n-1\n`, 'run-1', /^\*\*run\\-1\*\* {2}\n2026\\-04\\-18 {2}\nbrought to the left {2}\nfork\\_rebound\/right 3 out$/))
    it('tells the story with one value for both legs once', () => check(`${aNotebook}  - from: fo|und\n`, 'found', /fork\\_preload 4 turns in, shock/))
    it('says what an id is for where it is given', () => check(at('id: run|-1'), undefined))
    it('takes markup out of what people wrote', () => check(`${at('brought to the left', aNotebook).replace('brought to the left', '<b>*bold*')}  - from: ru|n-1\n`, 'run-1', /\\<b\\>\\\*bold\\\*/))
  })
})
