// What reading a notebook costs with the YAML library alone: the floor of a check that uses it.
import { readFileSync } from 'node:fs'
import { parseDocument } from 'yaml'

for (const path of process.argv.slice(2)) parseDocument(readFileSync(path, 'utf8'))
