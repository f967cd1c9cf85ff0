import { nearest } from '../core/nearest'
import { UsageError, type Git, type GitAnswer } from './outcome'

/**
 * The text of a file at a revision, as git keeps it; with an empty revision, as it is staged.
 *
 * @throws UsageError saying which is missing, the repository, the revision or the file, and what was probably meant
 */
export function readAtRevision(revision: string, path: string, git: Git | undefined): string {
  if (!git) throw new UsageError(`${revision}:${path}: there is no git here`)
  const { folder, rest } = git.folderOf(path)
  const repository: Repository = {
    folder, rest,
    run(...args) {
      const answer = git.run(folder, args)
      if (!answer) throw new UsageError(`${revision}:${path}: git is not installed, and nothing else knows revisions`)
      return answer
    },
  }
  const inside = repository.run('rev-parse', '--is-inside-work-tree')
  if (inside.code !== 0) throw new UsageError(`${revision}:${path}: ${folder || 'this folder'} is in no git repository that can be read (${firstLine(inside)})`)
  const isStage = /^(:[0-3])?$/.test(revision)
  if (!isStage) expectRevision(revision, repository)
  const object = `${revision}:./${rest}`
  if (repository.run('cat-file', '-t', object).out.trim() === 'blob') {
    const shown = repository.run('show', object)
    if (shown.code === 0) return shown.out
  }
  throw new UsageError(isStage ? notStaged(revision, path, repository) : notThere(revision, path, repository))
}

interface Repository {
  /** The folder git runs in, as it was typed, and where the file is from there. */
  folder: string
  rest: string
  run: (...args: string[]) => GitAnswer
}

const firstLine = ({ err }: GitAnswer) => err.trim().split('\n')[0] ?? ''

/** The name that a revision begins with, and the way from it: `HEAD` and `~2`. */
function cutName(revision: string): [name: string, way: string] {
  const at = revision.search(/[~^@:]/)
  return at < 0 ? [revision, ''] : [revision.slice(0, at), revision.slice(at)]
}

function expectRevision(revision: string, { run }: Repository): void {
  if (run('rev-parse', '--verify', '--quiet', `${revision}^{tree}`).code === 0) return
  const [name, way] = cutName(revision)
  const names = run('for-each-ref', '--format=%(refname:short)').out.split('\n').filter(Boolean)
  const meant = nearest(name, ['HEAD', ...names])
  // A name that is right leaves the way from it: HEAD~99 where there are ten.
  const hint = meant === name ? `; ‘${name}’ there is, but not ‘${way}’ from it` : meant ? `; did you mean ‘${meant}${way}’?` : ''
  throw new UsageError(`there is no revision ‘${revision}’ in this repository${hint}`)
}

function notStaged(revision: string, path: string, { rest, run }: Repository): string {
  const stages = run('ls-files', '--unmerged', '-z', '--', `./${rest}`).out
  if (stages !== '') return `${path} is in conflict, so nothing of it is staged; write :2:${path} for ours, :3:${path} for theirs, :1:${path} for what both come from`
  return revision === '' || revision === ':0' ? `${path} is not staged, and git knows no such file` : `${path} is in no conflict, so it has no side ${revision}`
}

function notThere(revision: string, path: string, { folder, rest, run }: Repository): string {
  const prefix = run('rev-parse', '--show-prefix').out.replace(/\n$/, '')
  const typed = (full: string) => folder + relative(prefix, full)
  const renamed = list(run('diff', '--name-status', '-z', '-M', '--diff-filter=R', revision))
  const at = renamed.findIndex((name, place) => place % 3 === 2 && name === prefix + rest)
  if (at > 0) return `‘${revision}’ has no ‘${path}’: it was ‘${typed(renamed[at - 1]!)}’ then, so write ${revision}:${typed(renamed[at - 1]!)}`
  const there = list(run('ls-tree', '-r', '-z', '--full-tree', '--name-only', revision)).map(typed)
  const sameName = there.filter((name) => name.split('/').at(-1) === rest.split('/').at(-1))
  const meant = nearest(path, there) ?? (sameName.length === 1 ? sameName[0] : undefined)
  return `‘${revision}’ has no ‘${path}’${meant ? `; did you mean ${revision}:${meant}?` : ''}`
}

const list = ({ out }: GitAnswer): string[] => out.split('\0').filter(Boolean)

/** A path of the repository as it is from a folder of it. @example relative('bikes/', 'old/tern.yaml') // '../old/tern.yaml' */
function relative(prefix: string, full: string): string {
  const from = prefix.split('/').filter(Boolean)
  const to = full.split('/')
  let shared = 0
  while (shared < from.length && shared < to.length - 1 && from[shared] === to[shared]) shared++
  return [...from.slice(shared).map(() => '..'), ...to.slice(shared)].join('/')
}
