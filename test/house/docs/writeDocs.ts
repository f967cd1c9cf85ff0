// Writes the generated sections of the documents anew, and the log among the samples: `npm run docs`.
import { readFileSync, writeFileSync } from 'node:fs'
import { sampleLog, sampleLogPath } from './sampleLog'
import { generated, withSections } from './sections'

for (const [file, sections] of Object.entries(generated)) {
  const before = readFileSync(file, 'utf8')
  const after = withSections(before, sections)
  if (after === before) continue
  writeFileSync(file, after)
  console.log(`${file}: rewritten`)
}

writeFileSync(sampleLogPath, sampleLog())
