import assert from 'node:assert/strict'
import { eachCase, head, refusal, set } from '../../grid/editing'

const lifted = 'sag.front.bike.lifted'
const pushed = 'sag.front.bike.pushed'
const with_ = (reading: string) => `  - id: a\n    sag:\n      front: {extended: 152, bike: ${reading}}   # front\n`
const below = (lines: string) => `  - id: a\n    sag:\n      front:\n        bike:\n${lines}        rider: 110\n`

describe('setting a length of a reading', () => {
  eachCase([
    ['replaces the one that stands alone', with_('128'), set(lifted, '130'), with_('130')],
    ['puts the second beside the one that stands alone', with_('128'), set(pushed, '122.0'), with_('[128, 122.0]')],
    ['keeps the quotes of the one that stands alone', with_("'128'"), set(pushed, '122'), with_("['128', 122]")],
    ['replaces either of two in brackets', with_('[128, 122]'), set(pushed, '121'), with_('[128, 121]')],
    ['puts the second behind the first in brackets', with_('[ 128 ]'), set(pushed, '122'), with_('[ 128, 122 ]')],
    ['fills empty brackets with the first', with_('[]'), set(lifted, '128'), with_('[128]')],
    ['names the second in the place of empty brackets', with_('[]'), set(pushed, '122'), with_('{pushed: 122}')],
    ['takes the place of a null in brackets', with_('[~, 122]'), set(lifted, '128'), with_('[128, 122]')],
    ['replaces either of two by name', with_('{lifted: 128, pushed: 122}'), set(lifted, '130'), with_('{lifted: 130, pushed: 122}')],
    ['puts the second by name', with_('{lifted: 128}'), set(pushed, '122'), with_('{lifted: 128, pushed: 122}')],
    ['takes the place of a null', with_('null'), set(pushed, '122'), with_('{pushed: 122}')],
    ['stands alone where the first is the only one', '  - id: a\n', set(lifted, '128'), '  - id: a\n    sag:\n      front: {bike: 128}\n'],
    ['is named where the second is the only one', '  - id: a\n', set(pushed, '122'), '  - id: a\n    sag:\n      front: {bike: {pushed: 122}}\n'],
    ['replaces an item below the other', below('          - 128 # first\n          - 122\n'), set(lifted, '130'), below('          - 130 # first\n          - 122\n')],
    ['puts the second below the first', below('        - 128 # first\n'), set(pushed, '122'), below('        - 128 # first\n        - 122\n')],
    ['writes any length as it was typed', with_('128'), set(lifted, '5 1/8 in'), with_('5 1/8 in')],
    ['quotes in brackets what a comma would cut', with_('[128]'), set(pushed, '122,5'), with_('[128, "122,5"]')],
    ['goes beside another reading', with_('128'), set('sag.front.rider.lifted', '110'), '  - id: a\n    sag:\n      front: {extended: 152, bike: 128, rider: 110}   # front\n'],
    ['puts an alias in brackets', '  - id: a\n    notes: &n "128"\n    sag: {front: {bike: *n }}\n', set(pushed, '122'), '  - id: a\n    notes: &n "128"\n    sag: {front: {bike: [*n, 122] }}\n'],
    ['puts a block in brackets', '  - id: a\n    sag:\n      rear:\n        bike: |  # alone\n          128\n', set('sag.rear.bike.pushed', '122'), '  - id: a\n    sag:\n      rear:\n        bike: [128, 122]  # alone\n'],
  ])
})

describe('clearing a length of a reading', () => {
  eachCase([
    ['leaves the first alone', with_('[128, 122]'), set(pushed, ''), with_('128')],
    ['names the second where it is left', with_('[128, 122]'), set(lifted, ''), with_('{pushed: 122}')],
    ['takes the reading along with its last length', with_('[128]'), set(lifted, ''), '  - id: a\n    sag:\n      front: {extended: 152}   # front\n'],
    ['takes a length by name', with_('{lifted: 128, pushed: 122}'), set(lifted, ''), with_('{pushed: 122}')],
    ['takes the reading along with its last name', with_('{pushed: 122}'), set(pushed, ''), '  - id: a\n    sag:\n      front: {extended: 152}   # front\n'],
    ['takes the one that stands alone', with_('128'), set(lifted, ''), '  - id: a\n    sag:\n      front: {extended: 152}   # front\n'],
    ['does nothing where there is none', with_('128'), set(pushed, ''), with_('128')],
    ['does nothing to a null', with_('[~, 122]'), set(lifted, ''), with_('[~, 122]')],
    ['takes the reading along where a null is left', with_('[128, ~]'), set(lifted, ''), '  - id: a\n    sag:\n      front: {extended: 152}   # front\n'],
    ['takes the second item below, and leaves its comment', below('          - 128\n          - 122 # second\n'), set(pushed, ''), below('          - 128\n          # second\n')],
    ['takes all the groups around it that become empty', '  - id: a\n    sag: {front: {bike: 128}}\n    notes: x\n', set(lifted, ''), '  - id: a\n    notes: x\n'],
    ['leaves the comments of the groups around it', '  - id: a\n    sag: # measured twice\n      front:\n        # cold\n        bike: 128 # and warm\n    notes: x\n', set(lifted, ''), '  - id: a\n    # measured twice\n    # cold\n    # and warm\n    notes: x\n'],
  ])
})

describe('a reading that is more than two lengths', () => {
  const read = (reading: string) => `${head}entries:\n${with_(reading)}`

  it('is refused, not lost', () => {
    const other = 'this reading holds something else; change it in the text'
    assert.equal(refusal(read('[[1], 2]'), set(lifted, '3')), other)
    assert.equal(refusal(read('[1, 2, 3]'), set(lifted, '')), other)
    assert.equal(refusal(read('{lifted: [1]}'), set(lifted, '3')), '`lifted` holds a group of values here; change it in the text')
    assert.match(refusal(read('[128, # first\n        122]'), set(lifted, '')), /write this reading as/)
    assert.match(refusal(`${head}entries:\n${below('          - 128\n          - 122\n')}`, set(lifted, '')), /write this reading as/)
  })

  it('is refused where it is shared', () => {
    const shared = 'this value is shared with another place; change it in the text'
    const text = `${head}entries:\n  - id: a\n    sag: {front: &f {bike: [128, 122]}, rear: *f }\n`
    for (const row of [lifted, 'sag.rear.bike.lifted']) {
      assert.equal(refusal(text, set(row, '3')), shared)
      assert.equal(refusal(text, set(row, '')), shared)
    }
    assert.equal(refusal(`${head}entries:\n  - id: a\n    sag: {front: {bike: &f [128, 122]}, rear: {bike: *f }}\n`, set('sag.rear.bike.pushed', '3')), shared)
    assert.equal(refusal(`${head}entries:\n  - id: a\n    sag: {front: {bike: [&f 128, 122]}, rear: {bike: *f }}\n`, set(lifted, '')), shared)
  })
})
