import { readFileSync } from 'node:fs'
import { getLanguageService, type LanguageService } from 'yaml-language-server'
import { TextDocument } from 'vscode-languageserver-textdocument'

interface Manifest { contributes: { yamlValidation: { fileMatch: string[]; url: string }[] } }

const { contributes } = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest

/** That server in an editor without our extension: a schema is what a file asks for in its first line, of those that are `there`. */
export function plainYamlServer(there: Readonly<Record<string, string>> = {}): LanguageService {
  return getLanguageService({
    schemaRequestService: (uri: string) => (Object.hasOwn(there, uri) ? Promise.resolve(there[uri]!) : Promise.reject(new Error(`nothing is fetched: ${uri}`))),
    workspaceContext: { resolveRelativePath: (path: string, beside: string) => new URL(path, beside).href },
    telemetry: { send: () => Promise.resolve(), sendError: () => Promise.resolve(), sendTrack: () => Promise.resolve() },
  } as unknown as Parameters<typeof getLanguageService>[0])
}

/** The common YAML extension's server, set up by our manifest as that extension sets it up. */
export function yamlServer(): LanguageService {
  const server = plainYamlServer()
  server.configure({
    validate: true, hover: true, completion: true, yamlVersion: '1.2',
    schemas: contributes.yamlValidation.map(({ fileMatch, url }) => ({ fileMatch: fileMatch.map((name) => `/${name}`), uri: `file://${url.slice(1)}`, schema: JSON.parse(readFileSync(url, 'utf8')) as unknown })),
  })
  return server
}

let documents = 0

/** A notebook as that server is given it; each a file of its own, for the server remembers what it has read by its name. */
export function yamlDocument(text: string): TextDocument {
  return TextDocument.create(`file:///workshop/${++documents}.setup.yaml`, 'yaml', 1, text)
}
