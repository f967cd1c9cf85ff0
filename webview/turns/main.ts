import type { FromTurns, ToTurns } from '../../src/protocol'
import '../page/page.css'
import { App } from './app'
import './turns.css'
import { wordsFor } from '../page/wordsFor'
import { wordAs } from './strings'

declare function acquireVsCodeApi(): { postMessage(message: FromTurns): void; getState(): unknown; setState(state: unknown): void }

const editor = acquireVsCodeApi()
const place = document.getElementById('app')!
wordAs(wordsFor(place))
const app = new App(place, {
  send: (message) => editor.postMessage(message),
  save: (state) => editor.setState(state),
}, editor.getState())

window.addEventListener('message', ({ data }: MessageEvent<ToTurns>) => app.receive(data))
window.addEventListener('focus', () => app.focus())
editor.postMessage({ type: 'ready' })
