# The handover sheet of an animal: what a new keeper needs to know, and signs.

handover-title = Handover of { $name }, { $species }
handover-head = Handover sheet
handover-for = For { $name }
handover-care-sheet = { $species } care sheet
# In Markdown: what stands in square brackets becomes a link to the address in the round ones. `sheet` is the label `handover-care-sheet`.
handover-goes-with = [{ $sheet }]({ $address }) goes with this sheet.
handover-contacts = Whom to ring
handover-by = Handed over by
handover-vet = Vet
handover-vet-hours = Vet out of hours
handover-before = Before it goes
handover-settle = To settle
# The heading over the charts of growth and weight, and its name for those who hear the page.
handover-drawn = Growth and weight
handover-drawn-growth = Growth and weight, drawn

# What the new keeper signs for.
handover-signing = Handed over
handover-read = I have read this sheet and the care sheet that goes with it, and have been shown how { $name } is kept.
handover-know-size = I know how large it may grow, how long it may live, and what it will cost to keep.
handover-know-law = I know that local law decides whether and how I may keep it, and that the papers named here have been handed to me.
handover-ring-vet = I will ring a vet who treats reptiles and amphibians when a sign in this sheet says so.
# `age` is a span: "18 years"; `law` is the name of a place with its law.
handover-buyer-age = I am at least { $age } old, as { $law } asks of a buyer.
handover-buyer-age-memory = I am at least { $age } old, as { $law } asks of a buyer, as far as is remembered.
# Stands before the promise to take the animal back.
handover-taken-back = Taken back.
handover-sign-keeper = New keeper: name and signature
handover-sign-by = Handed over by: name and signature
handover-sign-date = Date

# The set-up as it stands.
handover-set-up = Set-up at present
handover-enclosure = Enclosure
handover-inside = Enclosure inside, length × width × height
# A heater or a lamp, and then, behind commas, what follows here: "halogen, 50 W, dimming thermostat of its own, set to 34 °C".
handover-heater = Heater
handover-thermostat-on-off = on-off thermostat of its own
handover-thermostat-pulse = pulse thermostat of its own
handover-thermostat-dimming = dimming thermostat of its own
handover-thermostat-none = no thermostat of its own
handover-set-to = set to { $temperature }
handover-set-night = by night { $temperature }
handover-guarded = guarded
handover-no-guard = no guard noted
handover-lamp = Lamp
handover-lamp-hours = { $hours } a day
# How far a lamp hangs above the spot where the animal basks, and the ultraviolet index at that spot.
handover-lamp-above = { $distance } above the spot
handover-lamp-there = { $uvi } there
handover-lamp-fitted = fitted { $date }
handover-substrate = Substrate
handover-hides = Hides
handover-power-cut = Power cut
handover-readings = Readings
handover-probe = Probe
handover-from-warm = From the warm end
handover-by-day = By day
handover-by-night = By night
handover-humidity = Humidity
handover-humidity-most = Humidity at most

# What it needs now.
handover-needs = What it needs now
handover-stage = Stage of life
handover-meal = Meal
handover-interval = From meal to meal
handover-next-meal = Next meal due
handover-meal-between = from { $from }, by { $until }
handover-rest = No handling after a meal for
handover-least = Least enclosure now, { $standard }
handover-short = Its enclosure falls short
# How its enclosure falls short of a standard: what there is, what is needed, and the difference, each with its unit.
handover-short-length = { $standard }: length { $inside }, short of { $needed } by { $by }
handover-short-width = { $standard }: width { $inside }, short of { $needed } by { $by }
handover-short-side = { $standard }: shortest side { $inside }, short of { $needed } by { $by }
handover-short-floor = { $standard }: floor { $inside }, short of { $needed } by { $by }
handover-short-height = { $standard }: height { $inside }, short of { $needed } by { $by }
handover-short-water-depth = { $standard }: room for the depth of the water { $inside }, short of { $needed } by { $by }
handover-short-water = { $standard }: room for the water { $inside }, short of { $needed } by { $by }
handover-quarantine = In quarantine until
handover-energy = Its food holds
handover-energy-times = { $low }–{ $high } times its energy at rest
handover-hide-width = Hides at least as wide as
handover-hide-grown = { $now }, { $grown } when grown

# What it will need when it is grown.
handover-grown = What it will need
handover-length-grown = Length when grown
# What that length is worked out from.
handover-rests-on = That rests on
handover-rests-growth = { $count ->
    [0] its own growth: no length on record
    [one] its own growth: one length on record
   *[other] its own growth: { $count } lengths on record
}
handover-rests-species = { $count ->
    [0] its species' range: no length on record
    [one] its species' range: one length on record
   *[other] its species' range: { $count } lengths on record
}
handover-enclosure-grown = Enclosure when grown, at least
handover-life = Span of life
handover-eats-grown = Eats when grown
# A meal and the span from one to the next: "rat, large, every 6 weeks".
handover-eats-every = { $meal }, every { $every }

handover-signs = When to ring a vet
handover-no-signs = Signs

# The first two weeks in a new home.
handover-weeks = The first two weeks
handover-weeks-before = Before it comes
handover-weeks-run = Run the enclosure for some days until its readings hold by day and by night.
handover-weeks-run-at = Run the enclosure for some days until its readings hold by day and by night, with the cool side or the water at { $temperature }.
handover-weeks-daily = Every day
handover-weeks-daily-do = Fresh water, readings, doors and locks, a look without opening more than you must. Hands washed after it.
handover-weeks-next-meal = Next meal due where it was
handover-weeks-refused = A meal it refuses
handover-weeks-refused-do = is taken away and offered again at the next turn, not sooner
handover-weeks-table = Day by day
handover-weeks-day = Day
handover-weeks-done = What is done
# What is done on a day: one or several of these, one behind the other.
handover-weeks-put-in = Put { $name } in, close up, leave it alone. No food, no handling.
handover-weeks-first-check = Note the readings by day and by night. Ring a vet who treats reptiles and amphibians for a first check with a sample of droppings.
handover-weeks-papers = Put the papers away, and report the animal where local law asks for it.
handover-weeks-first-meal = Offer the first meal: { $meal }. Take back what it leaves.
handover-weeks-meal = Offer the next meal.
handover-weeks-digests = It digests: leave it alone.
handover-weeks-weigh = Weigh it and write it down.
handover-weeks-handle = Short, calm handling, if it is of a kind that bears it.
handover-weeks-look = Look only: eyes, skin, breath, droppings.
