# What several pages share: the frame of every page, the parts of sheets, and the words of the files as people read them.

# The frame of every page.
frame-skip = Skip to the sheet
frame-private = Private: holds names, numbers and addresses
# The name of the navigation, for those who hear the page.
frame-navigation = Site
frame-index = All sheets
frame-compare = Compare
frame-law = Law
frame-sources = Sources
# The title of the feed of reviewed care sheets.
frame-feed = Reviewed sheets
frame-vet = This sheet does not replace a vet. If an animal seems ill, ring a vet who treats reptiles and amphibians.
frame-day = As of { $day }.
frame-address = Address: { $address }

# What stands between values: "40 cm or 50 cm". The spaces belong to it.
join-or = {" "}or{" "}

# Behind a figure that no publication stands behind.
fact-practice = common practice
# A figure that the site itself decided. Behind it stands the value of the library.
fact-set-by = set here by { $by }; the library says
fact-set-by-on = set here by { $by }, { $on }; the library says
# Before what other sources say of the same figure.
fact-others = others:

# How the figures of a chapter were worked out.
chapter-worked = How this was worked out
working-steps = Numbers put in:
working-assumptions = Taken for granted:
working-source = Source: { $publication }

cautions-title = Cautions
# Behind a publication in a list of sources that was not read itself.
source-secondary = Read in a text that quotes it.
source-memory = From memory, not read.

# The chapters of a care sheet.
chapter-glance = At a glance
chapter-suits = Is this animal for you
chapter-enclosure = Enclosure
chapter-heat = Heat and light
chapter-humidity = Humidity and water
chapter-feeding = Feeding
chapter-company = Handling and company
chapter-cleaning = Cleaning
chapter-health = Health
chapter-growth = Breeding and growth
chapter-law = Law and where it comes from

# Kinds of animals, one of them.
kind-snake = snake
kind-lizard = lizard
kind-tortoise = tortoise
kind-turtle = turtle
kind-frog = frog
kind-salamander = salamander
kind-invertebrate = invertebrate

# The sex of an animal.
sex-female = female
sex-male = male
sex-unknown = not known

# For whom a figure is: a grown animal of either sex, or of one; of a form of the species by its name.
whom-adult = adult
whom-female = female
whom-male = male
whom-form = { $whom }, { $form }
whom-everyone = every form and sex

# Where an animal lives.
habit-ground = on the ground
habit-climbing = off the ground: it climbs
habit-burrowing = in the ground: it digs itself in
habit-semi-aquatic = by and in water
habit-aquatic = in water

# When an animal is active.
active-day = by day
active-dusk-and-night = at dusk and by night
active-night = by night
active-day-and-night = by day and by night

# Which company an animal keeps.
company-alone = one animal to an enclosure
company-pairs = alone, or a pair that gets on
company-groups = alone or in a group with room for each

# What a sign of illness asks for.
urgency-now = ring a vet and travel now
urgency-day = a vet within 24 hours
urgency-days = a vet within days
urgency-watch = write it down and check the set-up

# Dangers to people.
danger-large-constrictor = large constrictor
danger-venom = venom
danger-strong-bite = strong bite
danger-skin-secretion = skin secretion
danger-strong-tail = strong tail

# Which length of an animal is meant.
measure-total-length = total length
measure-snout-vent-length = snout-vent length
measure-carapace-length = carapace length
measure-carapace-width = carapace width
# The same as the name of a fact or at the head of a column.
measure-title-total-length = Total length
measure-title-snout-vent-length = Snout-vent length
measure-title-carapace-length = Carapace length

# Heaters.
heater-ceramic = ceramic
heater-halogen = halogen
heater-basking-lamp = basking lamp
heater-mercury-vapour = mercury vapour
heater-deep-heat-projector = deep heat projector
heater-radiant-panel = radiant panel
heater-mat = mat
heater-cable = cable
heater-water-heater = water heater
heater-room-heater = room heater

# Places in an enclosure.
zone-cool = cool
zone-warm = warm
zone-basking-spot = basking spot
zone-warm-side = warm side
zone-cool-side = cool side

# The appendix of CITES that lists a species.
cites-none = not listed in the CITES appendices
cites-I = CITES Appendix I
cites-II = CITES Appendix II
cites-III = CITES Appendix III

# Stands before the number of an ultraviolet zone: "zone 2".
unit-zone = zone

# Why no enclosure could be worked out by a standard: a part of a sentence behind a colon.
unmet = not worked out: { $reason }
unmet-no-animals = an enclosure is worked out for at least one animal
unmet-not-a-length = a length or an age must be a number above 0
# The lengths are those of `measure-…` above.
unmet-length-not-given = the rule asks for the { $measure }, which is not given
unmet-no-class = no class covers a { $measure } of { $length } cm; the last one ends at { $last } cm
unmet-singly = the standard says to keep this animal singly and gives no figure for more than one
unmet-no-further = { $animals ->
    [one] the standard gives no figure for more than one animal
   *[other] the standard gives no figure for more than { $animals } animals
}
unmet-no-classes = the row of the standard has no class

# Parts of what a standard asks for.
least-floor = floor { $amount }
least-height = height { $amount }
least-water = water { $amount }
least-water-depth = water depth { $amount }
least-land = land { $amount }

# The figures that a species states, by their names in its file.
figure-size-birth = At birth or hatching
figure-size-adult = Adult
figure-size-female = Adult female
figure-size-male = Adult male
# Of a form of the species, by its name.
figure-size-form-adult = { $of }
figure-size-form-female = { $of }, female
figure-size-form-male = { $of }, male
figure-size-total_length = Nose to tail tip
figure-size-birth_mass = Mass at birth or hatching
figure-size-mass = Adult mass
figure-size-mass_female = Adult mass, female
figure-size-mass_male = Adult mass, male
figure-growth-k = Rate of growth
figure-growth-matures = Matures at
figure-life-years = Span of life
figure-origin-latitudes = Latitudes it comes from
figure-temperature-basking = Basking spot, surface
figure-temperature-warm = Warm side
figure-temperature-cool = Cool side
figure-temperature-night = By night
figure-temperature-water = Water
figure-temperature-never_above = Never above
figure-temperature-critical_low = Harm below
figure-temperature-brumation = While brumating
figure-temperature-brumation_weeks = Brumates for
figure-humidity-range = Humidity
figure-humidity-ceiling = Humidity never above, at the cool side
figure-humidity-ceiling_for = Humidity above that at most for
figure-humidity-shed = Humidity while shedding
figure-light-hours = Hours of light
figure-light-zone = Ultraviolet zone
figure-light-uvi = Ultraviolet index where it basks
# Of a stage of life, by its name.
figure-feeding-stage-every = From meal to meal, { $of }
figure-feeding-stage-mass = Mass of a meal, { $of }
figure-feeding-stage-share = Meal as a share of its mass, { $of }
figure-feeding-stage-count = How many, { $of }
figure-energy-at_most = Energy of its food over its energy at rest
figure-fasting-normal = Goes without food normally
figure-handling-after_meal = No handling after a meal for

# Languages. The first is what those who speak this one call it; the others are their names in this one.
language-own = English
language-en = English
language-de = German
language-es = Spanish
language-fr = French
