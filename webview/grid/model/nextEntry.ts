/** A name for the next entry: the last one's number counted up, free of the names there are. `run-3` gives `run-4`. */
export function nextEntryId(ids: readonly string[]): string {
  const last = [...ids].reverse().find((id) => /\d$/.test(id))
  const [, stem, digits] = /^(.*?)(\d{1,9})$/s.exec(last ?? '') ?? ['', 'run-', '0']
  const taken = new Set(ids)
  for (let number = Number(digits) + 1; ; number++) {
    const id = stem + String(number).padStart(digits!.length, '0')
    if (!taken.has(id)) return id
  }
}

/** A day as the notebook writes it, in the person's own time zone: `2026-04-18`. */
export function printDay(date: Date): string {
  const two = (value: number) => String(value).padStart(2, '0')
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`
}
