import { readdirSync } from 'node:fs'

/** Whether a path stands for several: a shell that does not spell such paths out, or is told not to, hands them on as they are. */
export function isGlob(path: string): boolean {
  return /[*?]/.test(path)
}

/**
 * The files a path with `*`, `?` or `**` stands for, sorted: `*` and `?` within one name, `**` for any folders or none.
 * Names that begin with a dot are found where the pattern names the dot, links to folders are not followed.
 */
export function expandGlob(pattern: string, skipped: ReadonlySet<string>): string[] {
  const steps = pattern.replaceAll('\\', '/').split('/')
  const fixed = steps.findIndex(isGlob)
  const start = steps.slice(0, fixed).join('/')
  return walk(start === '' && fixed > 0 ? '/' : start, steps.slice(fixed), skipped)
}

function walk(folder: string, [step, ...rest]: readonly string[], skipped: ReadonlySet<string>): string[] {
  if (step === undefined) return []
  const items = itemsOf(folder)
  const below = (name: string) => (folder === '' || folder.endsWith('/') ? folder + name : `${folder}/${name}`)
  const folders = items.filter((item) => item.isDirectory() && !skipped.has(item.name))
  if (step === '**') {
    const deeper = folders.filter(({ name }) => !name.startsWith('.')).flatMap(({ name }) => walk(below(name), [step, ...rest], skipped))
    return [...new Set([...walk(folder, rest.length > 0 ? rest : ['*'], skipped), ...deeper])].sort()
  }
  const fits = matcher(step)
  if (rest.length > 0) return folders.filter(({ name }) => fits(name)).flatMap(({ name }) => walk(below(name), rest, skipped))
  return items.filter((item) => !item.isDirectory() && fits(item.name)).map(({ name }) => below(name))
}

function itemsOf(folder: string) {
  try {
    return readdirSync(folder === '' ? '.' : folder, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))
  } catch {
    return []
  }
}

/** One name against one step, walking back to the last `*` alone, so that no step takes longer than its names are long. */
function matcher(step: string): (name: string) => boolean {
  return (name) => {
    if (name.startsWith('.') && !step.startsWith('.')) return false
    let [at, in_, star, from] = [0, 0, -1, 0]
    while (in_ < name.length) {
      if (step[at] === '*') [star, from] = [at++, in_]
      else if (step[at] === '?' || step[at] === name[in_]) [at, in_] = [at + 1, in_ + 1]
      else if (star >= 0) [at, in_] = [star + 1, ++from]
      else return false
    }
    while (step[at] === '*') at++
    return at === step.length
  }
}
