import type { CommandSpec } from './commandSpecs'

/** A completion script for fish. */
export function fishCompletion(specs: readonly CommandSpec[]): string {
  const of = (name: string) => `complete -c detent -n '__fish_seen_subcommand_from ${name}'`
  return `# fish completion of detent: detent completion fish | source
${specs.map(({ name, about }) => `complete -c detent -n __fish_use_subcommand -f -a ${name} -d ${quoted(about)}`).join('\n')}
complete -c detent -n __fish_use_subcommand -l version
complete -c detent -l help
${specs.flatMap(({ name, words, options }) => [
    ...(words.length > 0 ? [`${of(name)} -f -a '${words.join(' ')}'`] : []),
    ...options.map((option) => `${of(name)} -l ${option.name.slice(2)}${!option.values ? '' : option.values.length > 0 ? ` -x -a '${option.values.join(' ')}'` : ' -r'}`),
  ]).join('\n')}
`
}

function quoted(text: string): string {
  return `'${text.replaceAll('\\', '\\\\').replaceAll("'", "\\'")}'`
}
