import assert from 'node:assert/strict'
import fc from 'fast-check'
import { clearestBox, namedPlaces, spreadLabels } from '../../../../webview/charts/model/labels'

describe('labels at the ends of lines', () => {
  it('stand at their lines where there is room', () => {
    assert.deepEqual(spreadLabels([{ middle: 100, height: 14 }, { middle: 40, height: 14 }], 200), [93, 33])
  })
  it('never cover one another, keep the order of their lines, and stay in the picture as long as they fit', () => {
    const label = fc.record({ middle: fc.integer({ min: -50, max: 350 }), height: fc.integer({ min: 10, max: 30 }) })
    fc.assert(fc.property(fc.array(label, { maxLength: 8 }), (labels) => {
      const tops = spreadLabels(labels, 300)
      const order = labels.map((_, at) => at).sort((a, b) => tops[a]! - tops[b]!)
      order.slice(1).forEach((at, before) => assert.ok(tops[at]! >= tops[order[before]!]! + labels[order[before]!]!.height - 1e-9))
      order.slice(1).forEach((at, before) => assert.ok(labels[at]!.middle >= labels[order[before]!]!.middle))
      for (const at of labels.keys()) assert.ok(tops[at]! >= 0 && tops[at]! + labels[at]!.height <= 300)
    }))
  })
})

describe('names along an axis', () => {
  it('are all there while they fit, else every so-manieth', () => {
    assert.deepEqual(namedPlaces(-0.5, 3.5, 4, 400, 80), [0, 1, 2, 3])
    assert.deepEqual(namedPlaces(-0.5, 3.5, 4, 400, 150), [0, 2])
    assert.deepEqual(namedPlaces(-0.5, 3.5, 4, 100, 500), [0])
  })
  it('are only of places in sight', () => {
    assert.deepEqual(namedPlaces(1.2, 2.8, 4, 400, 50), [2])
    assert.deepEqual(namedPlaces(1.2, 1.8, 4, 400, 50), [])
  })
  it('never run into one another', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 4000 }), fc.integer({ min: 60, max: 2000 }), fc.integer({ min: 8, max: 160 }), (count, room, widest) => {
      const places = namedPlaces(-0.5, count - 0.5, count, room, widest)
      assert.equal(places[0], 0)
      places.slice(1).forEach((place, before) => assert.ok((place - places[before]!) * (room / count) >= widest - 1e-9))
    }))
  })
})

describe('a label in the picture', () => {
  const box = (left: number, top: number) => ({ left, top, width: 50, height: 10 })
  it('stands where no line runs through it, not even between two far points', () => {
    const boxes = [box(0, 0), box(100, 0), box(0, 90)]
    assert.deepEqual(clearestBox(boxes, [[[10, 100], [10, 0], [300, 0]]]), boxes[2])
    assert.deepEqual(clearestBox(boxes, [[[0, 5], [60, 5]], [[0, 95], [60, 95]]]), boxes[1])
  })
  it('stands in the first place where it makes no difference', () => {
    assert.deepEqual(clearestBox([box(0, 0), box(100, 0)], []), box(0, 0))
    assert.equal(clearestBox([], []), undefined)
  })
})
