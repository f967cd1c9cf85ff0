// nodejs-polars reads the file; its columns are then worked on as typed arrays.
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { printStatistics } from './statistics.mjs'

const [folder, file] = process.argv.slice(2)
const polars = createRequire(join(folder, 'package.json'))('nodejs-polars')
const frame = polars.readCSV(file)
printStatistics({ fork: Float64Array.from(frame.getColumn('Fork').toTypedArray()), shock: Float64Array.from(frame.getColumn('Shock').toTypedArray()) })
