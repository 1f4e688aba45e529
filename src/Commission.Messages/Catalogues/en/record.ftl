### Words that stand all over a record.

## Verdicts

verdict-pass = pass
verdict-pass-within-uncertainty = pass within uncertainty
verdict-conditional = conditional
verdict-fail = fail
verdict-cannot-decide = cannot decide
verdict-not-evaluated = not evaluated
verdict-information = information

## Outcomes

outcome-accepted = accepted
outcome-accepted-with-conditions = accepted with conditions
outcome-not-accepted = not accepted
outcome-incomplete = incomplete

## Why

# $of (message) - what was judged
# $why (text) - a whole sentence
reason = { $of }: { $why }

# $of (message) - what was judged
# $why (list) - the end of a sentence
reason-without-stop = { $of }: { $why }.

# $of (message) - what was judged
# $why (list) - what has to be put right, as a line of a list
reason-cut = { $of }: { $why }

# $value (text) - the number with its uncertainty
# $limit (text) - the limit
# $chance (text) - probability of conformity
condition-near = { $value }, limit { $limit }, { $chance } of being within it

# $title (text) - name of a check
# $part (text) - the unit or circuit it is about
name-of-part = { $title } ({ $part })

## What is missing

nothing-written = not recorded

# $what (list) - what has to be shown
# $why (message) - why it could not be judged, without a full stop
# $because (message) - why it is asked for, as a phrase
# $pack (name) - the limits pack that asks for it
missing = { $what }: { $why }. Required because { $because } ({ $pack }).

# $what (list) - what has to be shown
# $why (message) - why it could not be judged, without a full stop
missing-short = { $what }: { $why }.

# $step (name) - the step that failed
# $what (list) - what comes after it
stopped-at = The work stopped at the failed step, { $step }. Still to do: { $what }.

# $what (list) - what comes after the step that failed
still-to-do = Still to do: { $what }.

# $photos (list) - what the photos have to show
# $because (message) - why they are asked for, as a phrase
# $pack (name) - the limits pack that asks for them
photos-missing = Photos missing: { $photos }. Required because { $because } ({ $pack }).

# $photos (list) - what the photos have to show
photos-missing-short = Photos missing: { $photos }.

next-tightness = Test under dry nitrogen and search every joint before the vacuum pump is set; if that was done, write gas, pressure, hold and search.
next-tightness-charged = If the nitrogen test was made, write its gas, pressure, hold and search of the joints. If not, nobody knows whether the joints are tight: recover the charge and do not put it back. Test, evacuate, hold, and weigh in clean refrigerant: the factory charge and what the lines ask for.
next-dryness = Evacuate with the gauge at the system, close the valve and watch the hold before anything is charged; if that was done, write it.
next-dryness-void-charged = The hold that is written is void. While the charge is in, search every joint and stem with a detector made for this refrigerant and with soap, the machine off. Then recover the charge and do not put it back. Evacuate, hold with all of it left alone, and weigh in clean refrigerant: the factory charge and what the lines ask for.
next-dryness-charged = If the system was evacuated and held, write the readings. If not, it may hold air and water: recover the charge and do not put it back. Evacuate, hold, and weigh in clean refrigerant: the factory charge and what the lines ask for.

## What is left for another day

# $what (text) - what is to be done then
return-visit = return visit: { $what }

# $what (text) - what is to be done then
# $least (text) - the outdoor temperature
return-visit-outdoor = return visit: { $what }, when it is at least { $least } outdoors

# $what (text) - what is to be done then
# $by (date) - the day
return-visit-by = return visit: { $what }, by { $by }

# $what (text) - what is to be done then
# $least (text) - the outdoor temperature
# $by (date) - the day
return-visit-outdoor-by = return visit: { $what }, when it is at least { $least } outdoors, by { $by }

# $shows (message) - what it will show
# $by (date) - the day
photo-follows = photo to follow: { $shows }, by { $by }

## The head of the record

site-not-named = not named

# $circuit (text) - its name
circuit-named = circuit { $circuit }

group-circuit = Circuit
group-indoor-unit = Indoor unit
group-nameplate = Nameplate
group-outdoor-unit = Outdoor unit
group-people = People
group-site = Site

# $id (text) - its name
group-indoor-unit-named = Indoor unit { $id }

label-address = Address
label-authorised-by = Authorised by
label-capacity = Capacity
label-category = Category
label-company-certificate = Company certificate
label-compressor = Compressor
label-compressor-rla = Compressor RLA
label-contact = Contact
label-covered-by-factory-charge = Covered by factory charge
label-customer = Customer
label-design-pressure-high = Design pressure high
label-design-pressure-low = Design pressure low
label-elevation = Elevation
label-factory-charge = Factory charge
label-fan-fla = Fan FLA
label-installer = Installer
label-lines = Lines
label-maker = Maker
label-max-static = Max static
label-mca = MCA
label-metering = Metering
label-model = Model
label-mop = MOP
label-name = Name
label-owner = Owner
label-person-certificate = Person certificate
label-phases = Phases
label-refrigerant = Refrigerant
label-room = Room
label-run-capacitor = Run capacitor
label-serial = Serial
label-station-pressure = Station pressure
label-technician = Technician
label-time-zone = Time zone
label-voltage = Voltage
label-witness = Witness

# $diameter (text) - outer diameter
# $length (text) - length
line-liquid = liquid { $diameter } × { $length }

# $diameter (text) - outer diameter
# $length (text) - length
line-vapor = vapor { $diameter } × { $length }

# $count (count) - how many
runs =
    { $count ->
        [one] { $count } run
       *[other] { $count } runs
    }

## Instruments

zero-taken-off = zero offset taken off
along-known-pressure = along the line through the known pressure
ice-taken-off = ice-point residual taken off
ambient-taken-off = bias toward ambient taken off

# $day (date) - when it was calibrated
# $interval (text) - how long that holds
calibrated-every = { $day }, every { $interval }

## Sources

# $refrigerant (name) - its designation
note-gas-constant = { $refrigerant }: gas constant used
note-of-equation = of the equation of state above

# $pairs (list) - pairs of components
note-estimated-pairs = estimated pairs: { $pairs }

# $rules (list) - what was taken instead
note-no-parameters = no published parameters for these pairs: { $rules }; the uncertainty is widened
note-lorentz = Lorentz–Berthelot combination
note-related-pairs = the published parameters of the related pairs that are named
note-uncertainty = uncertainty
note-uncertainty-law = law of propagation, k = t95.45(ν)
note-conformity = statements of conformity
note-conformity-rule = guarded acceptance w = U; probability of conformity

## Whose a limit is, and how well its source is known

whose-maker = maker
whose-job = job
whose-pack = pack
whose-common-practice = common practice

# $pack (name) - name of the pack
whose-named-pack = { $pack }

# $mark (choice: published, from-memory, common-practice, job, not-read) - how well the source is known
mark =
    { $mark ->
        [published] published
        [from-memory] from memory
        [common-practice] common practice
        [job] job
       *[not-read] not read
    }
