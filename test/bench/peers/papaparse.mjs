import { createReadStream } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { printStatistics } from './statistics.mjs'

const [folder, file] = process.argv.slice(2)
const papa = createRequire(join(folder, 'package.json'))('papaparse')
const [fork, shock] = [[], []]
let head = true
papa.parse(createReadStream(file), {
  skipEmptyLines: true,
  step({ data }) {
    if (!head) {
      fork.push(Number(data[1]))
      shock.push(Number(data[2]))
    }
    head = false
  },
  complete: () => printStatistics({ fork: Float64Array.from(fork), shock: Float64Array.from(shock) }),
})
