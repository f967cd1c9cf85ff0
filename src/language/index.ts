/**
 * What an editor can ask about a notebook: plain data in an editor's vocabulary, offsets into the text, no editor's
 * types. Every question takes a notebook as it was read once; none throws on a text that is half typed.
 */
export { codeActions, type CodeAction } from './codeActions'
export { complete } from './completion/complete'
export type { Completion, Completions } from './completion/completion'
export { documentSymbols, type NotebookSymbol } from './documentSymbols'
export { foldingRanges, type Fold } from './foldingRanges'
export { hoverAt, type Hover } from './hover'
export { inlayHints, type InlayHint } from './inlayHints'
export { speaksOfShape, withoutTold } from './toldBesides'
export { definitionAt, highlightsAt, referencesAt, type Highlight, type Link } from './names/references'
export { findRenamable, renameAt, type Renaming } from './names/rename'
