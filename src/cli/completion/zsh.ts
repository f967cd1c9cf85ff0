import type { CommandSpec, OptionSpec } from './commandSpecs'

/** A completion script for zsh. */
export function zshCompletion(specs: readonly CommandSpec[]): string {
  return `#compdef detent
# zsh completion of detent: source <(detent completion zsh)
_detent() {
  local -a commands
  commands=(
${specs.map(({ name, about }) => `    ${quoted(`${name}:${about}`)}`).join('\n')}
  )
  if ((CURRENT == 2)); then
    _describe command commands
    return
  fi
  local command=$words[2]
  shift words
  ((CURRENT--))
  case $command in
${specs.map(({ name, words, options }) => `    ${name}) _arguments ${[...options.map(asked), '--help', words.length > 0 ? `1:shell:(${words.join(' ')})` : '*:file:_files'].map(quoted).join(' ')} ;;`).join('\n')}
  esac
}
compdef _detent detent
`
}

function asked({ name, values }: OptionSpec): string {
  if (!values) return name
  return `${name}:${name.slice(2)}:${values.length > 0 ? `(${values.join(' ')})` : name === '--notebook' || name === '--path' ? '_files' : ' '}`
}

function quoted(text: string): string {
  return `'${text.replaceAll("'", `'\\''`)}'`
}
