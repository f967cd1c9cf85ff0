/** Makes an element. Text is always text. */
export function make<K extends keyof HTMLElementTagNameMap>(tag: K, className: string, attributes: Record<string, string> = {}, ...children: (Node | string)[]): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag)
  element.className = className
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value)
  element.append(...children)
  return element
}

/** The same for SVG. */
export function makeSvg(tag: string, attributes: Record<string, string | number>, ...children: Node[]): SVGElement {
  const element = document.createElementNS('http://www.w3.org/2000/svg', tag)
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value))
  element.append(...children)
  return element
}
