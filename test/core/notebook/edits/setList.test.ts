import assert from 'node:assert/strict'
import { typedItems } from '../../../../src/core/notebook/edits/setList'
import { Refusal } from '../../../../src/core/notebook/edits/refusal'
import { eachCase, head, refusal, set } from '../../grid/editing'

const heights = 'bounce.front'
const seconds = 'bounce.front.seconds'
const with_ = (list: string) => `  - id: a\n    bounce: {front: ${list}, rear: [30, 5]}   # by hand\n`
const below = (lines: string) => `  - id: a\n    bounce:\n      front:\n${lines}      rear: [30, 5]\n`

describe('typedItems', () => {
  it('reads a list as someone types it: with commas, in brackets, or plain numbers with blanks between', () => {
    for (const typed of ['40, 14, 5', '[40, 14, 5]', ' 40,14 , 5 ', '40 14 5', '40, 14, 5,', '[ 40, 14, 5, ]']) assert.deepEqual(typedItems(typed), ['40', '14', '5'], typed)
    assert.deepEqual(typedItems('40'), ['40'])
    assert.deepEqual(typedItems('-40 14 -5'), ['-40', '14', '-5'])
  })

  it('keeps a figure with its unit or its fraction in one piece', () => {
    assert.deepEqual(typedItems('1 5/8 in, 1/2 in'), ['1 5/8 in', '1/2 in'])
    assert.deepEqual(typedItems('40 mm 14 mm'), ['40 mm 14 mm'])
  })

  it('refuses where one is missing, or there are more than anyone measures', () => {
    for (const typed of ['40,, 5', ', 40', '[]', ',']) assert.throws(() => typedItems(typed), Refusal, typed)
    assert.throws(() => typedItems(Array.from({ length: 201 }, () => '1').join(',')), Refusal)
  })
})

describe('setting a list', () => {
  eachCase([
    ['writes it in brackets where there was none', '  - id: a\n', set(heights, '40, 14, 5'), '  - id: a\n    bounce:\n      front: [40, 14, 5]\n'],
    ['writes it beside that of the other end', '  - id: a\n    bounce: {rear: [30, 5]}\n', set(heights, '[40, 14]'), '  - id: a\n    bounce: {rear: [30, 5], front: [40, 14]}\n'],
    ['replaces the items that differ and no other', with_('[40, 14.0,  5]'), set(heights, '40, 14.0, 6'), with_('[40, 14.0,  6]')],
    ['changes nothing where nothing differs', with_('[40, 14]'), set(heights, '40, 14'), with_('[40, 14]')],
    ['puts more behind the last', with_('[ 40, 14 ]'), set(heights, '40, 14, 5, 2'), with_('[ 40, 14, 5, 2 ]')],
    ['puts more before a comma at the end', with_('[40, 14,]'), set(heights, '40, 14, 5'), with_('[40, 14, 5,]')],
    ['takes what is too much from the end', with_('[40, 14, 5, 2]'), set(heights, '40, 13'), with_('[40, 13]')],
    ['keeps quotes', with_("['40', 14]"), set(heights, '41, 14'), with_("['41', 14]")],
    ['fills empty brackets', with_('[]'), set(heights, '40, 14'), with_('[40, 14]')],
    ['takes the place of a null', with_('~'), set(heights, '40, 14'), with_('[40, 14]')],
    ['takes the place of one number', with_('40'), set(heights, '40, 14'), with_('[40, 14]')],
    ['writes into the group that holds its time', with_('{heights: [40, 14], seconds: 0.6}'), set(heights, '41, 14'), with_('{heights: [41, 14], seconds: 0.6}')],
    ['begins the list beside its time', with_('{seconds: 0.6}'), set(heights, '41, 14'), with_('{seconds: 0.6, heights: [41, 14]}')],
    ['keeps items on their lines, with their comments', below('        - 40   # the push\n        - 14\n'), set(heights, '41, 14'), below('        - 41   # the push\n        - 14\n')],
    ['puts more below', below('        - 40\n        - 14 # up\n'), set(heights, '40, 14, 5, 2'), below('        - 40\n        - 14 # up\n        - 5\n        - 2\n')],
    ['takes lines from the end', below('        - 40 # the push\n        - 14\n        - 5\n'), set(heights, '40'), below('        - 40 # the push\n')],
    ['keeps comments inside of brackets', with_('[40, # the push\n      14]'), set(heights, '40, 13, 5'), with_('[40, # the push\n      13, 5]')],
    ['quotes what YAML would take for something else', with_('[40]'), set(heights, '40, {'), with_('[40, "{"]')],
    ['gives an alias a value of its own', '  - id: a\n    notes: &n "40"\n    bounce: {front: [*n , 14]}\n', set(heights, '41, 14'), '  - id: a\n    notes: &n "40"\n    bounce: {front: [41 , 14]}\n'],
  ])

  it('is refused where a comment stands beside what would be taken out, or an anchor in the way', () => {
    for (const [entries, why] of [
      [with_('[40, 14, # second\n      5]'), /a comment stands beside/],
      [below('        - 40\n        - 14 # up\n'), /a comment stands beside/],
      [with_('&h [40, 14]'), /shared|another place/],
    ] as const) {
      const text = `${head}entries:\n${entries}${entries.includes('&h') ? '  - id: b\n    bounce: {front: *h }\n' : ''}`
      assert.match(refusal(text, set(heights, '40')), why, entries)
    }
  })

  it('is refused where something else stands there', () => {
    assert.match(refusal(`${head}entries:\n${with_('[{a: 1}, 2]')}`, set(heights, '40, 3')), /holds something else/)
    assert.match(refusal(`${head}entries:\n${with_('{heights: {a: 1}}')}`, set(heights, '40, 3')), /holds a group/)
  })
})

describe('clearing a list', () => {
  eachCase([
    ['takes it out with its key', with_('[40, 14]'), set(heights, ''), '  - id: a\n    bounce: {rear: [30, 5]}   # by hand\n'],
    ['takes the group along that becomes empty', '  - id: a\n    bounce: {front: [40]}\n    verdict: keep\n', set(heights, ''), '  - id: a\n    verdict: keep\n'],
    ['leaves its time', with_('{heights: [40, 14], seconds: 0.6}'), set(heights, ''), with_('{seconds: 0.6}')],
    ['is nothing where there is none', '  - id: a\n', set(heights, ''), '  - id: a\n'],
  ])
})

describe('setting the time of a bounce test', () => {
  eachCase([
    ['puts the list in brackets into a group', with_('[40, 14]'), set(seconds, '0.6'), with_('{heights: [40, 14], seconds: 0.6}')],
    ['keeps the items of a block list on their lines', below('        - 40 # the push\n        - 14\n'), set(seconds, '0.6'), below('        heights:\n        - 40 # the push\n        - 14\n        seconds: 0.6\n')],
    ['takes items that stand as far left as their key further in, so that they stay its own', below('      - 40\n\n      # slower\n      - 14\n'), set(seconds, '0.6'), below('        heights:\n        - 40\n\n        # slower\n        - 14\n        seconds: 0.6\n')],
    ['replaces the one that stands there', with_('{heights: [40, 14], seconds: 0.6}'), set(seconds, '0.65'), with_('{heights: [40, 14], seconds: 0.65}')],
    ['comes before the heights where they are not there yet', '  - id: a\n', set(seconds, '0.6'), '  - id: a\n    bounce:\n      front: {seconds: 0.6}\n'],
    ['leaves the group where it is taken out', with_('{heights: [40, 14], seconds: 0.6}'), set(seconds, ''), with_('{heights: [40, 14]}')],
  ])
})
