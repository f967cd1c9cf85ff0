import type { Unit } from '../notation/units'
import { phrase, say } from '../words/say'

/** What is counted has a name in every language; what is measured has its symbol. */
const many: Partial<Record<string, string>> = {
  clicks: phrase('clicks'), turns: phrase('turns'), flats: phrase('flats'), rings: phrase('rings'), lines: phrase('lines'), steps: phrase('steps'),
}
const one: Partial<Record<string, string>> = {
  clicks: phrase('click'), turns: phrase('turn'), flats: phrase('flat'), rings: phrase('ring'), lines: phrase('line'), steps: phrase('step'),
}

/** A unit in a sentence, behind several of it. @example unitWords(clicks) // 'clicks' */
export function unitWords({ symbol }: Unit): string {
  const name = many[symbol]
  return name === undefined ? symbol : say(name)
}

/** A unit in a sentence, behind one of it or less. @example unitWord(clicks) // 'click' */
export function unitWord({ symbol }: Unit): string {
  const name = one[symbol]
  return name === undefined ? symbol : say(name)
}
