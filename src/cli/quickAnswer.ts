import { version } from '../../package.json'
import { usage } from './usages'

/** What `detent --help` and `detent --version` print; `undefined` for all else. */
export function quickAnswer([name, ...rest]: readonly string[]): string | undefined {
  if (rest.length > 0) return undefined
  if (name === '--help' || name === '-h' || name === 'help') return `${usage}\n`
  if (name === '--version' || name === '-V') return `${version}\n`
  return undefined
}
