import module from 'node:module'
import { isMainThread, workerData } from 'node:worker_threads'
import { earlyThread } from './earlyThread'
import { quickAnswer } from './quickAnswer'
import { wantsHelp } from './toldOrThrown'

// Newer Nodes keep what they compiled for the next start; the types are of an older one.
const compiler = module as { enableCompileCache?: () => unknown }
compiler.enableCompileCache?.()

// What can be told at once is told without loading what does the work; the build keeps that in files of their own.
function main(args: readonly string[]): unknown {
  const answer = quickAnswer(args)
  if (answer !== undefined) return process.stdout.write(answer)
  if (args[0] === 'check' && !wantsHelp(args)) return import('./checkProgram').then(({ checkProgram }) => checkProgram(args.slice(1), __filename))
  const thread = wantsHelp(args) ? undefined : earlyThread(args, __filename)
  return import('./program').then(({ program }) => program(args, __filename, thread))
}

function thread(): unknown {
  return (workerData as { checks?: unknown } | null)?.checks ? import('./checkProgram').then(({ serve }) => serve()) : import('./threads')
}

void (isMainThread ? main(process.argv.slice(2)) : thread())
