/**
 * Undo within a text field. Webviews hand Ctrl+Z and Ctrl+Y on to the editor, which would undo the last change of
 * the document and leave what is being typed. So the keys are caught before that and given to the field.
 */
export function keepUndoInFields(): void {
  document.addEventListener('keydown', (event) => {
    const command = commandOf(event)
    if (!command || !isField(event.composedPath()[0])) return
    event.preventDefault()
    event.stopPropagation()
    document.execCommand(command)
  }, { capture: true })
}

function commandOf({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyboardEvent): 'undo' | 'redo' | undefined {
  if (altKey || !(ctrlKey || metaKey)) return undefined
  if (key.toLowerCase() === 'z') return shiftKey ? 'redo' : 'undo'
  return key.toLowerCase() === 'y' && !shiftKey ? 'redo' : undefined
}

const isField = (target: EventTarget | undefined) => target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement
