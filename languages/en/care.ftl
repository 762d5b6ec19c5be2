# The care sheet of a species, and the page on how its figures were worked out.
care-title = { $name } care sheet
# For search engines, where a species has no sentence of its own.
care-description = Care sheet for { $name } ({ $scientific }).
care-also = Also called { $names }
# The date is set apart on the page.
care-reviewed = Last reviewed { $date }.
care-reviewed-by = Last reviewed { $date } by { $who }.
care-review-due = To be reviewed again by { $date }.
care-not-reviewed = Not yet reviewed.
care-card = Wall card, one page
care-compare = Beside other species
care-seconds = In ten seconds
# The name of the list of chapters, for those who hear the page.
care-contents = Contents
care-on-this-sheet = On this sheet
care-sources = Sources
care-sources-remark = Each was read itself unless it says otherwise. A figure marked “common practice” is what keepers do; no publication stands behind it.
care-sources-page = What else rests on each of them
# The sheets before and after this one; the name of a species follows.
care-neighbours = Neighbouring sheets
care-before = Before:
care-after = After:
# The heading of words that stand under none.
care-more = More

# Names of facts, and what they say.
care-measured = { $label }, { $measure }
care-space = Least enclosure, grown
care-eats = Eats, grown
care-costs = Costs to run
care-costs-a-year = about { $low }–{ $high } { $currency } a year, without vets
care-dangers = Dangers
care-law = Law
care-law-check = check locally; see the last chapter
care-gradient = Gradient, warmest to coolest
care-fasts = Fasts
care-company = Company
care-supplements = Supplements, { $stage }
care-remark = Remark, { $stage }
care-origin = Comes from
care-looked-up = Looked up
care-looked-up-on = { $date }; check locally, local law decides
care-looked-up-never = not yet; check locally, local law decides
care-lives = Lives
care-active = Active
care-hides = Hides
care-hides-at-least = at least { $hides }, at the warm and at the cool end
care-substrate = Substrate
care-water = Water
care-climbing = Climbing
care-digging = Digging
care-bathing = Bathing

# The tables.
table-enclosure = Least enclosure for one grown animal, inside: length × width × height
table-enclosure-for = For
table-enclosure-length = At a length of
table-enclosure-by = By
table-least = At least
table-build = Sizes to buy or build
table-enclosure-note = Worked out at the top of the adult range. More room is better; a standard is a floor, not a goal.
table-enclosure-disagree = The standards disagree: the largest floor is { $times } times the smallest. Build by the larger.
table-ladder = At this length, this enclosure: what satisfies every standard in force
table-humidity = What the hygrometer may read
table-humidity-zone = Zone
table-humidity-at = At
table-humidity-reading = Reading
table-humidity-note = The same air reads drier where it is warmer. At the ceiling, water condenses on anything colder than { $dew }.
table-feeding = Feeding by stage of life
table-feeding-stage = Stage
table-feeding-until = Until
table-feeding-meal = Meal
table-feeding-amount = How much
table-feeding-every = Every
table-feeding-a-year = Meals a year
table-feeding-energy = Energy over rest
table-feeding-note = A figure of this table that is not listed here with its source is common practice.
# The last stage of life ends with it.
table-feeding-old-age = old age
table-feeding-share = { $share } of its mass
table-light = Length of the day where it comes from
table-light-month = Month
table-light-hours = hours
table-signs = Signs, and how soon a vet should see them
table-signs-sign = Sign
table-signs-means = May mean
table-signs-act = What to do

# The page of the workings.
working-title = { $name }: how it was worked out
working-description = The figures of the { $name } care sheet: each formula, the numbers put in, what was taken for granted, and who published it.
working-page = How it was worked out
working-nothing = Nothing on this sheet had to be worked out.

# At the head of a sheet whose words nobody has written in the language of the page: { $language } is "German", say.
care-foreign-words = The words of this sheet, and short texts such as signs and meals, are in { $language }: nobody has translated them yet.
care-foreign-texts = Short texts such as signs and meals are in { $language }: nobody has translated them yet.
