/** Makes an element. Text is always text: no page of ours writes HTML. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K, className: string, attributes: Record<string, string> = {}, ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag)
  if (className) element.className = className
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value)
  element.append(...children)
  return element
}

/** Sets or takes away an attribute, touching the page only when it differs. */
export function setAttribute(element: Element, name: string, value: string | undefined): void {
  if (value === undefined || value === '') element.removeAttribute(name)
  else if (element.getAttribute(name) !== value) element.setAttribute(name, value)
}
