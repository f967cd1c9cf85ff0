/**
 * On a system without a locale Chromium calls its language `en-US@posix`, which is no language tag, and the chart library
 * throws as soon as it is loaded: it makes a number format of it, which we never use. To be imported before the library.
 */
try {
  Intl.getCanonicalLocales(navigator.language)
} catch {
  Object.defineProperty(navigator, 'language', { value: 'en-US', configurable: true })
}

export {}
