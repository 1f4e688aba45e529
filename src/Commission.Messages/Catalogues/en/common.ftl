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
