// The scenes that `npm run screenshots` takes pictures of. To add one, add an object here:
//   name    names the picture
//   file    what is open, a path in samples/
//   view    'grid' (when absent) or 'text'
//   act     what a person does before the picture is taken; optional. It receives
//             press(...keys), type(text)   real keys, wherever the focus is
//             grid()                       the grid's frame, as Playwright has it
//             page                         the whole window, as Playwright has it
//   readme  {theme, width}: `--readme` writes this one to samples/pictures/<name>.png
/** @type {import('./screenshots.mjs').Scene[]} */
export const scenes = [
  { name: 'grid-dark', file: 'tern-650.setup.yaml', readme: { theme: 'dark', width: 1280 } },
  { name: 'text', file: 'tern-650.setup.yaml', view: 'text', act: ({ press }) => press('Control+Home') },
  { name: 'charts-sag', file: 'tern-650.setup.yaml', act: async ({ press, grid }) => {
    await press('Control+k', 'Control+g')
    await (await grid()).locator('.chart-walk:focus').waitFor()
  } },
]
