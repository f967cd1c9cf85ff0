/**
 * The look of a sheet: black on white whatever the theme, since it is paper; sizes in points, so that it is as large on
 * A4 as on Letter. The room for notes takes what the page has left, and no less than a few lines.
 */
export const sheetStyle = `@page { margin: 11mm 12mm; }
* { box-sizing: border-box; margin: 0; padding: 0; }
html { background: #fff; color: #000; color-scheme: light; }
body, main { display: flex; flex-direction: column; gap: 0.4em; }
main { flex: 1 0 auto; }
body { max-width: 186mm; margin: 0 auto; padding: 8mm 0; font: 10pt/1.25 "Helvetica Neue", Arial, "Liberation Sans", sans-serif; }
body.large { font-size: 12pt; }
body.medium { font-size: 10.5pt; }
body.small { font-size: 9.5pt; }
body.tiny { font-size: 8.5pt; }
header { display: flex; justify-content: space-between; gap: 2em; border-bottom: 2pt solid; padding-bottom: 0.3em; }
header .state { text-align: right; }
h1, .entry { font-size: 1.7em; font-weight: bold; line-height: 1.15; overflow-wrap: anywhere; }
h2 { font-size: 1em; border-bottom: 0.5pt solid; margin-bottom: 0.15em; }
table { width: 100%; border-collapse: collapse; }
th, td { text-align: left; vertical-align: top; padding: 0.1em 0.8em 0.1em 0; border-bottom: 0.5pt solid #999; overflow-wrap: anywhere; }
thead th { font-size: 0.85em; border-bottom: 0.5pt solid; }
tr { break-inside: avoid; }
.group th { padding-top: 0.2em; border-bottom: 0.5pt solid; text-transform: uppercase; font-size: 0.85em; letter-spacing: 0.05em; }
.positions { table-layout: fixed; }
.positions th:nth-child(1) { width: 27%; }
.positions th:nth-child(2) { width: 26%; }
td b { font-size: 1.25em; line-height: 1.1; }
td:last-child { font-size: 0.95em; }
td span { white-space: nowrap; }
.uneven { border-left: 3pt solid #000; padding-left: 0.4em; }
small { display: block; font-size: 0.85em; font-weight: normal; }
.measures { columns: 3; column-gap: 1.5em; }
.measures section { break-inside: avoid; padding-bottom: 0.2em; }
dl { display: grid; grid-template-columns: auto 1fr; column-gap: 0.8em; }
dd { text-align: right; font-weight: bold; white-space: nowrap; }
ul { padding-left: 1.4em; }
li { break-inside: avoid; }
.watch { border: 1.5pt solid; padding: 0.15em 0.6em; break-inside: avoid; }
.watch h2 { border: 0; }
.said { white-space: pre-line; overflow-wrap: anywhere; }
.hand { display: flex; flex-direction: column; flex: 1 0 auto; break-inside: avoid; }
.space { flex: 1 0 2.8em; }
.sign { display: flex; gap: 1.5em; }
.sign span { flex: 1; border-top: 0.5pt solid; font-size: 0.85em; }
footer { font-size: 0.8em; break-inside: avoid; }
footer ul { columns: 3; column-gap: 2em; }
@media print {
  body { max-width: none; padding: 0; min-height: 99vh; }
}`
