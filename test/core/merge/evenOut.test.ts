import assert from 'node:assert/strict'
import { evenOut } from '../../../src/core/merge/evenOut'

/** What is compared of three texts, and what becomes of a merged one. */
function evened(base: string, ours: string, theirs: string, merged = 'a\nb\n', hasClash = false) {
  const { texts, restore } = evenOut({ base, ours, theirs })
  return { texts: [texts.base, texts.ours, texts.theirs], merged: restore(merged, hasClash) }
}

describe('what concerns a file as a whole', () => {
  it('is set aside: the byte order mark, line ends of one kind, a last line without an end', () => {
    assert.deepEqual(evened('\ufeffa\r\nb', 'a\nb\n', '\ufeffa\r\nb\r\n').texts, ['a\nb\n', 'a\nb\n', 'a\nb\n'])
    assert.deepEqual(evened('', '', 'a').texts, ['', '', 'a\n'])
  })

  it('takes a byte order mark for one at the beginning alone', () => {
    assert.deepEqual(evened('a\n', 'a\ufeff\n', 'a\n').texts[1], 'a\ufeff\n')
    assert.equal(evened('a\n', 'a\ufeff\n', 'a\n').merged, 'a\nb\n')
  })

  it('becomes what one side made of it', () => {
    assert.equal(evened('a\n', 'a\r\n', 'a\n').merged, 'a\r\nb\r\n')
    assert.equal(evened('a\r\n', 'a\n', 'a\r\n').merged, 'a\nb\n')
    assert.equal(evened('a\n', 'a\n', '\ufeffa\n').merged, '\ufeffa\nb\n')
    assert.equal(evened('\ufeffa\n', 'a\n', '\ufeffa\n').merged, 'a\nb\n')
    assert.equal(evened('a\n', 'a', 'a\n').merged, 'a\nb')
    assert.equal(evened('a', 'a', 'a\n').merged, 'a\nb\n')
  })

  it('is told by the side that tells it where another has no line yet', () => {
    assert.equal(evened('', '', 'a\r\n').merged, 'a\r\nb\r\n')
    assert.equal(evened('', 'a\r\n', '').merged, 'a\r\nb\r\n')
    assert.equal(evened('', 'a\r\nb', 'a\r\n').merged, 'a\r\nb')
    assert.equal(evened('a', 'b', 'c').merged, 'a\nb')
  })

  it('goes with our side where there is nothing in the base to go by', () => {
    assert.equal(evened('', 'a\r\n', 'a\n').merged, 'a\r\nb\r\n')
    assert.equal(evened('', 'a\n', 'a\r\n').merged, 'a\nb\n')
  })

  it('leaves every line its own end where one text mixes them', () => {
    const { texts, merged } = evened('a\r\nb\n', 'a\r\n', 'a\r\n')
    assert.deepEqual(texts, ['a\r\nb\n', 'a\r\n', 'a\r\n'])
    assert.equal(merged, 'a\nb\n')
  })

  it('keeps the last line’s end where marks of a conflict stand', () => {
    assert.equal(evened('a', 'a', 'a', 'a\n>>>>>>> b\n', true).merged, 'a\n>>>>>>> b\n')
  })
})
