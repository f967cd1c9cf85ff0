// The part of `npm run release` that only thinks: versions and the changelog's text.

/** What is wrong with `next` as the version after `now`; `undefined` where it may follow. */
export function wrongWith(now: string, next: string): string | undefined {
  const parts = /^(\d+)\.(\d+)\.(\d+)$/.exec(next)?.slice(1).map(Number)
  if (!parts) return `A version is three numbers, such as 1.2.0, not ‘${next}’.`
  const before = now.split('.').map(Number) as [number, number, number]
  const following = [[before[0] + 1, 0, 0], [before[0], before[1] + 1, 0], [before[0], before[1], before[2] + 1]].map(version => version.join('.'))
  return following.includes(next) ? undefined : `After ${now} comes ${following.join(', ')}, not ${next}.`
}

export interface Release {
  version: string
  /** YYYY-MM-DD */
  date: string
  /** Of the commits since the last release, the newest first. */
  subjects: readonly string[]
}

/**
 * The changelog with the section of a release: what stands under ‘Unreleased’, or else the subjects of the commits.
 *
 * @throws Error where there is nothing to tell, or the version has its section already
 */
export function withRelease(changelog: string, { version, date, subjects }: Release): string {
  if (new RegExp(`^## ${version.replaceAll('.', '\\.')}\\b`, 'm').test(changelog)) throw new Error(`The changelog has a section for ${version} already.`)
  const [head, rest] = cutAt(changelog, /^## Unreleased[^\S\n]*\n/m)
  const [written, older] = rest === undefined ? ['', ''] : cutAt(rest, /^(?=## )/m)
  const told = written.trim() || subjects.map(subject => `- ${subject}`).join('\n')
  if (!told) throw new Error('Nothing has changed since the last release: there is nothing to tell.')
  return `${head.trimEnd()}\n\n## Unreleased\n\n## ${version} (${date})\n\n${told}\n${older ? `\n${older}` : ''}`
}

/** What stands before and after the first match; all, and nothing, where there is none. */
function cutAt(text: string, pattern: RegExp): [string, string | undefined] {
  const match = pattern.exec(text)
  return match ? [text.slice(0, match.index), text.slice(match.index + match[0].length)] : [text, undefined]
}
