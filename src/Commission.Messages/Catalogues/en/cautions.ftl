### Cautions of a record. Each is short, says what to do, and defers to local code and licensed practice.

flammable-hazard = flammable refrigerant

# $group (name) - safety group of ISO 817 and ASHRAE 34
# $static (choice: none, spark) - whether a spark of static lights it
flammable =
    The refrigerant burns (safety group { $group }). Keep flames, sparks and switched loads away. Ventilate, and watch the air near the floor with a detector made for this gas. Keep a dry-powder or carbon-dioxide extinguisher at hand. Recover and purge before any brazing, and never search for leaks with a flame.{ $static ->
        [spark] {" "}It lights from a spark of static: bond cylinders, hoses and machines before the valves are opened.
       *[none] {""}
    }

unknown-hazard = unknown refrigerant
unknown = The safety group of the refrigerant is not known here. Until cylinder or nameplate say otherwise, treat it as flammable and toxic.

pressure-hazard = pressure
pressure = Test gas under pressure can burst a coil or throw a fitting. Use dry nitrogen only, through a regulator with a relief device set below the weakest part. Never use oxygen, acetylene or compressed air: with oil they explode. Raise the pressure in steps, stand clear of joints, vent outdoors.

vacuum-hazard = vacuum
vacuum = Never energise a compressor or test its insulation while the circuit is under vacuum: its terminals arc. Break a vacuum with dry nitrogen, not with refrigerant. Keep the pump's exhaust outdoors, and away from ignition where the refrigerant burns.

frostbite-hazard = frostbite and eyes
frostbite = Liquid refrigerant freezes skin and eyes. Wear goggles and gloves. Open valves slowly. Keep caps on ports that are not in use.

asphyxiation-hazard = asphyxiation
asphyxiation = Refrigerant and nitrogen displace air and collect low. Ventilate pits, cellars and plant rooms before and during the work, and leave at the first dizziness.

toxic-hazard = toxic refrigerant
toxic = The refrigerant is toxic. Work with the breathing protection, detection and second person that the local code asks for.

carbon-dioxide-hazard = carbon dioxide

# $pressure (quantity) - pressure of the triple point
carbon-dioxide = Standing pressure exceeds that of other refrigerants by far. Liquid below { $pressure } turns to dry ice that can block a line. Charge vapor first, never trap liquid between closed valves, and watch the concentration in the room.

electricity-hazard = electricity
electricity = Mains voltage and charged capacitors kill. Disconnect, lock out, prove dead with a meter proved live before and after, and discharge capacitors before touching terminals. Some readings here are taken live, by qualified people only.

cylinders-hazard = cylinders
cylinders = A cylinder full of liquid bursts when it warms. Let liquid fill no more than 80 % of a recovery cylinder. How much mass that is depends on the refrigerant, and flammable ones weigh little. Never mix refrigerants. Keep cylinders upright, in date, and out of the sun.

fire-hazard = burns and fire
fire = Brazing and compressor discharge lines burn. Flow nitrogen while brazing, and let no refrigerant near the flame: it turns into corrosive and toxic gases. Shield what can burn, keep an extinguisher at hand, watch the place afterwards.

moving-parts-hazard = hot and moving parts
moving-parts = Discharge lines burn skin, and fans start without warning. Keep hands, sleeves and hoses clear, and put guards and panels back before the unit is left.

law-hazard = law and license
law = This record does not replace the local code, the maker's instructions or the judgement of a licensed person. Where they differ from a limit shown here, they govern.
