/** What reading a text tells before any rule is asked: it can be neither silenced nor accepted. Listed in the README with the rules. */
export const toldByReading = [
  {
    code: 'yaml-syntax',
    severity: 'error',
    says: 'The text is no YAML.',
    why: 'Nothing in a broken text is sure. The grid shows what was last understood and does not write until it is mended.',
  },
  {
    code: 'wrong-shape',
    severity: 'error',
    says: 'Something is missing, or is not of the kind that belongs there.',
    why: 'What does not have the shape of the format is not understood, so nothing carries, compares or checks it.',
  },
] as const
