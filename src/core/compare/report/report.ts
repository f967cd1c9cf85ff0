/** A comparison as something to read: plain text in blocks. Whoever prints it sees to what its own syntax takes amiss. */
export type Block =
  | { kind: 'heading'; level: 1 | 2; text: string }
  | { kind: 'line'; label?: string; text: string }
  | { kind: 'list'; label: string; items: string[] }
  | { kind: 'table'; head: string[]; rows: string[][] }

/** What is said where a side has nothing. */
export const nothing = '–'
