/** Characters that a terminal acts on, or that turn the reading direction round; a line end and a tab are what they seem. */
const acting = /\r(?!\n)|[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g

/**
 * A text as it may be printed where people read it: what a notebook, a log or a file's name holds cannot colour, hide or
 * overwrite anything on the terminal. Each such character is shown as its picture, or as `�` where it has none.
 */
export function forTerminal(text: string): string {
  return text.replace(acting, (character) => (character === '\u007f' ? '␡' : character < ' ' ? String.fromCharCode(0x2400 + character.charCodeAt(0)) : '�'))
}

/** The same on one line, for what is one line of many. */
export function onOneLine(text: string): string {
  return forTerminal(text.replace(/\r\n?|\n/g, '␊'))
}
