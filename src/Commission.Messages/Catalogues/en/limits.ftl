### Limits in words, and what is wrong with a pack of limits.

## What a pack is made of

# $part (choice: pack, clause, defaults, limit, cases, companions, profile, checks, conditions, definition, companion) - what is read
part =
    { $part ->
        [pack] a pack
        [clause] a clause
        [defaults] the list of defaults
        [limit] a limit
        [cases] a limit with cases
        [companions] the list of what belongs to the limit
        [profile] a profile
        [checks] a choice of checks
        [conditions] a condition
        [definition] a definition
       *[companion] a companion
    }

# $part (choice: pack, clause, defaults, limit, cases, companions, profile, checks, conditions, definition, companion) - what is read
part-first =
    { $part ->
        [pack] A pack
        [clause] A clause
        [defaults] The list of defaults
        [limit] A limit
        [cases] A limit with cases
        [companions] The list of what belongs to the limit
        [profile] A profile
        [checks] A choice of checks
        [conditions] A condition
        [definition] A definition
       *[companion] A companion
    }

# $key (name) - what the condition asks about
part-condition-on = the condition on { $key }

# $key (name) - what the condition asks about
part-condition-on-first = The condition on { $key }

# $name (name) - a part of a table inside the program
part-of-program = { $name }

node-mapping = a list of keys and values
node-list = a list
node-empty = nothing

# $text (text) - what is written
node-text = "{ $text }"
node-other = something else

## Shape of the file

# $found (message) - what was found
here-stands = Here stands { $found }.

# $part (message) - what is read, at the beginning of a sentence
mapping-expected = { $part } is a list of keys and values.
mapping-next = Write each key on its own line, followed by a colon and its value.

# $part (message) - what is read, at the beginning of a sentence
# $key (name) - the missing key
key-missing = { $part } has no "{ $key }".

# $key (name) - the missing key
key-missing-next = Add "{ $key }:" and its value.

# $key (text) - the key as written
# $part (message) - what is read
key-unknown = "{ $key }" is not a key of { $part }.

# $keys (list) - the keys it takes
keys-are = The keys are { $keys }.

# $name (name) - what may have been meant
did-you-mean = Did you mean "{ $name }"?

# $key (name) - the key
# $found (message) - what was found
key-holds = "{ $key }" holds { $found }.
list-expected = A list was expected.
list-next = Write [first, second], or each on its own line after a dash.
value-expected = A value on the same line was expected.
word-expected = A word was expected.

# $word (text) - the word as written
# $key (name) - its key
word-unknown = "{ $word }" is not a word for "{ $key }".

# $words (list) - the words it takes
words-are = The words are { $words }.

## Head of a pack

# $name (text) - as written
name-bad = "{ $name }" is not a name for a pack.
name-expected = Lower-case letters, digits and hyphens were expected.
name-next = Write for example aldermoor-oc-36.

# $name (text) - as written
name-taken = The name "{ $name }" is taken by another pack.
name-taken-next = Give this pack a name of its own.
pack-name-expected = The name of a pack was expected.

# $name (text) - as written
pack-missing = There is no limit pack "{ $name }" to build on.

# $names (list) - the packs there are
packs-are = The packs are { $names }.

## Limits of a pack

# $id (text) - as written
limit-unknown = "{ $id }" is not a limit this program knows.
limit-unknown-next = The list of limits is in the schema of packs.
limits-expected = A list of limits by id was expected.
case-unreachable = This case is never reached.
case-unreachable-expected = The case before it applies always.
case-unreachable-next = Put the case without "when" last.

# $id (name) - the limit
no-basis = "{ $id }" does not say what kind of document it rests on.

# $id (name) - the limit
no-mark = "{ $id }" does not say how sure the figure is.

# $key (name) - the missing key
no-default-next = Add "{ $key }:" here or under "defaults".

# $key (name) - a key of a pack
quoted = "{ $key }"

# $forms (list) - the forms it may take
write-one-of = Write { $forms }.

# $id (name) - the limit
form-missing = "{ $id }" has no figure.

# $id (name) - the limit
# $forms (list) - the forms it was written in
forms-many = "{ $id }" is written as { $forms }.
forms-expected = One form was expected.

# $id (name) - the limit
# $form (name) - the form it was written in
form-wrong = "{ $id }" is not written as "{ $form }".

# $means (message) - what the limit means
form-means = It means: { $means }.

# $word (text) - as written
form-unknown = "{ $word }" is not a form of a limit.

# $id (name) - the limit
tolerance-none = "{ $id }" takes no tolerance.

# $text (text) - as written
tolerance-zero = A tolerance of "{ $text }" leaves nothing.
tolerance-expected = It is half a width, above zero.

# $id (name) - the limit
companion-none = "{ $id }" has nothing beside its figure.
companion-none-next = Leave "with" out.

# $id (name) - the limit
# $names (list) - what belongs to it
companion-missing = "{ $id }" needs { $names } beside its figure.

# $snippet (name) - the line to add
companion-missing-next = Add "{ $snippet }".

# $id (name) - the limit
number-none = "{ $id }" is a requirement in words and takes no number.
number-none-next = Write it after "statement:".

# $text (text) - as written
number-uncertain = "{ $text }" carries an uncertainty.
number-uncertain-expected = A limit is an exact number.
number-uncertain-next = Write the number alone, or "tolerance:" for a band.

# $text (text) - as written
range-empty = Nothing lies within "{ $text }".
range-expected = The first number has to be below the second, and both of the same kind.

# $text (text) - as written
span-bad = "{ $text }" is not a span of the calendar.
span-next = Write for example 12 months or 1 year.

## Profiles and conditions

profile-empty = A profile asks for nothing.
profile-next = Name checks or photos.
checks-few = A choice needs at least two checks.

# $found (message) - what was found
id-bad = { $found } is not the id of a check.
id-next = Write it as phase.name, for example pressure-test.hold.

# $word (text) - as written
photo-unknown = No photo shows "{ $word }".
photo-unknown-next = Use a word of the job file's photos.

# $key (name) - what the condition asks about
condition-empty = "{ $key }" is an empty list.
condition-empty-expected = It would never apply.
condition-empty-next = Name at least one word, or leave the key out.

# $key (name) - what the condition asks about
condition-unbound = The condition on { $key } has no bound.

# $key (name) - what the condition asks about
condition-two-bounds = The condition on { $key } has two bounds on one side.
condition-two-bounds-next = Keep one of them.

# $key (name) - what the condition asks about
condition-never = Nothing meets the condition on { $key }.
condition-never-expected = The lower bound has to be below the upper one.

## A limit in words

# $low (symbols) - lower bound
# $high (symbols) - upper bound
range = { $low } to { $high }

# $range (message) - both bounds in the units of the job
# $written (message) - both bounds as published
range-converted = { $range } ({ $written })

# $figure (symbols) - in the unit of the job
# $written (symbols) - as published
figure-converted = { $figure } ({ $written })

# $figure (symbols) - a number with its unit
figure = { $figure }

# $months (count) - how many
months = { $months ->
    [one] { $months } month
   *[other] { $months } months
}

# $years (count) - how many
years = { $years ->
    [one] { $years } year
   *[other] { $years } years
}

# $figure (message) - a number with its unit
at-least = at least { $figure }

# $figure (message) - a number with its unit
at-most = at most { $figure }

# $figure (message) - a number with its unit
tolerance = ± { $figure }

# $middle (symbols) - the target
# $half (symbols) - half the width of the band, with the unit
band = { $middle } ± { $half }

# $limit (message) - the limit
# $time (symbols) - how long it takes to get there
limit-after = { $limit } after { $time }

# $limit (message) - the limit
# $more (list) - what belongs to it
limit-with = { $limit } and { $more }

# $figure (symbols) - a number with its unit
# $name (choice: within, at-one-place, at-rest, at-three-places, in-the-shade, of-change, of-change-at-three-places, of-change-in-the-shade, of-change-on-both-lines, on-both-lines, of-reading) - what it is
companion =
    { $name ->
        [within] { $figure } within
        [at-one-place] { $figure } at one place
        [at-rest] { $figure } at rest
        [at-three-places] { $figure } at three places
        [in-the-shade] { $figure } in the shade
        [of-change] { $figure } of change
        [of-change-at-three-places] { $figure } of change at three places
        [of-change-in-the-shade] { $figure } of change in the shade
        [of-change-on-both-lines] { $figure } of change on both lines
        [on-both-lines] { $figure } on both lines
       *[of-reading] { $figure } of reading
    }

## Figures of the job, and remarks on them

own-target = the job's own target
own-limits = the job's limits
plate = nameplate
owner-common-practice = common practice

# $pack (name) - its name
# $source (text) - where it is printed
owner-pack = the pack { $pack } ({ $source })

# $figure (message) - the maker's figure
# $source (text) - where it is printed
# $owner (message) - whose limit asks more
# $stricter (message) - that limit
maker-looser = The maker's figure, { $figure } ({ $source }), asks less than { $owner }: { $stricter }.

# $target (message) - the job's own target
# $owner (message) - whose limit asks more
# $limit (message) - that limit
target-set-aside = The job's own target, { $target }, has no source and asks less than { $owner }: { $limit }. It was not used.

# $name (text) - the name asked for
no-pack = There is no limits pack "{ $name }".

# $names (list) - the packs there are
known-packs = Known packs: { $names }.
