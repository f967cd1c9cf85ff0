import texts from '../../../package.nls.json'

/** What stands behind a text of the manifest that is only named there, `%command.find%`; any other as it is. */
export function manifestText(text: string): string {
  const key = /^%(.+)%$/.exec(text)?.[1]
  return key === undefined ? text : ((texts as Record<string, string>)[key] ?? text)
}
