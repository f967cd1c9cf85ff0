import type { CommandSpec } from './commandSpecs'

/** A completion script for bash. Where nothing of ours fits, bash offers files. */
export function bashCompletion(specs: readonly CommandSpec[]): string {
  const offer = (words: readonly string[]) => `COMPREPLY=($(compgen -W '${words.join(' ')}' -- "$current")); return`
  const values = specs.flatMap(({ name, options }) => options.flatMap((option) => {
    if (!option.values) return []
    return [`    '${name} ${option.name}') ${option.values.length > 0 ? offer(option.values) : 'return'} ;;`]
  }))
  return `# bash completion of detent: source <(detent completion bash)
_detent() {
  local current=\${COMP_WORDS[COMP_CWORD]} command=\${COMP_WORDS[1]} before=\${COMP_WORDS[COMP_CWORD-1]}
  COMPREPLY=()
  if ((COMP_CWORD == 1)); then
    ${offer([...specs.map(({ name }) => name), '--help', '--version'])}
  fi
  case "$command $before" in
${values.join('\n')}
  esac
  case $command in
${specs.filter(({ words }) => words.length > 0).map(({ name, words }) => `    ${name}) ${offer(words)} ;;`).join('\n')}
  esac
  [[ $current == -* ]] || return
  case $command in
${specs.map(({ name, options }) => `    ${name}) ${offer([...options.map((option) => option.name), '--help'])} ;;`).join('\n')}
  esac
}
complete -o bashdefault -o default -F _detent detent
`
}
