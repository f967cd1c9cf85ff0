/** Plain data with its keys as scripts of all languages write them. Only for data whose keys are ours and no person's. */
export function toSnakeCase(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(toSnakeCase)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [snakeCase(key), toSnakeCase(each)]))
}

/** Thousands of things have the same few keys. */
const known = new Map<string, string>()

function snakeCase(key: string): string {
  const found = known.get(key) ?? key.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
  known.set(key, found)
  return found
}
