import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { printStatistics } from './statistics.mjs'

const [folder, file] = process.argv.slice(2)
const { inferSchema, initParser } = createRequire(join(folder, 'package.json'))('udsv')
const text = readFileSync(file, 'latin1')
const columns = initParser(inferSchema(text)).typedCols(text)
printStatistics({ fork: columns[1], shock: columns[2] })
