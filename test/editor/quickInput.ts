import { until } from './waiting'
import { page, press, type } from './window'

const widgetAsking = (question: string) => page().locator('.quick-input-widget:visible', { hasText: question })

/**
 * Waits until the editor asks this and takes an answer. A list shows its title before its lines, which come from the
 * extension host by another message: Enter pressed in between chooses nothing, and nobody tells.
 */
export async function asked(question: string): Promise<void> {
  await lineChosen(question, '')
}

/** Answers a question by typing: the line of a list that this leaves, or the text itself where there is no list. */
export async function answer(question: string, text: string): Promise<void> {
  await asked(question)
  await type(text)
  await lineChosen(question, text)
  await press('Enter')
}

async function lineChosen(question: string, text: string): Promise<void> {
  const widget = widgetAsking(question)
  await until(`‘${question}’ takes ‘${text}’`, async () => {
    if (await widget.count() === 0) return false
    const list = widget.locator('.quick-input-list')
    return !(await list.isVisible()) || await list.locator('.monaco-list-row.focused', { hasText: text }).count() > 0
  })
}
