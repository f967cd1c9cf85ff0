import { createButton, createTextArea, createTextField, type TextControl } from '../../controls'
import { say } from '../strings'
import { make } from './dom'
import type { Popover } from './popover'

/** One line of a form. */
export interface FormField {
  name: string
  label: string
  value: string
  /** Several lines of text. */
  prose?: boolean
}

export interface FormPlan {
  title: string
  /** A sentence below the title. */
  about?: string
  fields: FormField[]
  /** What the button that does it says. */
  submit: string
  anchor: () => DOMRect
  /**
   * Does it, and gives in words why it could not be done; then the form stays open with what was typed.
   * Undefined when done. `flushed` is true when it is asked for by a save and not by the person.
   */
  send(values: Record<string, string>, flushed: boolean): Promise<string | undefined>
  /** Whether a save sends what is typed so far. */
  flush: boolean
}

/** What goes on in a form, for whoever keeps that over the page's end. */
export interface FormWatch {
  /** What an earlier life of the page left in its fields. */
  values?: Record<string, string>
  /** What is in its fields, whenever something was typed; undefined when it is closed. */
  typed(values: Record<string, string> | undefined): void
}

/** The small forms of the grid: they keep what was typed until the host has taken it. */
export class Forms {
  #flush: (() => void) | undefined

  constructor(readonly popover: Popover) {}

  /** A save is coming: an open form that edits something there is sends it. */
  flush(): void {
    this.#flush?.()
  }

  open(plan: FormPlan, { values: left, typed }: FormWatch = { typed: () => undefined }): void {
    if (this.popover.held) return this.popover.focus()
    const fields = plan.fields.map((field) => toControl({ ...field, value: left?.[field.name] ?? field.value }))
    const trouble = make('p', 'form-trouble', { role: 'alert' })
    const submit = createButton(plan.submit, 'primary', () => void send(false))
    const cancel = createButton(say('form.cancel'), 'plain', () => this.popover.close())
    const send = async (flushed: boolean) => {
      submit.enabled = false
      const refused = await plan.send(valuesOf(plan, fields), flushed)
      submit.enabled = true
      trouble.textContent = refused ?? ''
      if (!form.isConnected) return
      if (refused === undefined && !flushed) this.popover.close()
      else this.popover.place()
    }
    const form = make('div', 'form', {}, make('h2', 'form-title', {}, plan.title))
    if (plan.about) form.append(make('p', 'form-about', {}, plan.about))
    form.append(...fields.map(({ element }) => element), trouble, make('div', 'form-buttons', {}, submit.element, cancel.element))
    form.addEventListener('keydown', (event) => {
      const inButton = event.target === submit.element || event.target === cancel.element
      const field = plan.fields[fields.findIndex(({ element }) => element === event.target)]
      if (event.key !== 'Enter' || event.isComposing || inButton || (field?.prose && !event.ctrlKey && !event.metaKey)) return
      event.preventDefault()
      event.stopPropagation()
      void send(false)
    })
    const type = () => {
      this.popover.held = true
      typed(valuesOf(plan, fields))
    }
    form.addEventListener('input', type)
    const stops = [...fields.map(({ element }) => element), submit.element, cancel.element]
    this.popover.show(plan.title, form, stops, plan.anchor, () => {
      this.#flush = undefined
      typed(undefined)
    })
    this.#flush = plan.flush ? () => void send(true) : undefined
    if (left) type()
    requestAnimationFrame(() => (fields[0] ? fields[0].focus() : cancel.element.focus()))
  }
}

const toControl = ({ label, value, prose }: FormField): TextControl => (prose ? createTextArea(label, value, 3) : createTextField(label, value))

function valuesOf(plan: FormPlan, fields: readonly TextControl[]): Record<string, string> {
  return Object.fromEntries(plan.fields.map(({ name }, index) => [name, fields[index]!.value]))
}
