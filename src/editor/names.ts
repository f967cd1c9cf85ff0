/** How our editors and pages are called, in the manifest and here. */
export const viewType = 'detent.setup'
export const compareViewType = 'detent.compare'
export const turnsViewType = 'detent.turns'
export const setupsView = 'detent.setups'

export const notebookPattern = '**/*.setup.{yaml,yml}'
