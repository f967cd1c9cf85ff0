/** The same thing in the version both sides began from, and on either side. */
export interface Three<T> {
  base: T
  ours: T
  theirs: T
}

export function mapThree<T, U>({ base, ours, theirs }: Three<T>, change: (each: T) => U): Three<U> {
  return { base: change(base), ours: change(ours), theirs: change(theirs) }
}

/** What it comes to where one side alone changed something, or both alike; `undefined` where they differ. */
export function settle<T>({ base, ours, theirs }: Three<T>): { value: T } | undefined {
  if (ours === theirs || theirs === base) return { value: ours }
  return ours === base ? { value: theirs } : undefined
}
