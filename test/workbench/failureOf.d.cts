import type { Hook, Test } from 'mocha'

declare function failureOf(failed: Test | Hook, error: Error): { title: string; group?: true; message: string }
export = failureOf
