/** The program of `../assembly/plainRows.ts`, compiled to WebAssembly by `node build.mjs --generate`. */
declare const program: Uint8Array
export = program
