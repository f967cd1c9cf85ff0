import { say } from '../words/say'
import type { NotebookRule } from './rule'

export const acceptedWithoutReason: NotebookRule = {
  code: 'accepted-without-reason',
  severity: 'warning',
  says: 'A finding is accepted without a reason, so it is reported all the same.',
  why: 'Whoever reads this next must be able to judge whether the reason still holds.',
  checkNotebook: ({ accepted }) =>
    accepted.filter(({ reason }) => reason === undefined).map(({ finding, range }) => ({ message: say`say why ‘${finding}’ is accepted, with \`reason:\``, range })),
}
