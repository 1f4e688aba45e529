### What the command line says of itself: descriptions of commands and options, and what is wrong with a command line.

program = Turns the readings of a commissioning job into a judged, traced record.

check = Checks job files and prints the outcome; writes nothing.

# $formats (list) - kinds of files
render = Checks job files and writes their records: { $formats }.
explain = Explains a check: what it asks, formula, source, limits by pack, what to do when it fails.
limits = Lists the limit packs, or shows one: every figure with its source and mark.
refrigerants = Lists the refrigerants, or shows one: identity, safety group, GWP, pressures, papers.
properties = Shows a refrigerant at a pressure and a temperature: phase, superheat or subcooling, density, enthalpy.

jobs = Job files.
shop = Folder shared by jobs: kit files and limit packs.
as-of = The moment the record speaks for (ISO 8601); without it SOURCE_DATE_EPOCH, else the day of the job.
language = Language of what is printed and written. Without it a record follows its job, and the terminal LC_MESSAGES or LANG.
units = us or si.
elevation = Elevation of the site, for gauge pressures; without it sea level.
out = Folder for the record's files; made when it is missing.

# $formats (list) - kinds of files
format = What to write: { $formats }, separated by commas.
template = Folder with a template of your own (record.liquid).
annex = Annex of the PDF: short, or full with the way to every number (JSON and HTML always have it).
keep-location = Leave in the photos of the record what the camera wrote beside them, the place among it.
explain-check = A check, such as charge.superheat; without one, all are listed.
explain-job = A job file: its numbers are shown step by step.
monte-carlo = Trials of a Monte Carlo run beside the linear result.
limits-pack = A limits pack, such as common-practice.
refrigerant-name = A refrigerant, such as R-454B, R410A or propane.
refrigerant = A refrigerant.

# $example (name) - a state as it is written
state = Pressure and temperature, with a comma between: "{ $example }".

help = commission --help shows what can be written.

# $kind (name) - the kind of fault
# $fault (text) - what the program said
our-fault = commission: a fault of this program, not of your file ({ $kind }: { $fault }). Please report it with the job file and this line; set COMMISSION_TRACE=1 to see where it happened.

# $text (text) - what was written
not-a-time = --as-of: "{ $text }" is not a time. Write 2026-06-18 or 2026-06-18T16:30:00-06:00.

# $option (text) - what was written
no-option = There is no option { $option }. commission --help lists them; ./{ $option } names a file.

# $text (text) - what was written
no-units = --units: there is no "{ $text }". Write us or si.

# $text (text) - what was written
# $languages (list) - codes
no-language = --language: nothing is written in "{ $text }". Write { $languages }.

# $option (name) - the option
# $fault (text) - what is wrong with its value
option-fault = { $option }: { $fault }

# $text (text) - what was written
# $formats (list) - kinds of files
no-format = --format: there is no format "{ $text }". Write { $formats }, or several of them with commas.

trials-range = --monte-carlo: write a number of trials from 2 to 10000000.

# $text (text) - what was written
no-check = There is no check "{ $text }". commission explain lists them.

# $text (text) - what was written
# $near (name) - what may be meant
no-check-but = There is no check "{ $text }". Did you mean { $near }? commission explain lists them.

# $text (text) - what was written
no-pack = There is no limits pack "{ $text }". commission limits lists them.

# $text (text) - what was written
# $near (name) - what may be meant
no-pack-but = There is no limits pack "{ $text }". Did you mean { $near }? commission limits lists them.

# $text (text) - what was written
no-refrigerant = There is no refrigerant "{ $text }". commission refrigerants lists them.

# $text (text) - what was written
# $near (name) - what may be meant
no-refrigerant-but = There is no refrigerant "{ $text }". Did you mean { $near }? commission refrigerants lists them.

# $text (text) - what was written
# $example (name) - a state as it is written
one-quantity = --at: "{ $text }" is one quantity. Write a pressure and a temperature with a comma between: "{ $example }".

# $paths (list) - the job files
# $id (text) - their id
same-id = { $paths }: all of them are job "{ $id }", and their records would overwrite each other. Give each job an id of its own.

# $path (text) - the file
# $size (count) - its size in kilobytes
wrote = wrote { $path } ({ $size } kB)

# $path (text) - the folder
# $example (name) - a job file in it
is-folder = { $path }: is a folder. Name the job file in it, such as { $example }.

# $path (text) - the file
no-file = { $path }: there is no such file.

# $path (text) - the folder
no-shop = --shop { $path }: there is no such folder.

# $text (text) - what was written
not-an-epoch = SOURCE_DATE_EPOCH: "{ $text }" is not a time. Whole seconds since 1970 are expected, such as 1781784000; unset it, or state the moment with --as-of.

# $path (text) - the folder
no-template-folder = --template { $path }: there is no such folder.

# $path (text) - the folder
# $name (name) - name of a template
no-template = --template { $path }: there is no .liquid file in it. A template is named { $name }; its parts lie in parts/.

# $file (text) - the photo
photo-changed = { $file }: the photo was changed while its record was made.

attached-record = The record as data
attached-job = The job file as read
attached-log = A log of the job
attached-kit = The kit file as read
attached-pack = A limits pack as read
