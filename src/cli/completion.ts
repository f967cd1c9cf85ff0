import { architectures } from '../core/adjusters/architectures'
import { bashCompletion } from './completion/bash'
import { commandSpecs } from './completion/commandSpecs'
import { fishCompletion } from './completion/fish'
import { zshCompletion } from './completion/zsh'
import { UsageError, type Outcome } from './outcome'

const shells = { bash: bashCompletion, zsh: zshCompletion, fish: fishCompletion }

/** `detent completion`: a script for a shell, made of what the commands say of themselves. */
export function completion(args: readonly string[]): Outcome {
  const [shell = '', ...more] = args
  if (!Object.hasOwn(shells, shell) || more.length > 0) throw new UsageError(`name one shell: ${Object.keys(shells).join(', ')}`)
  const specs = commandSpecs({ KIND: architectures.map(({ key }) => key) })
  return { out: shells[shell as keyof typeof shells](specs), code: 0 }
}
