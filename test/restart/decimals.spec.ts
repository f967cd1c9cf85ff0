import assert from 'node:assert/strict'
import { until, Workbench } from './editorWindow'
import { text } from './tern'

/** With names of their own, which are the same in every language. */
const named = (positions: string[]) => text(positions).replaceAll(/ {2}(\w)(\w+)_(\w+): \{/g, (_, first: string, rest: string, last: string) => `  ${first}${rest}_${last}: {label: ${first.toUpperCase()}${rest} ${last}, `)
const before = named(['7 out', '8 out', '9 out'])

describe('a decimal comma', function () {
  this.timeout(180_000)
  let workbench: Workbench
  beforeEach(async () => {
    workbench = new Workbench()
    await workbench.open(before)
  })
  afterEach(() => workbench.close())

  it('becomes the point of the file where the window’s language writes it, by one edit, and stays as it was typed elsewhere', async () => {
    const german = await workbench.window('de')
    await german.quickly('tern.setup.yaml')
    await (await german.grid()).getByText('Eintrag hinzufügen', { exact: true }).first().waitFor()
    await german.typeInto(0, '31,5', 'Enter')
    await german.shows(0, '31.5')
    await german.save()
    const pointed = named(['31.5', '8 out', '9 out'])
    assert.equal(workbench.saved(), pointed)
    await german.press('ControlOrMeta+z')
    await german.shows(0, '7 out')
    await german.save()
    assert.equal(workbench.saved(), before)
    await german.end()
    const english = await workbench.window()
    await english.quickly('tern.setup.yaml')
    await english.typeInto(0, '31,5', 'Enter')
    await until('it is written as it was typed', async () => {
      if (await english.isDirty()) await english.press('ControlOrMeta+s')
      return /fork_compression: ["']?31,5/.test(workbench.saved())
    })
  })
})
