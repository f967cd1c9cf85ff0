import type { Turn, TurnList } from '../../../src/core/compare/turns'

/**
 * What is to be ticked off, by names that change when the turn itself does: a turn that is another one after the
 * notebook was edited is to be made again.
 */
export const tickOf = ({ row, from, to }: Pick<Turn, 'row' | 'from' | 'to'>) => `${row}\n${from}\n${to}`
export const tickOfFirst = (sentence: string) => `first\n${sentence}`

/** All there is to tick, in the order of the list. */
export function ticksIn({ groups }: TurnList): string[] {
  return groups.flatMap(({ first, steps }) => [...first.map(tickOfFirst), ...steps.flatMap(({ turns }) => turns.map(tickOf))])
}

/** Those of the ticks that the list still has. */
export function kept(list: TurnList, ticked: Iterable<string>): Set<string> {
  const known = new Set(ticksIn(list))
  return new Set([...ticked].filter((tick) => known.has(tick)))
}

/** The next one after `from` that is not ticked, round and round; undefined when none is left. */
export function nextUnticked(all: readonly string[], ticked: ReadonlySet<string>, from: string): string | undefined {
  const at = all.indexOf(from)
  return [...all.slice(at + 1), ...all.slice(0, at + 1)].find((tick) => !ticked.has(tick))
}
