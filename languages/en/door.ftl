# The card on the door of an enclosure: read from a metre away, so it is short. The telephone numbers stand on records too.

door-title = Door card of { $name }
door-care-sheet = { $species } care sheet
# A line under the name: its species and sex. The first is for an animal whose sex is not known.
door-sex-not-known = sex not known

# What must be known before the door is opened. These are safety texts.
# The name of that list, for those who hear the page.
door-before = Before you open
door-quarantine = Quarantine until { $date }. Last in the round, its own tools, hands washed after it.
door-large-constrictor = Two adults: never open, handle or feed this snake alone.
door-venom = Its bite may carry venom. Hands out; use tongs.
door-strong-bite = It bites hard. Feed with long tongs, move slowly.
door-skin-secretion = Its skin irritates. Wet, powder-free gloves.
door-strong-tail = Its tail strikes. Keep your face away.
# `names` are names of animals, with commas between them.
door-company = Lives with { $names }: count them before you close.

door-readings = Readings wanted
door-basking = Basking spot
door-warm = Warm side
door-cool = Cool side
door-water = Water
door-night = By night

door-food = Food
door-meal = Meal
door-from-meal-to-meal = From meal to meal
door-last-ate = Last ate
door-next-due = Next due from

# Whom to ring.
door-emergency = In an emergency
door-vet = Vet
door-vet-out-of-hours = Out of hours
door-keeper = Keeper
# Somebody who can be rung when the keeper does not answer.
door-second = Second

door-square = The address of the care sheet as a square to be read by a telephone
