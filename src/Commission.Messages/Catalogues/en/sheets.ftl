### What commission explain, limits, refrigerants and properties print.

## A check explained

# $id (name) - id of the check
# $title (message) - its title
title-of-check = { $id }: { $title }
asks = What it asks
formula = Formula
source = Source
when-it-fails = When it fails
limits-by-pack = Limits by pack
limits-elsewhere = Limits of this check are listed by commission limits, under the ids its findings name.
in-this-job = In this job

# $subject (text) - what the finding is about
in-this-job-subject = In this job: { $subject }
nothing-in-this-job = The job holds nothing for this check.

# $value (text) - the number as printed
measured = measured { $value }

# $value (text) - the number as printed
# $coverage (text) - its uncertainty as printed
measured-with-coverage = measured { $value } ({ $coverage })

# $limit (text) - the limit as printed
# $basis (message) - whose it is
# $source (text) - where it stands
# $mark (message) - how sure that is
# $rule (choice: simple, guarded) - how it is judged
limit =
    { $rule ->
        [simple] limit { $limit }: { $basis }, { $source } ({ $mark }), simple
       *[guarded] limit { $limit }: { $basis }, { $source } ({ $mark }), guarded
    }

# $verdict (message) - the word of the verdict
verdict = verdict: { $verdict }

# $probability (text) - as printed
conformity = probability of being within the limit: { $probability }

# $ratio (text) - as printed
adequacy = tolerance over U: { $ratio }

# $reservation (text) - what was not shown
reservation = reservation: { $reservation }

# $reason (text) - why
reason = reason: { $reason }
next = next
steps = Steps
steps-values = with values
steps-result = result
steps-source = source

# $symbol (name) - symbol of the result
# $name (text) - what it stands for
step-name = { $symbol }  { $name }
budget = Uncertainty budget
budget-cause = cause
budget-distribution = distribution
budget-sensitivity = sensitivity
budget-share = share
readings = Readings
readings-name = reading
readings-written = as written
readings-place = where
readings-instrument = instrument

## Monte Carlo beside the linear result

# $trials (count) - number of trials
monte-carlo = Monte Carlo beside the linear result, { $trials } trials, in SI units

# $trials (count) - number of trials
monte-carlo-distance = Monte Carlo beside the linear result, distance to the target, { $trials } trials, in SI units
monte-carlo-estimate = estimate
monte-carlo-from = 95.45 % from
monte-carlo-to = to
monte-carlo-linear = linear
monte-carlo-sampled = Monte Carlo
monte-carlo-difference = difference

# $agrees (choice: yes, no) - whether the two agree
# $tolerance (text) - one digit of u
monte-carlo-compared =
    { $agrees ->
        [yes] They agree: estimate and u lie within { $tolerance } of each other, one digit of u (JCGM 101, 8).
       *[no] They disagree: estimate or u are more than { $tolerance } apart, one digit of u (JCGM 101, 8).
    }
monte-carlo-ends = The ends of the intervals are for information, not part of the comparison: causes with bounds make them shorter.

## Limit packs

limit-packs = Limit packs
column-pack = pack
column-title = title
column-limits = limits
column-limit = limit
column-figure = figure
column-when = when
column-rule = rule
column-source = source
column-clause = clause
column-says = says
column-mark = mark

# $name (name) - name of the pack
# $title (message) - its title
pack-title = { $name }: { $title }
follows = Follows

# $publisher (message) - who published what the pack follows
# $edition (message) - the edition
pack-edition = { $publisher }, edition { $edition }
clauses = What was read
limits = Limits
required = Required of a record

# $because (message) - what the pack gives as the reason
# $checks (list) - ids of checks
required-checks = { $because }: { $checks }

# $because (message) - what the pack gives as the reason
# $checks (list) - ids of checks
# $photos (list) - what the photos have to show
required-checks-and-photos = { $because }: { $checks }; photos: { $photos }

# $alternatives (list) - ids of checks of which one is enough
required-one-of = { $alternatives }

# $source (text) - where the figure stands
# $mark (message) - how sure that is
source-and-mark = { $source } ({ $mark })

# $source (text) - where the figure stands
# $mark (message) - how sure that is
# $note (message) - anything worth telling beside it
source-mark-and-note = { $source } ({ $mark }); { $note }

# $rule (choice: simple, guarded) - how a limit is judged
rule =
    { $rule ->
        [simple] simple
       *[guarded] guarded
    }

# $subject (name) - key of the condition
# $words (list) - its words
condition = { $subject }: { $words }

## Refrigerants

# $fluids (count) - pure refrigerants
# $blends (count) - blends that can be computed
refrigerants = { $fluids } fluids and { $blends } blends that can be computed

# $count (count) - how many
fluids = Fluids ({ $count })

# $count (count) - how many
blends = Blends ({ $count })
not-computed = Not computed
column-refrigerant = refrigerant
column-safety = safety
column-composition = composition or name
column-why = why

# $composition (text) - composition or name
# $mark (text) - how sure it is
# $source (text) - where it stands
composition = { $composition }; composition { $mark }: { $source }

# $names (list) - other names
aliases = also written { $names }

# $group (name) - the safety group
# $mark (text) - how sure it is
# $source (text) - where it stands
safety-group = safety group { $group } ({ $mark }: { $source })
safety-group-unknown = safety group not known here

# $edition (name) - AR4, AR5 or AR6
# $potential (text) - warming potential
# $mark (text) - how sure it is
# $source (text) - where it stands
warming-potential = GWP { $edition } { $potential } ({ $mark }: { $source })

# $limit (text) - kg/m³
# $mark (text) - how sure it is
# $source (text) - where it stands
lower-flammability-limit = lower flammability limit { $limit } kg/m³ ({ $mark }: { $source })
properties = Properties

# $mass (text) - g/mol
# $constant (text) - J/(mol·K)
molar-mass = molar mass { $mass } g/mol, gas constant used { $constant } J/(mol·K)

# $temperature (quantity) - critical temperature
# $pressure (quantity) - critical pressure
critical-point = critical point { $temperature }, { $pressure }

# $bubble (quantity) - bubble temperature at 101.325 kPa
# $dew (quantity) - dew temperature at 101.325 kPa
normal-boiling = boils at 101.325 kPa from { $bubble } (bubble) to { $dew } (dew)

# $bubble (text) - difference at the bubble point, K
# $dew (text) - difference at the dew point, K
# $mark (text) - how sure the list is
listed-boiling = ASHRAE 34 lists it { $bubble } K (bubble) and { $dew } K (dew) from here ({ $mark })

# $lowest (quantity) - lowest temperature
# $highest (quantity) - highest temperature
# $pressure (quantity) - highest pressure
valid-range = valid from { $lowest } to { $highest }, up to { $pressure }

# $pairs (list) - pairs of a blend whose interaction is estimated
estimated-pairs = estimated pairs, larger uncertainty: { $pairs }
papers = Papers

# $atmosphere (quantity) - pressure of the atmosphere
saturation = Saturation at an atmosphere of { $atmosphere }
column-temperature = temperature
column-bubble = bubble (subcooling)
column-dew = dew (superheat)

## The state of a refrigerant

# $name (name) - the refrigerant
# $composition (text) - composition or name
state-title = { $name } ({ $composition })

# $gauge (quantity) - pressure over the atmosphere
# $absolute (quantity) - absolute pressure
# $temperature (quantity) - temperature
state-at = { $gauge } = { $absolute }, { $temperature }

# $atmosphere (quantity) - pressure of the atmosphere
state-atmosphere = atmosphere { $atmosphere }

# $bubble (quantity) - bubble temperature
# $dew (quantity) - dew temperature
state-saturation = bubble { $bubble }, dew { $dew }

# $superheat (quantity) - superheat
state-superheat = superheat { $superheat }

# $subcooling (quantity) - subcooling
state-subcooling = subcooling { $subcooling }
state-two-phase = between bubble and dew: pressure and temperature alone do not fix the state

# $why (message) - why
state-no-saturation = no saturation at this pressure: { $why }

# $phase (choice: liquid, vapor, supercritical) - the phase
# $density (quantity) - density
state-density =
    { $phase ->
        [liquid] liquid, density { $density }
        [vapor] vapor, density { $density }
       *[supercritical] supercritical, density { $density }
    }

# $enthalpy (quantity) - enthalpy
# $entropy (number) - kJ/(kg·K)
state-enthalpy = enthalpy { $enthalpy }, entropy { $entropy } kJ/(kg·K)

# $capacity (number) - kJ/(kg·K)
# $speed (number) - m/s
state-heat-capacity = c_p { $capacity } kJ/(kg·K), speed of sound { $speed } m/s

# $reference (message) - the reference state
state-reference = enthalpy and entropy count from { $reference }
