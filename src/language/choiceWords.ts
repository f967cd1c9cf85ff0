import { findControl } from '../core/adjusters/controls'
import { phrase, say } from '../core/words/say'

const sides = { front: phrase('to the front of the machine'), rear: phrase('to the rear of the machine'), left: phrase('to the machine’s left'), right: phrase('to the machine’s right') }

/** What the words of the format's choices say, by the key they stand behind. Common practice of the trade. */
const words: Record<string, Record<string, string>> = {
  use: {
    road: phrase('the usual sag windows of the road'), track: phrase('the usual sag windows of the circuit'), motocross: phrase('the usual sag windows of motocross'),
    enduro: phrase('the usual sag windows of enduro'), adventure: phrase('the usual sag windows of long travel on the road'), touring: phrase('the usual sag windows of the road, loaded'),
  },
  on: { fork: phrase('at the front'), shock: phrase('at the rear'), chassis: phrase('at the frame or the steering'), tyres: phrase('in the tyres') },
  counts: {
    clicks: phrase('of its detent'), turns: phrase('whole ones and fractions'), flats: phrase('of a hex, six to a turn'), rings: phrase('that show'), lines: phrase('engraved'), mm: phrase('measured'),
    steps: phrase('of a cam or a stepped ring'), dial: phrase('the number that stands at its mark'), bar: phrase('pressure'), psi: phrase('pressure'), kPa: phrase('pressure'),
    'N/mm': phrase('spring rate'), 'kgf/mm': phrase('spring rate'), 'lbf/in': phrase('spring rate'), ml: phrase('volume'),
  },
  counted: { out: phrase('from fully closed'), in: phrase('from fully open, or backed off') },
  range_is: { measured: phrase('counted on this machine, from end to end'), book: phrase('what the book says; production varies') },
  higher_is: { more: phrase('a higher figure gives more'), less: phrase('a higher figure gives less') },
  closes: { clockwise: phrase('turned in clockwise, facing its head'), anticlockwise: phrase('turned in anticlockwise, facing its head') },
  faces: { up: phrase('its head points up'), down: phrase('its head points down'), ...sides },
  worked_from: { facing: phrase('one looks at its head'), above: phrase('one looks down on it'), below: phrase('one looks up at it'), ...sides },
  held_by: { ball: phrase('a ball detent, which clicks'), o_ring: phrase('the friction of an O-ring'), friction: phrase('friction alone'), locknut: phrase('a locknut, to be loosened first'), nothing: phrase('it may move by itself') },
  condition: { good: phrase('it stays where it is set'), worn: phrase('it may creep: check it before every ride') },
  // Of a logger's columns.
  unit: { s: phrase('seconds'), ms: phrase('thousandths of a second'), us: phrase('millionths of a second'), clock: phrase('times of day, such as 14:03:22.125') },
  direction: { compression: phrase('a rising reading means that the end goes in'), extension: phrase('a rising reading means that the end comes out') },
  at: { wheel: phrase('it reads wheel travel'), damper: phrase('it reads damper travel; in the rear the leverage makes wheel travel of it') },
  verdict: { keep: phrase('it stays as it is'), 'go back': phrase('it was better before'), 'try again': phrase('not sure yet') },
}

const loudness: Record<string, string> = {
  error: phrase('a fault'), warning: phrase('worth a look'), info: phrase('said quietly'), off: phrase('not said at all'),
}

const sayIfAny = (words: string | undefined): string | undefined => (words === undefined ? undefined : say(words))

/** What one of the format's choices says; `undefined` where its word says it all. @example choiceWords(['entries', '*', 'verdict'], 'keep') */
export function choiceWords(path: readonly string[], value: string): string | undefined {
  const key = path.at(-1) ?? ''
  if (path[0] === 'rules') return Object.hasOwn(loudness, value) ? sayIfAny(loudness[value]) : undefined
  if (key === 'controls') return sayIfAny(findControl(value)?.words)
  if (path.at(-2) === 'legs') return value === 'left' || value === 'right' ? (value === 'left' ? say('the left leg, as seen from the saddle') : say('the right leg, as seen from the saddle')) : undefined
  const known = Object.hasOwn(words, key) ? words[key]! : {}
  return Object.hasOwn(known, value) ? sayIfAny(known[value]) : undefined
}
