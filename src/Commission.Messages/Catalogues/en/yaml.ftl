### What is wrong with a text file before anybody looks at its meaning: encoding, YAML.

# $size (number) - size of the file in megabytes
too-large = The file has { $size } MB; at most 4 MB are read.

too-large-next = Put long series of readings into a CSV file beside the job.

utf16 = The file is UTF-16 text.

utf8-expected = UTF-8 is expected.

utf8-next = Save the file as UTF-8 in the editor.

# $byte (name) - the byte in hexadecimal digits
not-utf8 = The byte 0x{ $byte } is not UTF-8 text.

not-utf8-next = Save the file as UTF-8 in the editor, or retype that character.

# $kind (choice: nul, mark, separator, control) - what stands there
# $code (name) - its code point, such as U+0007
control-character =
    { $kind ->
        [nul] The text holds a NUL byte ({ $code }).
        [mark] The text holds a byte order mark ({ $code }).
        [separator] The text holds an invisible line separator ({ $code }).
       *[control] The text holds a control character ({ $code }).
    }

control-character-next = Delete it; a job file is plain text.

# $written (text) - what stands there, with its comma
decimal-comma = "{ $written }" has a decimal comma, and in braces a comma ends the value.

# $key (text) - the key
# $value (text) - the value with a point
decimal-comma-next = Write { $key }: { $value } with a point.

# $words (text) - the words behind the comma
# $value (text) - the value before it
stray-words = "{ $words }" stands alone: the comma before it ended "{ $value }".

# $key (text) - the key
# $value (text) - the value with its comma
stray-words-next = If it belongs to the value, write { $key }: "{ $value }".

# $words (text) - the words without a colon
no-colon-in-braces = "{ $words }" has no colon.

in-braces = In braces each entry is key: value.

# $key (text) - the word that wants a value
no-colon-in-braces-next = Write { $key }: and its value.

empty = The file is empty.

second-document = A second document begins here.

one-document = A file holds one document.

second-document-next = Delete this --- line, or put the rest into a file of its own.

# $tag (text) - the tag
tag = The tag { $tag } stands before a value.

tag-expected = Plain values are expected.

tag-next = Delete the tag.

# $key (text) - the key
# $line (count) - where it stood first
twice = "{ $key }" is written twice; the first is in line { $line }.

twice-next = Keep one of them.

bad-key = This key is a list, a mapping or an alias.

bad-key-expected = A key is a word.

bad-key-next = Write the key as plain text.

# $name (text) - the alias
unknown-alias = *{ $name } refers to nothing: no &{ $name } comes before it.

unknown-alias-next = Put the value in quotes if it is meant to begin with *.

# $name (text) - the alias
alias-loop = *{ $name } stands inside &{ $name } itself.

alias-loop-next = Write the value out.

# $most (name) - the most values that are read
too-many-values = With aliases written out, the file holds more than { $most } values.

too-many-values-next = Use fewer aliases, and a CSV file for long series.

# $most (count) - the most levels that are read
too-deep = Brackets or indentation are nested more than { $most } deep.

too-deep-next = A job file needs fewer than ten levels: look for a bracket that is not closed.

tab = A tab stands in the indentation.

tab-expected = Only spaces indent.

tab-next = Replace it by spaces.

# $sign (text) - the character
bad-start = A value cannot begin with { $sign }.

bad-start-here = A value cannot begin like this.

in-quotes = Put the value in quotes.

escape = A backslash in double quotes begins an escape, and this one does not exist.

escape-next = Use single quotes, or write \\ for a backslash.

line-without-colon = This line has no colon.

line-without-colon-expected = A key is followed by a colon and a space.

line-without-colon-next = Write key: value.

indented-further = This line is indented further than its neighbors.

same-column = Keys of one block begin in the same column.

indented-further-next = Correct the indentation.

second-colon = A second colon stands in this line.

second-colon-next = Put a value that contains a colon in quotes.

dash = A dash stands where a list cannot begin.

dash-next = Begin the list on a line of its own, below its key.

not-in-line = This line does not line up with the ones above.

not-in-line-next = Correct the indentation of this line or of the one before.

directive = This line begins with %.

directive-next = Delete it: a job file needs none.

sign = A value that begins with & * or ! is read as a YAML sign.

not-yaml = This is not YAML.

not-yaml-next = Look at this line and the one before it: quotes, colons, brackets, indentation.

# $bracket (name) - the bracket
bracket-open = This { $bracket } is never closed.

# $closing (name) - the closing bracket
bracket-expected = A { $closing } is expected.

# $column (count) - where the comment begins
bracket-comment = The # in column { $column } begins a comment and hides the rest of the line: put that value in quotes.

# $closing (name) - the closing bracket or quote
write-at-end = Write { $closing } at its end.

# $bracket (name) - the bracket
# $column (count) - where it opens
inside-bracket = Something is wrong inside the { $bracket } that opens in column { $column }.

# $kind (choice: entries, items) - what stands in the bracket
# $closing (name) - the closing bracket
inside-bracket-expected =
    { $kind ->
        [items] A comma is expected between two items, and { $closing } at the end.
       *[entries] A comma is expected between two entries, and { $closing } at the end.
    }

inside-bracket-next = Put a value that holds a comma, colon, bracket or quote in quotes.

# $quote (name) - the quote
quote-open = A quote { $quote } is opened and never closed.

# $quote (name) - the quote
quote-open-next = Write { $quote } at the end of the value.

some-quote-open = A quote is opened and never closed.

some-quote-open-next = Write the quote at the end of the value.
