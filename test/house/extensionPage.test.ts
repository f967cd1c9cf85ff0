import assert from 'node:assert/strict'
import { existsSync, readFileSync } from 'node:fs'
import { MarkdownIt } from '../markdownIt'

const made = import('../release/extensionPage.mjs' as string) as Promise<{ extensionPage: (readme: string, picture: (path: string) => string | undefined) => string }>
const readme = readFileSync('README.md', 'utf8')

/** Every address in it, of pictures and of links, and all its words. */
function read(markdown: string) {
  const blocks = new MarkdownIt({ html: true }).parse(markdown, {})
  const inline = blocks.flatMap(({ children }) => children ?? [])
  const all = (type: string, attribute: string) => inline.filter((token) => token.type === type).map((token) => String(token.attrGet(attribute)))
  return { pictures: all('image', 'src'), links: all('link_open', 'href'), words: [...inline, ...blocks].filter(({ type }) => ['text', 'code_inline', 'fence', 'html_block'].includes(type)).map(({ content }) => content).join('') }
}

describe('the page of the extension', () => {
  it('leads nowhere into the repository, which is not there, and says all that the README says but what is for a clone', async () => {
    const rest = read(readme.replace(/<!-- clone:begin -->[^]*<!-- clone:end -->\n/, ''))
    assert.doesNotMatch(rest.words, /npm start/)
    const page = read((await made).extensionPage(readme, (path) => `data:image/webp;base64,${path}`))
    assert.deepEqual([...page.links, ...page.pictures].filter((address) => !/^(?:https:|#|data:)/.test(address)), [])
    assert.equal(page.pictures.length, rest.pictures.length)
    assert.equal(page.words, rest.words)
  })

  it('leaves out a picture that it cannot carry, with its words', async () => {
    const page = (await made).extensionPage('# One\n\n![a grid](x.png)\n\nTwo [three](four.md), [five](https://six.example).\n', () => undefined)
    assert.equal(page, '# One\n\nTwo three, [five](https://six.example).\n')
  })

  it('carries the first picture of the README', () => {
    const [first] = read(readme).pictures
    assert.ok(first && existsSync(first.replace('.png', '.webp')))
  })
})
