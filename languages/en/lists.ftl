# The pages that list and compare species: the index, the comparison, what fits, reviews, sources, the binder, and the page for
# an address that leads nowhere.

# Groups of species, as headings.
group-snake = Snakes
group-lizard = Lizards
group-tortoise = Tortoises
group-turtle = Turtles
group-frog = Frogs
group-salamander = Salamanders
group-invertebrate = Invertebrates

# The index. The first is for search engines, too.
index-description = Care sheets with their sources, checked and worked out.
index-find = Find an animal
# The kinds of animals follow, as links, and a full stop.
index-by-kind = By kind:
# In Markdown: what stands in square brackets becomes a link to the address in the round ones.
index-ways = Or by [size]({ $sizes }), by [name]({ $names }), or [side by side]({ $compare }).
index-seeking = Looking for a home
index-residents = Living with us
index-grows-to = Grows to
index-lives = Lives
index-space = Space, at least
index-sizes = By size
index-names = By name
# A length.
index-up-to = Up to { $length }
index-more-than = More than { $length }
# In the list of names: another name of a species, and the one under which its sheet stands.
index-see = { $also }: see { $name }
index-more = More to read
index-compare = The species side by side
index-fits = What fits in this space
index-binder = All care sheets in one document, to print
index-review = Reviews of the care sheets, and what is due
index-sources = Sources, and what rests on each

# The species side by side. The page stands in five orders.
compare-title-name = The species side by side
compare-title-space = The species side by side, by space
compare-title-length = The species side by side, by length
compare-title-years = The species side by side, by years
compare-title-cost = The species side by side, by running cost
compare-order-name = The species stand by common name.
compare-order-space = The species stand by the floor that a grown animal needs, the smallest first; last those for which no standard in force gives one.
compare-order-length = The species stand by the length that they may reach, the shortest first.
compare-order-years = The species stand by the years that they may live, the fewest first; last those whose span of life is open or not known.
compare-order-cost = The species stand by what a year of keeping one may cost at the site's prices, the least first; last those for which it could not be worked out.
# For search engines. `order` is one of the sentences above.
compare-description = { $order } Size, years, space, money, light and company of each animal.
# The name of the list of the pages in other orders, for those who hear the page; then its entries.
compare-turns = Orders
compare-turn-name = By name
compare-turn-space = By space
compare-turn-length = By length
compare-turn-years = By years
compare-turn-cost = By running cost
compare-turn-fits = What fits in a space
compare-meaning = What these figures mean
compare-note-space = The floor and the size are for one grown animal at the top of its adult range, for the sex or form that needs the most. They satisfy every standard in force and are rounded up to sizes that can be bought or built. A standard is a floor, not a goal.
compare-note-cost = The running cost is for heat and, where the site knows the price of the food, for food, at the site's prices; lamps, vets and the enclosure are left out. For animals that live in water it is not worked out.
compare-note-choose = An animal that is easy for one keeper is hard for another: nothing here is ranked. Read the whole care sheet before you choose.

# Its tables: heading, caption, then the heads of the columns.
compare-animal = Animal
compare-room = Room, years and money
compare-room-caption = What a grown animal needs of a home
compare-grows-to = Grows to
compare-lives = Lives
compare-floor = Floor
compare-size = Sizes to buy or build
compare-electricity = Electricity, a year
compare-cost = Runs at, a year
compare-daily = Food, climate and company
compare-daily-caption = What its days are like
compare-eats = Eats, grown
compare-uv-zone = UV zone
compare-humidity = Humidity
compare-active = Active
compare-company = Company
compare-dangers = Dangers
compare-asks = What it asks of its keeper
compare-asks-caption = What makes an animal easier or harder, as facts
compare-insects = Live insects
compare-lamp = Lamp for ultraviolet
compare-warmest = Warmest place
compare-rest = Winter rest
compare-cites = CITES

# What stands in the cells.
compare-cost-not-worked-out = not worked out
compare-humidity-in-water = lives in water
compare-company-alone = none
compare-company-pairs = none, or one that it gets on with
compare-company-groups = none, or a group
compare-insects-always = yes, all its life
compare-insects-young = while it is young
compare-insects-no = no
compare-insects-unknown = not known
compare-lamp-shade = does no harm, not owed
compare-lamp-yes = yes
compare-lamp-unknown = not known
compare-rest-none = none
compare-cites-unknown = not known
# The appendix of CITES.
compare-cites-none = not listed
compare-cites-I = I
compare-cites-II = II
compare-cites-III = III
# A meal and the span from one to the next: "mouse, adult, every 7–10 days".
compare-food = { $meal }, every { $every }

# What fits in a space. The headings of the tables are areas.
fits-title = What fits in this space
fits-description = Which species fit on which floor when they are grown, by every standard in force.
# What stands over the species of the smallest floor, of a larger one, of one that needs more than the largest.
fits-first = Enough for
fits-also = Enough for all of the above, and for
fits-more = More than { $floor }
fits-more-caption = These need a floor of their own size
fits-open = Not certain
fits-open-caption = Not every standard in force could be worked out for these, or none has a rule for them
fits-note-shape = A floor of the right area must have the right shape and height as well: look at the sizes. A young animal needs less for a while; what counts is what it will need.
fits-note-all-standards = The standards in force are all those that a species names.
fits-note-standards = The standards in force: { $standards }.

# Reviews of the care sheets.
review-title = Reviews of the care sheets
review-description = When every care sheet was last gone through with its sources, by whom, and when that is due again.
review-overdue = Due now
review-overdue-caption = Never gone through, or not for too long
review-soon = Due within half a year
review-soon-caption = The next to be gone through
review-later = Later
review-later-caption = Gone through not long ago
review-animal = Animal
review-last = Last gone through
review-by = By
review-due = Due again
# In place of a day, a name, and a day.
review-never = never
review-nobody = nobody
review-now = now
# A span of time.
review-note = A review holds for { $span }. Whoever reviews a sheet goes through every figure with its source, looks for newer publications, and then sets the day and the name in the species' file.

# The bibliography.
sources-title = Sources
sources-description = Every publication that a figure rests on.
sources-standards = Standards in force
sources-practice = Common practice
# A number follows, and a full stop.
sources-practice-count = Figures that rest on common practice alone, with no publication behind them:
sources-practice-marked = Each is marked where it stands.
sources-set-here = Set here
sources-publications = Publications
sources-what-rests = What rests on it
# What rests on a source, beside the names of figures. The second names a place.
sources-signs = signs of illness
sources-law = law, { $place }
sources-least-enclosure = least enclosure
sources-law-page = What the law asks
# How the name of a figure begins in a list: "small" for a small letter, anything else for the name as it stands.
sources-figures-begin = small
# The table of figures that the site itself set.
sources-overrides = Figures that differ from the library
sources-override-figure = Figure
sources-override-here = Here
sources-override-library = In the library
sources-override-sources = Its sources
sources-override-by = Set by
sources-override-why = Why, and on whose authority
# In place of the names of sources.
sources-override-practice = common practice

# Every care sheet in one document.
binder-title = All care sheets
binder-description = Every care sheet in one document, to print in one go.
# The name of the list of sheets, for those who hear the page.
binder-contents = Contents
binder-own-page = Its own page, with the workings

# What a host shows where there is no page.
lost-title = There is no such page
lost-description = The address leads nowhere on this site.
lost-why = It may have been misspelt, or the page has gone.
lost-index = All sheets
lost-compare = The species side by side
lost-sources = Sources, and what rests on each
