import type { Advice } from './advice'

/** An advice as lines of plain text: the step, then why, what to expect and what it rests on. */
export function adviceText({ kind, step, evidence, expect, assumes }: Advice): string {
  const head = { change: 'A starting point', measure: 'To know more first', ride: 'Nothing to change' }[kind]
  const part = (name: string, lines: readonly string[]) => lines.map((line) => `  ${name}: ${line}`)
  return [
    `${head}: ${step}.`, ...part('because', evidence), ...part('expect', expect), ...part('assumes', assumes),
    ...(kind === 'change' ? ['  One change at a time; the service manual comes first, and the first ride after it is a slow one.'] : []), '',
  ].join('\n')
}
