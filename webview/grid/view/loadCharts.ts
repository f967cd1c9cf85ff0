/** Where this page's script came from: the charts lie beside it. */
const own = import.meta.url

type ChartsModule = typeof import('../../charts')

let loading: Promise<ChartsModule> | undefined
let failures = 0

/**
 * The charts and what draws them, loaded when they are first shown: most notebooks are opened without. A failure is not
 * kept, so that the next try begins anew. The page's policy lets the script in by the nonce of the one that asks for it.
 */
export function loadCharts(): Promise<ChartsModule> {
  loading ??= load().catch((error) => {
    loading = undefined
    failures++
    throw error
  })
  return loading
}

async function load(): Promise<ChartsModule> {
  await loadStyle(new URL('charts.css', own).href)
  // A browser remembers a module that it could not load, under its address.
  const again = failures === 0 ? '' : `?${failures}`
  return import(new URL(`charts.js${again}`, own).href) as Promise<ChartsModule>
}

function loadStyle(href: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const link = document.createElement('link')
    link.rel = 'stylesheet'
    link.href = href
    link.addEventListener('load', () => resolve())
    link.addEventListener('error', () => reject(new Error(`${href} was not loaded`)))
    document.head.append(link)
  })
}
