/** With a capital to begin with. @example capital('less rebound damping') // 'Less rebound damping' */
export function capital(text: string): string {
  return `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`
}

/** What was said within others, as a sentence of its own. @example sentence('it is left as it is') // 'It is left as it is.' */
export function sentence(text: string): string {
  return text === '' || /[.!?…]$/.test(text) ? capital(text) : `${capital(text)}.`
}
