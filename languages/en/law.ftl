# What the law of the site's places asks, and the public-health notices. What the laws themselves say comes from files.

law-title = What the law asks
law-description = What the law of each place asks of these sheets, and where they answer it.
law-held = Held against the law of { $places }. Told in our own words from reading notes, with the day by which they had been read; what is told from memory says so. Law changes, and it binds some people and not others. Local law decides: ask the authority of the place.
law-notices = Notices to print
# The heading of a place's notice.
law-public-health = { $place }: public health

# Facts about a place's law.
law-act = Act or order
law-read = Read
law-binds = Binds
law-lies-within = Lies within
law-form = Form
law-buyer = Buyer
law-buyer-age = at least { $age } old
law-treatment = Under treatment
law-size = Size
law-paper = Paper
law-mark = Mark
law-records = Records
law-also = Also
# The sale of an animal under treatment is …
law-sale-forbidden = forbidden
law-sale-on-conditions = on conditions
# For which animals a rule holds: those whose shell is shorter than a length, or not; of a mass or more.
law-shell-below = shell below { $size }
law-shell-from = shell from { $size }
law-mass-from = mass from { $size }
# In place of the article; then behind it.
law-article-unknown = article not in our notes
law-article-memory = { $article }; from memory, not read

# The table of what a place's law asks a sheet to say.
law-asks = What { $place } asks a sheet to say
law-asked-for = Asked for
law-article = Article
law-answered = Answered under
law-remark = Remark
law-wider = covered by a wider word of the text
law-wording-set = the law sets the words
law-item-names = scientific and common name
law-item-life-expectancy = life expectancy
law-item-adult-size = adult size
law-item-housing = housing: size and fittings
law-item-environment = environment: heat, humidity, light
law-item-feeding = feeding
law-item-daily-ration = daily ration
law-item-watering = watering
law-item-general-care = general care
law-item-handling = handling
law-item-cleaning = cleaning
law-item-equipment = equipment and accessories
law-item-movement = movement
law-item-enrichment = enrichment
law-item-social-life = social life: alone or in company
law-item-behaviour = behaviour
law-item-danger = danger to people
law-item-reproduction = reproduction and rearing
law-item-signs-of-illness = signs of illness
law-item-veterinary-care = veterinary care
law-item-yearly-cost = yearly cost of keeping
law-item-protection-status = protection status
law-item-legal-basis = legal basis of keeping
law-item-no-release = warning against release
law-item-health-on-the-day = health of this animal on the day
law-item-particulars = origin, age, sex and vet's record
# Where a sheet answers it: headings, parted by semicolons. The care sheet is meant unless it says otherwise.
law-on-handover = handover sheet: { $headings }
law-under-head = the head of the sheet
law-under-seconds = In ten seconds
law-under-cautions = Cautions
law-under-identity = Identity
law-under-origin = Origin
law-under-measurements = Measurements
law-under-treatment = Health and treatment

# On the sheets of an animal or a species.
law-held-against = Held against the law of
law-held-read = { $places } (read by { $date })
law-release = Release, { $place }
law-release-ours = Never let this animal loose.
law-release-note = Our words: the law there sets its own, which are to be taken from it.
law-trade = International trade
# What a place's rule says, and the paper that it asks for.
law-with-paper = { $says } Paper: { $paper }.

# The public-health notices. The first is one that the law asks for.
notice-title-binding = Public-health notice, { $place }
notice-title-advice = Public-health advice, { $place }
# For search engines; `title` is one of the labels above.
notice-description = { $title }, on one page.
notice-law = What the law asks
notice-says = It says
notice-ages = Ages
# The same in one line.
notice-ages-line = Ages: { $ages }.
notice-given-to = Given to
notice-wall = On the wall
notice-for = For
notice-words = The very words
notice-words-set = may be set by the law and are to be taken from it
notice-rests-on = Rests on
notice-local-law = Local law decides.
notice-own-words = Told in our words: the law may set its own, and they are taken from it.
# Behind what a row is told from: when that was read.
notice-read-by = read by { $date }
notice-from-memory = from memory, not read
notice-read-unknown = nobody says when it was read
# The kinds of animals that a notice is for.
notice-for-snake = snakes
notice-for-lizard = lizards
notice-for-tortoise = tortoises
notice-for-turtle = turtles
notice-for-frog = frogs
notice-for-salamander = salamanders
notice-for-invertebrate = invertebrates
