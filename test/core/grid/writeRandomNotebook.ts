import type { Choices } from './choices'

type Value = string | Value[] | { [key: string]: Value }

const figures = ['3 out', '3', '1 3/4 turns in', '1.0', '012', '6 out', '-5', '1¾', '0x1f', '.5', '12 mm', 'closed', '3 out, hard', 'true', '~', '1e3']
const words = [
  'steadier on the brakes', "can't say", 'turns: better', 'a "quoted" word', 'C# 4', 'two, three [or] {four}', '12', 'no', 'last one \u00a0', '日本語 ü 𝄞', '- dash', '*star', '&and', '%cent',
  '? what', '! hey', '| pipe', 'ends with:', '#no comment', 'tab\there', "''", 'x'.repeat(200), 'back\\slash', '@at', '`tick`', '... ', '---',
]
const prose = [...words, 'first line\nsecond line', 'one\n\n  deeper\nthree', 'a # b\n# c\n- d', 'k: v\nx: y\n', 'end\n\n']
const adjusters: Record<string, Record<string, Value>> = {
  fork_rebound: { on: 'fork', legs: ['left', 'right'], controls: 'rebound', counts: 'clicks' },
  shock_rebound: { on: 'shock', controls: 'rebound', counts: 'clicks', range: '22' },
  fork_compression: { on: 'fork', legs: ['right'], controls: 'compression', counts: 'clicks' },
  ['__proto__']: { on: 'shock', controls: 'preload', counts: 'turns' },
  'Gabel links': { on: 'fork', legs: ['left', 'right'], controls: 'preload', counts: 'turns' },
  'höhe #2': { on: 'chassis', legs: ['left', 'right'], controls: 'fork_height', counts: 'mm' },
  '12': { on: 'tyres', controls: 'tyre_pressure', counts: 'bar' },
}

/**
 * A notebook as no two people would write it: flow and block style, every kind of quotes, comments and blank lines in
 * every place, odd indentation, anchors. Now and then it is no YAML at all; whoever uses it checks.
 */
export function writeRandomNotebook(choices: Choices): string {
  return new Writer(choices).notebook()
}

class Writer {
  #comments = 0
  #names = 0
  readonly #anchors: string[] = []
  readonly #step: number
  readonly #calm: number

  constructor(readonly choices: Choices) {
    this.#step = choices.of([2, 2, 4, 1, 3])
    // How rarely the odd things happen: a text that is odd everywhere tests less than it seems.
    this.#calm = choices.of([12, 6, 30])
  }

  notebook(): string {
    const { choices } = this
    const names = Object.keys(adjusters).filter((_, at) => at < 2 || choices.once(3))
    const root: Record<string, Value> = { format: '1' }
    if (choices.once(2)) root.machine = { name: 'Tern 650', front: { travel: '120' } }
    root.adjusters = Object.fromEntries(names.map((name) => [name, adjusters[name]!]))
    const entries = Array.from({ length: choices.of([1, 2, 3, 2, 4, 3, 2, 0]) }, (_, at) => this.#entry(at, names))
    const accepted = choices.once(4) ? [{ finding: 'legs-differ', entry: 'run-1', reason: 'worn' }] : []
    const pairs = Object.entries(root)
    if (entries.length > 0 || choices.once(2)) pairs.splice(choices.once(4) ? 0 : pairs.length, 0, ['entries', entries])
    if (accepted.length > 0) pairs.splice(choices.once(2) ? 0 : pairs.length, 0, ['accepted', accepted])
    if (choices.once(6)) pairs.push(['notes', choices.of(prose)])
    return this.#document(pairs)
  }

  #document(pairs: [string, Value][]): string {
    const { choices } = this
    const odd = () => choices.once(this.#calm)
    const indent = odd() ? 2 : 0
    const lines = [
      ...(odd() ? ['%YAML 1.2', '---'] : odd() ? ['---'] : []),
      ...this.#between(0),
      ...(odd() && odd() ? [' '.repeat(indent) + this.#flow(Object.fromEntries(pairs), 2)] : this.#blockMap(pairs, indent)),
      ...this.#between(0),
      ...(odd() ? ['...', ...this.#between(0)] : []),
    ]
    const eol = choices.once(4) ? '\r\n' : '\n'
    const text = lines.flatMap((line) => line.split('\n')).join(eol)
    return (odd() ? '\ufeff' : '') + text + (odd() ? '' : eol)
  }

  #entry(at: number, names: string[]): Record<string, Value> {
    const { choices } = this
    const entry: Record<string, Value> = {}
    if (!choices.once(10)) entry.id = choices.once(12) ? 'run-0' : `run-${at}`
    if (choices.once(2)) entry.date = '2026-04-18'
    if (at > 1 && choices.once(3)) entry.from = 'run-0'
    if (choices.once(8)) entry['7'] = { 'of ours': choices.of(words) }
    const set = names.filter(() => choices.once(2))
    if (set.length > 0 || choices.once(4)) entry.settings = Object.fromEntries(set.map((name) => [name, this.#setting(adjusters[name]!.legs as string[] | undefined)]))
    if (choices.once(2)) entry.sag = this.#sag()
    if (choices.once(3)) entry.bounce = this.#bounce()
    if (choices.once(3)) entry.reason = choices.of(prose)
    if (choices.once(3)) entry.ride = { felt: choices.of(prose), laps: '6', ...(choices.once(2) ? { log: choices.of(words) } : {}) }
    if (choices.once(3)) entry.remarks = { [choices.of(['fork_rebound', 'fork_rebound/left', 'ride.felt', 'sag.front.bike'])]: choices.of(prose) }
    if (choices.once(4)) entry.notes = choices.of(prose)
    if (!choices.once(5)) return entry
    const [first, ...rest] = Object.entries(entry)
    return first ? Object.fromEntries([...rest, first]) : entry
  }

  #setting(legs: string[] | undefined): Value {
    const one = () => this.choices.of(figures)
    if (legs === undefined || this.choices.once(2)) return one()
    return Object.fromEntries(legs.filter(() => !this.choices.once(3)).map((leg) => [leg, one()]))
  }

  #sag(): Value {
    const { choices } = this
    const reading = (): Value => {
      const kind = choices.below(5)
      return kind === 0 ? '128' : kind === 1 ? ['128', '122'] : kind === 2 ? { lifted: '128', pushed: '122' } : kind === 3 ? ['128'] : { pushed: '122.0' }
    }
    const end = (): Value => ({ ...(choices.once(2) ? { extended: '152' } : {}), bike: reading(), ...(choices.once(2) ? { rider: reading() } : {}) })
    return { ...(choices.once(3) ? {} : { front: end() }), ...(choices.once(3) ? { rear: end() } : {}) }
  }

  #bounce(): Value {
    const { choices } = this
    const heights = (): Value => choices.of([['40', '14', '5'], ['40', '14.0'], ['40']])
    const end = (): Value => (choices.once(3) ? { heights: heights(), ...(choices.once(2) ? { seconds: '0.6' } : {}) } : heights())
    return { ...(choices.once(4) ? {} : { front: end() }), ...(choices.once(3) ? { rear: end() } : {}) }
  }

  /** Blank lines and comments. */
  #between(indent: number): string[] {
    const lines: string[] = []
    while (this.choices.once(this.#calm)) lines.push(this.choices.once(2) ? (this.choices.once(4) ? '  ' : '') : ' '.repeat(indent) + this.#comment())
    return lines
  }

  #comment(): string {
    return this.choices.of(['#', '# ']) + this.choices.of(['note', "it's: {odd} [x], 'q", 'reason: no', '# twice', '- dash', '"']) + this.#comments++
  }

  #behind(): string {
    return this.choices.once(this.#calm) ? this.choices.of([' ', '   ', '\t', ' \t ']) + this.#comment() : this.choices.once(this.#calm * 3) ? '  ' : ''
  }

  #blockMap(pairs: [string, Value][], indent: number): string[] {
    const lines = pairs.flatMap(([key, value]) => [...this.#between(indent), ...this.#pair(key, value, indent)])
    return [...lines, ...this.#between(indent + (this.choices.once(2) ? 3 : 0))]
  }

  #pair(key: string, value: Value, indent: number): string[] {
    const { choices } = this
    if (choices.once(this.#calm * 20)) return this.#asked(key, value, indent)
    const head = `${' '.repeat(indent)}${this.#key(key, false)}:`
    if (choices.once(this.#calm * 4)) return [`${head}${choices.of(['', ' ~', ' null'])}${this.#behind()}`]
    if (typeof value === 'string') return this.#scalarPair(head, value, indent)
    const isEmpty = Object.keys(value).length === 0
    if (isEmpty && choices.once(2)) return [head + this.#behind()]
    if (isEmpty || choices.once(3)) return this.#anchored((mark) => [`${head} ${mark}${this.#flow(value, indent + this.#step)}${this.#behind()}`])
    const isFlush = Array.isArray(value) && choices.once(4)
    const inside = indent + (isFlush ? 0 : choices.once(this.#calm) ? 5 : this.#step)
    const lines = () => (Array.isArray(value) ? this.#blockList(value, inside) : this.#blockMap(Object.entries(value), inside))
    return this.#anchored((mark) => [head + ` ${mark}`.trimEnd() + this.#behind(), ...this.#between(inside), ...lines()])
  }

  /** `? key` and `: value` on lines of their own. */
  #asked(key: string, value: Value, indent: number): string[] {
    return [`${' '.repeat(indent)}? ${this.#key(key, false)}${this.#behind()}`, `${' '.repeat(indent)}: ${this.#flow(value, indent + this.#step)}`]
  }

  #blockList(items: Value[], indent: number): string[] {
    const { choices } = this
    const gap = choices.once(3) ? '   ' : ' '
    const blank = choices.once(3)
    return items.flatMap((item, at) => {
      const dash = `${' '.repeat(indent)}-`
      const above = [...(blank && at > 0 ? [''] : []), ...this.#between(indent)]
      if (choices.once(this.#calm * 6)) above.push(dash)
      if (typeof item === 'string') return [...above, `${dash}${gap}${this.#scalar(item, false)}${this.#behind()}`]
      if (Object.keys(item).length === 0 || Array.isArray(item) || choices.once(5)) return [...above, `${dash}${gap}${this.#flow(item, indent + this.#step)}${this.#behind()}`]
      const inside = indent + 1 + gap.length
      if (choices.once(this.#calm)) return this.#anchored((mark) => [...above, dash + ` ${mark}`.trimEnd() + this.#behind(), ...this.#blockMap(Object.entries(item), inside)])
      const [first, ...rest] = this.#blockMap(Object.entries(item), inside)
      return first!.trim() === '' || first!.trim().startsWith('#') ? [...above, dash, first!, ...rest] : [...above, `${dash}${gap}${first!.slice(inside)}`, ...rest]
    })
  }

  #key(key: string, flow: boolean): string {
    const mark = this.choices.once(this.#calm * 20) ? '&k ' : ''
    if (!this.choices.once(this.#calm * 2) && isPlain(key, flow)) return mark + key
    return mark + (this.choices.once(2) ? JSON.stringify(key) : `'${key}'`)
  }

  #anchor(): string {
    if (!this.choices.once(this.#calm * 4)) return ''
    if (this.choices.once(4)) return '!!str '
    const name = `a${this.#names++}`
    this.#anchors.push(name)
    return `&${name} `
  }

  /** What is anchored as a whole can be repeated only behind it. */
  #anchored<T>(write: (mark: string) => T): T {
    if (!this.choices.once(this.#calm * 4)) return write('')
    const name = `a${this.#names++}`
    const written = write(`&${name} `)
    this.#anchors.push(name)
    return written
  }

  #scalarPair(head: string, value: string, indent: number): string[] {
    const { choices } = this
    const behind = this.#behind()
    if (value.includes('\n') ? !choices.once(3) : choices.once(this.#calm * 2)) {
      const header = choices.of(['|', '|-', '>-', '|+', '>'])
      const inside = ' '.repeat(indent + this.#step)
      return [`${head} ${this.#anchor()}${header}${behind}`, ...value.split('\n').map((line) => (line === '' ? '' : inside + line))]
    }
    if (choices.once(this.#calm * 2)) return [head, ...this.#between(indent + this.#step), `${' '.repeat(indent + this.#step)}${this.#scalar(value, false)}${behind}`]
    const gap = choices.once(this.#calm * 3) ? choices.of(['\t', '  ']) : ' '
    const written = this.#scalar(value, false)
    const isLong = !written.startsWith('*') && / \S+ \S/.test(written) && !/ [#&*!|>'"%@`-]|: /.test(written)
    if (isLong && choices.once(this.#calm)) return [`${head} ${written.replace(' ', `\n${' '.repeat(indent + this.#step)}`)}${behind}`]
    return [`${head}${gap}${written}${behind}`]
  }

  #scalar(value: string, flow: boolean): string {
    const { choices } = this
    if (this.#anchors.length > 0 && choices.once(8)) return `*${choices.of(this.#anchors)}${flow ? ' ' : ''}`
    const mark = this.#anchor()
    if (!choices.once(this.#calm) && isPlain(value, flow)) return mark + value
    return mark + (choices.once(2) && !/[\n\t]/.test(value) ? `'${value.replaceAll("'", "''")}'` : JSON.stringify(value))
  }

  #flow(value: Value, indent: number): string {
    if (typeof value === 'string') return this.#scalar(value, true)
    const { choices } = this
    const spread = choices.once(this.#calm)
    const [open, close] = Array.isArray(value) ? ['[', ']'] : ['{', '}']
    const items = Array.isArray(value)
      ? value.map((item) => this.#flow(item, indent + 2))
      : Object.entries(value).map(([key, item]) => {
        if (choices.once(this.#calm * 6)) return this.#key(key, true) + choices.of(['', ':'])
        return `${this.#key(key, true)}:${choices.once(this.#calm * 2) ? '  ' : ' '}${this.#flow(item, indent + 2)}`
      })
    const pad = choices.once(this.#calm) ? ' ' : ''
    const end = choices.once(this.#calm) && items.length > 0 ? ',' : ''
    if (!spread) return open + pad + items.join(choices.once(this.#calm) ? ' , ' : ', ') + end + pad + close
    const lead = `\n${' '.repeat(indent + 2)}`
    const lines = items.map((item, at) => {
      const comma = at < items.length - 1 ? ',' : end
      return choices.once(8) ? `${item} ${this.#comment()}${lead}${comma}` : `${item}${comma}${this.#behind()}`
    })
    return `${open}${this.#behind()}${lead}${lines.join(lead)}${choices.once(2) ? `\n${' '.repeat(indent)}` : lead}${close}`
  }
}

function isPlain(text: string, flow: boolean): boolean {
  if (/^[-?:,[\]{}#&*!|>'"%@`\s]|^(?:---|\.\.\.)|: |:$| #|[\n\t]|\s$|^$/.test(text) && !/^-\d/.test(text)) return false
  return !flow || !/[,[\]{}]/.test(text)
}
