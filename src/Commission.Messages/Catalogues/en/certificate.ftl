### Page 1: the outcome with its reason, and the figures that answer for the work.

## The outcome in one sentence

# $judged (count) - checks that were judged
accepted =
    { $judged ->
        [one] Accepted: the one judged check passes.
       *[other] Accepted: all { $judged } judged checks pass.
    }

# $judged (count) - checks that were judged
# $near (count) - of them, those that pass only within their uncertainty
accepted-near =
    { $near ->
        [one] Accepted: all { $judged } judged checks pass, one of them only within its uncertainty.
       *[other] Accepted: all { $judged } judged checks pass, { $near } of them only within their uncertainty.
    }

# $check (text) - the check
# $measured (text) - its value as printed
# $limit (text) - its limit as printed
condition-near = { $check } is { $measured } against a limit of { $limit }, and the owner decides whether that is good enough

# $first (message) - the first condition
# $more (count) - conditions beside the first
accepted-on-conditions =
    { $more ->
        [one] Accepted with conditions: { $first }, and one more.
       *[other] Accepted with conditions: { $first }, and { $more } more.
    }

# $first (message) - the condition
accepted-on-condition = Accepted with one condition: { $first }.

# $check (name) - the check that failed
# $measured (text) - its value as printed
# $limit (text) - its limit as printed
failed-number = { $check } ({ $measured }, limit { $limit })

# $failed (message) - the check that failed, with its number
not-accepted = Not accepted: { $failed } failed.

# $failed (message) - the weightiest check that failed, with its number
# $more (count) - checks that failed beside it
not-accepted-more =
    { $more ->
        [one] Not accepted: { $failed } failed, and one more check.
       *[other] Not accepted: { $failed } failed, and { $more } more checks.
    }

# Of the diagnosis, which stands above the list of what failed.
told-above = as told above

# $missing (list) - what is not shown
incomplete = Incomplete: nothing failed, but this is not shown: { $missing }.

# $missing (list) - the first things that are not shown
# $more (count) - how many more are not
incomplete-more = Incomplete: nothing failed, but this is not shown: { $missing }, and { $more } more.
photos = photos

## The figures that answer for the work

row-test = Test pressure
row-hold = Loss under nitrogen
row-vacuum = Vacuum at isolation
row-vacuum-hold = Hold in vacuum
row-charge = Charge
row-running = Superheat, subcooling
row-air = Airflow, split
row-electrical = Electrical
row-safety = Safety

# $pressure (text) - the pressure as printed
# $time (text) - how long it was held, as printed
held-for = { $pressure }, held { $time }

# $drop (quantity) - what was lost of the pressure after temperature; below zero where it grew
# $share (text) - the same as a share
drop-and-share = { $drop } ({ $share })

# $added (text) - what was added
# $total (text) - what is in the circuit
added-and-total = { $added } added, { $total } in all

# $level (text) - the level as printed
between-readings = { $level }, between two readings

# $added (text) - what was added
added-only = { $added } added

# $charge (text) - the whole charge, weighed into the empty circuit
weighed-in = { $charge } weighed in

# $total (text) - what is in the circuit
total-only = { $total } in all

# $total (text) - what the nameplate says
total-not-weighed = { $total } by the nameplate, not weighed

# $limit (text) - a limit that is usual and binds nobody
usual-limit = usual: { $limit }

# $title (name) - which of the checks of a row it is
# $value (text) - its value as printed
which = { $title } { $value }

# $passed (count) - checks that pass
# $missing (list) - checks that nobody showed
checks-pass-others-missing =
    { $passed ->
        [one] one check passes
       *[other] { $passed } checks pass
    }; not shown: { $missing }

# $passed (count) - checks that pass
checks-pass =
    { $passed ->
        [one] one check passes
       *[other] { $passed } checks pass
    }

not-part = not this visit
not-judged = not judged
below-usual = below the usual
not-shown = not shown

## What endangers the next person

# $group (name) - safety group of the refrigerant
danger-flammable = Flammable refrigerant (safety group { $group }): only people trained and licensed for it may open this circuit.

# $group (name) - safety group of the refrigerant
# $burns (choice: yes, no) - whether it burns, too
danger-toxic =
    Toxic refrigerant (safety group { $group }){ $burns ->
        [yes] , and it burns
       *[no] {""}
    }: only people trained and licensed for it may open this circuit.
danger-carbon-dioxide = Carbon dioxide at very high pressure: only people trained and licensed for it may open this circuit.
danger-unknown = The safety group of the refrigerant is not known: treat it as flammable and toxic.

## Who signs, and what each attests

role-technician = technician
role-witness = witness
role-owner = owner
role-inspector = inspector
attest-technician = I took these readings on this unit on the date above.
attest-witness = I watched the steps of this record.
attest-owner = I received this record.
attest-inspector = Reviewed.

## For the owner

# $system (text) - kind of system, refrigerant, size
# $day (text) - day of the work
owner-system = { $system }; worked on { $day }.

# $system (text) - kind of system, refrigerant, size
# $day (text) - day of the work
# $charge (text) - refrigerant in the circuit
owner-system-charge = { $system }; worked on { $day }; { $charge } of refrigerant in the circuit.

# $system (text) - kind of system, refrigerant, size
# $day (text) - day of the work
# $charge (text) - charge as the nameplate states it
owner-system-plate = { $system }; worked on { $day }; its nameplate states { $charge } of refrigerant, and nothing was weighed.
owner-not-accepted = The work is not accepted yet: what failed has to be put right and read again.
owner-incomplete = The record is not complete yet: what is missing has to be done or written.

# $day (date) - the day that is written
owner-next-leak-check = The next leak check is written for { $day }.
owner-keep-readings = Keep this record with the maker's manual: whoever services the system next needs the readings of this day.
owner-keep = Keep this record with the maker's manual: whoever services the system next needs its charge and the readings of this day.
