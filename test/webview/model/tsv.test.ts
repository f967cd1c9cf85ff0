import assert from 'node:assert/strict'
import fc from 'fast-check'
import { printTsv, readTsv } from '../../../webview/grid/model/tsv'

describe('cells on the clipboard', () => {
  it('are read row by row, whatever the line ends, without a last empty line', () => {
    assert.deepEqual(readTsv('1\t2\r\n3\t4\r\n'), [['1', '2'], ['3', '4']])
    assert.deepEqual(readTsv('1'), [['1']])
    assert.deepEqual(readTsv('1\t\t3\n\t\t'), [['1', '', '3'], ['', '', '']])
  })
  it('may hold tabs, line breaks and quotes when they stand in quotes', () => {
    assert.deepEqual(readTsv('"two\nlines"\t"a ""quoted"" word"\n"tab\there"'), [['two\nlines', 'a "quoted" word'], ['tab\there']])
  })
  it('keep a quote that quotes nothing, such as an inch mark', () => {
    assert.deepEqual(readTsv('17" rim\t"open'), [['17" rim', '"open']])
  })
  it('come back as they were printed', () => {
    const cell = fc.string({ unit: fc.constantFrom('a', '1', '"', '\t', '\n', ' ', 'é') })
    fc.assert(fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 4 }), (rows) => {
      assert.deepEqual(readTsv(printTsv(rows)), rows)
    }))
  })
})
