### Sentences that findings of every phase share.

# $why (message) - why it could not be judged, without a full stop
not-evaluated = Not evaluated: { $why }.

# Stands before a sentence that tells of a danger to people or to the machine.
danger = DANGER

# $cause (text) - the largest cause of doubt
settle-by-less-doubt = Read again with less doubt; the largest part of it is { $cause }.

# $reading (text) - what was read, with its time
# $value (text) - the reading as written
# $evidence (text) - title of the finding that shows it
reading-cannot-be = { $reading } ({ $value }) cannot be what it says, see { $evidence }
