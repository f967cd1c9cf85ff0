/** What a key press means in a chart. Keys that are not ours give undefined and go on to the editor. */
export type ChartKey =
  | { kind: 'step'; by: number }
  /** A tenth of the points of the line. */
  | { kind: 'leap'; forward: boolean }
  | { kind: 'end'; last: boolean }
  | { kind: 'across'; up: boolean }
  | { kind: 'choose' | 'leave' | 'showAll' }
  /** `by` times as much of x in sight. */
  | { kind: 'zoom'; by: number }

const keys: Record<string, ChartKey> = {
  ArrowLeft: { kind: 'step', by: -1 }, ArrowRight: { kind: 'step', by: 1 }, ArrowUp: { kind: 'across', up: true }, ArrowDown: { kind: 'across', up: false },
  PageUp: { kind: 'leap', forward: false }, PageDown: { kind: 'leap', forward: true }, Home: { kind: 'end', last: false }, End: { kind: 'end', last: true },
  Enter: { kind: 'choose' }, ' ': { kind: 'choose' }, Escape: { kind: 'leave' },
  '+': { kind: 'zoom', by: 0.5 }, '=': { kind: 'zoom', by: 0.5 }, '-': { kind: 'zoom', by: 2 }, '0': { kind: 'showAll' },
}

export function readChartKey({ key, ctrlKey, metaKey, altKey }: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>): ChartKey | undefined {
  return ctrlKey || metaKey || altKey || !Object.hasOwn(keys, key) ? undefined : keys[key]
}
