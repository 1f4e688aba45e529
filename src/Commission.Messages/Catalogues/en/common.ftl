### Sentences that findings of every phase share.

# $why (message) - why it could not be judged, without a full stop
not-evaluated = Not evaluated: { $why }.

# Stands before a sentence that tells of a danger to people or to the machine.
danger = DANGER

# $cause (text) - the largest cause of doubt
settle-by-less-doubt = The number lies too near its limit to be sure: most of its ± comes from { $cause }. Measure again with a better instrument, or get further away from the limit.

# $reading (text) - what was read, with its time
# $value (text) - the reading as written
# $evidence (text) - title of the finding that shows it
reading-cannot-be = { $reading } ({ $value }) cannot be what it says, see { $evidence }
