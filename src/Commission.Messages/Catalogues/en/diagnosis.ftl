### The diagnosis: what all readings of the running circuit say together, in one or two sentences, and the next step.

# $evidence (list) - readings with their values and places
# $cause (text) - the cause in the trade's words
concluded = { $evidence }: this is { $cause }.

# $evidence (list) - readings with their values and places
# $cause (text) - the likeliest cause
# $others (list) - what else it may be
# $apart (text) - the reading that tells them apart
ranked = { $evidence }: most likely { $cause }, or else { $others }. What tells them apart: { $apart }.

# $readings (list) - readings with their values
sound = { $readings }: as it should be. Nothing speaks against the charge.

# $readings (list) - readings with their values
# $others (list) - what these readings do not exclude
# $apart (text) - the reading that would tell
sound-but-open = { $readings }: nothing clearly wrong. These readings do not exclude { $others }; what would tell: { $apart }.

# $evidence (list) - readings with their values and places
# $cause (text) - the condition of the moment
condition = { $evidence }: this is { $cause }, in which the charge cannot be told.

# $why (text) - why the readings count for nothing, without a full stop
none = No diagnosis: { $why }.

# $why (text) - why it is charged by weight, without a full stop
by-weight = The charge stands by its weight, which is judged beside: { $why }. Readings are not used to set it.

# $why (text) - the contradiction, without a full stop
impossible = The readings cannot be right together: { $why }.
impossible-next = Read again what is named: a swapped hose or clamp, a wrong zero, another refrigerant than the one written, a slip of the pen.

# $low (quantity) - lowest superheat
# $high (quantity) - highest superheat
hunting = Superheat swings between { $low } and { $high } while nothing else changed: the valve hunts, and no single reading shows where it holds.
hunting-next = Check the bulb's place, strap and insulation, then the valve's size and setting; judge the charge when it stands still.

# $written (text) - the refrigerant the job says is in the circuit
# $other (text) - the refrigerant that speaks against it
# $where (choice: plate, cylinder) - where the other one stands
wrong-refrigerant =
    { $where ->
        [plate] The circuit is written to hold { $written }, and the plate says { $other }: superheat and subcooling mean nothing until that is settled.
       *[cylinder] The circuit is written to hold { $written }, and { $other } was put in: superheat and subcooling mean nothing with a mixture.
    }
# $below (quantity) - how far the standing pressure lies below saturation, as a temperature
# $written (text) - the refrigerant the job says is in the circuit
rests-below = At rest the pressure lies { $below } below the saturation of { $written } although there is liquid: air can only raise it, so another refrigerant is in the circuit.

wrong-refrigerant-next = Find out what is in the circuit with a refrigerant identifier; if it is not what the plate says, recover all of it and weigh in the right one.

no-numbers = neither superheat, subcooling nor a split can be worked out from what was read
no-numbers-next = Read both pressures, both line temperatures, the outdoor air and the air in and out of the coil.
frosted = the outdoor coil was not clear of frost
frosted-next = Let it defrost and run for 10 min, then read again.
part-load = the compressor ran at part load, and a modulating compressor then shows what its control wants
part-load-next = Run it at full load or in the maker's test mode and read again.
unclear-next = Take the reading named before anything is changed.
