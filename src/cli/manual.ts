import { usage, usages } from './usages'

/** The manual page, as `man` reads it. */
export function manualPage(): string {
  const [title, , ...rest] = usage.split('\n')
  const codes = rest.at(-1)!.replace(/^Exit code: /, '')
  const commands = Object.values(usages).map((text) => {
    const [line = '', , ...body] = text.split('\n')
    return `.SS ${plain(line)}\n${paragraphs(body).replace(/The kinds:$/, 'The kinds are told by detent new \\-\\-help.')}`
  })
  return `.TH DETENT 1 "" "detent" "User Commands"
.SH NAME
detent \\- ${plain(title!.replace(/^detent: /, ''))}
.SH SYNOPSIS
.B detent
.I COMMAND
[ARGUMENTS]
.SH COMMANDS
${commands.join('\n')}
.SH EXIT STATUS
${plain(codes)}
.SH ENVIRONMENT
.TP
.B NO_COLOR
No colours, also on a terminal. Elsewhere there are none.
.SH FILES
.TP
.I *.setup.yaml
A setup notebook. Where a path has *, ? or ** in it and names no file, it stands for all that it fits.
`
}

function paragraphs(lines: readonly string[]): string {
  return lines.map((line) => (line === '' ? '.PP' : plain(line))).join('\n')
}

/** What troff would take for its own is said another way. */
function plain(text: string): string {
  return text.replaceAll('\\', '\\e').replaceAll('-', '\\-').replace(/^(?=[.'])/, '\\&').replaceAll('…', '...')
}
