// `npm run screenshots`: opens each scene of scenes.mjs in the embedded editor, with a copy of the samples, and writes
// pictures of the window to .cache/screenshots/<scene>-<theme>-<width>.png.
//   --only NAME,…     these scenes          --themes light,…   light, dark, hc-black, hc-light
//   --widths 1280,…   widths of the window  --readme           only the pictures of the README, to samples/pictures
//   --icon            only the extension's icon, drawn of src/editor/icon.svg
//   --language de     our words in that language
import { cpSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { framesWith, gridMark } from '../editor/frames.ts'
import { themes } from '../editor/themes.ts'
import { launchBrowser, speakIn } from './browser.mjs'
import { endOnSignal } from './children.mjs'
import { removeFolder, temporaryFolder } from './folders.mjs'
import { cache, root } from './install.mjs'
import { openQuickly } from './openQuickly.mjs'
import { scenes } from './scenes.mjs'
import { startServer } from './server.mjs'

/**
 * @typedef {object} Scene
 * @property {string} name
 * @property {string} file
 * @property {'grid' | 'text'} [view]
 * @property {(hands: {press: (...keys: string[]) => Promise<void>, type: (text: string) => Promise<void>,
 *   grid: () => Promise<import('playwright-core').Frame>, webview: (name: string) => Promise<import('playwright-core').Frame>, page: import('playwright-core').Page}) => Promise<void>} [act]
 * @property {{theme: string, width: number, page?: boolean}} [readme]
 */

const height = 800
/** As wide as the page's column, and as light as it can be and still be read. */
const smallWidth = 960
const smallQuality = 0.5
const { values: options } = parseArgs({
  options: { only: { type: 'string' }, themes: { type: 'string' }, widths: { type: 'string' }, readme: { type: 'boolean' }, icon: { type: 'boolean' }, language: { type: 'string' } },
})
const list = (text, otherwise) => text?.split(',') ?? otherwise
const folder = temporaryFolder()
const places = { failed: join(cache, 'screenshots', 'failed.png'), plain: join(cache, 'screenshots'), readme: join(root, 'samples', 'pictures') }
let server, browser, copies = 0

const cleanUp = async () => {
  await browser?.close()
  await server?.stop()
  await removeFolder(folder)
}
endOnSignal(cleanUp)

try {
  if (options.icon) await drawIcon()
  else await takeAll()
} catch (error) {
  await browser?.pages().at(-1)?.screenshot({ path: places.failed }).catch(() => undefined)
  console.error(`${error instanceof Error ? error.message : error}\nThe window as it was: ${places.failed}`)
  process.exitCode = 1
}
await cleanUp()
process.exit()

// Galleries take no SVG.
async function drawIcon() {
  const size = 256
  browser = await launchBrowser({ profile: join(folder, 'profile'), viewport: { width: size, height: size } })
  const page = await browser.newPage()
  await page.setContent(`<body style="margin: 0">${readFileSync(join(root, 'src/editor/icon.svg'), 'utf8').replace('<svg', `<svg width="${size}" height="${size}"`)}`)
  await page.screenshot({ path: join(root, 'src/editor/icon.png'), omitBackground: true })
}

async function takeAll() {
  server = await startServer({
    // As installed: in development the window's title says so.
    installed: root,
    settings: { 'window.commandCenter': false, 'workbench.layoutControl.enabled': false, 'editor.minimap.enabled': false },
  })
  browser = await launchBrowser({ profile: join(folder, 'profile'), viewport: { width: 1280, height } })
  const chosen = scenes.filter(({ name, readme }) => list(options.only, [name]).includes(name) && (!options.readme || readme))
  if (chosen.length === 0) throw new Error('No scene of that name; they are in test/workbench/scenes.mjs.')
  for (const scene of chosen) {
    for (const theme of options.readme ? [scene.readme.theme] : list(options.themes, ['light', 'dark', 'hc-black'])) await takeScene(scene, theme)
  }
}

/** Plays the scene from the start, in a window and with files of its own, and takes it in every wanted width. */
async function takeScene(scene, theme) {
  const known = themes[theme]
  if (!known) throw new Error(`No theme "${theme}"; there are ${Object.keys(themes).join(', ')}.`)
  server.changeSettings({
    'workbench.colorTheme': known.name,
    'workbench.editorAssociations': { '*.setup.yaml': scene.view === 'text' ? 'default' : 'detent.setup' },
  })
  const samples = join(folder, String(++copies), 'samples')
  cpSync(join(root, 'samples'), samples, { recursive: true })
  const page = await browser.newPage()
  if (options.language) await speakIn(page, options.language)
  await page.goto(server.address(samples))
  const hands = handsOf(page)
  // The window wears its theme when it knows what extensions there are; before, it would open everything as text.
  await page.locator(`.monaco-workbench[class*="vscode-theme-"].${known.cssClass}`).waitFor({ timeout: 60_000 })
  await openQuickly(page, scene.file)
  if (scene.view === 'text') await page.locator('.monaco-editor .view-line').first().waitFor({ timeout: 60_000 })
  else await hands.grid()
  await scene.act?.(hands)
  for (const width of options.readme ? [scene.readme.width] : list(options.widths, ['1280', '800']).map(Number)) {
    await take(page, width, options.readme ? join(places.readme, `${scene.name}.png`) : join(places.plain, `${scene.name}-${theme}-${width}.png`))
  }
  if (options.readme && scene.readme.page) await takeSmall(join(places.readme, `${scene.name}.png`))
  await page.close()
}

async function take(page, width, path) {
  await page.setViewportSize({ width, height })
  // What draws itself anew after a change of size has this long.
  await page.waitForTimeout(500)
  await page.screenshot({ path })
  console.log(path)
}

/** The same for the extension's page, which carries its picture within (`test/release/extensionPage.mjs`); one alone, as the package is to stay small. */
async function takeSmall(path) {
  const page = await browser.newPage()
  const address = await page.evaluate(`(async () => {
    const image = new Image()
    image.src = 'data:image/png;base64,${readFileSync(path, 'base64')}'
    await image.decode()
    const canvas = document.createElement('canvas')
    canvas.width = ${smallWidth}
    canvas.height = ${smallWidth} * image.height / image.width
    const drawing = canvas.getContext('2d')
    drawing.imageSmoothingQuality = 'high'
    drawing.drawImage(image, 0, 0, canvas.width, canvas.height)
    return canvas.toDataURL('image/webp', ${smallQuality})
  })()`)
  writeFileSync(path.replace(/png$/, 'webp'), address.split(',')[1], 'base64')
  await page.close()
}

function handsOf(page) {
  return {
    page,
    press: async (...keys) => {
      for (const key of keys) await page.keyboard.press(key)
    },
    type: text => page.keyboard.type(text),
    grid: async () => {
      for (const end = Date.now() + 60_000; Date.now() < end;) {
        const [frame] = await framesWith(page, gridMark)
        // The page is there before it has been told what to show.
        if (frame && await frame.locator('[role=gridcell], .beginnings').count() > 0) return frame
        await page.waitForTimeout(100)
      }
      throw new Error('No grid was shown within a minute.')
    },
    webview: async name => {
      for (const end = Date.now() + 60_000; Date.now() < end;) {
        const [frame] = await framesWith(page, `[data-detent="${name}"]:not(.is-loading)`)
        if (frame) return frame
        await page.waitForTimeout(100)
      }
      throw new Error(`No ${name} was shown within a minute.`)
    },
  }
}
