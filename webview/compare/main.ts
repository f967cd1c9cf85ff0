import type { FromCompare, ToCompare } from '../../src/protocol'
import { App } from './app'
import './compare.css'
import { readSavedState } from './model/savedState'
import { wordsFor } from '../page/wordsFor'
import { wordAs } from './strings'

/** What the editor gives a webview to talk to it by. */
interface EditorApi {
  postMessage(message: FromCompare): void
  getState(): unknown
  setState(state: unknown): void
}

declare function acquireVsCodeApi(): EditorApi

const editor = acquireVsCodeApi()
const place = document.getElementById('app')!
wordAs(wordsFor(place))
const app = new App(place, {
  send: (message) => editor.postMessage(message),
  save: (state) => editor.setState(state),
}, readSavedState(editor.getState()))

window.addEventListener('message', ({ data }: MessageEvent<ToCompare>) => app.receive(data))
window.addEventListener('pagehide', () => app.save())
editor.postMessage({ type: 'ready' })
