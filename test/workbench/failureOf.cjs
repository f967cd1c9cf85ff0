/** What failed, as it is kept with the sums. Where it was a hook, the tests after it did not run either: then it is the whole group. */
module.exports = (failed, error) => ({
  title: failed.type === 'hook' ? failed.parent.fullTitle() : failed.fullTitle(),
  ...(failed.type === 'hook' ? { group: true } : {}),
  message: String(error.message ?? error),
})
