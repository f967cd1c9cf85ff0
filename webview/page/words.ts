/** The words of a page, by key; `{0}`, `{1}` stand for values. Nothing in them is HTML. */
export interface Words<Key extends string> {
  /** The words for a key, with its values filled in. */
  say(key: Key, ...values: (string | number)[]): string
  /** Takes the host's wording for any of the keys. */
  wordAs(strings: Record<string, string>): void
}

/** Words that are English unless the host words them otherwise, key by key. */
export function createWords<Key extends string>(english: Readonly<Record<Key, string>>): Words<Key> {
  let given: Record<string, string> = {}
  return {
    say: (key, ...values) => (given[key] ?? english[key]).replace(/\{(\d)\}/g, (whole, index) => String(values[Number(index)] ?? whole)),
    wordAs: (strings) => void (given = strings),
  }
}
