### Refrigerant: what a cylinder holds, whether the gas belongs into the unit, what went in and out.

## Cylinder fill

# $gases (name) - the refrigerants in the cylinder
fill-density-unknown = the density of liquid { $gases } is not known here
fill-density-unknown-next = Take the largest fill of this refrigerant from its supplier and compare by hand.

# $gases (list) - the refrigerants in the cylinder
# $lightest (name) - the lightest of them
fill-mixed = { $gases } in one cylinder: judged by the lightest, { $lightest }. Nobody takes a mixture back but to destroy it.

# $cylinder (text) - the cylinder
# $mass (quantity) - what it is written to hold
# $full (quantity) - what fills it with liquid at 25 °C
# $gas (name) - the refrigerant
fill-cannot-be = { $cylinder } is written to hold { $mass }, and { $full } of { $gas } fill it with liquid at 25 °C (77 °F): that cannot be, or the cylinder is about to burst.
fill-cannot-be-next = Keep away from heat and sun, and weigh the cylinder again: tare, water capacity or weight is wrong. If they are right, let a part of it into an empty cylinder at once.

# $share (quantity) - volume of the liquid at 25 °C over the cylinder's
# $limit (quantity) - the share that is common practice
fill-above-eighty = Liquid fills { $share } of it at 25 °C, above the { $limit } that is practice elsewhere: keep it cool.

# $cylinder (text) - the cylinder
# $mass (quantity) - what it holds
# $gas (name) - the refrigerant
# $ratio (quantity) - mass over water capacity
# $most (quantity) - the filling ratio for transport
fill-ratio = { $cylinder } holds { $mass } of { $gas }, { $ratio } of its water capacity by mass; { $most } may be in it for transport.

# $cylinder (text) - the cylinder
# $mass (quantity) - what it holds
# $gas (name) - the refrigerant
# $share (quantity) - volume of the liquid at 25 °C over the cylinder's
fill-volume = { $cylinder } holds { $mass } of { $gas }: at 25 °C (77 °F) liquid fills { $share } of its volume.

## Identity: the plate

# $plate (name) - the refrigerant on the plate
identity-same = Plate and circuit: { $plate }.

# $from (name) - the refrigerant on the plate
# $to (name) - the refrigerant charged
identity-changed = Changed from { $from } to { $to }, which burns no more easily and whose pressure the unit is built for.

identity-from-unknown = it is not written which refrigerant the unit is built for
identity-from-unknown-next = Say which refrigerant was taken out and which one is in the circuit now, and what the plate says.

# $gas (name) - the refrigerant charged
# $group (name) - its safety group
# $plate (name) - the safety class the unit is built for
identity-burns = { $gas } is of group { $group }, and the unit is built for { $plate }: nothing in it is made for a gas that burns so easily.
identity-burns-next = Do not run the unit. Keep sparks away, ventilate, recover the refrigerant, and charge one that the unit is built for.

# $gas (name) - the refrigerant charged
# $pressure (quantity) - its saturation pressure at the temperature of a hot condenser
# $hot (quantity) - that temperature
# $built (quantity) - what the unit is built for
identity-bursts = { $gas } stands at { $pressure } when it condenses at { $hot }, and the unit is built for { $built }: it may burst.
identity-bursts-next = Stop the unit, recover the refrigerant, and charge one that the unit is built for.

# $gas (name) - the refrigerant charged
# $built (quantity) - what the unit is built for
identity-pressure-near = at a hot condenser { $gas } stands a little above the { $built } the unit is built for
identity-pressure-near-next = Have the maker confirm the refrigerant, and set the high-pressure switch by the plate.

# $gas (name) - the refrigerant charged
identity-pressure-unknown = the pressure of { $gas } is not known here
identity-pressure-unknown-next = Compare its pressure at 125 °F with the plate's by the supplier's table.

# $plate (name) - the refrigerant on the plate
# $gas (name) - the refrigerant charged
identity-differs = The plate says { $plate }, the circuit is charged with { $gas }, and no change of refrigerant is written.
identity-differs-next = If the refrigerant was changed on purpose, say from which and to which. If not, recover it all, evacuate, and charge what the plate says.

# $to (name) - what the change was to
# $gas (name) - the refrigerant of the circuit
identity-change-differs = The change was to { $to }, and { $gas } is written for the circuit.
identity-change-differs-next = Correct the one that is wrong.

## Identity: cylinders

# $cylinder (text) - the cylinder
# $gas (name) - what is in it
identity-cylinder-same = { $cylinder } holds { $gas }, as the circuit does.

# $cylinder (text) - the cylinder
# $gas (name) - what is in it
# $circuit (name) - the refrigerant of the circuit
identity-cylinder-differs = Refrigerant went in from { $cylinder }, which holds { $gas }; the circuit is one of { $circuit }.
identity-cylinder-differs-next = Read the cylinder's label again. If it is right, the charge is a mixture: recover it all, evacuate, and weigh in the right refrigerant.

## Identity: gas that came out of the circuit and went back

# $cylinder (text) - the cylinder
identity-back-acid = the acid test was bad, and gas from the recovery cylinder { $cylinder } went back in: acid and soot go with it.
identity-back-acid-next = Stop the unit, recover the charge and send it away, clean up the circuit, and charge new or reclaimed refrigerant.

# $cylinder (text) - the cylinder
identity-back-recycled = after a bad acid test the gas of { $cylinder } was cleaned on site, and no test after it is written
identity-back-recycled-next = Test the gas for acid again before the unit runs on it.
identity-back-marginal = the acid test was marginal
identity-back-untested = a compressor was replaced, and no acid test is written
identity-back-test-next = Test the oil for acid now, and again after some days of running.

# $cylinder (text) - the cylinder
identity-back = Recovered gas from { $cylinder } went back into the same circuit.

# $acid (text) - what the acid test showed
identity-back-tested = The acid test was { $acid }.

## In and out, when the refrigerant was changed

# $in (list) - what went in
# $out (list) - what came out
ledger-by-gas = In { $in }; out { $out }. The refrigerant was changed: each counts by itself.

# $mass (quantity) - a mass
# $gas (name) - of which refrigerant
ledger-mass-of = { $mass } of { $gas }
ledger-nothing = nothing

## How often a circuit is checked for leaks

leak-check-free-in-residence = it is hermetically sealed, stands in a residential building and holds less than 3 kg.

## The leak check after a repair

# $hours (text) - the least running time
# $by (date) - the latest day
leak-recheck-to-come = The law asks for a second look at the repair, after { $hours } of running and by { $by }.

# $by (date) - the latest day
leak-recheck-to-come-by = The law asks for a second look at the repair by { $by }.
leak-recheck-open = the repair was not checked again yet

# $ran (text) - how long the system had run
leak-recheck-too-early = it was checked again after { $ran } of running, which is too early to count

# $hours (text) - the least running time
# $by (date) - the latest day
leak-recheck-next = Let the system run for { $hours }, then check the repair again, by { $by }.

# $by (date) - the latest day
leak-recheck-next-by = Check the repair again by { $by }.

# $why (text) - why the law asks for no leak checks, as a sentence
leak-recheck-not-owed = No second check after the repair is prescribed: { $why }
leak-recheck-unknown = the repair was not checked again yet, and the charge, on which it depends whether that is owed, is not known
leak-recheck-hours-unknown = how long the system had run is not written
leak-recheck-hours-unknown-next = Write how long the system had run.

# $on (date) - the day of the check
# $ran (text) - how long the system had run
leak-recheck-done-after = Checked again on { $on }, after { $ran } of running.

# $on (date) - the day of the check
leak-recheck-done = Checked again on { $on }.

# $on (date) - the day of the check
# $by (date) - the latest day
leak-recheck-late = The check after the repair is dated { $on }; it had to be made from the repair on and by { $by }.
leak-recheck-late-next = Check the repair again now, and note in the log-book why it was not in time.

## Records

# $why (text) - why the law asks for no leak checks, as a sentence
records-not-prescribed = The law asks for no record of this equipment: { $why }

## Refrigerants in service

# $gas (name) - what went in
# $potential (text) - its warming potential
use-free = { $gas } has the GWP { $potential }: no ban reaches it.

# $gas (name) - what went in
# $potential (text) - its warming potential
# $reach (text) - the potential from which the ban reaches a gas
use-exempt = { $gas } has the GWP { $potential }, and from { $reach } a ban reaches it; this equipment is exempt.

# $gas (name) - what went in
# $cylinder (text) - the cylinder it came from
# $kind (text) - reclaimed, recycled
# $until (date) - the day from which that is banned, too
use-second-hand = { $kind } { $gas } went in from { $cylinder }: it may be used before { $until }.

# $gas (name) - what went in
# $cylinder (text) - the cylinder it came from
# $kind (text) - reclaimed, recycled
use-second-hand-always = { $kind } { $gas } went in from { $cylinder }: that may be used.
use-label = batch number and reclamation facility are not written, and the cylinder's label has to name them
use-label-next = Read the cylinder's label: batch number, name and address of the reclamation facility.

# $gas (name) - what went in
use-own = recycled { $gas } may only be used by the undertaking that recovered it in service, or for which it was recovered
use-own-next = Note where the gas was recovered, and by whom.

# $gas (name) - what went in
# $potential (text) - its warming potential
# $reach (text) - the potential from which the ban reaches a gas
# $since (date) - first day of the ban
use-banned = { $gas } has the GWP { $potential }. Since { $since } gas of GWP { $reach } or more may not go into such equipment in service.

# $gas (name) - what went in
# $potential (text) - its warming potential
# $reach (text) - the potential from which the ban reaches a gas
# $since (date) - first day of the ban
# $until (date) - the day from which reclaimed and recycled gas is banned, too
use-banned-until = { $gas } has the GWP { $potential }. Since { $since } gas of GWP { $reach } or more may not go into such equipment in service, unless it is reclaimed or recycled, before { $until }.
use-banned-next = Recover it, and charge reclaimed gas with its label where that is still allowed, or change the system to a refrigerant of lower GWP.

# $cylinder (text) - the cylinder
use-kind-unknown = it is not written whether { $cylinder } holds virgin, recycled or reclaimed gas
use-no-cylinder = no cylinder is described, and it depends on whether the gas was virgin, recycled or reclaimed
use-kind-unknown-next = Write what the cylinder's label says.

# $cylinder (text) - the cylinder
use-recovered = gas from { $cylinder } went back as it was recovered; the law asks that it be recycled or reclaimed first
use-recovered-next = Clean the gas through filter and drier before it goes back, or charge reclaimed or new gas; if it was cleaned on site, say so.

## Acid and the driers that take it up

acid-gone = The last test after the work showed no acid.
acid-not-tested = Acid was found before the work, and no test after it is written.
acid-not-tested-why = it is not shown that the acid is gone
acid-not-tested-next = Test the oil or the gas after some hours of running, and write the result.

# $found (text) - the result as written
acid-left = Still acid after the work: { $found }. It is tested again.

# $by (date) - day of the next test
acid-again-by = acid is left, and the next test is due by { $by }

# $by (date) - day of the next test
acid-again-next = Test again by { $by }; change the driers if it is still acid.

# $found (text) - the result as written
acid-no-date = Still acid after the work: { $found }, and no date of a next test lies ahead.
acid-no-date-why = acid is left, and no further test is planned

# $by (date) - day by which it comes out
suction-drier-dated = The suction drier cleans up and comes out by { $by }.

# $by (date) - day by which it comes out
suction-drier-out = Take the suction drier out by { $by }, and test the oil then.

# $by (date) - the day written
suction-drier-past = The suction drier was to come out by { $by }, before this work.
suction-drier-undated = A suction drier was fitted to clean up, and no date is written for taking it out.
suction-drier-undated-why = nobody has a date for taking the suction drier out

## Oil


# $oil (text) - the kind of oil
# $refrigerant (name) - the refrigerant
oil-goes = Oil that went in with { $refrigerant }: { $oil }.

# $oil (text) - the kind of oil
# $refrigerant (name) - the refrigerant
oil-wrong = Oil that went in: { $oil }. { $refrigerant } does not carry it back to the compressor.

# $share (text) - share of the old oil
oil-left = { $share } of the old oil is left.

# $share (text) - share of the old oil
# $limit (text) - what is allowed
oil-left-too-much = { $share } of the old oil is left; { $limit } is asked for.
oil-left-next = Run it for a day, drain and fill again, and measure what is left; each change leaves about a tenth to a fifth of the old.

## What somebody put in before

additives-kind = what was found before the work
sealant-found = Leak sealant was found in the circuit: it hardens where moisture reaches it, in hoses, instruments and the recovery machine.
dye-found = Leak dye was found in the circuit.
additives-none = Neither sealant nor dye was found.

# $cylinder (text) - the cylinder
sealant-back = Leak sealant was found in the circuit, and gas from the recovery cylinder { $cylinder } went back in.

## The ledger

# $net (text) - what the cylinders gave less what they took, with its uncertainty
ledger-net = Net out of the cylinders: { $net }; what stayed in hoses is not in the circuit.

# $in (text) - what the cylinders gave
# $out (text) - what they took
# $net (text) - the difference
ledger-in-and-out = In { $in }, out { $out }: net { $net } out of the cylinders.

## What was not told of leak check and cylinder

# $day (text) - the day of the check
leak-check-leak = The check of { $day } found a leak.

# $state (choice: repaired, tight) - whether a leak was repaired before
# $day (text) - the day of the check
# $method (text) - how it was searched
leak-check-none =
    { $state ->
        [repaired] No leak was left
       *[tight] No leak was found
    } on { $day }; searched with: { $method }.

# $state (choice: repaired, tight) - whether a leak was repaired before
# $day (text) - the day of the check
# $method (text) - how it was searched
# $sensitivity (text) - the smallest leak the detector shows, as written
leak-check-none-from =
    { $state ->
        [repaired] No leak was left
       *[tight] No leak was found
    } on { $day }; searched with: { $method }, from { $sensitivity } on.

# $state (choice: repaired, tight) - whether a leak was repaired before
# $day (text) - the day of the check
# $method (text) - how it was searched
# $sensitivity (text) - the smallest leak the detector shows, as written
leak-check-coarse =
    { $state ->
        [repaired] No leak was left
       *[tight] No leak was found
    } on { $day }; searched with: { $method }, which shows no leak below { $sensitivity }.

leak-check-coarse-next = Search again with a finer detector.
leak-check-sensitivity-not-written = the detector's sensitivity is not written
leak-check-sensitivity-not-written-next = Write the detector's sensitivity.
leak-check-how-unknown = neither the method nor the kind of check is written
leak-check-how-unknown-next = Say how the leak check was done: with bubbles, with a detector, or indirectly from readings.

# $day (text) - the day that is written
leak-check-next-last-day = The next leak check is written for { $day }, the last day it is due.

# $day (text) - the day that is written
# $last (text) - the last day it is due
leak-check-next-in-time = The next leak check is written for { $day }; it is due by { $last }.

# $day (text) - the day that is written
# $last (text) - the last day it is due
# $because (text) - why that often, as a sentence
leak-check-next-late = The next leak check is written for { $day }; it is due by { $last }. { $because }
leak-check-next-late-next = Enter the earlier date in the log-book.

# $added (quantity) - what had to be added
# $days (count) - days since refrigerant was last added
# $span (choice: longer, within) - whether that is longer than a year
# $rate (quantity) - the rate, as a share of the charge in a year
leak-rate-said =
    { $span ->
        [longer] { $added } in { $days } days, { $rate } of the charge (more than a year counts as one)
       *[within] { $added } in { $days } days: { $rate } of the charge in a year
    }

# $said (message) - what was added in how long
leak-rate-told = { $said }.

# $said (message) - what was added in how long
# $rule (text) - the rule that sets the trigger
leak-rate-below = { $said }; that is below the trigger of { $rule }.

# $said (message) - what was added in how long
# $rule (text) - the rule that sets the trigger
leak-rate-above = { $said }; that is above the trigger of { $rule }.
leak-rate-no-addition = it is not written when refrigerant was last added
leak-rate-no-addition-next = Take from the log-book when refrigerant was last added.
fill-cylinder-unknown = tare and water capacity of the recovery cylinder are not written
fill-cylinder-unknown-next = Read tare and water capacity (WC) stamped on the recovery cylinder, and weigh it.

## The checks: their titles, and what to do when one fails

check-recovery-level = Recovery before opening
check-recovery-level-fails = Recover further before the circuit is opened. Warm the parts where liquid collects, recover liquid first, change a full cylinder, and wait: pressure that comes back is refrigerant boiling out of oil.

check-ledger = Refrigerant ledger
check-ledger-fails = Weigh again what can still be weighed, find the wrong number and correct it. What was not weighed stays unknown: say so in the notes.

check-identity = Right refrigerant
check-identity-fails = Do not run the unit. Recover the refrigerant, evacuate, and charge what the plate says.

check-use = Refrigerant allowed in service
check-use-fails = Recover it, charge reclaimed gas with its label, or change the refrigerant.

check-cylinder-fill = Cylinder fill
check-cylinder-fill-fails = Do not warm or move an overfilled cylinder, and keep it out of the sun. Take refrigerant out into another cylinder until the fill is below the limit.

check-acid = Acid
check-acid-fails = Change the driers, run the system, and test the oil again within a few days, until it is good.

check-suction-drier = Suction drier
check-suction-drier-fails = Agree on a day, read the pressure drop across the drier and test the oil, then take drier or core out.

check-oil-change = Oil change
check-oil-change-fails = Drain it and fill the oil that the compressor's maker names for this refrigerant; where oil may lie in the lines, run, drain and fill again.

check-additives = Sealant and dye
check-additives-fails = Recover through a sealant filter into a cylinder of its own, marked for destruction; change the driers; say it on the unit's label. Makers of compressors may refuse warranty.

check-label = Label on the unit
check-label-fails = Correct the label: factory charge from the plate, added by the scale, total of both.

check-leak-check = Leak check after start
check-leak-check-fails = Mark the place, recover, repair, test with nitrogen and check again. Search with a detector made for the gas or with bubbles, never with a flame.

check-co2e = Carbon-dioxide equivalent
check-co2e-fails = Write on the label what the law asks for, enter the next leak check in the log-book, and fit leakage detection where it is prescribed.

check-thresholds = Leak-repair rules
check-thresholds-fails = Write the full charge (label, or factory charge and what was weighed in). Under a rule the leak rate is worked out at every addition, and records are kept.

check-leak-rate = Leak rate
check-leak-rate-fails = Find and repair the leak within 30 days, verify the repair at once and again after the system has run, and keep the records.

check-records = Records the law asks for
check-records-fails = Write what is missing; what the job file has no key for belongs into its notes or the operator's log-book.
