// What is left of a run of Stryker: changes that no test noticed, held against those that are explained in explained.json.

/** A change that no test noticed: where it is, what stood there and what was put in its place. */
export interface Survivor {
  file: string
  line: number
  original: string
  replacement: string
}

/** By file: changes that no test can notice, and why. */
export type Explained = Record<string, { original: string; replacement: string; why: string }[]>

interface Place {
  line: number
  column: number
}

/** As much of Stryker's report, as JSON, as is looked at. */
export interface Report {
  files: Record<string, { source: string; mutants: { status: string; replacement?: string; location: { start: Place; end: Place } }[] }>
}

export function survivorsOf({ files }: Report): Survivor[] {
  return Object.entries(files).flatMap(([file, { source, mutants }]) => {
    const lines = source.split('\n')
    return mutants.filter(({ status }) => status === 'Survived' || status === 'NoCoverage').map(({ replacement = '', location }) => ({
      file, line: location.start.line, original: textAt(lines, location.start, location.end), replacement: oneLine(replacement),
    }))
  })
}

function textAt(lines: readonly string[], start: Place, end: Place): string {
  const within = lines.slice(start.line - 1, end.line)
  within.push(within.pop()!.slice(0, end.column - 1))
  return oneLine(within.join('\n').slice(start.column - 1))
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** Those that nobody has explained; and explanations of what is noticed by now, as far as their files were looked at. */
export function holdAgainst(survivors: readonly Survivor[], explained: Explained, files: readonly string[]): { unexplained: Survivor[]; noticed: Omit<Survivor, 'line'>[] } {
  const isOf = (each: Omit<Survivor, 'file' | 'line'>, survivor: Survivor) => each.original === survivor.original && each.replacement === survivor.replacement
  return {
    unexplained: survivors.filter((survivor) => !explained[survivor.file]?.some((each) => isOf(each, survivor))),
    noticed: files.flatMap((file) => (explained[file] ?? []).filter((each) => !survivors.some((survivor) => survivor.file === file && isOf(each, survivor))).map(({ original, replacement }) => ({ file, original, replacement }))),
  }
}
