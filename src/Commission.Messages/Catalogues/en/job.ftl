### What is wrong with a job file and the files it names: shape, keys, words, values.

## Words in a row

# $word (name) - a key or a word of a job file
quoted = "{ $word }"

# $words (list) - keys or words of a job file
words = { $words }

# $words (list) - the first keys or words of a long row
# $more (count) - how many are left out
more-words = { $words } and { $more } more

# $names (list) - what may have been meant
did-you-mean = Did you mean { $names }?

## Files

no-such-file = There is no such file.

no-such-file-next = Check the name and the folder.

file-unreadable = The file cannot be read.

unreadable-next = Check who may read it.

# $file (text) - the file
named-file-unreadable = "{ $file }" cannot be read.

# $file (text) - the file
# $where (choice: job, shop) - whether there is a shop folder to look in, too
file-missing =
    { $where ->
        [shop] There is no file "{ $file }" in the job's folder or the shop folder.
       *[job] There is no file "{ $file }" in the job's folder.
    }

file-missing-next = Check the name; capitals count.

file-missing-shop-next = Check the name, or name the shop folder with --shop.

# $file (text) - the file
file-outside = "{ $file }" is a link that leads out of the job's folder.

file-outside-next = Copy the file into the job's folder.

# $file (text) - the file
# $size (number) - its size in megabytes
# $most (count) - the most megabytes that are read
file-too-large = "{ $file }" has { $size } MB; at most { $most } MB are read.

file-too-large-next = Thin the log or shrink the photo.

# $file (text) - what is written
# $fault (choice: empty, rooted, backslash, leaves, unfit) - why it is not read
file-name =
    { $fault ->
        [empty] "{ $file }" names no file.
        [rooted] "{ $file }" is a path from outside the job's folder.
        [backslash] "{ $file }" has a backslash; folders are separated by /.
        [leaves] "{ $file }" leaves the job's folder.
       *[unfit] "{ $file }" is not a file name.
    }

# $where (choice: job, shop) - whether there is a shop folder to put it in, too
file-name-next =
    { $where ->
        [shop] Put the file into the job's folder or the shop folder.
       *[job] Put the file beside the job file, or in a folder below it.
    }

not-a-job-file = This is not a job file.

not-a-job-file-expected = Keys are expected: commission, job, equipment and others.

# $file (text) - the job file
# $line (name) - its first line
not-a-job-file-next = Begin { $file } with { $line }.

not-a-kit-file = This is not a kit file.

not-a-kit-file-expected = Keys are expected: kit, people, instruments.

# $line (name) - the first line of a kit file
not-a-kit-file-next = Begin it with { $line }.

# $name (text) - the short name as written
not-in-kit = "{ $name }" is not an instrument of this kit.

# $names (message) - short names of its instruments
kit-instruments = Its instruments are { $names }.

kit-empty = The kit has no instruments.

## Keys

# $second (text) - the name that came second
# $first (text) - the name that came first
# $line (count) - the line of the first
two-names = "{ $second }" and "{ $first }" in line { $line } are two names for one thing.

merge-key = "<<" is not a key.

merge-key-next = Write the keys out; merging is not part of YAML 1.2.

# $key (text) - the key as written
not-a-key = "{ $key }" is not a key of a job file.

# $key (text) - the key as written
# $parent (text) - the key above it
not-a-key-of = "{ $key }" is not a key of "{ $parent }".

# $key (text) - the key
# $home (name) - the keys that lead to its place
belongs-under = "{ $key }" belongs under "{ $home }".

# $keys (message) - the keys that may stand here
keys-here = Keys here are { $keys }.

# $key (name) - the key that is missing
file-lacks-key = The file does not say "{ $key }".

# $key (name) - the key that is missing
# $parent (text) - the key above it
lacks-key = "{ $parent }" does not say "{ $key }".

# $key (name) - the key that is missing
lacks-key-next = Write { $key }: and what belongs to it.

## Shapes and words

# $key (text) - the key
no-value = "{ $key }" has no value.

# $example (name) - key and value as a job file has them
no-value-like = Write it, such as { $example }, or delete the line.

no-value-next = Write it, or delete the line.

# $key (text) - the key
holds-keys = "{ $key }" holds keys.

# $key (text) - the key
is-list = "{ $key }" is a list.

# $key (text) - the key
empty-list = "{ $key }" is an empty list.

empty-list-next = Write its items, or delete the line.

# $key (text) - the key
# $written (text) - what is written
value-is = "{ $key }" is "{ $written }".

# $key (text) - the key
# $written (text) - what stands in quotes
value-is-text = "{ $key }" is "{ $written }", a text.

# $value (name) - the number
value-is-text-next = Write { $value } without quotes.

# $keys (message) - the keys that may stand here
these-keys-expected = Keys are expected: { $keys }.

list-next = Begin each item with a dash on a line of its own.

# $version (name) - the version
version-expected = This program reads version { $version }.

# $key (text) - the key
# $version (name) - the version
version-next = Write { $key }: { $version }.

# $written (text) - what is written
yes-or-no = "{ $written }" is read as yes or no.

yes-or-no-next = Put it in quotes if it is text.

write-yes-or-no = Write yes or no.

# $written (text) - what is written
# $key (text) - the key
unknown-word = "{ $written }" is not known for "{ $key }".

# $words (message) - the words that may stand here
words-are = The words are { $words }.

# $words (message) - the words that may stand here
word-expected = One word is expected: { $words }.

# $kind (choice: keys, list, date, time, zone, period, accuracy, unit, refrigerant, name, file, quantity, yes-no, whole, number, text) - what a key holds
expected =
    { $kind ->
        [keys] Keys are expected.
        [list] A list is expected.
        [date] A date is expected.
        [time] A time is expected.
        [zone] A time zone is expected.
        [period] A span such as 12 months is expected.
        [accuracy] An accuracy is expected.
        [unit] A unit is expected.
        [refrigerant] A refrigerant is expected.
        [name] A short name is expected.
        [file] A file is expected.
        [quantity] A number with its unit is expected.
        [yes-no] yes or no is expected.
        [whole] A whole number is expected.
        [number] A number is expected.
       *[text] Text is expected.
    }

## Texts and names

# $key (text) - the key
empty-text = "{ $key }" is empty.

# $key (text) - the key
# $count (count) - characters written
long-text = "{ $key }" has { $count } characters.

# $most (count) - the most characters
long-text-expected = At most { $most } fit into a record.

long-text-next = Shorten it.

# $most (count) - the most characters
long-name-expected = A name of at most { $most } is expected.

long-name-next = Shorten it; a longer story belongs in the notes.

# $key (text) - the key
# $code (name) - code point of the character, such as U+0007
unprintable = "{ $key }" holds a character that cannot be printed ({ $code }).

unprintable-next = Delete it, or the backslash that makes it.

# $key (text) - the key
# $code (name) - code point of the character
turning = "{ $key }" holds a character that turns the direction of what is read ({ $code }).

turning-next = Delete it: what is read has to be what is written.

# $key (text) - the key
shapeless = Nothing of "{ $key }" can be seen: it is written in characters without a shape.

shapeless-next = Write it in letters, or delete the line.

# $key (text) - the key
# $written (text) - what is written
# $sign (choice: line-break, tab, bar, unseen) - the character that does not fit
unfit-name =
    { $sign ->
        [line-break] "{ $key }" "{ $written }" holds a line break.
        [tab] "{ $key }" "{ $written }" holds a tab.
        [bar] "{ $key }" "{ $written }" holds |, which separates the parts of the record's code.
       *[unseen] "{ $key }" "{ $written }" holds a character that cannot be seen.
    }

unfit-name-expected = A name on one line is expected.

unfit-name-next = Write it with letters, digits, spaces, - _ . / only.

# $written (text) - what is written
unknown-refrigerant = "{ $written }" is not a refrigerant this program knows.

unknown-refrigerant-next = Write its designation, such as R-410A.

# $written (text) - what is written
not-a-unit = "{ $written }" is not a unit.

# $units (list) - symbols of units
not-a-unit-next = Write it as the gauge does, such as { $units }.

# $written (text) - what is written
not-a-zone = "{ $written }" is not a time zone.

not-a-zone-next = Write a name such as America/Denver, or an offset such as -07:00.

## Numbers and quantities

# $key (text) - the key
# $value (symbols) - the value
cannot-be = "{ $key }" cannot be { $value }.

# $low (symbols) - the least
# $high (symbols) - the most
between = It lies between { $low } and { $high }.

number-next = Check the number.

exponent = No reading has such an exponent.

# $written (text) - what is written
other-digits = "{ $written }" has digits of another script.

other-digits-next = Write the digits 0 to 9.

# $key (text) - the key
# $count (count) - digits written
many-digits = "{ $key }" has a number of { $count } digits.

# $most (count) - the most digits
many-digits-expected = No instrument shows more than { $most }.

# $written (text) - what is written
accuracy-cannot-be = "{ $written }" cannot be an accuracy.

accuracy-expected = It is more than nothing and less than the readings themselves.

accuracy-next = Write what the maker states, such as 0.5 % of full scale.

units-next = Or write units: us at the top, which gives every bare number its unit.

# $key (text) - the key
# $value (symbols) - the value with what stands behind ±
doubt-cannot-be = "{ $key }" cannot be known like this: { $value }.

doubt-expected = What stands behind ± is more than nothing and less than the whole range, with k from 0.5 to 10.

doubt-next = Check it, or leave it out.

## Dates and times

# $written (text) - what is written
not-a-date = "{ $written }" is not a date.

# $written (text) - what is written
no-such-date = "{ $written }" is not a date of the calendar.

date-next = Write year-month-day, such as 2026-06-18.

# $year (name) - the year
year = The year { $year } cannot be right.

year-next = Check the date.

# $written (text) - what is written
not-a-time = "{ $written }" is not a time.

not-a-time-next = Write "10:42", "10:42:30", 10:42 AM, 2026-06-18 10:42, or 12 min for time since the start.

# $time (name) - the time with a colon
colon-next = Write "{ $time }", with a colon.

# $span (name) - a time since the start
bare-time-next = Write a clock time such as "10:42", or { $span } for time since the start.

# $time (symbols) - a time since the start
elapsed-cannot-be = A time of { $time } since the start cannot be.

# $written (text) - what is written
not-a-time-of-day = "{ $written }" is not a time of day.

twelve-hours-expected = With AM or PM the hours run from 1 to 12.

# $time (name) - the time without its half of the day
# $half (name) - AM or PM as written
twelve-hours-next = Write { $time } without { $half }, or the hour of a twelve-hour clock.

hours-expected = Hours run from 0 to 23, minutes and seconds to 59.

midnight-next = Write midnight as 00:00 of the next day, with its date.

elapsed-next = Write time since the start with its unit, such as 90 min.

# $written (text) - what is written
not-a-period = "{ $written }" is not a span of the calendar.

not-a-period-next = Write it like 12 months, 1 year, 6 weeks or 90 days.

# $time (symbols) - a time since the start
no-start = { $time } counts from a start that is not written.

# $key (name) - the key that says when the phase started
# $phase (name) - the key of the phase
no-start-next = Write { $key }: under { $phase }, or a clock time here.

# $time (symbols) - the time
skipped-time = { $time } does not exist on that day: the clock was put forward over it.

skipped-time-next = Check the time and the zone.
