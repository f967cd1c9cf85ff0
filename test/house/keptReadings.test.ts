import assert from 'node:assert/strict'
import { KeptReadings } from '../../src/editor/team/keptReadings'

/** A disk that is a map, and what was done with it. */
function shelf(files: Record<string, string>) {
  const stamps = new Map<string, string>()
  const did: string[] = []
  const hooks = { onRead: (): void => undefined, onGiveWay: (): void => undefined }
  const textOf = (key: string): string => {
    const text = files[key]
    if (text === undefined) throw new Error(`no ${key}`)
    return text
  }
  const readings = new KeptReadings<string>({
    stamp: (key) => Promise.resolve().then(() => stamps.get(key) ?? textOf(key)),
    read: async (key, earlier) => {
      did.push(key)
      const text = textOf(key)
      hooks.onRead()
      await Promise.resolve()
      if (text === 'bad') throw new Error('cannot be read')
      return earlier === undefined ? text : `${text} after ${earlier.split(' ')[0]!}`
    },
    giveWay: async () => {
      did.push('-')
      await Promise.resolve()
      hooks.onGiveWay()
    },
  })
  const since = () => did.splice(0).join(' ')
  return { files, stamps, hooks, readings, since }
}

describe('kept readings', () => {
  it('reads each file once and gives way after each', async () => {
    const { readings, since } = shelf({ a: 'A', b: 'B', c: 'C' })
    const told: string[] = []
    await readings.keep(['a', 'b', 'c'], (done, of) => told.push(`${done}/${of}`))
    assert.deepEqual(readings.all, ['A', 'B', 'C'])
    assert.equal(since(), 'a - b - c -')
    assert.deepEqual(told, ['1/3', '2/3', '3/3'])
  })

  it('reads again only what has another stamp, with what it was before at hand', async () => {
    const { files, readings, since } = shelf({ a: 'A', b: 'B', c: 'C' })
    await readings.keep(['a', 'b', 'c'])
    since()
    files.b = 'B2'
    await readings.keep(['a', 'b', 'c'])
    assert.equal(since(), 'b -')
    assert.equal(readings.get('b'), 'B2 after B')
  })

  it('lets go of what is not among those that were found', async () => {
    const { readings, since } = shelf({ a: 'A', b: 'B' })
    await readings.keep(['a', 'b'])
    await readings.keep(['b'])
    assert.deepEqual(readings.all, ['B'])
    assert.equal(readings.has('a'), false)
    assert.equal(since(), 'a - b -')
  })

  it('reads what was touched whatever its stamp says', async () => {
    const { files, stamps, readings, since } = shelf({ a: 'A', b: 'B' })
    stamps.set('a', 'one time').set('b', 'one time')
    await readings.keep(['a', 'b'])
    since()
    files.a = 'A2'
    await readings.touch(['a'])
    assert.equal(since(), 'a -')
    assert.equal(readings.get('a'), 'A2 after A')
    await readings.keep(['a', 'b'])
    assert.equal(since(), '')
  })

  it('reads once more what was touched while it was read', async () => {
    const { files, stamps, hooks, readings, since } = shelf({ a: 'A' })
    stamps.set('a', 'one time')
    hooks.onRead = () => {
      hooks.onRead = () => undefined
      files.a = 'A2'
      void readings.touch(['a'])
    }
    await readings.keep(['a'])
    assert.equal(since(), 'a - a -')
    assert.equal(readings.get('a'), 'A2 after A')
  })

  it('puts what was touched before whatever else is due', async () => {
    const { hooks, readings, since } = shelf({ a: 'A', b: 'B', c: 'C', d: 'D' })
    const reading = readings.keep(['a', 'b', 'c', 'd'])
    hooks.onGiveWay = () => {
      hooks.onGiveWay = () => undefined
      void readings.touch(['d'])
    }
    await reading
    assert.equal(since(), 'a - d - b - c -')
  })

  it('gives up what is left of an older request when a newer one comes', async () => {
    const { hooks, readings, since } = shelf({ a: 'A', b: 'B', c: 'C', d: 'D' })
    const older = readings.keep(['a', 'b', 'c'])
    let newer: Promise<void> | undefined
    hooks.onGiveWay = () => {
      newer ??= readings.keep(['a', 'd'])
    }
    await older
    await newer
    assert.equal(since(), 'a - d -')
    assert.deepEqual(readings.all, ['A', 'D'])
  })

  it('goes on with the others where one cannot be read, and tries it again', async () => {
    const { files, stamps, readings, since } = shelf({ a: 'A', b: 'bad', c: 'C' })
    await readings.keep(['a', 'b', 'gone', 'c'])
    assert.deepEqual(readings.all, ['A', 'C'])
    assert.equal(since(), 'a - b - - c -')
    stamps.set('b', 'bad')
    files.b = 'B'
    await readings.keep(['a', 'b', 'c'])
    assert.equal(since(), 'b -')
    assert.equal(readings.get('b'), 'B')
  })

  it('stops when asked, keeps what was read and says how much was not', async () => {
    const { hooks, readings, since } = shelf({ a: 'A', b: 'B', c: 'C' })
    hooks.onGiveWay = () => readings.stop()
    await readings.keep(['a', 'b', 'c'])
    assert.deepEqual([readings.all, readings.left], [['A'], 2])
    await readings.touch(['a'])
    assert.equal(since(), 'a - a -', 'what was not wanted any more is not read with the next')
    hooks.onGiveWay = () => undefined
    await readings.keep(['a', 'b', 'c'])
    assert.equal(since(), 'b - c -')
    assert.equal(readings.left, 0)
  })

  it('does not bring back what was let go while it was read', async () => {
    const { readings } = shelf({ 'x/a': 'A', 'y/b': 'B' })
    const reading = readings.keep(['x/a', 'y/b'])
    assert.equal(readings.forget((key) => key.startsWith('x/')), true)
    await reading
    assert.deepEqual(readings.all, ['B'])
    assert.equal(readings.forget((key) => key.startsWith('x/')), false)
    await readings.touch(['x/a'])
    assert.deepEqual(readings.all, ['B'])
  })
})
