// Writes the generated sections of the documents anew, the manual page, the library's types, the log among the samples, and what is
// told by the rules of their fixtures and by the calculations: `npm run docs`.
import { readFileSync, writeFileSync } from 'node:fs'
import { manualPage } from '../../../src/cli/manual'
import { apiPath, apiReport } from './apiReport'
import { computedTold, computedToldPath } from './computedTold'
import { fixturesTold, fixturesToldPath } from './fixturesTold'
import { sampleLog, sampleLogPath } from './sampleLog'
import { generated, withSections } from './sections'

/** The manual page, which ships as it stands here. */
const manualPath = 'src/cli/detent.1'

for (const [file, sections] of Object.entries(generated)) {
  const before = readFileSync(file, 'utf8')
  const after = withSections(before, sections)
  if (after === before) continue
  writeFileSync(file, after)
  console.log(`${file}: rewritten`)
}

writeFileSync(sampleLogPath, sampleLog())
writeFileSync(manualPath, manualPage())
writeFileSync(apiPath, apiReport())
writeFileSync(fixturesToldPath, fixturesTold())
writeFileSync(computedToldPath, computedTold())
