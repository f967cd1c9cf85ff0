import assert from 'node:assert/strict'
import { closerWanted } from '../../../webview/charts/model/closer'

const all = [0, 1000] as const
const detail = { step: 1, finest: 0.01 }

describe('closerWanted', () => {
  it('asks for as much again on either side of a stretch that is drawn coarsely, within all there is', () => {
    assert.deepEqual(closerWanted(detail, [400, 500], all), [300, 600])
    assert.deepEqual(closerWanted(detail, [0, 100], all), [0, 200])
    assert.deepEqual(closerWanted(detail, [950, 1000], all), [900, 1000])
  })

  it('asks for nothing where all is in sight, or points lie near enough', () => {
    assert.equal(closerWanted(detail, undefined, all), undefined)
    assert.equal(closerWanted(detail, [100, 700], all), undefined)
    assert.deepEqual(closerWanted(detail, [100, 699], all), [0, 1000])
    assert.equal(closerWanted(undefined, [1, 2], all), undefined)
  })

  it('asks for no more than the log knows', () => {
    assert.equal(closerWanted({ step: 0.01, finest: 0.01 }, [1, 2], all), undefined)
  })

  it('asks again where what is known more closely ends, or is still too coarse', () => {
    const closer = { from: 300, to: 600, step: 0.1 }
    assert.equal(closerWanted({ ...detail, closer }, [400, 500], all), undefined)
    assert.deepEqual(closerWanted({ ...detail, closer }, [580, 640], all), [520, 700])
    assert.deepEqual(closerWanted({ ...detail, closer }, [400, 440], all), [360, 480])
    assert.equal(closerWanted({ ...detail, closer: { from: 0, to: 200, step: 0.1 } }, [0, 100], all), undefined)
  })
})
