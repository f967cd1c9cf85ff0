import type { FromWebview, ToWebview } from '../../src/protocol'
import { App } from './app'
import './grid.css'
import { outliving } from './model/outliving'
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

const editor = acquireVsCodeApi()
const place = document.getElementById('app')!
wordAs(wordsFor(place))
const own = editor.getState() as { page?: string } | undefined
const page = own?.page ?? crypto.randomUUID()
const outlives = outliving(localStorage, { notebook: place.dataset.notebook ?? '', page })
// Opened anew because the one before had lost its host: what was typed there is offered here.
const left = place.dataset.anew === undefined ? undefined : outlives.take(Date.now())
const app = new App(place, {
  send: (message) => editor.postMessage(message),
  save: (state) => {
    const plain = { ...state, page, ...(state.hiding && { hiding: { ...state.hiding, folded: [...state.hiding.folded] } }) }
    editor.setState(plain)
    outlives.keep(plain)
  },
}, readSavedState(own ?? left))

window.addEventListener('message', ({ data }: MessageEvent<ToWebview>) => app.take(data))
window.addEventListener('pagehide', () => app.save())
keepUndoInFields()
editor.postMessage({ type: 'ready' })
