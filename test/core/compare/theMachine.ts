import type { Adjuster, Facing } from '../../../src/core/adjusters/adjuster'
import { slotKey, slotsOf } from '../../../src/core/adjusters/adjuster'
import { countAt } from '../../../src/core/derived/countAt'
import { readPosition } from '../../../src/core/notation/position'
import type { Entry, Notebook } from '../../../src/core/notebook/notebook'

/**
 * A machine of metal: every adjuster is a thread that stands somewhere, and knows nothing of a notebook. It is turned by
 * the words of a printed turn list alone, and then read again: our own model of it, apart from the code under test.
 */
export type Machine = Map<string, number>

/** Where everything stands in an entry, in each adjuster's own count. */
export function standingIn(notebook: Notebook, entry: Entry): Machine {
  const machine: Machine = new Map()
  for (const adjuster of notebook.adjusters.values()) {
    for (const slot of slotsOf(adjuster)) {
      const count = countAt(entry, slot)
      if (count !== undefined) machine.set(slotKey(adjuster.id, slot.leg), count)
    }
  }
  return machine
}

/** Does what a printed list says, line by line, as a mechanic would who knows nothing else. */
export function turnByText(machine: Machine, text: string, notebook: Notebook): Machine {
  const after: Machine = new Map(machine)
  const adjusters = [...notebook.adjusters.values()]
  let adjuster: Adjuster | undefined
  let waiting: { slot: string; amount: string }[] = []
  for (const line of text.split('\n')) {
    const tick = /^ {4}\[ \] (?:(left|right) (?:leg|shock): )?(.*?)(?: \(.*\))?, from .* to .*$/.exec(line)
    const way = /^ {8}(?:Turn it|Face the head.*: turn it) (clockwise|anticlockwise)(.*) (?:to turn it|for) /.exec(line)
    const bring = /^ {8}Bring it from .* to (.*) \(/.exec(line)
    if (tick) waiting.push({ slot: slotKey(adjuster!.id, tick[1] as 'left'), amount: tick[2]! })
    else if (way) {
      for (const { slot, amount } of waiting) after.set(slot, after.get(slot)! + movementOf(adjuster!, amount, { seen: way[1]!, words: way[2]! }))
      waiting = []
    } else if (bring) {
      for (const { slot } of waiting) after.set(slot, readPosition(bring[1]!, true).value!.amount)
      waiting = []
    } else if (/^ {2}[^ ]/.test(line)) adjuster = adjusters.find(({ label }) => line.trim() === label || line.trim().startsWith(`${label} · `))
  }
  return after
}

const seenFrom: Record<string, Facing> = { above: 'up', below: 'down', 'the front of the machine': 'front', 'behind the machine': 'rear', 'the machine’s left': 'left', 'the machine’s right': 'right' }
const across: Record<Facing, Facing> = { up: 'down', down: 'up', front: 'rear', rear: 'front', left: 'right', right: 'left' }

/** By how much a count changes when the adjuster is turned so, as the metal has it. */
function movementOf(adjuster: Adjuster, amount: string, { seen, words }: { seen: string; words: string }): number {
  const from = Object.keys(seenFrom).find((place) => words.includes(`from ${place}`) || words.endsWith(`${place},`))
  const looksAtBack = from !== undefined && adjuster.faces !== undefined && across[adjuster.faces] === seenFrom[from]
  const facingIt = looksAtBack ? (seen === 'clockwise' ? 'anticlockwise' : 'clockwise') : seen
  const goesIn = facingIt === adjuster.closes
  const size = Math.abs(readPosition(amount.replace(/^[+−]/, ''), true).value!.amount)
  const rises = adjuster.end === undefined ? (adjuster.higherIs === 'more') === goesIn : (adjuster.end === 'open') === goesIn
  return rises ? size : -size
}
