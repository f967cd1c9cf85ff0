import * as vscode from 'vscode'
import { nearest } from '../../core/nearest'
import { say } from '../../core/words/say'
import type { Commit, GitApi, GitExtension, Ref, Repository } from './gitApi'

/** How long git is given to look at a folder. */
const startMs = 5000
/** So many commits of a file are offered. */
const mostCommits = 100

/** A text at a revision, and the file it stood in then; or a sentence why there is none. */
export type RevisionText = { text: string; uri: vscode.Uri } | { missing: string }

/** What a person may choose from. */
export interface RevisionChoice {
  refs: Ref[]
  commits: Commit[]
}

/** Files as they are in git, by way of the editor's own extension for it. Nothing of git is run here. */
export class Revisions implements vscode.Disposable {
  readonly #changed = new vscode.EventEmitter<void>()
  readonly #followed = new Map<Repository, vscode.Disposable>()

  /** Fires when a repository that was asked has changed: a commit, another branch, something staged. */
  readonly onDidChange = this.#changed.event

  /** The text of a file at a revision; with an empty one, as it is staged. */
  async read(uri: vscode.Uri, revision: string): Promise<RevisionText> {
    try {
      return await this.#read(uri, revision)
    } catch (error) {
      return { missing: say`Git could not be asked for ${nameOf(uri)}: ${error instanceof Error ? error.message : String(error)}` }
    }
  }

  /** The branches, tags and commits that a file may be read at. */
  async choices(uri: vscode.Uri): Promise<RevisionChoice | { missing: string }> {
    const repository = await this.#repositoryOf(uri)
    if ('missing' in repository) return repository
    const [refs, commits] = await Promise.all([
      repository.getRefs({}).catch(() => []),
      // A repository without a commit has no log.
      repository.log({ maxEntries: mostCommits, path: uri.fsPath }).catch(() => []),
    ])
    return { refs, commits }
  }

  /** The address under which the editor shows a file at a revision. */
  async address(uri: vscode.Uri, revision: string): Promise<vscode.Uri | undefined> {
    const api = await gitApi()
    return 'missing' in api ? undefined : api.toGitUri(uri, revision)
  }

  dispose(): void {
    this.#changed.dispose()
    for (const each of this.#followed.values()) each.dispose()
  }

  async #read(uri: vscode.Uri, revision: string): Promise<RevisionText> {
    const repository = await this.#repositoryOf(uri)
    if ('missing' in repository) return repository
    if (revision !== '' && !(await hasRevision(repository, revision))) return { missing: await noRevision(repository, revision) }
    const here = await shown(repository, revision, uri)
    if (here !== undefined) return { text: here, uri }
    const before = revision === '' ? undefined : await earlierName(repository, revision, uri)
    const there = before && (await shown(repository, revision, before))
    if (before && there !== undefined) return { text: there, uri: before }
    return { missing: revision === '' ? say`${nameOf(uri)} is not staged, and git knows no such file.` : say`‘${revision}’ has no ${nameOf(uri)}.` }
  }

  async #repositoryOf(uri: vscode.Uri): Promise<Repository | { missing: string }> {
    const api = await gitApi()
    if ('missing' in api) return api
    const repository = await openedFor(api, uri)
    if (!repository) return { missing: say`${nameOf(uri)} is in no git repository that the editor has found.` }
    if (!this.#followed.has(repository)) this.#followed.set(repository, repository.state.onDidChange(() => this.#changed.fire()))
    return repository
  }
}

async function gitApi(): Promise<GitApi | { missing: string }> {
  const extension = vscode.extensions.getExtension<GitExtension>('vscode.git')
  if (!extension) return { missing: say('The editor’s own git extension is not there, and nothing else here knows revisions.') }
  try {
    const git = await extension.activate()
    if (!git.enabled) return { missing: say('Git is switched off in this editor; the setting `git.enabled` switches it on.') }
    const api = git.getAPI(1)
    await initialized(api)
    return api
  } catch {
    return { missing: say('The editor’s own git extension does not start; its output says why.') }
  }
}

async function initialized(api: GitApi): Promise<void> {
  if (api.state === 'initialized') return
  await new Promise<void>((resolve) => {
    const waiting = api.onDidChangeState(() => done())
    const timer = setTimeout(() => done(), startMs)
    const done = () => {
      waiting.dispose()
      clearTimeout(timer)
      resolve()
    }
  })
}

/** The repository a file is in; one that the editor has not opened yet, as when it lies deeper, is opened now. */
async function openedFor(api: GitApi, uri: vscode.Uri): Promise<Repository | undefined> {
  const known = api.getRepository(uri)
  if (known) return known
  // For a folder that is gone the extension may never answer.
  return (await inTime(api.openRepository(vscode.Uri.joinPath(uri, '..')).catch(() => null))) ?? undefined
}

function inTime<T>(answer: Promise<T | null>): Promise<T | null> {
  return Promise.race([answer, new Promise<null>((resolve) => setTimeout(() => resolve(null), startMs))])
}

/** What begins with a dash git would take for an option. */
async function hasRevision(repository: Repository, revision: string): Promise<boolean> {
  return !revision.startsWith('-') && repository.getCommit(revision).then(() => true, () => false)
}

async function noRevision(repository: Repository, revision: string): Promise<string> {
  const refs = await repository.getRefs({}).catch(() => [])
  const meant = nearest(revision, ['HEAD', ...refs.flatMap(({ name }) => name ?? [])])
  return meant && meant !== revision ? say`There is no revision ‘${revision}’ in this repository; did you mean ‘${meant}’?` : say`There is no revision ‘${revision}’ in this repository.`
}

async function shown(repository: Repository, revision: string, uri: vscode.Uri): Promise<string | undefined> {
  return repository.show(revision, uri.fsPath).then((text) => text.replace(/^\uFEFF/, ''), () => undefined)
}

/** What a file was called at a revision, where git knows that it was renamed since. */
async function earlierName(repository: Repository, revision: string, uri: vscode.Uri): Promise<vscode.Uri | undefined> {
  const changes = await repository.diffWith(revision).catch(() => [])
  const renamed = changes.find(({ renameUri, originalUri }) => renameUri?.path === uri.path && originalUri.path !== uri.path)
  return renamed?.originalUri
}

function nameOf(uri: vscode.Uri): string {
  return vscode.workspace.asRelativePath(uri, false)
}
