### Function: the water side.

# $coldest (quantity) - the colder of water in and out
# $point (quantity) - where it freezes
water-freezes = The water stands at { $coldest } and freezes at { $point }.
water-freezes-next = Stop the unit. Read the temperature again; if it is right, protect the water with glycol, or raise the setting, before the heat exchanger bursts.

strainer-clean = The strainer is clean.
strainer-dirty = The strainer is dirty.
strainer-dirty-next = Clean it, let the air out, and read the flow again.
strainer-none = There is no strainer.
strainer-none-kind = some makers build one in, others ask for one before the plate heat exchanger
strainer-not-seen = nobody looked at the strainer
strainer-not-seen-next = Open the strainer after the first hours of running and write how it looked.

water-mixture = how much heat this mixture carries is not known here
water-mixture-next = Take density and specific heat of the mixture from its maker, and work it out by hand.

# $heat (quantity) - heat carried, with its uncertainty
water-carries = The water carries { $heat }.
water-carries-kind = compare it with the maker's table at the same temperatures
