import module from 'node:module'
import { isMainThread } from 'node:worker_threads'
import { quickAnswer } from './quickAnswer'

// Newer Nodes keep what they compiled for the next start; the types are of an older one.
const compiler = module as { enableCompileCache?: () => unknown }
compiler.enableCompileCache?.()

// What can be told at once is told without loading what does the work; the build keeps that in files of their own.
const args = process.argv.slice(2)
const answer = isMainThread ? quickAnswer(args) : undefined
if (!isMainThread) void import('./threads')
else if (answer === undefined) void import('./program').then(({ program }) => program(args, __filename))
else process.stdout.write(answer)
