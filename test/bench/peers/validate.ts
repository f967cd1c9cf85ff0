// The common YAML extension's server over files, one after the other, in one process.
import { readFileSync } from 'node:fs'
import { yamlDocument, yamlServer } from '../../house/yamlServer'

async function main(): Promise<void> {
  const server = yamlServer()
  for (const path of process.argv.slice(2)) await server.doValidation(yamlDocument(readFileSync(path, 'utf8')), false)
}

void main()
