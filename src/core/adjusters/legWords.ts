import { say } from '../words/say'
import type { Leg } from './adjuster'

/** A leg of the fork in words; of two shocks, the shock of that side. @example legWords('left') // 'left leg' */
export function legWords(leg: Leg, on?: string): string {
  if (on === 'shock') return leg === 'left' ? say('left shock') : say('right shock')
  return leg === 'left' ? say('left leg') : say('right leg')
}
