import { say } from '../core/words/say'

/** Why a file could not be read or written, in words for the person. */
export function why(error: unknown): string {
  const code = (error as { code?: string }).code
  if (code === 'ENOENT') return say('there is no such file or folder')
  if (code === 'EACCES') return say('this may not be read')
  if (code === 'EEXIST') return say('this file is there already, and is left as it is')
  if (code === 'ERR_ENCODING_INVALID_ENCODED_DATA') return say('this is no text in UTF-8')
  if (code === 'EISDIR') return say('this is a folder')
  return error instanceof Error ? error.message : String(error)
}
