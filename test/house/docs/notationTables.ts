import { readPosition, type Position } from '../../../src/core/notation/position'
import { readQuantity, baseUnit } from '../../../src/core/notation/quantity'
import { printNumber } from '../../../src/core/notation/amount'
import type { Dimension } from '../../../src/core/notation/units'
import { nameOfDimension } from './dimensionNames'
import { code, table } from './markdown'

const positions = [
  '3 clicks out', '3 out', '3', 'click 3 out', '14 clicks in', '1 3/4 turns in', '1-3/4 turns in', '1¾ turns in', '1.75 turns in', '4 flats in', '3 rings', '5 lines',
  '12 mm', '3 mm in', 'step 4', '4 steps', 'dial 3', 'no. 3', '9 from closed', '9 clicks out from fully closed', '2 turns in from fully backed off',
  'closed', 'fully in', 'seated', 'open', 'fully out', 'backed off', 'flush', '2.3 bar', '33 psi', '230 kPa', '9.5 N/mm', '0.97 kgf/mm', '500 lb/in', '320 ml',
]

const ends = { closed: 'fully closed', open: 'fully open' }

/** Every notation of a position, and how it is read. */
export function positionsTable(): string {
  return table(['Written', 'Count', 'Unit', 'Counted from'], positions.map((text) => {
    const { amount, unit, end } = understoodPosition(text)
    return [code(text), printNumber(amount), unit ? unit.symbol : 'the adjuster’s', end ? ends[end] : 'the adjuster’s own end']
  }))
}

function understoodPosition(text: string): Position {
  const reading = readPosition(text)
  if (!reading.value) throw new Error(`‘${text}’ is no position: ${reading.problem}`)
  return reading.value
}

const quantities: readonly (readonly [string, Dimension])[] = [
  ['120', 'length'], ['12 cm', 'length'], ['4.5 in', 'length'], ['5 1/8 in', 'length'], ['650 m', 'length'], ['84', 'mass'], ['185 lb', 'mass'],
  ['9.5', 'stiffness'], ['0.97 kgf/mm', 'stiffness'], ['53 lb/in', 'stiffness'], ['2.3', 'pressure'], ['33 psi', 'pressure'], ['230 kPa', 'pressure'],
  ['21', 'temperature'], ['70 °F', 'temperature'], ['24.5', 'angle'], ['24.5 deg', 'angle'], ['30 %', 'share'],
]

/** Notations of measured things, and what they come to. */
export function quantitiesTable(): string {
  return table(['Written', 'Where', 'Read as'], quantities.map(([text, dimension]) => {
    const reading = readQuantity(text, dimension)
    if (!reading.value) throw new Error(`‘${text}’ is no ${dimension}: ${reading.problem}`)
    return [code(text), nameOfDimension(dimension), `${printNumber(reading.value.base, 2)} ${baseUnit(dimension).symbol}`]
  }))
}

const refused = ['1,5 turns in', '21/24', '6 of 12', '+2', '3 clikcs out', 'three out']

/** What is never guessed at, and what is said instead. */
export function refusedTable(): string {
  return table(['Written', 'Why it is not read', 'Offered instead'], refused.map((text) => {
    const reading = readPosition(text)
    if (reading.value) throw new Error(`‘${text}’ is read after all`)
    return [code(text), reading.problem, reading.suggestion === undefined ? '' : code(reading.suggestion)]
  }))
}
