import type { End, LoadCase } from '../compute/sag/loadCase'
import { printNumber } from '../notation/amount'
import type { Measured } from '../notebook/fields'
import type { Entry } from '../notebook/notebook'
import { oncePer } from '../notebook/oncePer'
import { nodeAt } from '../notebook/tree'
import { phrase, say } from '../words/say'

export const ends: readonly End[] = ['front', 'rear']
export const loads: readonly LoadCase[] = ['bike', 'rider']
export const loadWords: Record<LoadCase, string> = { bike: phrase('static sag (bike alone)'), rider: phrase('rider sag (rider aboard)') }

/** The ends an entry has sag lengths of; most entries have none. */
export function measuredEnds({ node }: Entry): readonly End[] {
  return endsIn(node)
}

const endsIn = oncePer((node: Entry['node']) => ends.filter((end) => nodeAt(node, ['sag', end]) !== undefined))

/** 'Front' or 'Rear' at the head of a message. */
export function endWord(end: End): string {
  return end === 'front' ? say('Front') : say('Rear')
}

/** A measured value as it was written, with its unit. @example '22.6 inch' */
export function sayMeasured({ quantity }: Measured): string {
  return `${printNumber(quantity.amount)} ${quantity.unit.symbol}`
}
