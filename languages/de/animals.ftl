# Die öffentliche Seite eines Tiers, das Bild eines Tiers und die Wandkarte einer Art.

animal-seeking = Sucht ein Zuhause
animal-resident = Lebt bei uns
animal-description-seeking = { $name }, { $species }, sucht ein Zuhause. { $teaser }
animal-description-resident = { $name }, { $species }, lebt bei uns. { $teaser }
animal-care-sheet = Pflegeblatt { $species }
animal-story = Geschichte
animal-known = Was bekannt ist
animal-needs = Was es brauchen wird
# Markdown: Was in eckigen Klammern steht, wird zum Verweis auf die Adresse in den runden.
animal-read-first = Lesen Sie das ganze [{ $sheet }]({ $address }), bevor Sie nach einem Tier fragen.

# Angaben.
animal-species = Art
animal-form = Form
animal-sex = Geschlecht
animal-age = Alter
animal-weight = Gewicht
animal-length-grown = Länge, ausgewachsen
animal-enclosure-grown = Terrarium, ausgewachsen, mindestens
animal-span-of-life = Lebensdauer
animal-year-costs = Kosten eines Tiers dieser Art im Jahr, ohne Tierarzt
animal-cost = etwa { $low }–{ $high } { $currency }
animal-eats-now = Frisst derzeit

# Ein Alter, mit dem Tag des Schlupfs und wie sicher er ist.
animal-age-known = { $age } (Schlupf: { $date }, bekannt)
animal-age-estimated = etwa { $age } (Schlupf: { $date }, geschätzt)
animal-age-about = etwa { $age }

# Anstelle eines Fotos. `animal` ist eine der Bezeichnungen darunter, im Akkusativ.
picture-none = Noch kein Foto von { $name }; die Zeichnung steht für { $animal }
picture-none-yet = Noch kein Foto
picture-of-snake = eine Schlange
picture-of-lizard = eine Echse
picture-of-tortoise = eine Landschildkröte
picture-of-turtle = eine Wasserschildkröte
picture-of-frog = einen Frosch
picture-of-salamander = einen Salamander
picture-of-invertebrate = ein wirbelloses Tier

# Die Wandkarte.
card-title = Wandkarte { $name }
card-description = { $name } auf einer Seite.
card-whole-sheet = Das ganze Pflegeblatt
card-readings = Messwerte
card-needs = Platz und Futter
card-humidity = Luftfeuchte an jedem Platz
card-cautions = Warnhinweise
card-urgent = Sofort Tierarzt anrufen und hinfahren
card-reviewed = Durchgesehen: { $date }.
card-not-reviewed = Noch nicht durchgesehen.
card-space = Mindestterrarium, ausgewachsen
card-food = Futter, { $stage }
# „Maus, adult, alle 7–10 Tage“.
card-meal = { $meal }, alle { $every }
