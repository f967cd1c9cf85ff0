import assert from 'node:assert/strict'
import { readNotebook } from '../../src/core/notebook/readNotebook'
import { fileUnits } from '../../src/core/notation/displayUnits'
import { hoverAt } from '../../src/language/hover'
import { ternSketch } from '../core/derived/ternSketch'

const notebook = readNotebook(ternSketch)
const over = (words: string) => hoverAt(notebook, ternSketch.indexOf(words) + 1)

describe('the hover on something measured', () => {
  it('shows the sum that stands on a reading, with this entry’s numbers in it', () => {
    const { markdown } = over('118, 110') ?? assert.fail('no hover')
    assert.match(markdown, /^\*\*Rider sag, rider aboard\*\*/)
    assert.ok(markdown.includes('152 − \\(118 \\+ 110\\) / 2'), markdown)
    assert.match(over('128, 122')!.markdown, /^\*\*Static sag/)
  })

  it('shows the wheel rate on the end, and the share of the travel on what was used', () => {
    assert.match(over('front: {extended')!.markdown, /^\*\*Wheel rate, as both sags imply\*\*/)
    assert.match(over('104')!.markdown, /^\*\*Travel used, front, of its travel\*\*/)
  })

  it('speaks in the units asked for, and keeps what is typed as it was written', () => {
    const hover = hoverAt(notebook, ternSketch.indexOf('118, 110') + 1, { ...fileUnits, length: 'in' })!
    assert.ok(hover.markdown.includes('152 − \\(118 \\+ 110\\) / 2'))
    assert.match(hover.markdown, /= 38 ± 0\\\.71 mm \\\(1\\\.496 ± 0\\\.028 in\\\)/)
  })

  it('leaves adjusters and the rest of the format to their own hovers', () => {
    assert.match(over('3 out, right')!.markdown, /^\*\*Fork rebound/)
    assert.equal(hoverAt(notebook, ternSketch.indexOf('travel: 120') + 1)?.fromSchema, true)
  })
})
