import { say } from '../words/say'
import { notUnderstood, understood, type Reading } from './reading'

/**
 * The path of a log: from the notebook's folder down, with `/` between. Whoever opens another's notebook must not have
 * files opened elsewhere, so nothing that leads out of the folder is understood: `..`, a root, a drive, an address, `~`.
 *
 * @example readLogPath('./logs/run-1.csv') // { value: 'logs/run-1.csv' }
 */
export function readLogPath(text: string): Reading<string> {
  const path = text.trim()
  if (path === '') return notUnderstood(say('names no file'))
  if (/[\u0000-\u001f\u007f]/.test(path)) return notUnderstood(say('holds a character that belongs in no path'))
  if (/^[a-z][a-z0-9+.-]+:/i.test(path)) return notUnderstood(say('is an address, not a file beside this notebook; write a path such as logs/run-1.csv'))
  const steps = path.split(/[\\/]/).filter((step) => step !== '' && step !== '.')
  if (/^[\\/]/.test(path) || /^(?:[a-z]:|~)/i.test(steps[0] ?? '')) return notUnderstood(say('is a place on one machine only; write the path from this notebook’s folder, such as logs/run-1.csv'))
  if (steps.includes('..')) return notUnderstood(say('leads out of this notebook’s folder; keep logs beside it, or below'))
  if (steps.length === 0 || /[\\/]$/.test(path)) return notUnderstood(say('names a folder, not a file'))
  const plain = steps.join('/')
  return path.includes('\\') ? notUnderstood(say('has `\\` between its parts, which other machines do not understand'), plain) : understood(plain)
}
