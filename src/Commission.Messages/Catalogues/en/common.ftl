### Sentences that findings of every phase share.

# $why (message) - why it could not be judged, without a full stop
not-evaluated = Not evaluated: { $why }.

# What tells of a danger to people or to the machine.
# $sentences (list) - what is dangerous
danger = DANGER: { $sentences }

# $cause (message) - the largest cause of doubt
# $again (choice: can, charged) - whether it can be measured again, or the circuit holds its charge by now
settle-by-less-doubt =
    { $again ->
        [charged] With its ± it reaches the limit, so nobody can be sure; most of the ± is { $cause }. To measure it again the charge would have to come out: whoever takes the system over decides whether this is good enough.
       *[can] With its ± it reaches the limit, so nobody can be sure; most of the ± is { $cause }. If it can be measured again, use a better instrument. If not, whoever takes the system over decides whether this is good enough.
    }

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
figure-met = { $what }: { $found }; required: { $asked }.

# $what (text) - what was read
# $found (text) - the reading as written
# $asked (text) - the figure it is judged by
figure-missed = { $what }: { $found }, but { $asked } is required.

section-not-written = the section is not written
section-not-written-next = Say what was inside: which lines and units, up to which valves.

# $first (message) - a whole sentence
# $second (message) - a whole sentence
two-sentences = { $first } { $second }

## Names of readings, and limits

reading-system = system
reading-design-high = design pressure, high side

# $most (text) - the limit as printed
limit-at-most = at most { $most }

# Source of a figure that no document states.
common-practice-no-source = common practice, no source

# A day alone, as the result of a step.
# $day (date) - the day
day = { $day }

name-a-pack-next = Name a limits pack.

# $text (text) - what the crew or a source wrote
as-written = { $text }

# $what (message) - the end of a sentence
sentence = { $what }.

# $parts (list) - reasons or places
several = { $parts }

# $least (quantity) - the limit
limit-at-least = at least { $least }

reading-and-gas-next = Check the reading and the refrigerant's name.

# $source (text) - a paper, a standard, a regulation
# $mark (choice: published, from-memory, unconfirmed, common-practice, computed, computed-from-memory) - how well it is known
cited =
    { $mark ->
        [published] { $source } (published)
        [from-memory] { $source } (from memory)
        [unconfirmed] { $source } (from memory, unconfirmed)
        [common-practice] { $source } (common practice)
        [computed] { $source } (computed)
       *[computed-from-memory] { $source } (computed from values from memory)
    }
