### What a command prints of a job.

# $id (name) - the job
# $outcome (message) - its outcome
outcome = { $id }: { $outcome }

then = Then
next = Next
could-not-be-decided = Could not be decided
conditions = Conditions
to-look-at = To look at

# $what (text) - what is to be done
still-to-be-done = Still to be done: { $what }

# $passes (count) - checks passed
# $notes (count) - findings for information
counted =
    { $passes ->
        [one] { $passes } check passed, { $notes } for information.
       *[other] { $passes } checks passed, { $notes } for information.
    }

# $titles (list) - titles of checks
not-judged = Not asked for here, and not judged: { $titles }.

# $titles (list) - titles of checks
# $more (count) - how many more there are
not-judged-and-more = Not asked for here, and not judged: { $titles } and { $more } more.

# $time (text) - when
# $sentence (text) - what it says
diagnosis = Diagnosis at { $time }: { $sentence }

# $limit (text) - the limit
limit = limit { $limit }

# $chance (text) - probability of conformity
sure = { $chance } sure to be within it

# $keys (name) - keys of the job file
in-file = In the file: { $keys }
