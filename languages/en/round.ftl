# The work of a week for the whole collection.

round-title = Round, week of { $date }
round-heading = The week’s round
round-span = { $from } to { $until }
round-quarantined = { $name } (quarantine)

# The work of each day, and what the week holds once. Every line stands behind the name of an animal or of a species.
round-days = Day by day
# On a day without other work.
round-no-task = Water, readings, a look at everybody.
round-once = In the week
# `meal` says what and how much: "mouse, adult, 26 g".
round-feed = feed { $meal }
round-thaw = in the evening, thaw { $meal }
round-spray = spray
# How often a day, and with how much.
round-spray-daily = spray every day, { $times } ×
round-spray-daily-each = spray every day, { $times } × of { $each } ml
round-meals-not-known = its log does not tell when a meal is due
round-weigh = weigh: due { $date }, every { $days } days (common practice)
# `task` is a label of `due-…`.
round-due = { $task }: due { $date }
round-review = go through its care sheet: due { $date }

round-quarantine = Quarantine
round-quarantine-order = After all the others, in this order, with tools of their own
round-animal = Animal
round-species = Species
round-until = Until
round-days-left = Days left on Monday

round-cleaning = Cleaning
round-cleaning-everybody = Everybody: droppings and soiled substrate out as they are seen, bowls washed with hot water, glass and surfaces wiped, from the healthy to those in quarantine.
round-cleaning-cloths = Cloths and tools of one enclosure are not used in the next before they are washed; those of the quarantine stay there.
round-cleaning-month = First week of the month: plain set-ups are emptied, washed, disinfected, rinsed and dried; of a planted floor only what is soiled is changed.
# `name` is a product of the keeper's; the first amount is from its bottle. A safety text.
round-mixture = { $name }: { $bottle } ml to { $water } ml of water; gloves and open windows, and never mixed with another

round-store = In store
round-store-weeks = Freezer and shopping: what this week eats, and the { $weeks } weeks from { $date }
round-store-food = Food
round-store-now = This week
round-store-mass = Mass
round-store-ahead = { $weeks } weeks
# In place of the name of a food that is not known.
round-store-unnamed = meals
round-meals = { $meals ->
    [one] 1 meal
   *[other] { $meals } meals
}
round-pieces = { $pieces ->
    [one] 1 piece
   *[other] { $pieces } pieces
}
round-not-weighed = not weighed
