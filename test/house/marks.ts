/** A finding that a fixture demands, as `# {code}` or `# {code:error}` behind the line where it must be reported. */
export interface Mark {
  /** From 1. */
  line: number
  code: string
  severity?: string
}

/**
 * The marks of a fixture. A mark is looked for behind `#` in the bare text, so that it also works where YAML sees no comment.
 *
 * @example readMarks('a: 1 # {unknown-key:info}') // [{ line: 1, code: 'unknown-key', severity: 'info' }]
 */
export function readMarks(text: string): Mark[] {
  return text.split(/\r?\n/).flatMap((line, index) =>
    [...(/#.*$/.exec(line)?.[0] ?? '').matchAll(/\{([a-z]+(?:-[a-z]+)*)(?::(error|warning|info))?\}/g)].map(([, code, severity]) =>
      ({ line: index + 1, code: code!, ...(severity ? { severity } : {}) })))
}

/** Why a fix in this fixture does not make its finding go away, where it says so with `# fix-keeps: …`. */
export function fixKeeps(text: string): string | undefined {
  return /#.*\bfix-keeps: *(\S.*)$/m.exec(text)?.[1]
}
