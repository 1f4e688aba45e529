### Why a CSV log cannot be read, and what to do.

# $file (text) - the file
no-rows = "{ $file }" holds no rows with a time and a reading.
no-rows-next = Name the columns with time column and value column, or the delimiter, if the log has another layout.

# $cell (text) - what is written
# $row (count) - its row
marked-cell = "{ $cell }" in row { $row }

# $file (text) - the file
# $comma (message) - a number with a comma, and where
# $point (message) - a number with a point, and where
two-marks = "{ $file }" has a decimal comma, { $comma }, and a decimal point, { $point }.

# $file (text) - the file
# $number (message) - the number, and where
either-mark = { $number } of "{ $file }" may be a decimal comma or a thousands mark.
state-decimal-next = State decimal: comma or decimal: point beside the file.

# $file (text) - the file
# $columns (message) - the headings
# $what (message) - what is looked for, with its article
no-value-column = "{ $file }" has the columns { $columns }; none of them fits. Looked for: { $what }.

# $file (text) - the file
# $columns (message) - the headings
several-value-columns = "{ $file }" has the columns { $columns }; more than one may be the reading.
value-column-next = State value column beside the file.

# $file (text) - the file
# $column (text) - the heading
# $what (message) - what is looked for, with its article
other-quantity = The column "{ $column }" of "{ $file }" holds something else. Looked for: { $what }.
other-quantity-next = State value column beside the file, the heading of the column that does.

# $units (message) - units to choose from
state-unit-next = State unit beside the file, such as { $units }.

# $units (message) - units to choose from
state-vacuum-unit-next = State unit beside the file, such as { $units }, if it counts from nothing; a depth below the atmosphere is no vacuum level.

# $file (text) - the file
# $column (text) - the heading
# $unit (name) - the unit it says
no-reference = The heading "{ $column }" of "{ $file }" says { $unit } and not whether that is gauge or absolute.

# $file (text) - the file
# $column (text) - the heading
unknown-unit = The heading "{ $column }" of "{ $file }" does not say a unit that is understood.

# $file (text) - the file
# $column (text) - the heading
no-unit = The heading "{ $column }" of "{ $file }" does not say the unit.

# $unit (text) - the unit as written
# $what (message) - what is read, with its article
not-a-unit = "{ $unit }" is not a unit for this: { $what }.

# $units (message) - units to choose from
write-unit-next = Write { $units }.

# $file (text) - the file
# $column (text) - the heading
# $written (name) - the unit the heading says
# $stated (name) - the unit the job says
other-unit = The heading "{ $column }" of "{ $file }" says { $written }, and the job { $stated }.
other-unit-next = Correct the unit, or leave it out where the heading is right.

# $file (text) - the file
# $column (text) - the column asked for
no-column = "{ $file }" has no column "{ $column }".

# $columns (message) - the headings
its-columns = Its columns are { $columns }.

# $first (count) - row where the quote opens
# $last (count) - row where it closes
swallowed = A quote in row { $first } opens a cell that ends in row { $last }: the rows between are lost.
swallowed-next = Delete the stray ", or write the cell in one line.

# $file (text) - the file
empty = "{ $file }" is empty.
empty-next = Check that the log was saved.

# $file (text) - the file
no-table = "{ $file }" is not a table of readings.
no-table-next = Export the log as CSV, one reading a line, and look for a stray ".

# $row (count) - the row
# $cells (count) - its cells
# $needed (count) - the cell of the reading
too-few-cells = Row { $row } has { $cells } cells, and the reading stands in cell { $needed }.
too-few-cells-next = Delete the row, or complete it.

# $row (count) - the row
# $cells (count) - its cells
# $headings (count) - cells with a heading
too-many-cells = Row { $row } has { $cells } cells, and { $headings } have a heading.
too-many-cells-next = Delete what is too much, or give it a heading.
decimal-commas-next = Where commas divide the cells, a decimal comma makes two of one: write points, or delete what is too much.

# $row (count) - the row
# $column (text) - the heading
# $cell (text) - what the cell holds
not-a-time = Row { $row }, column "{ $column }", holds "{ $cell }", which is not a time like those above.
not-a-time-next = Correct it, or delete the row.

# $row (count) - the row
# $column (text) - the heading
# $before (text) - the time before
# $time (text) - the time
goes-back = Row { $row }, column "{ $column }", goes back from { $before } to { $time }.
goes-back-next = Sort the rows by time, or cut the log in two.

# $row (count) - the row
# $column (text) - the heading
# $cell (text) - what the cell holds
not-a-number = Row { $row }, column "{ $column }", holds "{ $cell }", which is not a number.
not-a-number-next = Correct it; OL or ---- marks a reading above the gauge's range, an empty cell a gap.

# $file (text) - the file
# $column (text) - the heading
# $reading (text) - the number with the unit that was taken for it
# $row (count) - the row
guessed-unit = The heading "{ $column }" of "{ $file }" does not say the unit, and { $reading } in row { $row } cannot be.
guessed-unit-next = State unit beside the file, the one that the gauge was set to.

# $row (count) - the row
# $column (text) - the heading
# $cell (text) - what the cell holds
not-plausible = Row { $row }, column "{ $column }", holds "{ $cell }", which no such instrument shows.
not-plausible-next = Correct it, or state the unit of the column.

# $file (text) - the file
# $more (count) - rows that are not told one by one
more-rows =
    { $more ->
        [one] { $more } more row of "{ $file }" cannot be read.
       *[other] { $more } more rows of "{ $file }" cannot be read.
    }
more-rows-next = If most rows are like that, state the layout: value column, time column, delimiter, decimal.

# $file (text) - the file
too-short = "{ $file }" holds fewer than two readings.
too-short-next = Check that the whole log was saved.
skipped-hour = The log begins in the hour that the clock skipped that day.
skipped-hour-next = Check the clock of the gauge and the zone.

# $file (text) - the file
# $column (text) - the heading
half-apart = The column "{ $column }" of "{ $file }" stands apart from its times.
half-apart-next = Write AM or PM behind the time, in one cell, or the hours from 0 to 23.

# $file (text) - the file
# $columns (message) - the headings
no-time-column = "{ $file }" has the columns { $columns }; none is plainly the time.
time-column-next = State time column beside the file.

# $file (text) - the file
# $column (text) - the heading
other-time-unit = The heading "{ $column }" of "{ $file }" says another unit of time than the job.
other-time-unit-next = Correct time format, or leave it out where the heading is right.

# $file (text) - the file
# $column (text) - the heading
unclear-time-unit = The unit of the times of "{ $file }" under "{ $column }" is not understood.

# $file (text) - the file
# $column (text) - the heading
seconds-or-minutes = The times of "{ $file }" under "{ $column }" may be seconds or minutes.
time-format-next = State time format: seconds or time format: minutes beside the file.

# $file (text) - the file
# $column (text) - the heading
# $cell (text) - a time
hours-or-minutes = "{ $cell }" in "{ $file }" under "{ $column }" may be hours and minutes or minutes and seconds.
hours-or-minutes-next = Head the column elapsed (h:min) or elapsed (min:s), or write h:mm:ss.

# $file (text) - the file
# $column (text) - the heading
times-not-read = The times of "{ $file }" under "{ $column }" are not times this program reads.
times-not-read-next = Write times as 09:25:00 or dates as 2026-06-18, or state time format.

# $file (text) - the file
# $cell (text) - a date
day-or-month = "{ $cell }" in "{ $file }" may be the day before the month or after it, and neither is the job's date.

# $file (text) - the file
# $cell (text) - a date
date-not-read = "{ $cell }" in "{ $file }" is not a date and time this program reads.
date-not-read-next = Write dates as 2026-06-18, or state time format.

# $file (text) - the file
# $column (text) - the heading
# $zone (name) - the letters of a zone
zone-of-letters = The heading "{ $column }" of "{ $file }" names the zone { $zone }, which is not one zone everywhere.
zone-of-letters-next = Write the distance from UTC in its place, such as UTC-06:00, or nothing where it is the job's own zone.

# $file (text) - the file
# $column (text) - the heading
no-zone = The times of "{ $file }" under "{ $column }" count from UTC, and the job names no zone.
no-zone-next = State zone under job.
