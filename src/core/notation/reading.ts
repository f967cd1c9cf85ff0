/** What came of reading something a person wrote: the value, or what is wrong with it and what was probably meant. */
export type Reading<T> = { value: T; problem?: undefined } | { value?: undefined; problem: string; suggestion?: string }

export function understood<T>(value: T): Reading<T> {
  return { value }
}

export function notUnderstood(problem: string, suggestion?: string): { problem: string; suggestion?: string } {
  return suggestion === undefined ? { problem } : { problem, suggestion }
}
