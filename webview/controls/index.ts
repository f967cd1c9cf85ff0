import {
  provideVSCodeDesignSystem, vsCodeButton, vsCodeCheckbox, vsCodeTextArea, vsCodeTextField, type Button, type Checkbox, type TextArea, type TextField,
} from '@vscode/webview-ui-toolkit'

/**
 * The buttons, boxes to tick and text fields of our pages. This is the only module that knows which set of controls they come
 * from: the toolkit is no longer developed, and another set has to fill in no more than these functions.
 */
provideVSCodeDesignSystem().register(vsCodeButton(), vsCodeCheckbox(), vsCodeTextField(), vsCodeTextArea())

export interface ButtonControl {
  readonly element: HTMLElement
  label: string
  enabled: boolean
}

/** `primary` stands out, `plain` does not, `quiet` shows its ground only when pointed at. */
export type ButtonLook = 'primary' | 'plain' | 'quiet'

export function createButton(label: string, look: ButtonLook, press: () => void): ButtonControl {
  const button = document.createElement('vscode-button') as Button
  button.setAttribute('appearance', look === 'primary' ? 'primary' : 'secondary')
  button.classList.add(`button-${look}`)
  button.textContent = label
  button.addEventListener('click', press)
  return {
    element: button,
    get label() { return button.textContent ?? '' },
    set label(text) { if (button.textContent !== text) button.textContent = text },
    get enabled() { return !button.disabled },
    set enabled(enabled) { button.disabled = !enabled },
  }
}

export interface CheckControl {
  readonly element: HTMLElement
  checked: boolean
}

/** A box with its label; `change` hears of what a person does, not of what is set from here. */
export function createCheckbox(label: string, change: (checked: boolean) => void): CheckControl {
  const box = document.createElement('vscode-checkbox') as Checkbox
  box.textContent = label
  let known = false
  box.addEventListener('change', () => {
    if (box.checked === known) return
    known = box.checked
    change(known)
  })
  return {
    element: box,
    get checked() { return box.checked },
    set checked(checked) {
      known = checked
      box.checked = checked
    },
  }
}

export interface TextControl {
  readonly element: HTMLElement
  value: string
  /** Focuses it with its text selected. */
  focus(): void
}

/** A labelled field of one line. */
export function createTextField(label: string, value: string): TextControl {
  const field = document.createElement('vscode-text-field') as TextField
  field.textContent = label
  return asText(field, value, () => field.control)
}

/** A labelled field of several lines. */
export function createTextArea(label: string, value: string, rows: number): TextControl {
  const area = document.createElement('vscode-text-area') as TextArea
  area.textContent = label
  area.rows = rows
  area.setAttribute('resize', 'vertical')
  return asText(area, value, () => area.control)
}

function asText(element: TextField | TextArea, value: string, control: () => HTMLInputElement | HTMLTextAreaElement): TextControl {
  element.value = value
  return {
    element,
    get value() { return element.value },
    set value(text) { element.value = text },
    focus() {
      control().focus()
      control().select()
    },
  }
}
