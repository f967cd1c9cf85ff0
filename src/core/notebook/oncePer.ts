/**
 * Works something out of an object once, however many ask: for what holds as long as the object does, as all does that is
 * read off a node of a tree, which nobody changes.
 */
export function oncePer<From extends object, Value>(work: (from: From) => Value): (from: From) => Value {
  const known = new WeakMap<From, { value: Value }>()
  return (from) => {
    let kept = known.get(from)
    if (!kept) known.set(from, kept = { value: work(from) })
    return kept.value
  }
}
