// Serves the grid's page without an editor: the built webview, the fake host, and the editor's content security policy.
//   node test/webview-browser/servePage.mjs [PORT]     to look at it by hand
import { readFile } from 'node:fs/promises'
import { createServer } from 'node:http'
import { dirname, extname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

const root = join(dirname(fileURLToPath(import.meta.url)), '../..')
const page = join(root, 'test/webview/page')
const types = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' }
const policy = "default-src 'none'; script-src 'nonce-test'; style-src 'self'; font-src 'self'; img-src 'self' data:"

/** Builds the page anew and serves it; resolves with its address and a way to end it. */
export async function servePage(port = 0) {
  const common = { outdir: '/page', bundle: true, write: false, minify: true, target: 'es2022', logLevel: 'warning' }
  const built = await Promise.all([
    build({ ...common, entryPoints: { host: join(page, 'fakeHost.ts') }, format: 'iife' }),
    build({ ...common, entryPoints: { turns: join(root, 'webview/turns/main.ts'), compare: join(root, 'webview/compare/main.ts') }, format: 'esm' }),
    build({ ...common, entryPoints: { grid: join(root, 'webview/grid/main.ts'), charts: join(root, 'webview/charts/index.ts') }, format: 'esm', splitting: true }),
  ])
  const files = new Map(built.flatMap(({ outputFiles }) => outputFiles).map(({ path, contents }) => [path.replace('/page', ''), contents]))
  // The other pages have the same around them, and a host that the test brings along.
  const html = await readFile(join(page, 'page.html'), 'utf8')
  for (const name of ['turns', 'compare']) {
    const other = html.replace('<script nonce="test" src="host.js"></script>\n', '').replace('data-detent="grid"', `data-detent="${name}"`).replaceAll(/"grid\.(css|js)"/g, `"${name}.$1"`)
    files.set(`/${name}.html`, other.replace('The grid, without an editor', `The page ${name}, without an editor`))
  }
  const server = createServer(async (request, response) => {
    const path = new URL(request.url, 'http://page').pathname.replace(/^\/$/, '/page.html')
    const body = files.get(path) ?? await readFile(join(page, path)).catch(() => undefined)
    if (!body) return response.writeHead(404).end()
    response.writeHead(200, { 'content-type': types[extname(path)] ?? 'text/plain', 'content-security-policy': policy }).end(body)
  })
  await new Promise(resolve => server.listen(port, '127.0.0.1', resolve))
  return { address: `http://127.0.0.1:${server.address().port}/`, close: () => new Promise(resolve => server.close(resolve)) }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  void servePage(Number(process.argv[2] ?? 8080)).then(({ address }) => console.log(`${address}?theme=dark|light|hc-dark|hc-light&entries=9`))
}
