/** Texts in another language by the English ones; `{0}`, `{1}` stand for values. */
export type Catalogue = Readonly<Record<string, string>>

type Value = string | number

/** The pieces of a text around its values, and which value stands between them. */
interface Pattern {
  pieces: readonly string[]
  order: readonly number[]
}

let catalogue: ReadonlyMap<string, string> | undefined
// A template is the same object each time its line runs, so that each is looked up once.
let patterns = new WeakMap<TemplateStringsArray, Pattern>()

/** From now on everything is said in the words of a catalogue; in English where it has none, or where there is no catalogue. */
export function speak(texts?: Catalogue): void {
  catalogue = texts && new Map(Object.entries(texts))
  patterns = new WeakMap()
}

/**
 * A text for a person to read, in the language that is spoken.
 *
 * @example say`Sag is ${12} mm` // looked up as 'Sag is {0} mm'
 * @example say('Rider sag') // or a `phrase` from a table
 */
export function say(english: TemplateStringsArray | string, ...values: readonly Value[]): string {
  if (typeof english === 'string') return catalogue?.get(english) ?? english
  if (!catalogue) return interleave(english, values)
  let pattern = patterns.get(english)
  if (!pattern) patterns.set(english, pattern = patternOf(english, catalogue))
  let text = pattern.pieces[0]!
  for (let at = 0; at < pattern.order.length; at++) text += String(values[pattern.order[at]!]) + pattern.pieces[at + 1]!
  return text
}

/** What language is spoken, as a page's `lang`. Every catalogue says it of itself under `en`. */
export function language(): string {
  return say('en')
}

/** Marks a text of a table as one that is said later. It stays English, so that tables can be made before a language is known. */
export function phrase(english: string): string {
  return english
}

/** What a template is called in a catalogue: its pieces, with the number of each value between them. */
export function templateKey(pieces: readonly string[]): string {
  return pieces.reduce((key, piece, at) => `${key}{${at - 1}}${piece}`)
}

function interleave(pieces: readonly string[], values: readonly Value[]): string {
  let text = pieces[0]!
  for (let at = 1; at < pieces.length; at++) text += String(values[at - 1]) + pieces[at]!
  return text
}

function patternOf(english: TemplateStringsArray, texts: ReadonlyMap<string, string>): Pattern {
  const parts = (texts.get(templateKey(english)) ?? templateKey(english)).split(/\{(\d+)\}/)
  return {
    pieces: parts.filter((_, at) => at % 2 === 0),
    order: parts.filter((_, at) => at % 2 === 1).map(Number),
  }
}
