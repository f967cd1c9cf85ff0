import { findControl } from '../core/adjusters/controls'

const sides = { front: 'to the front of the machine', rear: 'to the rear of the machine', left: 'to the machine’s left', right: 'to the machine’s right' }

/** What the words of the format's choices say, by the key they stand behind. Common practice of the trade. */
const words: Record<string, Record<string, string>> = {
  use: {
    road: 'the usual sag windows of the road', track: 'the usual sag windows of the circuit', motocross: 'the usual sag windows of motocross',
    enduro: 'the usual sag windows of enduro', adventure: 'the usual sag windows of long travel on the road', touring: 'the usual sag windows of the road, loaded',
  },
  on: { fork: 'at the front', shock: 'at the rear', chassis: 'at the frame or the steering', tyres: 'in the tyres' },
  counts: {
    clicks: 'of its detent', turns: 'whole ones and fractions', flats: 'of a hex, six to a turn', rings: 'that show', lines: 'engraved', mm: 'measured',
    steps: 'of a cam or a stepped ring', dial: 'the number that stands at its mark', bar: 'pressure', psi: 'pressure', kPa: 'pressure',
    'N/mm': 'spring rate', 'kgf/mm': 'spring rate', 'lbf/in': 'spring rate', ml: 'volume',
  },
  counted: { out: 'from fully closed', in: 'from fully open, or backed off' },
  range_is: { measured: 'counted on this machine, from end to end', book: 'what the book says; production varies' },
  higher_is: { more: 'a higher figure gives more', less: 'a higher figure gives less' },
  closes: { clockwise: 'turned in clockwise, facing its head', anticlockwise: 'turned in anticlockwise, facing its head' },
  faces: { up: 'its head points up', down: 'its head points down', ...sides },
  worked_from: { facing: 'one looks at its head', above: 'one looks down on it', below: 'one looks up at it', ...sides },
  held_by: { ball: 'a ball detent, which clicks', o_ring: 'the friction of an O-ring', friction: 'friction alone', locknut: 'a locknut, to be loosened first', nothing: 'it may move by itself' },
  condition: { good: 'it stays where it is set', worn: 'it may creep: check it before every ride' },
  // Of a logger's columns.
  unit: { s: 'seconds', ms: 'thousandths of a second', us: 'millionths of a second', clock: 'times of day, such as 14:03:22.125' },
  direction: { compression: 'a rising reading means that the end goes in', extension: 'a rising reading means that the end comes out' },
  at: { wheel: 'it reads wheel travel', damper: 'it reads damper travel; in the rear the leverage makes wheel travel of it' },
  verdict: { keep: 'it stays as it is', 'go back': 'it was better before', 'try again': 'not sure yet' },
}

const loudness: Record<string, string> = {
  error: 'a fault', warning: 'worth a look', info: 'said quietly', off: 'not said at all',
}

/** What one of the format's choices says; `undefined` where its word says it all. @example choiceWords(['entries', '*', 'verdict'], 'keep') */
export function choiceWords(path: readonly string[], value: string): string | undefined {
  const key = path.at(-1) ?? ''
  if (path[0] === 'rules') return Object.hasOwn(loudness, value) ? loudness[value] : undefined
  if (key === 'controls') return findControl(value)?.words
  if (path.at(-2) === 'legs') return value === 'left' || value === 'right' ? `the ${value} leg, as seen from the saddle` : undefined
  const known = Object.hasOwn(words, key) ? words[key]! : {}
  return Object.hasOwn(known, value) ? known[value] : undefined
}
