import { usages } from '../usages'

/** A command as a shell completes it. */
export interface CommandSpec {
  name: string
  /** What it does, in a sentence. */
  about: string
  /** Words that stand in its place without an option, such as the names of shells; files otherwise. */
  words: readonly string[]
  options: readonly OptionSpec[]
}

export interface OptionSpec {
  /** With its two strokes. */
  name: string
  /** Absent where it takes no value; empty where that is anything, or a file. */
  values?: readonly string[]
}

/** All commands, read out of their usage; `known` are the values of a word in capitals. */
export function commandSpecs(known: Readonly<Record<string, readonly string[]>>): CommandSpec[] {
  return Object.entries(usages).map(([name, text]) => {
    const [line = '', , ...body] = text.split('\n')
    const synopsis = line.slice(`detent ${name} `.length)
    const plain = synopsis.split(' ')[0]!
    return {
      name,
      about: /^[^.:]*[.:]?/.exec(body.join(' '))![0].replace(/[.:]$/, ''),
      words: /^[a-z]+(?:\|[a-z]+)+$/.test(plain) ? plain.split('|') : [],
      options: [...synopsis.matchAll(/(--[a-z-]+)(?: ([^\s\]-][^\s\]]*))?/g)].map(([, option, value]) => ({
        name: option!,
        ...(value === undefined || value === '|' ? {} : { values: known[value] ?? (value.includes('|') ? value.split('|') : []) }),
      })),
    }
  })
}
