import manifest from '../../../package.json'
import { manifestText } from './manifest'
import { table } from './markdown'

/** The keys of the grid that can be bound anew, as the manifest has them. */
export function gridKeysTable(): string {
  const titles = new Map(manifest.contributes.commands.map(({ command, title }) => [command, manifestText(title).replace(/…$/, '')]))
  return table(['Key', 'On a Mac', 'Does', 'Command'], (manifest.contributes.keybindings as { command: string; key: string; mac?: string }[]).map(({ command, key, mac }) => [
    printKey(key), mac === undefined ? printKey(key) : printKey(mac), titles.get(command) ?? command, `\`${command}\``,
  ]))
}

const printKey = (key: string) => key.split(' ').map((chord) => chord.split('+').map((part) => `\`${part[0]!.toUpperCase()}${part.slice(1)}\``).join('+')).join(' ')
