import type { End, LoadCase } from '../compute/sag/loadCase'

export const ends: readonly End[] = ['front', 'rear']
export const loads: readonly LoadCase[] = ['bike', 'rider']
export const loadWords: Record<LoadCase, string> = { bike: 'static sag (bike alone)', rider: 'rider sag (rider aboard)' }

/** 'Front' or 'Rear' at the head of a message. */
export function endWord(end: End): string {
  return end === 'front' ? 'Front' : 'Rear'
}
