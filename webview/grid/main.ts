import type { FromWebview, ToWebview } from '../../src/protocol'
import { App } from './app'
import './grid.css'
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
const app = new App(place, {
  send: (message) => editor.postMessage(message),
  save: (state) => editor.setState({ ...state, ...(state.hiding && { hiding: { ...state.hiding, folded: [...state.hiding.folded] } }) }),
}, readSavedState(editor.getState()))

window.addEventListener('message', ({ data }: MessageEvent<ToWebview>) => app.take(data))
window.addEventListener('pagehide', () => app.save())
keepUndoInFields()
editor.postMessage({ type: 'ready' })
