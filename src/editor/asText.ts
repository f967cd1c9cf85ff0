/**
 * What a person wrote, where the editor would make an icon of `$(trash)` and a link, even one that runs a command, of
 * `[here](command:…)`: in notifications, lists to pick from and the status bar. A space without width keeps both from it.
 */
export function asText(words: string): string {
  return words.replaceAll('$(', '$\u200b(').replaceAll('](', ']\u200b(')
}
