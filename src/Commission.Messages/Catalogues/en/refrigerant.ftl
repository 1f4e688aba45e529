### Refrigerant: what a cylinder holds, whether the gas belongs into the unit, what went in and out.

## Cylinder fill

# $gases (list) - the refrigerants in the cylinder
fill-density-unknown = the density of liquid { $gases } is not known here
fill-density-unknown-next = Ask the supplier for the largest fill of this refrigerant and compare by hand.

# $gases (list) - the refrigerants in the cylinder
# $lightest (name) - the lightest of them
fill-mixed = { $gases } in one cylinder: judged by the lightest, { $lightest }. A mixture is only taken back for destruction.

# $cylinder (text) - the cylinder
# $mass (quantity) - what it is written to hold
# $full (quantity) - what fills it with liquid at 25 °C
# $gas (name) - the refrigerant
fill-cannot-be = { $cylinder } is written to hold { $mass }, but { $full } of { $gas } fill it with liquid at 25 °C (77 °F). That cannot be, unless the cylinder is about to burst.
fill-cannot-be-next = Keep the cylinder away from heat and sun, and weigh it again: check tare, water capacity and weight. If they are right, move part of it into an empty cylinder at once.

# $share (quantity) - volume of the liquid at 25 °C over the cylinder's
# $limit (quantity) - the share that is common practice
fill-above-eighty = Liquid fills { $share } of it at 25 °C; elsewhere { $limit } is the practice: keep it cool.

# $cylinder (text) - the cylinder
# $mass (quantity) - what it holds
# $gas (name) - the refrigerant
# $ratio (quantity) - mass over water capacity
# $most (quantity) - the filling ratio for transport
fill-ratio = { $cylinder } holds { $mass } of { $gas }, { $ratio } of its water capacity by mass; { $most } is allowed for transport.

# $ratio (quantity) - the filling ratio for transport
fill-limit-ratio = at most { $ratio } of the water capacity by mass
fill-step-volume = volume of the liquid at 25 °C
fill-step-ratio = largest filling ratio
fill-capacity-unknown = the water capacity is not written
fill-capacity-unknown-next = Write the water capacity (WC) stamped on the cylinder.
fill-content-unknown = what the cylinder holds cannot be known
fill-content-unknown-next = Write the cylinder's tare and its gross mass after the work.

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
identity-changed = Changed from { $from } to { $to }. The new refrigerant burns no more easily, and the unit is built for its pressure.

identity-from-unknown = it is not written which refrigerant the unit is built for
identity-from-unknown-next = Say which refrigerant was taken out, which one is in the circuit now, and what the plate says.

# $gas (name) - the refrigerant charged
# $group (name) - its safety group
# $plate (name) - the safety class the unit is built for
identity-burns = { $gas } is of group { $group }, but the unit is built for { $plate }: nothing in it is made for a gas that burns so easily.
identity-burns-next = Do not run the unit. Keep sparks away, ventilate, recover the refrigerant, and charge one that the unit is built for.

# $gas (name) - the refrigerant charged
# $pressure (quantity) - its saturation pressure at the temperature of a hot condenser
# $hot (quantity) - that temperature
# $built (quantity) - what the unit is built for
identity-bursts = { $gas } reaches { $pressure } when it condenses at { $hot }, and the unit is built for { $built }: it may burst.
identity-bursts-next = Stop the unit, recover the refrigerant, and charge one that the unit is built for.

# $gas (name) - the refrigerant charged
# $built (quantity) - what the unit is built for
identity-pressure-near = with a hot condenser the pressure of { $gas } is a little above the { $built } the unit is built for
identity-pressure-near-next = Have the maker confirm the refrigerant, and set the high-pressure switch by the plate.
identity-step-hot = saturation pressure at a hot condenser, and what the unit is built for

# $hot (quantity) - temperature of a hot condenser
identity-step-hot-formula = (p_bubble + p_dew) / 2 at { $hot }

# $gas (name) - the refrigerant charged
identity-pressure-unknown = the pressure of { $gas } is not known here
identity-pressure-unknown-next = Look up its pressure at 125 °F in the supplier's table and compare it with the plate.

# $plate (name) - the refrigerant on the plate
# $gas (name) - the refrigerant charged
identity-differs = The plate says { $plate }, the circuit is charged with { $gas }, and no change of refrigerant is written.
identity-differs-next = If the refrigerant was changed on purpose, say from which and to which. If not, recover it all, evacuate, and charge what the plate says.

# $to (name) - what the change was to
# $gas (name) - the refrigerant of the circuit
identity-change-differs = The change was to { $to }, but { $gas } is written for the circuit.
identity-change-differs-next = Correct the one that is wrong.

## Identity: cylinders

# $cylinder (text) - the cylinder
# $gas (name) - what is in it
identity-cylinder-same = { $cylinder } holds { $gas }, as the circuit does.

# $cylinder (text) - the cylinder
# $gas (name) - what is in it
# $circuit (name) - the refrigerant of the circuit
identity-cylinder-differs = Refrigerant went in from { $cylinder }, which holds { $gas }; the circuit holds { $circuit }.
identity-cylinder-differs-next = Read the cylinder's label again. If it is right, the charge is a mixture: recover it all, evacuate, and weigh in the right refrigerant.

## Identity: gas that came out of the circuit and went back

# $cylinder (text) - the cylinder
identity-back-acid = the acid test was bad, and gas from the recovery cylinder { $cylinder } went back in: acid and soot go with it.
identity-back-acid-next = Stop the unit and recover the charge. Send it away, clean up the circuit, and charge new or reclaimed refrigerant.

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

leak-check-free-in-residence = it is hermetically sealed, stands in a residential building and holds less than 3 kg

# $tonnes (number) - charge of Annex I gases, t CO2e
# $least (count) - from how many tonnes on a check is owed
leak-check-below-tonnes = { $tonnes } t CO2e is below { $least } t

# $tonnes (number) - charge of Annex I gases, t CO2e
# $least (count) - from how many tonnes on a check is owed
# $mass (number) - charge of Annex II gases, kg
# $least-mass (count) - from how many kilograms on a check is owed
leak-check-below-both = { $tonnes } t CO2e is below { $least } t, and { $mass } kg of Annex II gas is below { $least-mass } kg

# $tonnes (number) - charge of Annex I gases, t CO2e
# $step (count) - the step it reaches, t
leak-check-reaches-tonnes = { $tonnes } t CO2e reaches { $step } t

# $mass (number) - charge of Annex II gases, kg
# $step (count) - the step it reaches, kg
leak-check-reaches-mass = { $mass } kg of Annex II gas reaches { $step } kg

# $why (message) - why the law asks for none, without a full stop
leak-check-not-prescribed = No regular leak check is prescribed: { $why }.
leak-check-below-triggers = below the first step of both triggers

# $months (count) - longest time between checks
# $detection (choice: with, without) - whether a leak detection system halves the number of checks
# $because (message) - which trigger governs, without a full stop
leak-check-due =
    { $detection ->
        [with] A leak check is due every { $months } months, with leakage detection
       *[without] A leak check is due every { $months } months
    }: { $because }.
leak-check-detection-prescribed = A leak detection system is prescribed.
leak-check-detection-next = Fit a leak detection system that alerts the operator; it is prescribed for this charge.
leak-check-triggers = both triggers were looked at: tonnes of Annex I gases, kilograms of Annex II gases
subject-leak-checks = leak checks

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

# $why (message) - why the law asks for no leak checks, without a full stop
leak-recheck-not-owed = No second check after the repair is prescribed: { $why }.
leak-recheck-unknown = the repair was not checked again yet; whether the law asks for it depends on the charge, which is not known
leak-recheck-hours-unknown = how long the system had run is not written
leak-recheck-hours-unknown-next = Write how long the system had run.

# $on (date) - the day of the check
# $ran (text) - how long the system had run
leak-recheck-done-after = Checked again on { $on }, after { $ran } of running.

# $on (date) - the day of the check
leak-recheck-done = Checked again on { $on }.

# $on (date) - the day of the check
# $by (date) - the latest day
leak-recheck-late = The check after the repair is dated { $on }; it had to be made between the repair and { $by }.
leak-recheck-late-next = Check the repair again now, and note in the log-book why it was not in time.
leak-recheck-latest = latest day of the check
leak-recheck-latest-formula = repair + time allowed
subject-after-repair = after repair

# $date (date) - day of the repair
# $months (text) - the time allowed, as its source writes it
leak-recheck-span = { $date } + { $months }

## Records

# $why (message) - why the law asks for no leak checks, without a full stop
records-not-prescribed = The law asks for no record of this equipment: { $why }.
records-kind = what a regulation wants kept

# $items (list) - what was looked for
records-complete = Everything looked for is in this record: { $items }.

# $items (list) - what the record does not hold
records-missing = Not in this record: { $items }.
records-step = what is kept

# $items (list) - what the record holds
records-items = { $items }

# $written (count) - how many of them the record holds
# $count (count) - how many were looked for
records-step-result = { $written } of { $count } in this record

## What is looked for; the letters are those of article 7(1) of Regulation (EU) 2024/573

record-eu-quantity = (a) quantity and type of gas
record-eu-added-new = (a) quantity added during installation
record-eu-added = (b) quantity added, with its date
record-eu-recovered = (c) quantity recovered
record-eu-origin = (d) whether the gas is virgin, recycled or reclaimed
record-eu-facility = (d) name and address of the recycling or reclamation facility
record-eu-facility-certificate = (d) its certificate number
record-eu-undertaking = (e) undertaking
record-eu-undertaking-certificate = (e) certificate of the undertaking
record-eu-person = (e) person who did the work
record-eu-person-certificate = (e) certificate of the person
record-eu-leak-check = (f) leak check with date and result
record-eu-leak-place = (f) leak repair: where the leak was
record-eu-destination = (g) where the recovered gas goes
record-owner = owner or operator
record-appliance = appliance
record-location = its location
record-full-charge = full charge and how it was determined
record-person = person who did the work
record-verification = verification of the repair or leak check
record-installed = date of installation
record-amount = amount added or removed
record-parts = parts serviced
record-last-addition = date of the last addition, for the leak rate
record-installer = installer
record-model = model
record-serial = serial number
record-charge = charge
record-allowable-low = allowable pressure, low side
record-allowable-high = allowable pressure, high side
record-electrical = electrical data
record-logbook = log-book
record-strength = strength test
record-tightness = tightness test
record-vacuum = vacuum
record-devices = test of safety devices

## Refrigerants in service

# $gas (name) - what went in
# $potential (number) - its warming potential
use-free = { $gas } has a GWP of { $potential }: no ban covers it.

# $gas (name) - what went in
# $potential (number) - its warming potential
# $reach (number) - the potential from which the ban reaches a gas
use-exempt = { $gas } has a GWP of { $potential }; the ban starts at { $reach }, but this equipment is exempt.

# $gas (name) - what went in
# $cylinder (text) - the cylinder it came from
# $kind (choice: reclaimed, recycled, recovered) - what it is
# $until (date) - the day from which that is banned, too
use-second-hand =
    { $kind ->
        [reclaimed] Reclaimed { $gas } went in from { $cylinder }: it may be used before { $until }.
        [recycled] Recycled { $gas } went in from { $cylinder }: it may be used before { $until }.
       *[recovered] Recovered { $gas } went in from { $cylinder }: it may be used before { $until }.
    }

# $gas (name) - what went in
# $cylinder (text) - the cylinder it came from
# $kind (choice: reclaimed, recycled, recovered) - what it is
use-second-hand-always =
    { $kind ->
        [reclaimed] Reclaimed { $gas } went in from { $cylinder }: that may be used.
        [recycled] Recycled { $gas } went in from { $cylinder }: that may be used.
       *[recovered] Recovered { $gas } went in from { $cylinder }: that may be used.
    }
use-label = batch number and reclamation facility are not written; the cylinder's label has to name them
use-label-next = Read the cylinder's label: batch number, name and address of the reclamation facility.

# $gas (name) - what went in
use-own = recycled { $gas } may only be used by the undertaking that recovered it in service, or for which it was recovered
use-own-next = Note where the gas was recovered, and by whom.

# $gas (name) - what went in
# $potential (number) - its warming potential
# $reach (number) - the potential from which the ban reaches a gas
# $since (date) - first day of the ban
use-banned = { $gas } has a GWP of { $potential }. Since { $since } gas of GWP { $reach } or more may not go into such equipment in service.

# $gas (name) - what went in
# $potential (number) - its warming potential
# $reach (number) - the potential from which the ban reaches a gas
# $since (date) - first day of the ban
# $until (date) - the day from which reclaimed and recycled gas is banned, too
use-banned-until = { $gas } has a GWP of { $potential }. Since { $since } gas of GWP { $reach } or more may not go into such equipment in service. Reclaimed or recycled gas is exempt before { $until }.
use-banned-next = Recover it. Charge reclaimed gas with its label where that is still allowed, or change the system to a refrigerant of lower GWP.
use-step-ban = ban

# $reach (number) - the potential from which the ban reaches a gas
# $since (date) - first day of the ban
use-step-ban-from = from { $reach } since { $since }

# $paragraph (name) - the paragraph of the regulation
use-step-ban-article = article { $paragraph }

# $cylinder (text) - the cylinder
use-kind-unknown = it is not written whether { $cylinder } holds virgin, recycled or reclaimed gas
use-no-cylinder = no cylinder is described, and the answer depends on whether the gas was virgin, recycled or reclaimed
use-kind-unknown-next = Write what the cylinder's label says.

# $cylinder (text) - the cylinder
use-recovered = gas from { $cylinder } went back as it was recovered; the law wants it recycled or reclaimed first
use-recovered-next = Clean the gas through filter and drier before it goes back, or charge reclaimed or new gas. If it was cleaned on site, say so.

## Acid and the driers that take it up

acid-gone = The last test after the work showed no acid.
acid-not-tested = Acid was found before the work, and no test after it is written.
acid-not-tested-why = it is not shown that the acid is gone
acid-not-tested-next = Test the oil or the gas after some hours of running, and write the result.

# $found (text) - the result as written
acid-left = Still acid after the work: { $found }. It will be tested again.

# $by (date) - day of the next test
acid-again-by = acid is left, and the next test is due by { $by }

# $by (date) - day of the next test
acid-again-next = Test again by { $by }; change the driers if it is still acid.

# $found (text) - the result as written
acid-no-date = Still acid after the work: { $found }, and no next test is planned.
acid-no-date-why = acid is left, and no further test is planned

# $by (date) - day by which it comes out
suction-drier-dated = The suction drier cleans up the circuit and comes out by { $by }.

# $by (date) - day by which it comes out
suction-drier-out = Take the suction drier out by { $by }, and test the oil then.

# $by (date) - the day written
suction-drier-past = The suction drier was to come out by { $by }, before this work.
suction-drier-undated = A suction drier was fitted to clean up the circuit, and no date is written for taking it out.
suction-drier-undated-why = nobody has a date for taking the suction drier out

## Oil

subject-oil-kind = kind
subject-oil-left = old oil left

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
oil-left-too-much = { $share } of the old oil is left; { $limit } is allowed.
oil-left-next = Run it for a day, drain and fill again, and measure what is left. Each change leaves about a tenth to a fifth of the old.

## What somebody put in before

additives-kind = what was found before the work
sealant-found = Leak sealant was found in the circuit: it hardens where moisture reaches it, in hoses, instruments and the recovery machine.
dye-found = Leak dye was found in the circuit.
additives-none = Neither sealant nor dye was found.

# $cylinder (text) - the cylinder
sealant-back = Leak sealant was found in the circuit, and gas from the recovery cylinder { $cylinder } went back in.

## The ledger

# $net (quantity) - what the cylinders gave less what they took, with its uncertainty
ledger-net = Net out of the cylinders: { $net }; what stayed in hoses is not in the circuit.

# $in (quantity) - what the cylinders gave
# $out (quantity) - what they took
# $net (quantity) - the difference
ledger-in-and-out = In { $in }, out { $out }: net { $net } out of the cylinders.

# $movements (list) - what was done with it: charged, recovered
ledger-mass-not-written = the mass { $movements } is not written
ledger-mass-not-written-next = Write the mass, or the cylinder's gross mass before and after.

# $movements (list) - what was done with it: charged, recovered
ledger-no-cylinder = No cylinder is named for what was { $movements }.
ledger-agrees = Cylinders and scale agree.

# $cylinder (text) - the cylinder
# $difference (quantity) - between what it lost and what was weighed
ledger-differs = For { $cylinder } cylinder and scale differ by { $difference }, more than the weighing explains.
ledger-step-net = net out of the cylinders
ledger-step-net-formula = Σ in − Σ out

# $cylinder (text) - the cylinder
ledger-step-agreement = agreement for { $cylinder }

# $limit (text) - the limit as printed
ledger-limit = E_n { $limit }
ledger-rounding = rounding
ledger-rounding-source = half a gram
ledger-last-digit = last digit of the cylinder's mass
ledger-last-digit-source = smallest step of the number as written
ledger-title = Refrigerant in and out
ledger-not-weighed = not weighed
ledger-column-time = Time
ledger-column-what = What
ledger-column-cylinder = Cylinder
ledger-column-contents = Contents
ledger-column-before = Before
ledger-column-after = After
ledger-column-in = In
ledger-column-out = Out

## What was not told of leak check and cylinder

# $day (date) - the day of the check
leak-check-leak = The check of { $day } found a leak.

# $state (choice: repaired, tight) - whether a leak was repaired before
# $day (date) - the day of the check
# $method (text) - how it was searched
leak-check-none =
    { $state ->
        [repaired] No leak was left
       *[tight] No leak was found
    } on { $day }; searched with: { $method }.

# $state (choice: repaired, tight) - whether a leak was repaired before
# $day (date) - the day of the check
# $method (text) - how it was searched
# $sensitivity (text) - the smallest leak the detector shows, as written
leak-check-none-from =
    { $state ->
        [repaired] No leak was left
       *[tight] No leak was found
    } on { $day }; searched with: { $method }, from { $sensitivity } on.

# $state (choice: repaired, tight) - whether a leak was repaired before
# $day (date) - the day of the check
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
leak-check-indirect = it was checked only indirectly, from readings
leak-check-indirect-next = Check the joints directly, with bubbles or a detector.
leak-check-repaired = a leak was repaired; the repair has to be checked again after the system has run
leak-check-repaired-next = Check the repair again within a month, after a day of running.
subject-next-check = next check
leak-check-step-next = next leak check
leak-check-step-formula = date + interval

# $date (date) - day of the check
# $months (count) - the interval
leak-check-step-numbers = { $date } + { $months } months
leak-check-below-first = below the first step

# $last (date) - the last day it is due
# $because (message) - why that often, without a full stop
leak-check-next-due = The next leak check is due by { $last }: { $because }.
leak-check-next-not-written = no date is written in the job

# $day (date) - the day that is written
leak-check-next-last-day = The next leak check is written for { $day }, the last day it is due.

# $day (date) - the day that is written
# $last (date) - the last day it is due
leak-check-next-in-time = The next leak check is written for { $day }; it is due by { $last }.

# $day (date) - the day that is written
# $last (date) - the last day it is due
# $because (message) - why that often, without a full stop
leak-check-next-late = The next leak check is written for { $day }, but it is due by { $last }: { $because }.
leak-check-next-late-next = Enter the earlier date in the log-book.

# $added (quantity) - what had to be added
# $days (count) - days since refrigerant was last added
# $rate (quantity) - the rate, as a share of the charge in a year
leak-rate-said =
    { $days ->
        [one] { $added } in { $days } day: { $rate } of the charge in a year
       *[other] { $added } in { $days } days: { $rate } of the charge in a year
    }

# $added (quantity) - what had to be added
# $days (count) - days since refrigerant was last added, more than a year
# $rate (quantity) - the rate, as a share of the charge
leak-rate-said-longer = { $added } in { $days } days, { $rate } of the charge (more than a year counts as one)

# $said (message) - what was added in how long
leak-rate-told = { $said }.

# $said (message) - what was added in how long
# $rule (name) - the rule that sets the trigger
leak-rate-below = { $said }; that is below the trigger of { $rule }.

# $said (message) - what was added in how long
# $rule (name) - the rule that sets the trigger
leak-rate-above = { $said }; that is above the trigger of { $rule }.
leak-rate-no-addition = it is not written when refrigerant was last added
leak-rate-no-addition-next = Take from the log-book when refrigerant was last added.
leak-rate-mass-not-written = the mass added is not written
leak-rate-mass-not-written-next = Write the scale readings, or the mass added.
leak-rate-none-added = No more went in than came out: by weight nothing was lost since the last time.
leak-rate-none-added-why = no refrigerant was added
leak-rate-not-before = the previous addition is not before the day of the job
leak-rate-not-before-next = Correct the date of the previous addition.
leak-rate-no-trigger = no pack sets a trigger
leak-rate-no-rule = the circuit falls under no leak-repair rule
leak-rate-step = leak rate

## The charge as tonnes of carbon dioxide, and the rules that hang on the full charge

# $charge (message) - why the charge cannot be known, without a full stop
co2e-no-charge = the charge cannot be known: { $charge }
co2e-no-charge-next = Write how the unit arrived, its factory charge and what was weighed in.

# $gas (name) - the refrigerant
co2e-no-potential = the warming potential of { $gas } is not known here
co2e-no-potential-next = Take it from the cylinder's label or the regulation's annex.

# $tonnes (number) - the equivalent
tonnes = { $tonnes } t CO2e

# $tonnes (number) - the equivalent
# $doubt (number) - its expanded uncertainty
tonnes-doubtful = { $tonnes } ± { $doubt } t CO2e

# $mass (number) - the equivalent, where it is small
kilograms = { $mass } kg CO2e

# $mass (quantity) - the charge
# $gas (name) - the refrigerant
# $equivalent (message) - the equivalent
# $potential (number) - warming potential by AR4
co2e-told = { $mass } of { $gas } equal { $equivalent } (AR4, GWP { $potential }).

# $mass (quantity) - the charge
# $gas (name) - the refrigerant
# $equivalent (message) - the equivalent
# $potential (number) - warming potential by AR4
# $european (message) - the equivalent as the European Union counts it
# $european-potential (number) - the warming potential as the European Union counts it
co2e-told-european = { $mass } of { $gas } equal { $equivalent } (AR4, GWP { $potential }); as the European Union counts it { $european } (GWP { $european-potential }).

# $mass (quantity) - the charge
# $gas (name) - the refrigerant
# $equivalent (message) - the equivalent
# $potential (number) - warming potential by AR4
co2e-told-natural = { $mass } of { $gas } equal { $equivalent } (AR4, GWP { $potential }); it is no fluorinated gas of the European regulation.
co2e-kind = a number for label and log-book
co2e-kind-as-written = a number for label and log-book, from the charge as written on the unit
co2e-step = carbon-dioxide equivalent, AR4
co2e-step-european = carbon-dioxide equivalent, European Union
co2e-step-potential = warming potential as the European Union counts it
co2e-step-potential-formula = Σ share × GWP
co2e-step-annex-one = charge of Annex I gases (HFC)
co2e-step-annex-one-formula = charge × Σ share × GWP / 1000
co2e-step-annex-two = charge of Annex II section 1 gases (HFO)
co2e-step-annex-two-formula = charge × share
full-charge-not-written = the full charge is not written
full-charge-not-written-next = Write the factory charge, or the total on the label.
potential-unknown = the warming potential is not known here
potential-unknown-next = Take it from the regulation's tables.

# $rule (name) - the rule
# $facts (list) - what it follows from
thresholds-rule = The circuit falls under { $rule }: { $facts }. The leak rate is worked out at every addition.

# $facts (list) - what it follows from
thresholds-none = The circuit falls under no leak-repair rule: { $facts }.
thresholds-kind = what the rules count

# $mass (quantity) - the full charge
fact-full-charge = full charge { $mass }

# $potential (number) - warming potential
fact-potential = GWP { $potential }
fact-ozone = ozone-depleting
fact-no-ozone = not ozone-depleting
fact-subsector = residential and light-commercial air conditioning or heat pump

## Recovery before opening

# $held (text) - how long, as written
recovery-held = The level held for { $held }.
recovery-held-not-written = How long the level held is not written.

# $gas (name) - what was recovered
recovery-class-unknown = the pressure class of { $gas } cannot be worked out
recovery-class-unknown-next = Take the level from 40 CFR 82.156 table 1 and compare by hand.
recovery-charge-unknown = the level depends on whether the full charge is 200 lb or more, and no charge is written
recovery-charge-unknown-next = Write the factory charge or the mass recovered.
recovery-step-level = level required
recovery-step-level-formula = table 1 by pressure class and full charge

# $parts (list) - pressure class, full charge, age of the recovery machine
recovery-step-level-numbers = { $parts }
recovery-charge-below = full charge below 200 lb
recovery-charge-from = full charge at least 200 lb
recovery-machine-old = machine built before 15 November 1993

# $class (choice: very-high, high, medium, low) - pressure class of an appliance
recovery-class =
    { $class ->
        [very-high] very high pressure
        [high] high pressure
        [medium] medium pressure
       *[low] low pressure
    }
recovery-step-class = liquid saturation pressure at 104 °F

# $class (message) - the pressure class
recovery-step-class-critical = critical below 104 °F: { $class }

# $pressure (quantity) - saturation pressure
# $class (message) - the pressure class
recovery-step-class-pressure = { $pressure }: { $class }

# $level (message) - the level as the regulation words it
# $pressure (quantity) - the same as an absolute pressure
recovery-level = { $level } ({ $pressure })

# $level (message) - the level required
recovery-limit = at most { $level }

# $zero (quantity) - no pressure above the atmosphere
recovery-limit-leaking = at most { $zero } (a circuit that leaks)

# $zero (quantity) - no pressure above the atmosphere
# $level (message) - the level as the regulation words it
recovery-limit-atmosphere = at most { $zero } (the level of { $level })

# $reached (text) - the pressure as written
# $level (message) - the level required
recovery-reached = Recovered to { $reached }; { $level } is required.

# $reached (text) - the pressure as written
# $level (message) - the level required
recovery-missed = Recovered to { $reached } only; { $level } is required.

# $reached (quantity) - the pressure over the atmosphere
recovery-leaking-reached = Recovered to { $reached }; a circuit that leaks has to come down to the pressure of the atmosphere.

# $reached (quantity) - the pressure over the atmosphere
recovery-leaking-missed = Recovered to { $reached } only; a circuit that leaks has to come down to the pressure of the atmosphere.

# $reached (quantity) - the pressure over the atmosphere
# $level (message) - the level as the regulation words it
recovery-atmosphere-reached = Recovered to { $reached }; the level of { $level } is the pressure of the atmosphere.

# $reached (quantity) - the pressure over the atmosphere
# $level (message) - the level as the regulation words it
recovery-atmosphere-missed = Recovered to { $reached } only; the level of { $level } is the pressure of the atmosphere.
recovery-step-share = share recovered
recovery-step-share-formula = mass recovered / factory charge

# $share (quantity) - what was recovered of the charge
recovery-share-reached = { $share } of the charge of a small appliance was recovered.

# $share (quantity) - what was recovered of the charge
recovery-share-missed = Only { $share } of the charge of a small appliance was recovered.

## The label on the unit

# $faults (message) - what does not fit
label-wrong = The label does not fit: { $faults }.

# $first (message) - one thing that does not fit
# $more (message) - what else does not
label-faults = { $first }; { $more }

# $written (text) - the refrigerant on the label
# $gas (name) - the refrigerant of the circuit
label-other-gas = it says { $written }, the circuit holds { $gas }
label-not-on-unit = it is not on the unit

# $written (text) - the potential on the label
# $known (list) - the potentials that are published
label-other-potential = it gives GWP { $written }, known are { $known }

# $labelled (text) - the mass on the label
# $weighed (text) - the plate's
label-other-factory = it gives a factory charge of { $labelled }, the nameplate { $weighed }

# $labelled (text) - the mass on the label
# $weighed (quantity) - by weight
label-other-added = it gives { $labelled } added, the scale { $weighed }

# $labelled (text) - the mass on the label
# $weighed (quantity) - by weight
label-other-total = it gives a total of { $labelled }, by weight it is { $weighed }

# $labelled (text) - the total on the label
# $factory (text) - the factory charge on the label
# $added (text) - the charge added on the label
label-other-sum = its total is { $labelled }, its parts are { $factory } and { $added }

# $labelled (text) - the equivalent on the label
# $tonnes (number) - what its own total and potential make
label-other-equivalent = it gives { $labelled } CO2e, its own total and GWP make { $tonnes } t
label-nothing-written = no mass is written on the label

# $why (message) - why the charge is not known, without a full stop
label-nothing-to-compare = there is nothing to compare the label with: { $why }
label-nothing-next = Write factory charge, charge added and total on the label and here.

# $mass (text) - the mass on the label
label-fits-factory = The label fits: factory charge { $mass }.

# $mass (text) - the mass on the label
label-fits-added = The label fits: { $mass } added.

# $mass (text) - the mass on the label
label-fits-total = The label fits: total { $mass }.

# $part (choice: factory, added, total, potential, equivalent) - what the law wants on the label
label-lacks =
    { $part ->
        [factory] the factory charge is not on the label
        [added] the charge added is not on the label
        [total] the total is not on the label
        [potential] GWP is not on the label
       *[equivalent] t CO2e is not on the label
    }
label-lacks-next = Complete the label and photograph it.

# $what (choice: factory, added, total, sum) - what is compared
label-step =
    { $what ->
        [factory] factory charge: label against nameplate
        [added] charge added: label against weighed
        [total] total: label against weighed
       *[sum] total on the label: against its parts
    }

# $what (choice: factory, added, total, sum) - what is compared
label-step-formula =
    { $what ->
        [factory] label − nameplate
        [sum] total − parts
       *[added] label − weighed
    }
label-step-source = agreement within U: common practice, no source
label-step-beyond = charge beyond the factory charge
label-step-beyond-formula = put in − factory charge
label-step-equivalent = carbon-dioxide equivalent on the label

# $tonnes (number) - what total and potential make
# $labelled (text) - the equivalent on the label
label-step-equivalent-result = { $tonnes } t, label { $labelled }

step-definition = definition

## Names of readings

reading-application = application
reading-zone = zone
reading-pack = pack
reading-residential = residential building
reading-detection = leak detection system
reading-changed-from = changed from
reading-found = refrigerant found
reading-acid-before = acid test before the work
reading-acid-after = acid test after the work
reading-acid-at = acid test after the work: at
reading-acid-next = next acid test
reading-acid = acid test
reading-drier = drier
reading-drier-line = line
reading-drier-replaced = replaced
reading-drier-remove = remove by
reading-cylinder = cylinder

# $cylinder (text) - the cylinder
reading-cylinder-capacity = { $cylinder }: water capacity

# $cylinder (text) - the cylinder
reading-cylinder-tare = { $cylinder }: tare

# $cylinder (text) - the cylinder
reading-cylinder-after = { $cylinder }: after

# $cylinder (text) - the cylinder
reading-cylinder-contents = { $cylinder }: contents

# $cylinder (text) - the cylinder
reading-cylinder-refrigerant = { $cylinder }: refrigerant

# $cylinder (text) - the cylinder
reading-cylinder-batch = { $cylinder }: batch

# $cylinder (text) - the cylinder
reading-cylinder-supplier = { $cylinder }: supplier

# $cylinder (text) - the cylinder
subject-charged-back = { $cylinder }, charged back
subject-plate = plate
reading-result = result
reading-method = method
reading-kind = kind
reading-check-date = date
reading-sensitivity = sensitivity
reading-next-due = next due
reading-after-repair = after repair
reading-running-for = running for
reading-previous-addition = previous addition
reading-oil = oil
reading-oil-kind = kind of oil
reading-oil-amount = amount of oil
reading-oil-left = share of the old oil left
reading-sealant = sealant
reading-dye = dye
reading-held = held
reading-leaking = leaking
reading-machine = machine made
reading-exemption = use exemption
reading-label-refrigerant = label: refrigerant
reading-label-factory = label: factory
reading-label-added = label: added
reading-label-total = label: total
reading-label-potential = label: GWP
reading-label-equivalent = label: t CO2e
reading-label-on-unit = label: on unit
reading-total-on-label = total on the label
reading-added = refrigerant added
reading-recovery-after = recovery cylinder after
reading-contents = contents
reading-supplier = supplier
reading-certificate = certificate
reading-installer = installer
reading-company-certificate = company certificate
reading-person-certificate = person certificate
reading-leak-place = leak place
reading-facility = facility
reading-owner = owner
reading-outdoor-serial = outdoor serial
reading-outdoor-model = outdoor model
reading-address = address
reading-site = site
reading-tightness = tightness hold
reading-tightness-log = tightness log
reading-start-up = start-up date
reading-failed-part = failed part
reading-notes = notes
reading-design-low = design pressure low
reading-voltage = voltage
reading-logbook = logbook
reading-strength = strength
reading-evacuation-started = evacuation started
reading-device-tripped = tripped at
reading-device-tested = tested
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
check-oil-change-fails = Drain it and fill the oil that the compressor's maker names for this refrigerant. Where oil may lie in the lines, run, drain and fill again.

check-additives = Sealant and dye
check-additives-fails = Recover through a sealant filter into a cylinder of its own, marked for destruction. Change the driers, and say so on the unit's label. Makers of compressors may refuse warranty.

check-label = Label on the unit
check-label-fails = Correct the label: factory charge from the plate, added by the scale, total of both.

check-leak-check = Leak check after start
check-leak-check-fails = Mark the place, recover, repair, test with nitrogen and check again. Search with a detector made for the gas or with bubbles, never with a flame.

check-co2e = Carbon-dioxide equivalent
check-co2e-fails = Write on the label what the law asks for, enter the next leak check in the log-book, and fit leak detection where it is prescribed.

check-thresholds = Leak-repair rules
check-thresholds-fails = Write the full charge (label, or factory charge and what was weighed in). Where a rule applies, work out the leak rate at every addition and keep records.

check-leak-rate = Leak rate
check-leak-rate-fails = Find and repair the leak within 30 days, verify the repair at once and again after the system has run, and keep the records.

check-records = Records the law asks for
check-records-fails = Write what is missing. What the job file has no key for goes into its notes or the operator's log-book.

# $gas (name) - the component
no-equation = No published equation of state for { $gas } is at hand.

# $name (name) - the refrigerant
# $gas (name) - its component without an equation
cannot-be-computed = { $name } cannot be computed: no published equation of state for { $gas } is at hand.
