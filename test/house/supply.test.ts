import assert from 'node:assert/strict'
import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import Ajv from 'ajv'

interface Shipped { name: string; version: string; license: string }
interface Bill { components: { name: string; purl: string; hashes: { alg: string; content: string }[] }[]; metadata: { component: { name: string; description: string } } }
interface Supply { bundledPackages: (inputs: Iterable<string>) => Shipped[]; noticesOf: (packages: Shipped[]) => string; billOf: (packages: Shipped[]) => Bill }

const supplied = import('../release/supply.mjs' as string) as Promise<Supply>
const inputs = ['src/core/index.ts', 'node_modules/yaml/dist/index.js', 'node_modules/uplot/dist/uPlot.esm.js', 'node_modules/uplot/dist/uPlot.min.css', 'node_modules/@microsoft/fast-element/dist/esm/index.js', 'node_modules/d3-shape/src/index.js', 'node_modules/hyparquet/src/read.js']

/** The schema that the standard’s own library carries, with the two it refers to. */
function validator() {
  const folder = `${createRequire(import.meta.url).resolve('@cyclonedx/cyclonedx-library/package.json').replace(/package\.json$/, '')}res/schema/`
  const schema = (name: string) => JSON.parse(readFileSync(`${folder}${name}.SNAPSHOT.schema.json`, 'utf8')) as object
  const ajv = new Ajv({ strict: false, validateFormats: false, allErrors: true })
  // They are referred to by the names of their files there, which are not their own.
  for (const name of ['spdx', 'jsf-0.82']) ajv.addSchema({ ...schema(name), $id: `http://cyclonedx.org/schema/${name}.SNAPSHOT.schema.json` })
  return ajv.compile(schema('bom-1.6'))
}

describe('what others wrote and is shipped', () => {
  it('is found by the files that went into a bundle, once each', async () => {
    const { bundledPackages } = await supplied
    assert.deepEqual(bundledPackages(inputs).map(({ name, license }) => `${name} ${license}`), ['@microsoft/fast-element MIT', 'd3-shape ISC', 'hyparquet MIT', 'uplot MIT', 'yaml ISC'])
    assert.throws(() => bundledPackages(['node_modules/none-such/index.js']))
  })

  it('is listed with the text of its licence', async () => {
    const { bundledPackages, noticesOf } = await supplied
    const notices = noticesOf(bundledPackages(inputs))
    assert.match(notices, /yaml 2\.\d+\.\d+ \(ISC\)\n\nCopyright Eemeli Aro/)
    assert.match(notices, /@microsoft\/fast-element .*\(MIT\)\n\nCopyright \(c\) Microsoft[^]*Permission is hereby granted/)
    assert.throws(() => noticesOf([{ ...bundledPackages(inputs)[0]!, license: 'BSD-3-Clause' }]), /carries no text of its licence/)
  })

  it('stands in a bill of materials that CycloneDX 1.6 takes', async () => {
    const { bundledPackages, billOf } = await supplied
    const bill = billOf(bundledPackages(inputs))
    const validate = validator()
    assert.ok(validate(bill), JSON.stringify(validate.errors?.slice(0, 3)))
    assert.ok(!validate({ ...bill, specVersion: 2 }), 'the schema refuses what is wrong')
    assert.deepEqual(bill.components.map(({ name }) => name), ['@microsoft/fast-element', 'd3-shape', 'hyparquet', 'uplot', 'yaml'])
    assert.match(bill.components[0]!.purl, /^pkg:npm\/%40microsoft\/fast-element@\d/)
    for (const { hashes } of bill.components) assert.match(`${hashes[0]!.alg} ${hashes[0]!.content}`, /^SHA-512 [0-9a-f]{128}$/)
    assert.doesNotMatch(bill.metadata.component.description, /%/)
  })

  it('is held at exact versions', () => {
    const { dependencies = {}, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<string, Record<string, string>>
    assert.deepEqual(Object.entries({ ...dependencies, ...devDependencies }).filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version!)), [])
    const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { packages: Record<string, { resolved?: string; integrity?: string; link?: boolean }> }
    assert.deepEqual(Object.entries(lock.packages).filter(([path, { integrity, resolved, link }]) => path !== '' && !link && (integrity === undefined || resolved !== undefined)).map(([path]) => path), [])
  })
})
