/** The colour themes that come with the editor: the name its setting takes, and the class that the window then wears. */
export const themes = {
  light: { name: 'Default Light Modern', cssClass: 'vs' },
  dark: { name: 'Default Dark Modern', cssClass: 'vs-dark' },
  'hc-black': { name: 'Default High Contrast', cssClass: 'hc-black' },
  'hc-light': { name: 'Default High Contrast Light', cssClass: 'hc-light' },
} as const
