import assert from 'node:assert/strict'
import { picture, until, Workbench, type EditorWindow } from './editorWindow'
import { before, text } from './tern'

describe('nothing is lost between two windows on one folder', function () {
  this.timeout(180_000)
  let workbench: Workbench
  let one: EditorWindow
  let two: EditorWindow

  beforeEach(async () => {
    workbench = new Workbench()
    await workbench.open(before)
    one = await workbench.window()
    await one.quickly('tern.setup.yaml')
    two = await workbench.window()
    await two.quickly('tern.setup.yaml')
  })
  afterEach(async function () {
    if (this.currentTest?.state === 'failed') console.log(await picture(one, `${this.currentTest.title} one`), await picture(two, `${this.currentTest.title} two`))
    await workbench.close()
  })

  it('where one saves, the other follows; where both have changes, neither goes over the other’s', async () => {
    await one.typeInto(0, '41 out', 'Enter')
    await one.save()
    await two.shows(0, '41')
    await two.typeInto(1, '42 out', 'Enter')
    await two.shows(1, '42')
    await one.typeInto(2, '43 out', 'Enter')
    await one.save()
    const ones = text(['41 out', '8 out', '43 out'])
    await until('the first is saved', () => workbench.saved() === ones)
    await two.press('ControlOrMeta+s')
    await two.page.getByText(/Failed to save 'tern\.setup\.yaml'/).first().waitFor()
    assert.equal(workbench.saved(), ones, 'the second is told, and writes over nothing')
    assert.ok(await two.isDirty())
    await two.shows(1, '42')
    await two.shows(2, '9')
  })

  it('with a cell open in both: what another saves takes nothing away from it', async () => {
    await two.typeInto(1, '42 o')
    await one.typeInto(0, '41 out', 'Enter')
    await one.save()
    await two.shows(0, '41')
    await two.page.bringToFront()
    // Whether the browser took the keyboard away meanwhile, which hands the text over, is its own business.
    assert.equal((await two.typed()) ?? (await two.cell(1)), '42 o')
  })
})
