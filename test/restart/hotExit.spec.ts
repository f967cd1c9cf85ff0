import assert from 'node:assert/strict'
import { pause, picture, until, Workbench, type EditorWindow } from './editorWindow'
import { before, text } from './tern'

describe('nothing is lost when the window ends', function () {
  this.timeout(180_000)
  let workbench: Workbench
  let window: EditorWindow

  beforeEach(async () => {
    workbench = new Workbench()
    await workbench.open(before)
    window = await workbench.window()
    await window.quickly('tern.setup.yaml')
  })
  afterEach(async function () {
    if (this.currentTest?.state === 'failed') console.log(await picture(window, this.currentTest.fullTitle()))
    await workbench.close()
  })

  it('and the server with it: what was committed and not saved is there again, and so is the cell that was being typed', async () => {
    await window.typeInto(0, '41 out', 'Enter')
    await window.shows(0, '41')
    await window.typeInto(1, '42 out')
    // The editor keeps what is not saved a second after it was typed.
    await pause(2500)
    await window.end()
    await workbench.stopServer()
    assert.equal(workbench.saved(), before)
    await workbench.startServer()
    window = await workbench.window()
    await window.asGrid()
    await window.shows(0, '41')
    assert.ok(await window.isDirty())
    await until('the cell is open again', async () => (await window.typed()) === '42 out')
    await window.typeInto(1, '', 'Enter')
    await until('both are saved', async () => {
      await window.press('ControlOrMeta+s')
      await pause(300)
      return workbench.saved() === text(['41 out', '42 out', '9 out'])
    })
  })
})

describe('a notebook with changes that are not saved', function () {
  this.timeout(180_000)
  let workbench: Workbench
  beforeEach(async () => {
    workbench = new Workbench()
    await workbench.open(before)
  })
  afterEach(() => workbench.close())

  it('is shown as text and as a grid again without a question', async () => {
    const window = await workbench.window()
    await window.quickly('tern.setup.yaml')
    await window.typeInto(0, '41 out', 'Enter')
    await window.shows(0, '41')
    for (const way of ['Edit as Text', 'Edit as Grid', 'Edit as Text']) {
      await window.page.getByRole('button', { name: way, exact: true }).first().click()
      await pause(1000)
      assert.deepEqual(await window.page.locator('.monaco-dialog-box').allInnerTexts(), [], way)
    }
    assert.match(await window.page.locator('.view-lines').first().innerText(), /41.out/)
    assert.ok(await window.isDirty())
    assert.equal(workbench.saved(), before)
  })
})
