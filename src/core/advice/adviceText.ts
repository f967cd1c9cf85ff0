import { phrase } from '../words/say'
import type { Advice } from './advice'

/** One stretch of an advice: what it is called, and its lines. */
export interface AdvicePart {
  name: 'because' | 'expect' | 'assumes'
  lines: readonly string[]
}

/** What an advice is worded as, so that none reads like a promise. */
export const adviceHeads: Record<Advice['kind'], string> = { change: phrase('A starting point'), measure: phrase('To know more first'), ride: phrase('Nothing to change') }

/** Said with everything that is to be changed. */
export const adviceCaution = phrase('One change at a time; the service manual comes first, and the first ride after it is a slow one.')

/** The reasons, the effect and the assumptions of an advice, where there are some. */
export function adviceParts({ evidence, expect, assumes }: Advice): AdvicePart[] {
  const parts: AdvicePart[] = [{ name: 'because', lines: evidence }, { name: 'expect', lines: expect }, { name: 'assumes', lines: assumes }]
  return parts.filter(({ lines }) => lines.length > 0)
}

/** An advice as lines of plain text: the step, then why, what to expect and what it rests on. */
export function adviceText(advice: Advice): string {
  return [
    `${adviceHeads[advice.kind]}: ${advice.step}.`,
    ...adviceParts(advice).flatMap(({ name, lines }) => lines.map((line) => `  ${name}: ${line}`)),
    ...(advice.kind === 'change' ? [`  ${adviceCaution}`] : []), '',
  ].join('\n')
}
