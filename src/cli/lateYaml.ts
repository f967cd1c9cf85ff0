// Stands in for the YAML library where a check is bundled: nearly every notebook is read without it (`readPlain`), and it is a
// third of what there would be to load. The build puts it in the library's place, and the library into a file of its own.
import { createRequire } from 'node:module'
import type * as Yaml from 'yaml'

let loaded: typeof Yaml | undefined

// As synchronous as reading a notebook is.
const library = (): typeof Yaml => loaded ??= createRequire(__filename)('./yaml') as typeof Yaml

export const parseDocument: typeof Yaml.parseDocument = ((...given: Parameters<typeof Yaml.parseDocument>) => library().parseDocument(...given)) as typeof Yaml.parseDocument
export const stringify: typeof Yaml.stringify = ((...given: Parameters<typeof Yaml.stringify>) => library().stringify(...given)) as typeof Yaml.stringify
export const isAlias: typeof Yaml.isAlias = (node): node is Yaml.Alias => library().isAlias(node)
export const isMap = (node: unknown): boolean => library().isMap(node)
export const isPair = (node: unknown): boolean => library().isPair(node)
export const isScalar = (node: unknown): boolean => library().isScalar(node)
export const isSeq = (node: unknown): boolean => library().isSeq(node)

/** Called with `new`, it gives what the library's own would. */
export const Lexer = function () {
  return new (library().Lexer)()
} as unknown as typeof Yaml.Lexer
