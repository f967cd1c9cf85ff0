// What our reading of a notebook’s text costs, without anything that is made of it.
import { readFileSync } from 'node:fs'
import { parseByEntry } from '../../src/core/notebook/parseByEntry'

for (const path of process.argv.slice(2)) if (!parseByEntry(readFileSync(path, 'utf8')).root) throw new Error(path)
