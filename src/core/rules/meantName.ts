import { nearest } from '../nearest'

/** Words of which one is never a slip of the pen for the other, however near they are in letters. */
const apart: readonly (readonly string[])[] = [
  ['fork', 'shock'], ['front', 'rear'], ['left', 'right'], ['rebound', 'compression', 'preload'], ['low', 'high'], ['hot', 'cold'], ['static', 'rider'],
]

/**
 * The name that was probably meant, but for `except`; never one for another end, side, circuit or number: a wrong guess taken in a
 * hurry would put a setting on the wrong adjuster.
 *
 * @example meantName('fork_rebond', ['fork_rebound', 'shock_rebound']) // 'fork_rebound'
 * @example meantName('shock_rebound', ['fork_rebound']) // undefined
 * @example meantName('run-3', ['run-1']) // undefined
 */
export function meantName(written: string, names: Iterable<string>, except?: string): string | undefined {
  const said = marksOf(written)
  const possible: string[] = []
  let looked = 0
  for (const name of names) {
    if (++looked > mostNames) return undefined
    if (name !== except && isCompatible(said, marksOf(name))) possible.push(name)
  }
  return nearest(written, possible)
}

/** Comparing with more names than a machine or a season has would keep whoever types waiting. */
const mostNames = 400

interface Marks {
  words: readonly string[]
  digits: string
}

function marksOf(name: string): Marks {
  return { words: name.toLowerCase().split(/[^a-z]+/), digits: (name.match(/\d+/g) ?? []).join(' ') }
}

function isCompatible(a: Marks, b: Marks): boolean {
  if (a.digits !== b.digits) return false
  return apart.every((group) => {
    const [one, other] = [a, b].map(({ words }) => group.filter((word) => words.includes(word)))
    return one!.length === 0 || other!.length === 0 || one!.join() === other!.join()
  })
}
