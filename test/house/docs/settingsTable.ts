import manifest from '../../../package.json'
import { manifestText } from './manifest'
import { code, table } from './markdown'

interface Setting {
  default: unknown
  enum?: readonly string[]
  markdownDescription: string
}

/** The settings of the editor, as the manifest has them. */
export function settingsTable(): string {
  const settings = Object.entries(manifest.contributes.configuration.properties as Record<string, Setting>)
  return table(['Setting', 'May be', 'What it does'], settings.map(([name, { default: usual, enum: choices, markdownDescription }]) => [
    code(name), choices ? choices.map((choice) => (choice === usual ? `**${code(choice)}**` : code(choice))).join(' ') : code(JSON.stringify(usual)), manifestText(markdownDescription),
  ]))
}
