import { resolve } from 'node:path'
import ts from 'typescript'

/** Where the report stands: it is what ships as the types of the library, and shows in a review what becomes of them. */
export const apiPath = 'src/core/api.d.ts'

const entry = 'src/core/index.ts'
const head = `// The library \`detent/core\` as its users see it: what it exports, and every type that is reached from there.
// Made from ${entry} by \`npm run docs\`; a change here is a change of the interface (CHANGELOG.md, versions).
`

/**
 * All declarations that the entry exports or that those need, as one file without imports.
 *
 * @throws Error where something is exported under another name, or a type of another package is reached
 */
export function apiReport(): string {
  const { program, source } = declarations()
  const checker = program.getTypeChecker()
  const exported = new Map(checker.getExportsOfModule(checker.getSymbolAtLocation(source)!).map((symbol) => [original(symbol, checker), symbol.name]))
  const wanted = reached([...exported.keys()], checker, program)
  const names = namesFor(wanted)
  const renamed = [...exported].filter(([symbol, name]) => names.get(symbol) !== name)
  if (renamed.length > 0) throw new Error(`exported under another name: ${renamed.map(([, name]) => name).join(', ')}`)
  const text = (symbol: ts.Symbol) => declared(symbol).map((node) => printed(node, exported.has(symbol), (name) => {
    const meant = checker.getSymbolAtLocation(name)
    return meant && names.get(original(meant, checker))
  })).join('\n')
  const byName = (a: ts.Symbol, b: ts.Symbol) => (names.get(a)! < names.get(b)! ? -1 : 1)
  const [shown, needed] = [wanted.filter((each) => exported.has(each)).sort(byName), wanted.filter((each) => !exported.has(each)).sort(byName)]
  return `${head}\n${shown.map(text).join('\n\n')}\n\n// What those are made of; not to be imported by name.\n\n${needed.map(text).join('\n\n')}\n\nexport {}\n`
}

/** What the compiler declares of our sources, as a program of its own. */
function declarations() {
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler, lib: ['lib.es2022.d.ts'], types: [],
    strict: true, resolveJsonModule: true, esModuleInterop: true, skipLibCheck: true, noCheck: true, declaration: true, emitDeclarationOnly: true, allowJs: true, noUncheckedIndexedAccess: true,
  }
  const texts = new Map<string, string>()
  const path = (name: string) => resolve(name).replaceAll('\\', '/')
  ts.createProgram([resolve(entry)], options).emit(undefined, (name, text) => texts.set(path(name), text))
  const host = ts.createCompilerHost(options)
  const { fileExists, readFile, getSourceFile } = host
  host.fileExists = (name) => texts.has(path(name)) || (!isOurSource(path(name)) && fileExists.call(host, name))
  host.readFile = (name) => texts.get(path(name)) ?? readFile.call(host, name)
  host.getSourceFile = (name, version, ...rest) => {
    const text = texts.get(path(name))
    return text === undefined ? getSourceFile.call(host, name, version, ...rest) : ts.createSourceFile(name, text, version, true)
  }
  const root = path(entry.replace(/\.ts$/, '.d.ts'))
  const program = ts.createProgram([root], { ...options, declaration: false, emitDeclarationOnly: false, noEmit: true }, host)
  return { program, source: program.getSourceFile(root)! }
}

function isOurSource(path: string): boolean {
  return path.startsWith(`${resolve('src').replaceAll('\\', '/')}/`) && /(?<!\.d)\.ts$/.test(path)
}

/** The symbols and all that their declarations name, of our own sources. */
function reached(first: readonly ts.Symbol[], checker: ts.TypeChecker, program: ts.Program): ts.Symbol[] {
  const found = new Set(first)
  for (const symbol of found) {
    for (const node of declared(symbol)) visit(node)
  }
  return [...found]

  function visit(node: ts.Node): void {
    if (ts.isImportTypeNode(node)) throw new Error(`an import within a type is reached: ${node.getText()}`)
    if (ts.isIdentifier(node)) add(checker.getSymbolAtLocation(node))
    node.forEachChild(visit)
  }

  function add(symbol: ts.Symbol | undefined): void {
    if (!symbol) return
    const origin = original(symbol, checker)
    const node = origin.declarations?.[0]
    if (!node || !declared(origin).some((each) => ts.isSourceFile(each.parent))) return
    const file = node.getSourceFile()
    if (program.isSourceFileDefaultLibrary(file)) return
    if (file.fileName.includes('/node_modules/')) throw new Error(`a type of another package is reached: ${origin.name} of ${file.fileName}`)
    found.add(origin)
  }
}

function original(symbol: ts.Symbol, checker: ts.TypeChecker): ts.Symbol {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
}

/** Its declarations as statements of their file. */
function declared(symbol: ts.Symbol): ts.Node[] {
  return (symbol.declarations ?? []).map((node) => (ts.isVariableDeclaration(node) ? node.parent.parent : node)).filter((node) => ts.isSourceFile(node.parent))
}

/** Their own names; those that two of them have, with that of the file before it. */
function namesFor(symbols: readonly ts.Symbol[]): Map<ts.Symbol, string> {
  const own = symbols.map(({ name }) => name)
  return new Map(symbols.map((symbol) => {
    if (own.filter((name) => name === symbol.name).length === 1) return [symbol, symbol.name]
    const file = symbol.declarations![0]!.getSourceFile().fileName.replace(/^.*\/|\.d\.ts$/g, '')
    return [symbol, `${file[0]!.toUpperCase()}${file.slice(1)}${symbol.name}`]
  }))
}

/** A statement with its comment, exported or not, and every name as it is here. */
function printed(node: ts.Node, exported: boolean, nameOf: (name: ts.Identifier) => string | undefined): string {
  const begin = node.getStart()
  const comment = node.getFullText().slice(0, begin - node.getFullStart()).replaceAll(/^(import|export) .*$/gm, '').trim()
  let text = node.getText()
  const renamed: { at: number; old: string; name: string }[] = []
  const visit = (each: ts.Node): void => {
    const name = ts.isIdentifier(each) ? nameOf(each) : undefined
    if (name !== undefined && name !== each.getText()) renamed.push({ at: each.getStart() - begin, old: each.getText(), name })
    each.forEachChild(visit)
  }
  visit(node)
  for (const { at, old, name } of renamed.reverse()) text = text.slice(0, at) + name + text.slice(at + old.length)
  const bare = text.replace(/^export (default )?/, '').replace(/^declare /, '')
  const kind = ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node) ? '' : 'declare '
  return `${comment === '' ? '' : `${comment}\n`}${exported ? 'export ' : ''}${kind}${bare}`
}
