### Evacuation: where the gauge sat, the isolated hold, what the shape of its rise says.

## Temperature: whether it was warm enough for water to leave

cold-around = around the circuit
cold-coldest-part = at the coldest part

# $temperature (text) - the lowest temperature, as written
# $where (message) - where it was read
cold-enough = { $temperature } { $where }: water could leave.

# $temperature (text) - the lowest temperature, as written
# $where (message) - where it was read
# $level (quantity) - what the circuit held at the end
# $ice (quantity) - vapor pressure of ice at that temperature
cold-no-ice-left = { $temperature } { $where }; the { $level } held at the end is less than the { $ice } that ice gives off there: none is left.

# $temperature (text) - the lowest temperature, as written
# $where (message) - where it was read
cold-ice-why = { $temperature } { $where }: water may have stayed as ice

# $temperature (text) - the lowest temperature, as written
# $where (message) - where it was read
cold-ice = { $temperature } { $where }: water may have stayed as ice.
cold-next = Warm the cold parts with heat lamps or by running indoor heat, never with a flame. Break with warm dry nitrogen. Pull down and hold again when all of it is above freezing.

cold-not-read = no temperature of the circuit is written
cold-not-read-next = Read the air around the circuit, and the coldest part of the circuit, while the pump runs.
cold-ice-pressure = vapor pressure of ice at that temperature
cold-water-pressure = vapor pressure of water at that temperature

## The gauge

gauge-not-named = the vacuum gauge is not named, so U is too small

# $gauge (name) - the vacuum gauge
gauge-accuracy-not-written = the accuracy of { $gauge } is not written, so U is too small

gauge-place-not-written = where the gauge sat is not written
gauge-on-manifold = the gauge sat on the manifold, where the pressure is lower than in the system while the pump runs
gauge-on-manifold-cut-off = the gauge sat on the manifold, cut off from the system by the valve that was closed
gauge-on-manifold-valve-unknown = which valve was closed is not written, and the gauge sat on the manifold
gauge-at-pump = the gauge sat at the pump: while the pump runs it shows the pump and not the system
gauge-at-pump-cut-off = the gauge sat at the pump, cut off from the system by the valve that was closed
gauge-at-pump-valve-unknown = which valve was closed is not written, and the gauge sat at the pump
hoses-inside-hold = The hoses from the system to the manifold are inside the hold.
hoses-and-manifold-inside-hold = Hoses and manifold are inside the hold.

## The hold against the decay limit: why it is not judged, and what to do about it

hold-no-limit = no pack sets a decay limit with its time
hold-no-limit-next = Name a limits pack, or the maker's decay limit.
hold-nothing-written = neither a log nor levels are written
hold-nothing-written-next = Write a log, or the level at isolation and the level after the stated time.
hold-gauge-cut-off-next = Put the gauge on the system's side of the valve and hold again.

# $level (quantity) - what the display showed
# $rows (count) - readings of the hold
hold-display-still = the display stood at { $level } through the log and all { $rows } readings of the hold: a gauge that lives moves

# $high (quantity) - the reading before
# $low (quantity) - the reading after
# $at (time) - when
hold-jumped = the reading fell from { $high } to { $low } at once, at { $at }: no gas leaves a closed circuit so fast
hold-jumped-next = Look for another gauge, another unit or another log from there on; else for a part of the circuit that was cut off. Hold again with one gauge.
level-gauge-next = Put the gauge at the system, beyond the valve that is closed, and pull down again.

# $level (quantity) - what the display showed
# $rows (count) - readings
hold-display-frozen = the display stood at { $level } through { $rows } readings of the hold in a row, to the last digit: a gauge that lives moves
hold-display-next = Close the gauge off from the circuit, take it off and see it move in the air. Look at its logger. Then pull down and hold again.

# $high (quantity) - the level from which it fell
# $low (quantity) - the level to which it fell
# $time (duration) - in what time
hold-fell = it fell from { $high } to { $low } within { $time } while the circuit was shut off; neither cooling nor a drier accounts for it
# $charge (choice: in, out) - whether the circuit holds its charge by now
hold-fell-next =
    { $charge ->
        [in] The hold is void: the pump pulled again, a valve passes, or the gauge drifts; find out which. While the charge is in, search every joint and stem with a detector made for this refrigerant and with soap, the machine off. Then recover the charge and do not put it back. Evacuate, and hold with all of it left alone. Weigh in clean refrigerant: the factory charge and what the lines ask for.
       *[out] Look for a pump that pulled again, a valve that passes, or a gauge that drifts. Pull down, close the valve, leave all of it alone and hold again.
    }

# $count (count) - how often it fell
# $taken (quantity) - what all the falls took away together
hold-teeth = shut off, it fell { $count } times within half a minute, by { $taken } together, and rose in between; the pump's valve was opened, or it passes

# $at (time) - when the break is written
hold-break-missing = the break written at { $at } is not in the log, which reads on as if nothing had been let in
hold-break-missing-next = See whether this log belongs to this evacuation, and whether the time of the break is right. Else pull down and hold again with a log that saw all of it.
hold-no-isolation = no isolation is written, and the readings show none
hold-no-isolation-next = Read on the gauge when the valve is closed, and again after the stated time; write when it was closed.

# $closed (time) - when the valve was closed
hold-nothing-after = the valve was closed at { $closed }, and nothing was read after it

# $after (duration) - the stated time
hold-nothing-after-next = Pull down again, close the valve, and read the gauge then and after { $after }.
hold-no-reading = there is no reading between isolation and the stated time
hold-no-reading-next = Log the hold, or write the level at isolation and the level after the stated time.
hold-over-range = the gauge went over its range and has never shown the limit itself
hold-over-range-next = Use a gauge whose range holds the limit.

# $lasted (duration) - how long it was held
# $asked (duration) - how long it has to be held
hold-too-short = the hold ended after { $lasted }, and { $asked } are asked

# $asked (duration) - how long it has to be held
hold-too-short-next = Hold again for at least { $asked } after the valve is closed.

hold-gap = the log has a gap at the stated time
hold-gap-next = Hold again, with a log that does not stop.

## What its verdict rests on

# $later (duration) - time from the stated time to the next reading
hold-gap-bridged = the log has a gap at the stated time; the next reading, { $later } later, stands for it

# $later (duration) - time from the stated time to the next reading
hold-between-readings = the pressure at the stated time lies between two readings, and the later one, { $later } after it, is above the limit

## What lets an isolated vacuum deepen

# $before (quantity) - temperature when it began to fall
# $after (quantity) - temperature at the end of the fall
fall-cooled-meanwhile = the coldest part cooled from { $before } to { $after } meanwhile

# $before (text) - temperature at the start, as written
# $after (text) - temperature at the end, as written
fall-cooled = the coldest part cooled from { $before } to { $after }

# $at (text) - when, as written
fall-after-heat = heat had been applied at { $at }, and the circuit cooled
fall-into-drier = the circuit has a drier, which takes up water

## Its verdict

# $level (quantity) - pressure at isolation
# $end (quantity) - pressure at the stated time
# $after (duration) - the stated time
# $peak (choice: at-end, before) - whether the highest pressure is the one at the stated time
# $highest (quantity) - highest pressure until the stated time
# $limit (quantity) - the decay limit
hold-passed =
    From { $level } at isolation to { $end } after { $after }{ $peak ->
        [before] , highest { $highest }
       *[at-end] {""}
    }: never above { $limit } until then.

# $end (quantity) - pressure at the stated time
# $after (duration) - the stated time
# $peak (choice: at-end, before) - whether the highest pressure is the one at the stated time
# $highest (quantity) - highest pressure until the stated time
# $limit (quantity) - the decay limit
hold-passed-start-unknown =
    To { $end } after { $after }{ $peak ->
        [before] , highest { $highest }
       *[at-end] {""}
    }: never above { $limit } until then.

# $level (quantity) - pressure at the stated time
# $after (duration) - the stated time
hold-interpolated = Nobody read the gauge at { $after }: { $level } lies on a straight line between the readings before and after.

# $after (duration) - the stated time
hold-failed-over-range = The pressure rose above the gauge's range within { $after } after isolation: above the decay limit.

# $after (duration) - the stated time
# $limit (quantity) - the decay limit
# $crossed (duration) - time from isolation at which the limit was passed
hold-failed-over-range-crossed = The pressure rose above the gauge's range within { $after } after isolation, past { $limit } after { $crossed }: above the decay limit.

# $level (quantity) - pressure at isolation
# $highest (quantity) - highest pressure until the stated time
# $after (duration) - the stated time
hold-failed = From { $level } at isolation to { $highest } within { $after }: above the decay limit.

# $level (quantity) - pressure at isolation
# $highest (quantity) - highest pressure until the stated time
# $after (duration) - the stated time
# $limit (quantity) - the decay limit
# $crossed (duration) - time from isolation at which the limit was passed
hold-failed-crossed = From { $level } at isolation to { $highest } within { $after }, past { $limit } after { $crossed }: above the decay limit.

# $highest (quantity) - highest pressure until the stated time
# $after (duration) - the stated time
hold-failed-start-unknown = To { $highest } within { $after }: above the decay limit.

# $highest (quantity) - highest pressure until the stated time
# $after (duration) - the stated time
# $limit (quantity) - the decay limit
# $crossed (duration) - time from isolation at which the limit was passed
hold-failed-start-unknown-crossed = To { $highest } within { $after }, past { $limit } after { $crossed }: above the decay limit.

# $lasted (duration) - how long it was held
# $end (quantity) - pressure at the end
hold-went-on = After { $lasted }, at its end, it stood at { $end }.

# $lasted (duration) - how long it was held
# $highest (quantity) - highest pressure after the stated time
# $end (quantity) - pressure at the end
hold-went-on-highest = Later it reached { $highest }; at its end, after { $lasted }, it stood at { $end }.

hold-read-at-time-next = Read the gauge at the stated time, too.
hold-describe-gauge-next = Write where the gauge sat, which valve was closed, and the gauge's accuracy.
hold-failed-next = Shut the rig off from the circuit and watch hoses and gauge alone: what rises there is no fault of the circuit. If they stand, a rise that slows down asks for heat and a nitrogen break, a steady one for the leak search under nitrogen pressure.

# $inside (choice: gauge, hoses) - what of the rig lies on the circuit's side of the closed valve
# $next (message) - what the shape of the rise asks for; a line of its own is a step of its own
rig-alone-next =
    { $inside ->
        [gauge] Pump and hoses were behind the closed valve; the gauge, its tee and the core tools were not. Break the vacuum with dry nitrogen to just above atmosphere and cap the open ports. Put gauge, tee and every core tool on a blank, pull down, close the valve and watch them for 5 min. They hold about a hundredth of the circuit's gas. A fault there that made this rise shoots up at once; a slow creep is not it. If it shoots up, mend or change what leaks there and hold the circuit again.
       *[hoses] Close the valve at the circuit and watch hoses and gauge alone for 5 min. They hold far less gas than the circuit: a fault there that made this rise climbs much faster; a slow creep is not it.
    }
    If the rig stands, go on. { $next }

## The rig beside a hold that passed

# $rise (quantity) - rise of the blanked rig
# $after (duration) - in what time
rig-rose-hold-passed = The blanked rig rose { $rise } in { $after }, and the isolated circuit stayed below its limit all the same. A leaking rig can only spoil a hold, never flatter it.

rig-rose-hold-passed-kind = the hold passed, so the rig's own rise decides nothing
rig-mend-next = Mend the rig before the next job: hose gaskets, valve seats, pump oil.

## Where refrigerant may come from in a vacuum

gas-from-valve = refrigerant passing a closed service valve
gas-from-either = refrigerant passing a valve or leaving the oil

## What the shape of the rise says

# $most (quantity) - largest rise or rate of rise that could hide
# $length (duration) - how long it was held
shape-held = Held: no rise above { $most } seen over { $length }.

# $rise (quantity) - the rise that was seen
# $length (duration) - in what time, from where the pressures had evened out
# $levels (choice: off, on) - whether it levelled off, or went on
# $counts (quantity) - the rise from which one counts
shape-held-rise =
    { $levels ->
        [off] Once the pressures had evened out it rose by { $rise } over { $length } and levelled off
       *[on] Once the pressures had evened out it rose by { $rise } over { $length }
    }: less than the { $counts } that count here.

# $first (quantity) - the rise right after isolation
# $length (duration) - in what time
# $held (message) - what was seen from then on
shape-held-first = It rose by { $first } in the first { $length } after isolation. { $held }

# $drop (quantity) - how far it fell
# $length (duration) - how long it was held
# $counts (quantity) - the rise from which one counts
shape-held-drift = Held: it drifted down by { $drop } over { $length }, as a gauge or a room that changes makes it. A rise of less than { $counts } could hide behind it.

# $range (quantity) - how far it wandered
# $length (duration) - how long it was held
# $counts (quantity) - the rise from which one counts
shape-held-wander = Held: it wandered by up to { $range } and ended where it began; no rise above { $counts } over { $length }.

# $slope (message) - the rate of rise with its bounds
# $length (duration) - how long it was held
# $before (choice: slowing, none) - whether a first part slows down, by less than counts
# $first (choice: inflow, outgassing) - whether gas that the walls give off ever more slowly is excluded
# $refrigerant (message) - where refrigerant may come from
# $rig (choice: open, held) - whether the rig was watched alone and held
# $walls (choice: bare, oil) - whether a compressor's oil is in the vacuum
shape-steady =
    A steady rise of { $slope }{ $before ->
        [slowing] , after a first part that slows down and counts for little
       *[none] , no slowing seen over { $length }
    }: { $first ->
        [inflow] air coming in{ $rig ->
            [held] {""}
           *[open] , the rig,
        } or { $refrigerant }
       *[outgassing] gas that { $walls ->
            [oil] oil and walls
           *[bare] the walls
        } give off ever more slowly, which so short a hold cannot tell from an inflow; { $rig ->
            [held] air coming in
           *[open] the rig; air coming in
        }; or { $refrigerant }
    }.

# $steady (message) - what is said of the steady rise
# $slower (duration) - time constant above which a source would look steady
shape-steady-slow-source = { $steady } Something that gives off gas for longer than { $slower } would look the same.

# $constant (message) - the time constant with its bounds
shape-source = A rise that slows down, time constant { $constant }: water, oil, outgassing, gas trapped behind a valve, or a gauge that settles.

# $plateau (message) - the level it rises to, with its bounds
# $constant (message) - the time constant with its bounds
shape-source-plateau = A rise that slows down towards { $plateau }, time constant { $constant }: water, oil, outgassing, gas trapped behind a valve, or a gauge that settles.

# $part (quantity) - the part of the rise
# $from (text) - temperature at the start, as written
# $to (text) - temperature at the end, as written
shape-warmed = The coldest part went from { $from } to { $to }: as a gas that accounts for { $part } of the rise. What warm walls give off comes on top.

# $share (text) - share of the vapour pressure of water
# $temperature (text) - temperature of the coldest part, as written
shape-near-water = It runs towards { $share } of the vapour pressure of water at { $temperature }: take free water as present.

shape-outgassing = A rise that slows down more and more without levelling off: outgassing, or water leaving oil.

# $source (message) - what is said of the source
# $most (quantity) - largest steady rise that could hide
shape-source-line-beneath = { $source } A steady rise of up to { $most } could lie beneath it.

# $constant (message) - the time constant with its bounds
# $slope (message) - the rate of rise with its bounds
# $refrigerant (message) - where refrigerant may come from
# $rig (choice: open, held) - whether the rig was watched alone and held
shape-both = A rise that slows down, time constant { $constant }, onto a steady rise of { $slope }. The first may be water, oil or outgassing; the steady part a slower outgassing, air coming in{ $rig ->
        [held] {""}
       *[open] , the rig,
    } or { $refrigerant }.

# $high (quantity) - the level from which it fell
# $low (quantity) - the level to which it fell
# $time (duration) - in what time
shape-fell = Cannot tell: the pressure fell from { $high } to { $low } within { $time }. A closed circuit does not do that by itself: a pump that pulls again, a valve, a part that cools, or the gauge.
shape-speeds-up = Cannot tell the cause: the rise speeds up, as it does where something warms, a valve opens, or a gauge drifts. No size of an inflow is taken from it.

# $after (duration) - time from isolation
shape-speeds-up-late = Cannot tell the cause: it began to rise faster { $after } after the valve was closed. A joint, a stem or a hose that lets go does that, a valve that opens, or a gauge that drifts. Warming does so where water, oil or seals give off gas. No size of an inflow is taken from it.
shape-no-curve = Cannot tell the cause: the pressure goes up and down, and none of the curves follows it. No size of an inflow is taken from it.

shape-no-rows = Cannot tell: the log has no usable readings after isolation.

# $length (duration) - how long it was held
# $blocks (count) - readings that do not depend on each other
shape-too-few-blocks = Cannot tell the cause: the readings wander so slowly that { $length } hold only { $blocks } independent ones.

# $rise (quantity) - the rise that could hide
shape-scatter = Cannot tell: a rise of { $rise } over the hold could hide in the scatter of the readings.

# $length (duration) - how long it was held
shape-steady-or-slowing = A rise; cannot tell whether it is steady or slowing down: over { $length } both look alike.

# $rise (quantity) - the rise that was seen
# $length (duration) - how long it was held
shape-steady-or-slowing-seen = A rise of { $rise }; cannot tell whether it is steady or slowing down: over { $length } both look alike.

# $rise (quantity) - the rise that was seen
# $length (duration) - how long it was held
shape-slowing-open = A rise of { $rise } that slows down and had not levelled off after { $length }. Where it ends, and whether a steady rise lies beneath it, cannot be told.

shape-slowing-maybe-steady = A rise that slows down; cannot tell whether a steady rise lies beneath it.

# $rise (quantity) - the rise that was seen
shape-slowing-maybe-steady-seen = A rise that slows down of { $rise }; cannot tell whether a steady rise lies beneath it.

shape-steady-maybe-slowing = A rise, at least partly steady; cannot tell whether a part of it slows down.

# $rise (quantity) - the rise that was seen
shape-steady-maybe-slowing-seen = A rise of { $rise }, at least partly steady; cannot tell whether a part of it slows down.

shape-falling = Cannot tell: the pressure fell by more than its scatter. Temperature, gauge or absorption may do that, and a rise could hide behind it.
shape-over-range = Cannot tell the cause: the pressure rose above the range of the gauge.
shape-unknown = Cannot tell.

## A number with what is known of its bounds

# $value (quantity) - the number
# $low (quantity) - lower bound
# $high (quantity) - upper bound
bounds-between = { $value } (95 %: { $low } to { $high })

# $value (quantity) - the number
# $low (quantity) - lower bound
bounds-at-least = { $value } (95 %: at least { $low })

# $value (quantity) - the number
# $high (quantity) - upper bound
bounds-at-most = { $value } (95 %: at most { $high })

# $value (quantity) - the number
bounds-none = { $value } (no bounds from this hold)

# $value (duration) - the time
# $low (duration) - lower bound
# $high (duration) - upper bound
span-between = { $value } (95 %: { $low } to { $high })

# $value (duration) - the time
# $low (duration) - lower bound
span-at-least = { $value } (95 %: at least { $low })

# $value (duration) - the time
# $high (duration) - upper bound
span-at-most = { $value } (95 %: at most { $high })

# $value (duration) - the time
span-no-bounds = { $value } (no bounds from this hold)

slope-unknown = unknown size
constant-unknown = unknown

## What to do next

# $behind (choice: charged-unit, other) - what lies beyond the section under vacuum
shape-steady-next =
    Put dry nitrogen on the circuit and search every joint with soap: it rises as a leak does. { $behind ->
        [charged-unit] A service valve that passes refrigerant from the charged unit looks the same. Leave those valves shut, and release no charge until the cause is found.
       *[other] Refrigerant that leaves the oil of the compressor looks the same.
    } Mend, pull down and hold again.

# $behind (choice: charged-unit, other) - what lies beyond the section under vacuum
shape-steady-tight-next =
    { $behind ->
        [charged-unit] The nitrogen hold speaks against a hole to the outside; the closed service valves of the charged unit come next. Leave them shut, and do not release the charge on this hold. Turn their stems clockwise onto their seats, put the caps on, pull down and hold again. If it now stands, a seat, a stem seal or a connection remade on the way was the cause. If it only rises more slowly, nothing is decided.
            If it still rises, hold a detector made for this refrigerant at the exhaust of the running pump, outdoors. Begin with the valve to the pump shut: the detector must stay silent; until it does, change the pump's oil. Then open the valve. What it finds only then has most likely come through a seat. Shut the valve to the pump and stop it. Take the vacuum gauge and the pump off at a shut valve, for they do not stand the pressure of the charge. Where there is none, break with dry nitrogen, take them off, and pull down again through the recovery hoses. Only then open the service valves and recover the whole charge with a machine and a cylinder fit for this refrigerant. Purge with dry nitrogen and check the air with the detector before anything is cut or brazed. Repair or replace the valve, and test, evacuate, hold and weigh in anew.
            If the detector finds nothing, shut the valve to the pump and stop it. Break the vacuum with dry nitrogen to just above atmosphere, take gauge and pump off and cap the ports. Then, the service valves shut, raise nitrogen through a regulator to no more than the test pressure and search joints, stems and ports with soap.
       *[other] The nitrogen hold speaks against a hole to the outside. Close every valve to a charged part or a cylinder. Warm the oil of the compressor with its crankcase heater or a heat belt. Never run or insulation-test a compressor under vacuum. Break with dry nitrogen, pull down and hold again: what leaves the oil shrinks from hold to hold. Search the joints with soap under nitrogen last.
    }

# $length (duration) - how long to hold
# $behind (choice: charged-unit, other) - what lies beyond the section under vacuum
shape-steady-open-next =
    The cause is open. Hold again for at least { $length }: if it slows down, walls gave off gas. If it stays straight, { $behind ->
        [charged-unit] look at the service valves, which stay shut, and then at the joints
       *[other] warm the compressor's oil, and then look at the joints
    }.

shape-steady-charged-next = The charge is in: put no nitrogen on it. A seat that passed is open now and harms nothing. With the machine off, search every joint, stem, cap and port once more with a detector made for this refrigerant and with soap. Where nothing is found, note it and leave it. The hold can be repeated only after the charge is recovered.
hold-failed-charged-next = The hold failed, and the charge is in: recover it and do not put it back. Find the cause, evacuate, hold, and weigh in clean refrigerant: the factory charge and what the lines ask for.

# $behind (choice: charged-unit, other) - what lies beyond the section under vacuum
shape-source-next =
    It slows down, as moisture, oil or gas trapped behind a valve makes it. Open the valves inside the section (expansion valve, solenoids, ball valves){ $behind ->
        [charged-unit] ; the service valves of the charged unit stay shut
       *[other] {""}
    }. Warm the coldest part, break with dry nitrogen, pull down and hold again: if it levels off lower, the circuit is drying.

# $behind (choice: charged-unit, other) - what lies beyond the section under vacuum
shape-water-next =
    Blow the lines through with dry nitrogen, both ends open, until no water comes. Where there is one port, undo the flares of the lines, remake them and repeat the nitrogen hold{ $behind ->
        [charged-unit] ; the service valves of the charged unit stay shut
       *[other] {""}
    }.
    Warm the coldest parts.
    Change the oil of the pump, pull down, and break with dry nitrogen twice at least. Hold again, until the level at the end of the hold stays low.

shape-both-next = Water and a leak may both be in it. Break with dry nitrogen, pull down and hold again: what was water shrinks. What stays is searched for under nitrogen pressure.
shape-falling-next = Read the temperature of the coldest part at both ends and hold again.
shape-shapeless-known-next = Keep circuit and gauge out of the sun, leave every valve and hose alone, and hold again.
shape-shapeless-next = Keep circuit and gauge out of the sun and leave every valve alone; read the temperature of the coldest part at both ends; hold again.

# $after (duration) - time from isolation
shape-speeds-up-late-next = Find out what was touched { $after } after the valve was closed; look at valve stems, flares, caps, hoses and the gauge. Mend, pull down, leave all of it alone and hold again.

# $limit (quantity) - the decay limit
# $time (duration) - when it was passed, after isolation
hold-went-past = Within its time it stayed below { $limit }, but it went on rising past it, { $time } after the valve was closed. Do not release the charge: find what still rises, or hold until it stands.

shape-over-range-next = The rise is far beyond any limit: look for the leak under nitrogen pressure.

# $length (duration) - how long a hold would tell
shape-longer-next = Hold again for at least { $length }.

shape-no-rows-next = Log the hold at steps of 10 s or less, from isolation to its end.
shape-other-gauge-next = A longer hold with this gauge would not tell within a day: use a gauge with smaller steps or less scatter.

## What the nitrogen hold says of a steady rise

# $least (quantity) - share of the nitrogen that a hole to the outside would have let out at least
# $seen (quantity) - what was lost
# $refrigerant (message) - where refrigerant may come from
# $rig (choice: open, held) - whether the rig was watched alone and held
nitrogen-against-hole = A hole to the outside that lets in this much air would have lost at least { $least } of the nitrogen in its hold. { $seen } were seen: { $rig ->
        [held] the rig held alone, so that speaks for { $refrigerant }
       *[open] that speaks for the rig, or for { $refrigerant }
    }.

# $least (quantity) - share of the nitrogen that a hole to the outside would have let out at least
# $seen (quantity) - what was lost
nitrogen-leaves-hole = A hole to the outside that lets in this much air would have lost at least { $least } of the nitrogen in its hold. { $seen } were seen.

## Breaks with nitrogen

# $still (count) - breaks that are still to be made
# $time (duration) - how long the nitrogen is left in
breaks-next =
    Warm iced parts; then { $still ->
        [one] break the vacuum once
       *[other] break the vacuum { $still } times
    } with dry nitrogen through a regulator. Fill to just above atmosphere and leave it in for at least { $time }. Sweep it out at the far port, change the pump's oil, pull down again. Never break with refrigerant.

## What was not told of gauge, rig and temperature

level-gauge-place-next = Read the level with the gauge at the system, beyond the valve that is closed; if it sat there, say so.
level-gauge-accuracy-next = Name the vacuum gauge and take its accuracy from its data sheet.
rig-time-not-written = the time of the rig's rise is not written
rig-time-not-written-next = Say in what time the closed rig rose; if nobody looked at the clock, blank it off and watch it again.
coldest-not-read = the temperature of the coldest part is not written
coldest-not-read-next = Read the temperature of the coldest part before the pump is stopped, or take it from the crew's notes.

# $after (duration) - time from the pump's start to the log's first row
series-begins-late = The log begins { $after } after the pump: what it pulled through before is not shown.

# $file (text) - name of the log
# $every (count) - of how many readings one was kept
series-thinned = { $file } holds more readings than a vacuum needs: one of { $every } was read, and the last.

## The pace of a pull

# $start (time) - when the pull began
# $took (duration) - how long it took from the one level to the other
# $from (quantity) - where the readings of the pull begin
# $to (quantity) - the level reached
# $expected (duration) - what pump, hoses and volume lead to
# $pace (choice: pump, hose, core, fitting, water, gas, throughout) - what set the pace
pull-took =
    The pull from { $start } took { $took } to come from { $from } to { $to }, { $expected } expected without any gas load: { $pace ->
        [pump] the pump set the pace
        [hose] the hose set the pace
        [core] the valve core left in place set the pace
        [fitting] a fitting set the pace
        [water] the pressure lingered where water boils
        [gas] it was held up at low pressure, by gas that kept coming or by the pump's own lowest pressure
       *[throughout] slow at all pressures
    }.

# $start (time) - when the pull began
pull-too-short = Too little of the pull from { $start } was logged to say what set its pace.

## The size of an inflow

leak-rate-kind = gives the rise as an inflow; nothing is judged by it

# $seen (choice: steady, bound, nothing) - a steady rise, no rise that is shown, or a fall
# $most (text) - largest inflow that the rise may come from
# $volume (choice: written, estimated) - whether the volume is written or comes from the line set
leak-rate =
    { $seen ->
        [steady] { $most } of air at most comes in with the steady rise
        [bound] No inflow of air above { $most } seen
       *[nothing] No inflow seen
    }{ $volume ->
        [estimated] , volume estimated from the line set
       *[written] {""}
    }.

# $inflow (message) - what is said of the air
# $loss (text) - loss of refrigerant through the same hole
leak-rate-as-refrigerant = { $inflow } As refrigerant vapour out of the same hole: { $loss }.

# $asked (text) - what the leak search has to see
# $rise (quantity) - rise in an hour
leak-rate-smallest = A leak of { $asked } would raise this volume by about { $rise } in an hour: no vacuum hold can show it.
leak-rate-volume-next = Write circuit volume, or the diameters and lengths of the line set.
leak-rate-none = the readings give no rate of rise
leak-rate-none-next = Write when the valve was closed, and read the gauge then and at the end of the hold.
leak-rate-witness = The nitrogen hold speaks against a hole to the outside of this size: no loss of refrigerant is worked out from it.

## Moisture

# $level (quantity) - pressure at the end of the hold
# $share (text) - its share of saturation, a number or a band
# $what (choice: water, ice) - what the coldest part would hold
# $coldest (text) - temperature of the coldest part
# $when (choice: end, once) - read at the end of the hold, or once only
# $saturation (quantity) - vapour pressure there
# $free (message) - what that says of free water
# $hides (choice: water, ice, either) - what could hide in a colder place
# $colder (text) - how cold that place would be
humidity = { $level } is { $share } of the vapour pressure of { $what ->
        [ice] ice
       *[water] water
    } at { $coldest }{ $when ->
        [end] , the coldest part at the end of the hold
       *[once] {""}
    } ({ $saturation }): { $free }. { $hides ->
        [ice] Ice
        [either] Ice or water
       *[water] Water
    } could hide where it is colder than { $colder }.

humidity-no-water = no free water there at equilibrium
humidity-no-ice = no free ice there at equilibrium
humidity-open = free water or ice there is neither shown nor excluded
humidity-free = free water or ice may stand there, or the gas is not water vapour alone
humidity-next = Warm the coldest part, break with dry nitrogen, pull down again and hold again.

# $rise (quantity) - how far it rose at last
# $time (duration) - in which time
humidity-rising = it still rose by { $rise } in the last { $time }, so this is no equilibrium, and water that still boils off is not excluded
humidity-rising-next = Hold until the gauge stands, then read again.

## The checks: their titles, and what to do when one fails

check-rig = Vacuum rig
check-rig-fails = Change the pump oil while warm, replace hose gaskets, grease or replace valve seats, and blank the rig off again before blaming the system.

check-series = Course of the evacuation
check-series-fails = Write what an inspector looks for first: the gauge's serial number, the times of the start and of closing the valve, and the last reading.

check-section = Section under vacuum
check-section-fails = Drive the expansion valve open, hold solenoids open with a magnet, open the service valves of the part, and pull down again from both sides. Or name the section and do the rest as its own.

check-conditions = Temperature during evacuation
check-conditions-fails = { cold-next }

check-breaks = Nitrogen breaks
check-breaks-fails = Warm iced parts. Then break the vacuum 2 times with dry nitrogen through a regulator. Fill to just above atmosphere and leave it in for at least 5 min. Sweep it out at the far port, change the pump's oil, pull down again. Never break with refrigerant.

check-level = Vacuum at isolation
check-level-fails = Pump on. If the level stalls, look at the hoses, the valve cores, the pump oil and the rig first. Then look for water: drive it out with heat and nitrogen breaks. Last, look for a leak under nitrogen pressure.

check-dwell = Pump kept on at the level
check-dwell-fails = Open the valve, let the pump run on for what is missing, and hold again.

check-hold = Vacuum hold
check-hold-fails = { hold-failed-next }

check-rise = Rise in the hold
check-rise-fails = As with the isolated hold, look at the rig first. A rise that slows down asks for heat and a nitrogen break, a steady one for the leak search under nitrogen pressure.

check-cause = Shape of the rise
check-cause-fails = Do the test that the finding names: the rig alone; the service valves closed; heat and a nitrogen break; a longer hold. Find a leak under nitrogen pressure, never by vacuum.

check-humidity = Moisture
check-humidity-fails = Where the band reaches 1, or a part may be colder than the temperature named, warm the circuit. Break with dry nitrogen, pull down and hold again.

check-leak-rate = Leak rate the rise would mean
check-leak-rate-fails = Do not hunt grams a year by vacuum: search every joint under nitrogen pressure with a method that sees what is asked.

check-pump-down = Pump-down speed
check-pump-down-fails = Take the valve cores out with a core tool. Use one short hose of 3/8 in or more on each port. Change the pump oil. Look for water and for closed valves.

check-tightness-not-proved = Vacuum and tightness
check-tightness-not-proved-fails = Fill with dry nitrogen in steps to the test pressure. Hold it with the temperature read at both ends, and search every joint while it is under pressure.

## The rig without the system

rig-not-checked = the rig was not checked without the system
rig-not-checked-next = Blank the rig off, pull it down, and watch its rise for five minutes.
rig-nothing-written = no level of the rig is written
rig-nothing-written-next = Write what the pump reaches alone, what the blanked rig reaches, and how far it rises in what time.

rig-pump-alone = pump alone
rig-oil-changed = oil changed
rig-pump-step = level the pump alone has to reach
rig-pump-formula = share × target

# $share (quantity) - share of the target
# $target (quantity) - the target
share-of-level = { $share } of { $target }

# $level (quantity) - the most
level-at-most = at most { $level }

# $level (text) - what it reached
rig-pump-reached = The pump alone reached { $level }.

# $level (text) - what it reached
rig-pump-too-high = The pump alone reached no less than { $level }: too near the target to reach it through hoses.
rig-pump-next = Change the pump oil while it is warm, run the pump on its own inlet, and clean the gauge's sensor.

rig-blanked-name = rig blanked off
rig-blanked-subject = blanked off
no-target = no pack sets a target

# $level (text) - what it reached
rig-blanked-reached = The rig closed at its end reached { $level }.

# $level (text) - what it reached
rig-blanked-too-high = The rig closed at its end came no lower than { $level }: no system behind it could reach the target.

rig-rise-subject = rise
rig-rise-name = rise of the rig
rig-rise-time = in what time
no-decay-limit = no pack sets a decay limit
rig-no-room = the decay limit leaves no rise above the target
rig-no-room-next = Compare the rig's rise with the rise of the hold by eye.
rig-room-step = rise the hold allows in that time
rig-room-formula = (decay limit − target) · t_rig/t_hold
rig-room-formula-isolation = (decay limit − level at isolation) · t_rig/t_hold

# $limit (quantity) - decay limit
# $from (quantity) - the level it counts from
# $rig (text) - time of the rig
# $hold (duration) - time of the hold
rig-room-values = ({ $limit } − { $from }) · { $rig }/{ $hold }
rig-share-step = the rig's rise as a share of it

# $rise (text) - rise of the rig
# $allowed (quantity) - what the hold allows
rig-share-values = { $rise } of { $allowed }

# $rise (text) - rise of the rig
# $time (text) - in what time
# $share (quantity) - share of what the hold allows
rig-rose = The blanked rig rose { $rise } in { $time }, { $share } of what the hold allows in that time.

# $rise (text) - rise of the rig
# $time (text) - in what time
# $share (quantity) - share of what the hold allows
rig-rose-too-much = The blanked rig rose { $rise } in { $time }, { $share } of what the hold allows in that time: a rise in the hold may be the rig's.

## Pump-down

pull-pump-displacement = pump displacement
pull-valve-cores = valve cores
pull-hose-bore = hose: bore
pull-hose-length = hose: length
pull-hoses-alike = hoses alike
pull-missing-next = Write the pump's displacement, the hoses with bore and length, the line set, and log the pull from its start.

# $from (quantity) - level it began at
# $to (quantity) - level it ended at
pull-band = { $from } to { $to }

# $time (duration) - expected time
pull-expected = expected { $time }
pull-band-source = conductance of hoses by Knudsen, of openings by Clausing (from memory)

# $level (quantity) - level of the system
# $share (symbols) - share of the pump's speed left
# $part (message) - the part that took most
pull-speed-left = At { $level } { $share } of the pump's speed was left at the system; the largest part was lost to this: { $part }.
pull-pump-itself = the pump itself
pull-a-core = a valve core

# $bore (text) - its bore
pull-the-hose = the hose of { $bore }

# $count (count) - hoses side by side
# $bore (text) - their bore
pull-the-hoses = { $count } hoses of { $bore }
pull-volume-estimated = The volume is estimated from the line set.
pull-kind = compares the pull with pump and hoses; sets no limit

pull-hose-next = A wider and shorter hose would help more than a larger pump.
pull-core-next = Take the valve cores out with a core tool.
pull-water-next = Warm the circuit, break with dry nitrogen and pull again: water is leaving.
pull-gas-next = Blank off the rig and see how low it goes; change the pump oil; then look for water and leaks.
pull-slow-next = Look for a closed valve, a blocked core, a worn pump, or a circuit larger than written.

pull-no-hoses = no hoses are written
pull-no-displacement = the pump's displacement is not written
pull-by-hand = levels written by hand do not show the pull
pull-none = the log shows no pull

dwell-no-isolation = neither the readings nor the events say when the valve was closed
dwell-no-isolation-next = Write a log from the start to the hold, and when the valve was closed.
dwell-gauge-next = Put the gauge at the system, beyond the valve that is closed.
dwell-level-not-read = no reading before isolation shows the level reached
dwell-level-not-read-next = Log the pull, or write the level when it is reached.
dwell-step = time with the pump on at the level
dwell-formula = isolation − level reached

# $dwell (duration) - how long the pump stayed on
# $level (quantity) - the level
dwell-long-enough = The pump stayed on for { $dwell } after { $level } was reached.

# $dwell (duration) - how long the pump stayed on
# $level (quantity) - the level
dwell-too-short = The pump stayed on for only { $dwell } after { $level } was reached.

## The level and the rise

no-level = no pack sets a level
level-nothing-written = neither a log nor levels are written
level-nothing-written-next = Read the level when the valve is closed.

# $late (duration) - how long after isolation
level-begins-late = the readings begin { $late } after isolation
level-begins-late-next = Read the gauge when the valve is closed.

# $at (time) - when the valve was closed
level-over-range = At isolation, { $at }, the gauge was over its range.
level-gap = the log has a gap at isolation
level-gap-next = Log at steps of 10 s or less, and read the gauge when the valve is closed.
level-step = pressure at isolation
level-formula = straight line between the readings on either side

# $at (time) - when the valve was closed
# $known (choice: written, found) - from what that is known
level-isolation =
    { $known ->
        [written] { $at }, as written
       *[found] { $at }, found from the readings
    }

# $level (quantity) - the level
# $at (time) - when the valve was closed
level-was = { $level } in the system when the valve was closed at { $at }.

# $level (quantity) - the level
# $at (time) - when the valve was closed
level-above-target = { $level } in the system when the valve was closed at { $at }: above the target.
level-wet = wet

rise-no-start = there is no reading at isolation
rise-no-start-next = Write when the valve was closed, and read the gauge then.

# $after (duration) - the stated time
rise-over-range = The pressure rose above the gauge's range within { $after }.
rise-step = rise until the stated time

# $rise (quantity) - the rise
# $after (duration) - the stated time
rise-was = A rise of { $rise } within { $after } after isolation.

# $rise (quantity) - the rise
# $after (duration) - the stated time
rise-too-much = A rise of { $rise } within { $after } after isolation: more than the pack allows.
rise-reserved-next = Write where the gauge sat, and its accuracy; log the hold.

## Breaks with nitrogen

break-to = break: to
break-held = break: held
breaks-not-asked-kind = breaks are asked for by the maker, by a named pack or for a wet circuit
breaks-none-not-asked = The vacuum was not broken with nitrogen; nobody asks for it here.

# $breaks (message) - the breaks
breaks-not-asked = { $breaks }; nobody asks for it here.

# $breaks (message) - the breaks
# $number (count) - how many are asked for
breaks-wet = { $breaks }; a wet circuit asks for { $number }.

# $breaks (message) - the breaks
# $source (text) - who asks
# $number (count) - how many are asked for
breaks-asked = { $breaks }; asked for are { $number } ({ $source }).

# $number (count) - how many are asked for
breaks-at-least = at least { $number }
breaks-none = No break with nitrogen

# $at (text) - when
break-one = One break with nitrogen, at { $at }

# $at (text) - when
# $to (text) - up to which pressure
break-one-to = One break with nitrogen, at { $at } to { $to }

# $number (count) - how many
# $at (list) - when
break-several = { $number } breaks with nitrogen, at { $at }

# $at (time) - when
break-unwritten = the log shows a break at { $at } and nobody wrote with what
breaks-short-next = Write with what each break was made, to what pressure, and how long it was left; make up what was short.

# $at (text) - when
# $to (text) - up to which pressure
break-below-atmosphere = the break at { $at } to { $to } did not reach the atmosphere

# $at (text) - when
# $to (text) - up to which pressure
# $most (text) - the range
break-above = the break at { $at } to { $to } went above { $most }

# $at (text) - when
# $held (text) - how long it stayed
# $least (text) - what is usual
break-too-short = the nitrogen of the break at { $at } was left in for { $held }; { $least } are usual

# $at (text) - when
# $level (quantity) - the lowest level
# $usual (text) - what is usual
break-not-deep = the pull before the break at { $at } came no lower than { $level }; { $usual } is usual

# $at (text) - when
# $usual (text) - what is usual
break-over-range = the pull before the break at { $at } came nowhere in the gauge's range; { $usual } is usual

cause-temperature = temperature during evacuation
cause-temperature-stated = written with the reading
cause-temperature-step = temperature during evacuation: resolution

## Figures and the course

figure-evacuation = Evacuation
figure-hold = Standing vacuum test (hold)
axis-time = Time
axis-since-pump = Time since the pump was started
axis-since-isolation = Time since isolation
axis-pressure = Pressure
curve-measured = measured
curve-by-hand = as written down
curve-expected = expected by pump and hose

# $level (quantity) - the target
line-target = target { $level }

# $level (quantity) - the decay limit
line-decay-limit = decay limit { $level }

# $time (duration) - the stated time
line-judged-at = judged at { $time }

# $phase (choice: ice, water) - what evaporates
# $temperature (text) - its temperature
# $when (choice: isolation, end, once) - when it was read
# $level (quantity) - its vapor pressure
line-saturation =
    { $phase ->
        [ice]
            { $when ->
                [isolation] ice at { $temperature } (coldest part at isolation) { $level }
                [end] ice at { $temperature } (coldest part at the end) { $level }
               *[once] ice at { $temperature } (coldest part) { $level }
            }
       *[water]
            { $when ->
                [isolation] water at { $temperature } (coldest part at isolation) { $level }
                [end] water at { $temperature } (coldest part at the end) { $level }
               *[once] water at { $temperature } (coldest part) { $level }
            }
    }

# $event (message) - what happened
# $to (text) - up to which pressure
event-to = { $event } to { $to }
event-isolated = isolated
event-isolated-by-log = isolated (by the log)
event-break-by-log = break (by the log)
event-hold-end = end of the hold

caption-evacuation = Pressure through the evacuation on a logarithmic scale, with the levels it is judged by.

# $rows (count) - rows of the log
caption-thinned = Of the { $rows } rows of the log the lowest and the highest of each bundle are drawn.

# $from (time) - begin of the gap
# $to (time) - end of the gap
# $more (choice: one, several) - how many gaps there are
caption-gap =
    { $more ->
        [several] The log is silent from { $from } to { $to } and in further gaps; the line is drawn through.
       *[one] The log is silent from { $from } to { $to }; the line is drawn through.
    }

# $from (time) - the first reading
# $to (time) - the last
# $lowest (quantity) - the lowest level
told-evacuation = Pressure from { $from } to { $to }, lowest { $lowest }

# $at (time) - when the valve was closed
told-isolated = isolated at { $at }

# $parts (list) - what is to be seen
told = { $parts }.

caption-hold = Readings after the valve was closed.
caption-hold-curves = Readings after the valve was closed, the curves that explain them with the 95 % band of their mean, and the difference of both.
caption-hold-one-of-several = Readings after the valve was closed, what fits them among others with the 95 % band of its mean, and the difference of both.

# $from (quantity) - level at isolation
# $to (quantity) - level at the end
# $time (duration) - length of the hold
told-hold = Pressure from { $from } at isolation to { $to } after { $time }.

# $model (choice: flat, line, source, outgassing, both) - the curve
curve-of =
    { $model ->
        [flat] no rise
        [line] a steady rise
        [source] a rise that levels off
        [outgassing] a rise that slows down without levelling off
       *[both] a rise that levels off onto a steady one
    }

# $curve (message) - the curve
curve-one-of-several = { $curve }, one of several that fit

# $curve (message) - the curve
readings-less = Readings less { $curve }

course = Course of the evacuation
course-from = From
course-to = To
course-what = What
course-known = Known from
course-start = At the start
course-end = At the end
course-lowest = Lowest
course-written = written
course-found = found
course-over-range = over range

# $event (message) - what was done
# $note (text) - what the crew wrote of it
event-note = { $event }: { $note }
broken = broken with nitrogen

# $to (text) - up to which pressure
broken-to = broken with nitrogen to { $to }

# $held (text) - how long it stayed
broken-held = broken with nitrogen, left for { $held }

# $to (text) - up to which pressure
# $held (text) - how long it stayed
broken-to-held = broken with nitrogen to { $to }, left for { $held }
part-pull = pull
part-break = break
part-hold = isolated hold
