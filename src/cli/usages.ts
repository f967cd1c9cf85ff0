/**
 * What each command prints on `--help`: the first line is how it is called, in a notation that completion reads too. The
 * texts stand apart from what they are about, so that a look at them loads none of it.
 */
export const usages: Readonly<Record<string, string>> = {
  check: `detent check PATHS… [--format text|json|github|sarif] [--fail-on error|warning|info|never] [--no-logs]

Runs the rules over notebooks. A folder stands for every *.setup.yaml and *.setup.yml below it, - for standard input.
Logs that entries name are read where they lie beside the notebook, unless --no-logs says otherwise.
github puts each finding beside its line in a pull request; sarif is SARIF 2.1.0, with the fixes that findings carry.
Exit code: 0 clean, 1 a finding at or above --fail-on (default: error), 2 usage or unreadable input.`,

  show: `detent show FILE [--entry ID | --all] [--format text|html] [--or-text]

Prints the state the machine is in after an entry (the last one, when none is named) as a table: where everything stands,
the sag measured, the reason. The same state is the same table, on any day and at any width. --all prints what the
notebook says of the machine and every entry, oldest first. --format html is the state as one page to print and hand
over, complete in itself. --or-text prints a text that does not parse as it is, with
its error above it, so that git can show either.`,

  compare: `detent compare A B [--format text|markdown|json] [--no-logs]

What differs from A to B: which adjuster, by how much, which way, what that does to sag and geometry, why it was done,
and what is found now that was not. A and B are FILE, FILE#ENTRY, REVISION:FILE or REVISION:FILE#ENTRY, the revision
being one of git; :FILE is what is staged, :2:FILE and :3:FILE are the sides of a conflict. An entry is named by its id
or its place, FILE##3.

Without an entry on either side, two versions of one notebook are reviewed: first what became of its entries, then each
new one against the one it comes from. Otherwise the last entry stands for a side that names none.
Logs that these entries name are read where they lie beside the notebook, as they are now, unless --no-logs says
otherwise. --format markdown is a summary to paste under a pull request.
Exit code: 0, whether anything differs or not; 2 on usage or where a side cannot be read.`,

  turns: `detent turns A B [--format text|json]

What to turn, in working order, to bring the machine from state A to state B: where, with what tool, which way as seen
from where one works, how far, and how to check where it ends. What cannot be reached by turning is said first. A and B
are named as for detent compare; without an entry the last one is meant.
Exit code: 0 when all of it can be turned, 1 when something cannot, 2 on usage or where a side cannot be read.`,

  new: `detent new FILE --from KIND [--name NAME] [--date YYYY-MM-DD]

Writes a new notebook for a kind of machine, with its adjusters and an as-found entry to type into.
A file that is there already is left alone. - writes to standard output. The kinds:`,

  export: `detent export FILE [--format json|csv]

Prints every entry with where everything stands and what follows from its measurements. Names carry their units, and
<name>_u is the standard uncertainty of <name>. A number that is not known is left out (json) or empty (csv).
Under derived: front and rear static_sag_mm, rider_sag_mm, static_sag_pct, rider_sag_pct, friction_mm,
wheel_rate_n_per_mm; geometry rake_deg, trail_mm, normal_trail_mm, wheelbase_mm; bounce front and rear damping_ratio,
damped_hz, natural_hz. Under ride: front_travel_used_mm, rear_travel_used_mm and log, the path of the ride's log.`,

  merge: `detent merge BASE OURS THEIRS [--stdout] [--marker-size N] [--ours NAME] [--theirs NAME] [--path FILE]

Merges two versions of a notebook that began from BASE, entry by entry and adjuster by adjuster, and writes the result
to OURS, as git asks of a merge driver; --stdout (-p) prints it and changes no file. What both set differently stands
between the usual marks, of the size and with the names given. --path is what to call the file in messages.
Exit code: 0 merged, 1 conflicts, 2 usage or unreadable input.`,

  advise: `detent advise FILE [--entry ID]

Names one next step for the state after an entry (the last one, when none is named), in the order in which the trade
works: legs alike, sag, springs, travel, rebound. With what in the notebook speaks for it, what to expect and what it
assumes; where the evidence is not there, what to measure. A starting point, never a promise.`,

  log: `detent log CSV [--notebook FILE] [--from S] [--to S | --lap N] [--format text|json|csv]

Statistics of a logger's file: dynamic sag, travel used, bottoming, velocities, damping from free decays, spectrum, front
against rear, attitude, braking, laps. Delimited text with commas, semicolons or tabs, packed (gzip) or not, or a Parquet
file; - reads standard input. Which column is what stands under machine.logger of the notebook; without one it is
proposed from the headings. Times are seconds since the first row. What was left out or mended is told, with its first line.
Exit code: 0, or 2 on usage or where the log cannot be made sense of.`,

  migrate: `detent migrate PATHS… [--write]

Says which notebooks are written in an older format; --write brings them to the format of today. Only what has another
name since is changed: comments, order and everything else stay as they are. Look at the changes in git before you commit.
Exit code: 0 all are of today's format, 1 some are not yet, 2 usage, or something must be put right by hand first.`,

  completion: `detent completion bash|zsh|fish

Prints what a shell needs to complete commands, options and their values. For bash: source <(detent completion bash);
for zsh: source <(detent completion zsh); for fish: detent completion fish | source.`,
}

/** What `detent --help` prints. */
export const usage = `detent: setup notebooks for motorcycle suspension

${Object.values(usages).map((text) => text.split('\n')[0]).join('\n')}

detent COMMAND --help tells more; detent --version tells which one this is.
Exit code: 0 well, 1 findings or what a command says, 2 usage or unreadable input, 3 a fault of this program.`
