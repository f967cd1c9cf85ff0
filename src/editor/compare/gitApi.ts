import type * as vscode from 'vscode'

/** What we use of the interface that the editor's own git extension offers to others, version 1. */
export interface GitExtension {
  readonly enabled: boolean
  getAPI(version: 1): GitApi
}

export interface GitApi {
  readonly state: 'uninitialized' | 'initialized'
  readonly onDidChangeState: vscode.Event<unknown>
  toGitUri(uri: vscode.Uri, ref: string): vscode.Uri
  getRepository(uri: vscode.Uri): Repository | null
  openRepository(folder: vscode.Uri): Promise<Repository | null>
}

export interface Repository {
  readonly rootUri: vscode.Uri
  readonly state: { readonly onDidChange: vscode.Event<void> }
  show(ref: string, path: string): Promise<string>
  getCommit(ref: string): Promise<Commit>
  getRefs(query: object): Promise<Ref[]>
  log(options: { maxEntries: number; path: string }): Promise<Commit[]>
  diffWith(ref: string): Promise<Change[]>
}

export interface Commit {
  readonly hash: string
  readonly message: string
  readonly authorDate?: Date
  readonly authorName?: string
}

export interface Ref {
  readonly type: RefType
  readonly name?: string
}

export interface Change {
  readonly originalUri: vscode.Uri
  readonly renameUri?: vscode.Uri
}

/** As the extension numbers them. */
export const refTypes = { head: 0, remoteHead: 1, tag: 2 } as const
export type RefType = (typeof refTypes)[keyof typeof refTypes]
