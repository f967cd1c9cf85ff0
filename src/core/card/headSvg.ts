import { say } from '../words/say'
import type { HeadDrawing } from './card'

/**
 * A small drawing of the head, the arrow that turns it in (or does what its purpose says), and where one looks from.
 * It draws in `currentColor`, so that it takes the colour of the text around it; pass another where there is none.
 */
export function headSvg({ seen, facing, viewpoint, purpose = say('turn in'), text }: HeadDrawing, colour = 'currentColor'): string {
  const rotation = seen ?? facing
  const clockwise = rotation === 'clockwise'
  // Three quarters of a circle around the head, with its point at the end.
  const arc = clockwise ? 'M 22 60 A 30 30 0 1 1 52 90' : 'M 82 60 A 30 30 0 1 0 52 90'
  const tip = clockwise ? 'M 62 82 L 52 90 L 62 98' : 'M 42 82 L 52 90 L 42 98'
  const turned = wrapped(say(rotation), 14, 2)
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 24 200 82" width="200" height="82" role="img" aria-label="${escape(text)}" fill="none" stroke="${colour}" stroke-width="3" stroke-linecap="round" stroke-linejoin="round">`,
    '<circle cx="52" cy="60" r="17"/>',
    '<path d="M 40 60 H 64"/>',
    `<path d="${arc}"/><path d="${tip}"/>`,
    `<g fill="${colour}" stroke="none" font-family="sans-serif" font-size="13">`,
    `<text x="98" y="42">${escape(purpose)}:</text>`,
    ...turned.map((line, at) => `<text x="98" y="${60 + at * 16}" font-weight="bold">${escape(line)}</text>`),
    ...wrapped(say(viewpoint).replace(/^as you /, ''), 19, 3).map((line, at) => `<text x="98" y="${60 + turned.length * 16 + at * 13}" font-size="10">${escape(line)}</text>`),
    '</g></svg>',
  ].join('')
}

/** A text in short lines, so many at most. */
function wrapped(text: string, longest: number, most: number): string[] {
  const words = text.split(' ')
  const lines = ['']
  for (const word of words) {
    const line = lines.at(-1)!
    if (line !== '' && line.length + word.length > longest) lines.push(word)
    else lines[lines.length - 1] = line === '' ? word : `${line} ${word}`
  }
  return lines.slice(0, most)
}

function escape(text: string): string {
  return text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!)
}
