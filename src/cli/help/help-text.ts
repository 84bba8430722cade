/** Text that follows the lists of commands and options in the help. */

/** What every help ends with. */
export const caution = `An estimate for review by the engineer of record, who alone decides. The
manufacturer's manual and the local code govern. Support the pipe, lock out and
drain before anything is taken out.`;

const statuses = `Exit status:
  0   everything that could be judged meets its limit
  1   something exceeds its limit
  2   the input or the arguments cannot be used
  3   something could not be read or written
  4   nothing exceeds, but something cannot be told
  70  a fault of the program
  Over several files the first of 70, 3, 2, 1, 4, 0 that occurs.`;

export const helpText = {
  program: `
Examples:
  pipeborne new                         a file to begin with, by a few questions
  pipeborne check pump.yaml             the verdict and the worst findings
  pipeborne review pump.yaml            writes pump-review.pdf
  pipeborne advise pump.yaml            the smallest changes that make it meet
  pipeborne field-sheet pump.yaml       writes pump-field-sheet.pdf, to fill in
  pipeborne schema > pipeborne.json     for an editor that completes as you type

${statuses}

${caution}`,
  new: `
Tables give what they can: pipe, fittings, valves, spans, rods. What was neither
answered nor found is assumed, marked so in the file and listed at the end. A
file that is there is never overwritten; leaving with Ctrl-C leaves nothing.
Without a terminal every answer that is needed must be given as an option.
A word in brackets names the arrangements an answer belongs to.

Examples:
  pipeborne new
  pipeborne new hwp-1.yaml --units us --arrangement elbows
  pipeborne new hwp-2.yaml --units si --arrangement header --mark HWP-2 \\
    --service heating --pressure "1000 kPa" --flow "40 m3/h" --head "18 m" \\
    --size "DN 100" --casing-weight "95 kg" --motor-power "4 kW" \\
    --motor-top "800 mm" --faces "500 mm" --pump-height "2 m" --ceiling "3.5 m" \\
    --facing south --turn east --suction-run "4 m" --discharge-run "5 m" \\
    --leg "2.5 m"

Exit status:
  0   the file is written
  2   an answer is missing or cannot be used
  3   the file is there already or could not be written
  70  a fault of the program

${caution}`,
  review: `
A FILE is YAML or JSON, one pump each; - is standard input. A folder stands for
the files in and below it that say "format: pipeborne/1", a pattern in quotes
for the files it matches. Without -o the review is written to the current folder
as <name>-review.pdf. With several FILEs, -o, --results and --html name folders,
in which the folders below a folder are kept; they are shared out over threads,
each is told in one line, and one that fails does not stop the others.

Examples:
  pipeborne review pump.yaml
  pipeborne review pump.yaml -o submittal.pdf --results submittal.json
  pipeborne review plant/ -o reviews/ --for contractor
  pipeborne review pump.yaml --templates our-letterhead/ --page a4

Sensitivity of results is worked out by solving the installation again with
each weight, spring and end at the limits of how it is known; --no-bands leaves
it out, for a review in two thirds of the time.

A template folder replaces the shipped templates of the same names, and may
hold a letterhead: see pipeborne templates --help. Nothing outside it is read.

The same input gives the same bytes: the date printed is
the input's.

${statuses}

${caution}`,
  check: `
A FILE is YAML or JSON, one pump each; - is standard input. A folder stands for
the files in and below it that say "format: pipeborne/1", a pattern in quotes
for the files it matches. Nothing is written. Several FILEs are told in one line
each, with a summary. With --json one results object a FILE is printed, one a
line.

Examples:
  pipeborne check pump.yaml
  pipeborne check 'plant/*.yaml' --units si
  pipeborne check - < pump.yaml
  pipeborne check pump.yaml --json > results.json
  pipeborne check pump.yaml --watch

${statuses}

${caution}`,
  compare: `
OLD and NEW are inputs (YAML or JSON) or results written by review --results;
one of each will do, and then the inputs are not compared. Supports that were
moved or renamed are told as such; another unit is no change. What moved by
less than rounding is left out, and the limit for that is printed.

Examples:
  pipeborne compare pump-a.yaml pump-b.yaml
  pipeborne compare pump-a.json pump-b.yaml -o changes.pdf
  pipeborne compare pump-a.json pump-b.json --json

The exit status is that of NEW: a change for the worse shows as a review would
show it.

${statuses}

${caution}`,
  templates: `
A folder of templates is used with review --templates DIR. Each .hbs file in it
replaces the shipped one of its name; firm.yaml beside them has the letterhead
with its logo, headings, further cautions and the order of sections. What a
review is and is not, and what can hurt someone, stands in every review.

Examples:
  pipeborne templates
  pipeborne templates --copy our-templates/
  pipeborne templates --check our-templates/
  pipeborne review pump.yaml --templates our-templates/

Exit status: 0; 2 where a folder cannot be used, 3 where something cannot be
read or written.`,
  help: `
The reference of the input is read out of the schema that \`pipeborne schema\`
prints, and ships with the package as dist/input.txt.

Examples:
  pipeborne help check
  pipeborne help input
  pipeborne help input supports
  pipeborne help input pump.motor`,
  schedule: `
A FILE is as for check: a file, a folder, a pattern in quotes, or -. Loads are
those that come upon the structure, down and sideways; a remark says what
exceeds its limit. Numbers are numbers with their units in the heads. A workbook
has a second sheet with the rods by size; CSV has them below a blank line, and a
word a spreadsheet would take for a formula begins with an apostrophe. A file
that cannot be used does not keep the others out.

Examples:
  pipeborne schedule plant/ -o supports.xlsx
  pipeborne schedule plant/ -o supports.csv --units si
  pipeborne schedule pump.yaml

Exit status:
  0   the schedule holds every file
  2   a file or the arguments cannot be used
  3   something could not be read or written
  70  a fault of the program

${caution}`,
  schema: `
Examples:
  pipeborne schema > pipeborne.schema.json
  pipeborne schema --results > results.schema.json
  pipeborne schema --readings > readings.schema.json
  pipeborne schema --as-installed > as-installed.schema.json

A YAML file whose first line is
  # yaml-language-server: $schema=pipeborne.schema.json
is then completed and checked as you type, in editors that know this line.`,
} as const;
