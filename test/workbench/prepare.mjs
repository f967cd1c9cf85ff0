// What npm runs where it installs from a repository, as the pre-commit framework has it do: there must be something to
// install. Asked to install for all users, npm prepares the repository without the packages that a build needs.
import { ensureDependencies, root } from './install.mjs'

// Else npm would hand what it was asked itself to the npm that it starts here, and that one install for all users too.
for (const name of Object.keys(process.env)) if (/^npm_config_/i.test(name)) delete process.env[name]
process.chdir(root)
ensureDependencies()
await import('../../build.mjs')
