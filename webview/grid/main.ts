import type { FromWebview, ToWebview } from '../../src/protocol'
import { App } from './app'
import './grid.css'
import { nameOfPage, Outliving, type PageName, type Store } from './model/outliving'
import { readSavedState } from './model/savedState'
import { wordsFor } from '../page/wordsFor'
import { wordAs } from './strings'
import { keepUndoInFields } from './view/nativeUndo'

/** What the editor gives a webview to talk to it by. */
interface EditorApi {
  postMessage(message: FromWebview): void
  getState(): unknown
  setState(state: unknown): void
}

declare function acquireVsCodeApi(): EditorApi

/** How long the page waits to hear which others are there, ms. */
const patienceMs = 500

const editor = acquireVsCodeApi()
const place = document.getElementById('app')!
wordAs(wordsFor(place))
void begin(editor.getState() as { page?: string; at?: number } | undefined)

async function begin(own: { page?: string; at?: number } | undefined): Promise<void> {
  const { notebook = '', session = '', anew } = place.dataset
  const name: PageName = { notebook, session, page: own?.page ?? crypto.randomUUID() }
  const outlives = new Outliving(store(), name)
  const living = await livingPages(name)
  // What was typed into a page that is there no more, or that has lost its host, is offered here.
  const state = own ? (outlives.own(own.at ?? 0) ?? own) : outlives.take({ now: Date.now(), anew: anew !== undefined, living })
  const app = new App(place, {
    send: (message) => editor.postMessage(message),
    save: (saved) => {
      const plain = { ...saved, page: name.page, at: Date.now(), ...(saved.hiding && { hiding: { ...saved.hiding, folded: [...saved.hiding.folded] } }) }
      editor.setState(plain)
      outlives.keep(plain, plain.at)
    },
  }, readSavedState(state))
  window.addEventListener('message', ({ data }: MessageEvent<ToWebview>) => app.take(data))
  window.addEventListener('pagehide', () => app.save())
  keepUndoInFields()
  editor.postMessage({ type: 'ready' })
}

/** A browser that keeps nothing for pages within others throws where its storage is looked at. */
function store(): Store {
  try {
    return localStorage
  } catch {
    return { length: 0, key: () => null, getItem: () => null, setItem: () => undefined, removeItem: () => undefined }
  }
}

/** The names of the pages that are there, and ours among them from now on; undefined where that cannot be known. */
async function livingPages(name: PageName): Promise<string[] | undefined> {
  try {
    void navigator.locks.request(nameOfPage(name), () => new Promise(() => undefined)).catch(() => undefined)
    const late = new Promise<undefined>((resolve) => setTimeout(() => resolve(undefined), patienceMs))
    return (await Promise.race([navigator.locks.query(), late]))?.held?.flatMap((lock) => lock.name ?? [])
  } catch {
    return undefined
  }
}
