/** The words that the host wrote into the page it made, for the element the page is built in; none where the page is to speak English. */
export function wordsFor(element: HTMLElement): Record<string, string> {
  return JSON.parse(element.dataset.words ?? '{}') as Record<string, string>
}
