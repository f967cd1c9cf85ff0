import { draft } from './draft'
import type { Migration } from './migration'

/** Every step there is, the oldest first; each leads to the format that the next begins with. */
export const migrations: readonly Migration[] = [draft]
