/** A notebook that is bundled as its text. */
declare module '*.yaml' {
  const text: string
  export default text
}
