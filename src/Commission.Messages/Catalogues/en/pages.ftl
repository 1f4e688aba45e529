### Headings, labels and sentences of the pages themselves. Templates name them: {"{{"} 'failed' | say {"}}"}.

## The document

# $id (name) - the job's id
record-title = Commissioning record { $id }

# $site (name) - name of the site
record-head = Commissioning record · { $site }

# $number (count) - 2 for the first correction
revision-short = revision { $number }

# $page (count) - number of the page
# $pages (count) - how many there are
page-of = page { $page } of { $pages }

# $digest (name) - the first digits of the digest
# $program (name) - program and version
seal = digest { $digest } · { $program }
contents = Contents
skip = Skip to the record
go-there = Go there
read-figure = Read the values of this figure
read-idle = not begun
read-point = Point or slide to read values
unfold-all = Unfold all traces
fold-all = Fold all traces
copy = Copy
copied = Copied
back-to-check = ↑ back to the check
caution = Caution

# $id (name) - the job's id
foot-job = Job { $id }

# $day (name) - the moment the record speaks for
foot-as-of = as of { $day }

## Page 1

# $outcome (name) - the outcome
qr-alt = QR code with the job, its outcome ({ $outcome }) and the digest of the record

# $day (name) - day of issue
# $by (name) - who issues it
issued-by = Issued { $day } by { $by }

# $day (name) - day of issue
issued = Issued { $day }

# $number (name) - its number
company-certificate = certificate { $number }

# $number (count) - 2 for the first correction
# $replaces (name) - digest of the record that is replaced
# $reason (text) - why
revision = Revision { $number }, replaces the record { $replaces }: { $reason }
logo-alt = The sign of the company
diagnosis = Diagnosis
do-first = Do first
worth-a-look = Worth a look
# The number of a page follows.
steps-after-it = The steps after it: page
failed = Failed
measured = Measured
limit = Limit
verdict = Verdict
page = Page
# The number of a page follows.
on-page = page

# $more (count) - how many more there are; the number of a page follows
more-failed = And { $more } more that failed, page
missing = Missing

# $more (count) - how many more there are; the number of a page follows
more-missing = And { $more } more, page
work-in-figures = The work in figures

# $more (count) - how many more there are; the number of a page follows
more-units =
    { $more ->
        [one] And one more unit, page
       *[other] And { $more } more units, page
    }
for-owner = For the owner

# $number (name) - licence or certificate number
licence = licence { $number }
# The person who signs writes it.
date-to-write = Date:

# $role (text) - in what role
# $name (text) - who, or nothing
# $statement (text) - what is attested
sign-here = Signature, { $role } { $name }: { $statement }
where-test = Test
where-evacuation = evacuation
where-charge = charge
where-machine = machine
where-instruments = instruments
where-owner = cautions
where-sources = sources
decision-rule = Decision rule: a value passes when it lies inside its limit; one that lies nearer to it than its uncertainty is marked (✓). Results hold for this unit on this day.

## The work

pressure-test = Pressure test
evacuation = Evacuation
charge = Charge
air = Air
machine = Machine, wiring, piping, safety
compressor = Compressor
electrical = Electrical
piping = Piping
safety = Safety
refrigerant = Refrigerant and label
functional = Function
asked-and-not-written = Nothing is written, and this work asks for it.
not-part = Not part of this visit.
number = No.
check = Check
on-limit = On its limit
next = Next:
not-judged = Not judged.
as-before = as before.
what-and-who = What was worked on, and by whom
notes = Notes
still-to-be-done = Still to be done
passed-here = Passed:

## Instruments, photos, evidence

instruments = Instruments
none-named = none is named
instrument = Instrument
stated = Stated
calibrated = Calibrated
field-checks = Field checks and corrections
not-calibrated = not calibrated

# $number (name) - number of a certificate of calibration
certificate-number = certificate { $number }

# $step (name) - resolution as stated
resolution-step = step { $step }
overdue = overdue

# $what (text) - the corrections
corrected = Corrected: { $what }.
photos = Photos

# $hash (name) - the first digits of a hash
hash-begins = SHA-256 { $hash }…
worth-relying-on = Is this record worth relying on?

## Owner, sources

cautions = Cautions
sources-heading = Sources, uncertainty, files
limit-codes = Behind a limit: M the maker, P a named pack, C common practice (without a number: no document), J the job. * Not checked against the document.
near-limit = Uncertainty of what lies near its limit.
also-written = What else the crew wrote.
files-and-digest = Files and digest.

# $size (name) - length in bytes, as printed
# $hash (name) - the first digits of its hash
file-size = { $size } bytes, SHA-256 { $hash }…

# $digest (name) - the digest of the record
digest-of-record = Digest of this record (SHA-256 over its canonical JSON, RFC 8785): { $digest }.

# $program (name) - program and version
# $day (name) - the moment the record speaks for
made-by = { $program }, as of { $day }.
attached = The job file, its logs up to 1 MB and the record as JSON, which holds every hash in full, are attached to the PDF. End of record.

## The way to every number

numbers = How each number was reached
no-number = no number was computed
numbers-note = Each entry has the number of its check; a number in brackets is the entry where the same step or reading stands in full. Readings stand with the file, line and column where the crew wrote them. u is a standard uncertainty; shares are of the variance. Those below 0.5 % are in the attached data.

# $ratio (name) - the ratio as printed
tolerance-over-u = tolerance over U { $ratio }
worked-out-before = Worked out before:
uncertainty = Uncertainty:

# $u (name) - standard uncertainty as printed
# $distribution (text) - the distribution
# $sensitivity (name) - the sensitivity as printed
budget-line = u { $u }, { $distribution }, sensitivity { $sensitivity }
readings = Readings:

# $instrument (name) - the crew's name for it
by-instrument = by { $instrument }
as-written = As written:
no-reading = No reading was used.
limits = Limits in force
none-applied = none was applied
what = What
basis = Basis
source = Source
decision = Decision
constants = Constants, formulas and equations of state
none-used = none was used
for-what = For
value-or-range = Value or range
known = Known
files = Files by their whole hash
file = File
bytes = Bytes
hash = SHA-256

# What a viewer of PDF shows as the subject of the document.
# $work (text) - what was done
# $site (text) - where
# $outcome (message) - the outcome of the job
subject = { $work }, { $site }: { $outcome }
