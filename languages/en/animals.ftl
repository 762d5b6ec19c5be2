# The public page of an animal, the picture of one, and the wall card of a species.

# What it says above the name, and in a sentence for search engines. `teaser` is the beginning of the animal's story; it may be empty.
animal-seeking = Looking for a home
animal-resident = Lives with us
animal-description-seeking = { $name }, { $species }, is looking for a home. { $teaser }
animal-description-resident = { $name }, { $species }, lives with us. { $teaser }
animal-care-sheet = { $species } care sheet
animal-story = Story
animal-known = What is known
animal-needs = What it will need
# In Markdown: what stands in square brackets becomes a link to the address in the round ones. `sheet` is the label `animal-care-sheet`.
animal-read-first = Read the whole [{ $sheet }]({ $address }) before you ask for an animal.

# Facts.
animal-species = Species
animal-form = Form
animal-sex = Sex
animal-age = Age
animal-weight = Weight
animal-length-grown = Length when grown
animal-enclosure-grown = Enclosure when grown, at least
animal-span-of-life = Span of life
animal-year-costs = A year of its kind costs, without vets
animal-cost = about { $low }–{ $high } { $currency }
animal-eats-now = Eats now

# An age, with the day of hatching and how sure that is; then an age alone that is not sure.
animal-age-known = { $age } (hatched { $date }, known)
animal-age-estimated = about { $age } (hatched { $date }, estimated)
animal-age-about = about { $age }

# In place of a photo; the first is for those who do not see the page. `animal` is one of the labels below.
picture-none = No photo of { $name } yet; the drawing stands for { $animal }
picture-none-yet = No photo yet
picture-of-snake = a snake
picture-of-lizard = a lizard
picture-of-tortoise = a tortoise
picture-of-turtle = a turtle
picture-of-frog = a frog
picture-of-salamander = a salamander
picture-of-invertebrate = an invertebrate

# The wall card.
card-title = { $name } wall card
card-description = { $name } on one page.
card-whole-sheet = The whole care sheet
# The name of the list of readings, for those who hear the page.
card-readings = Readings
card-needs = Space and food
card-humidity = Humidity at each place
card-cautions = Cautions
card-urgent = Ring a vet and travel now
card-reviewed = Reviewed { $date }.
card-not-reviewed = Not yet reviewed.
card-space = Least enclosure, grown
card-food = Food, { $stage }
# A meal and the span from one to the next: "mouse, adult, every 7–10 days".
card-meal = { $meal }, every { $every }
