### Sentences that findings of every phase share.

# $why (message) - why it could not be judged, without a full stop
not-evaluated = Not evaluated: { $why }.

# Stands before a sentence that tells of a danger to people or to the machine.
danger = DANGER

# $cause (message) - the largest cause of doubt
settle-by-less-doubt = It lies too near its limit to be sure; most of the doubt is { $cause }. If it can be measured again, use a better instrument. If not, whoever takes the system over decides whether this is good enough.

# $instrument (text) - the instrument
accuracy-of = the accuracy of the instrument "{ $instrument }"

# $reading (text) - what was read, with its time
# $value (text) - the reading as written
# $evidence (text) - title of the finding that shows it
reading-cannot-be = { $reading } ({ $value }) cannot be what it says, see { $evidence }

# $what (text) - what was read
# $found (text) - the reading as written
figure-read = { $what }: { $found }.
figure-not-written = the maker's figure is not written

# $what (text) - what was read
# $found (text) - the reading as written
# $asked (text) - the figure it is judged by
figure-met = { $what }: { $found }; { $asked } is asked for.

# $what (text) - what was read
# $found (text) - the reading as written
# $asked (text) - the figure it is judged by
figure-missed = { $what }: { $found }, and { $asked } is asked for.
