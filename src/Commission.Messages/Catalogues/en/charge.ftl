### Charge: temperature differences of the running circuit, and a valve that hunts.

## A temperature difference

condenser-split = The condenser split
condenser-split-high-next = Clean the condenser, check its fan and that hot air does not come back to it; then make the standing test for air in the circuit.
condenser-split-low-next = See the diagnosis: low charge, low load and cold weather look alike here.
condenser-split-receiver = head-pressure control decides where a receiver system condenses

evaporator-split = The evaporator split
evaporator-split-high-next = Check airflow, filter and coil first, then the diagnosis.
evaporator-split-low-next = Check the airflow and whether the compressor pumps, then the diagnosis.

drier-drop = The drop across the drier
drier-drop-high-next = Replace the drier and read again before the charge is touched.
drier-drop-low-next = Swap the two clamps and read again: the line cannot warm up inside a drier.

approach = The approach
approach-high-next = See the diagnosis; clean the condenser before refrigerant is added.
approach-low-next = See the diagnosis before refrigerant is removed.
approach-no-limit = no maker's figure is written

evaporator-superheat = Superheat at the evaporator
evaporator-superheat-high-next = Open the valve a little, or look for a restriction or low charge before it.
evaporator-superheat-low-next = Close the valve a little; check that its bulb is tight and insulated.

compressor-superheat = Superheat at the compressor
compressor-superheat-high-next = Insulate the suction line and look for low charge; hot suction gas overheats the compressor.
compressor-superheat-low-next = Liquid may come back: check the valve, the defrost and the load before it runs on.

# $what (message) - the difference
# $value (quantity) - what it was
# $time (text) - when it was read
difference-was = { $what } was { $value } at { $time }.

# $what (message) - the difference
# $value (quantity) - what it was
# $time (text) - when it was read
# $why (message) - why it is not judged, without a full stop
difference-not-judged = { $what } was { $value } at { $time } and is not judged: { $why }.

# $what (message) - the difference
# $value (quantity) - what it was
# $time (text) - when it was read
# $limit (text) - what is asked for
difference-asked = { $what } was { $value } at { $time }; { $limit } is asked for.

difference-none-next = Take the reading beside the others.
difference-no-limit = nobody sets a limit for this system

# $band (text) - the band
# $source (text) - for what it is usual
# $mark (text) - where it comes from
usual-band = usual is { $band }, { $source } ({ $mark })

## A valve that hunts

# $low (quantity) - lowest superheat
# $high (quantity) - highest superheat
superheat-swung = superheat swung between { $low } and { $high } in the settled readings

# $superheat (quantity) - the last superheat
# $time (text) - when it was read
# $swing (message) - how far it swung
valve-hunts = The valve held { $superheat } of superheat at { $time }, but { $swing }.

## What was not told of the charging

# $refrigerant (name) - a zeotropic blend
phase-not-written = it is not written whether { $refrigerant } left the cylinder as liquid
phase-not-written-next = Find out how the refrigerant left the cylinder, as liquid or as vapor: how the cylinder stood, and whether it has a dip tube.
throttled-not-written = it is not written whether the liquid was throttled into the vapor side
throttled-not-written-next = Find out whether the liquid went in throttled, through a nearly closed valve or a charging adapter.
line-length-not-known-next = Measure the liquid line, and look up in the manual what length the factory charge covers.
as-found-not-read = the readings before the work are not written
as-found-not-read-next = Take from the crew's notes what was read before refrigerant was touched.

## Carbon dioxide above its critical point

gas-cooler-next = Compare the controller's set point with the maker's curve for this outlet temperature, look at the high-pressure valve and at the gas cooler's fans; change no charge on this number.

## A log of the running system

# $length (duration) - how long the log was looked at
# $change (quantity) - change of superheat over that time
# $low (quantity) - lowest superheat beside the straight line
# $high (quantity) - highest superheat beside it
log-superheat-change = Over the last { $length } of the log superheat changed by { $change }, and beside that it kept between { $low } and { $high }.
log-superheat-moving = superheat was still moving in the log

# $length (duration) - how long the log was looked at
# $change (quantity) - change of subcooling over that time
# $low (quantity) - lowest subcooling beside the straight line
# $high (quantity) - highest subcooling beside it
log-subcooling-change = Over the last { $length } of the log subcooling changed by { $change }, and beside that it kept between { $low } and { $high }.
log-subcooling-moving = subcooling was still moving in the log

log-stopped = the power shows that the compressor stopped in the minutes before the reading
log-ran-through = The power shows that the compressor ran through the minutes before the reading.
log-still-moving-next = Wait until it stands still and read again.

## Figures

# $bars (choice: seen, hidden) - whether U of the readings can be seen
# $shade (choice: drawn, none) - whether what a limit allows is shaded
charge-time-caption =
    { $bars ->
        [seen] Each reading with its U
       *[hidden] The readings as they followed each other
    }{ $shade ->
        [drawn] ; the shaded part is what the limit of the judged reading allows.
       *[none] .
    }

# $refrigerant (name) - what is in the circuit
# $time (text) - when the states were read
# $bars (choice: seen, hidden) - whether U of the pressures can be seen
pressure-enthalpy-caption =
    Saturation dome of { $refrigerant }, lines of constant temperature and the states at { $time }: vapor at the service valve, ideal compression, liquid at the service valve, throttled.{ $bars ->
        [seen] {" "}Bars are U of the pressures.
       *[hidden] {""}
    }

## The cycle through the measured states

# $time (text) - when it was read
# $gas (name) - the refrigerant
# $heat (quantity) - heat taken up per mass
# $ratio (quantity) - high over low pressure, both absolute
# $high (choice: discharge, liquid-valve) - where the high pressure was read
# $ideal (quantity) - temperature after an ideal compression
cycle =
    At { $time } { $gas } took up { $heat } at a ratio of { $ratio } from the pressure at the vapor service valve to the one { $high ->
        [discharge] at the compressor's discharge
       *[liquid-valve] at the liquid service valve
    }; an ideal compressor would discharge at { $ideal }.

## The air side before the charge

prerequisites-nothing = nothing of the air side is written
prerequisites-temperatures-only = of the air side only temperatures are written, which show no airflow here: filter, coil, panels and blower are not written
prerequisites-next = Write filter, coil, panels and blower, and measure the airflow or the temperature split.
