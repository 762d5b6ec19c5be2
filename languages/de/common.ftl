# Was mehrere Seiten teilen: der Rahmen jeder Seite, die Teile der Blätter und die Wörter der Dateien.

# Der Rahmen jeder Seite.
frame-skip = Zum Blatt springen
frame-private = Privat: enthält Namen, Nummern und Adressen
frame-navigation = Website
frame-index = Alle Blätter
frame-compare = Vergleich
frame-law = Recht
frame-sources = Quellen
frame-feed = Durchgesehene Blätter
frame-vet = Dieses Blatt ersetzt keinen Tierarzt. Wirkt ein Tier krank, rufen Sie einen Tierarzt an, der Reptilien und Amphibien behandelt.
frame-day = Stand: { $day }.
frame-address = Adresse: { $address }

# Zwischen Werten: „40 cm oder 50 cm“.
join-or = {" "}oder{" "}

fact-practice = gängige Praxis
fact-set-by = hier festgelegt von { $by }; die Bibliothek nennt
fact-set-by-on = hier festgelegt von { $by }, { $on }; die Bibliothek nennt
fact-others = andere:

chapter-worked = Der Rechenweg
working-steps = Eingesetzte Zahlen:
working-assumptions = Vorausgesetzt:
working-source = Quelle: { $publication }

cautions-title = Warnhinweise
source-secondary = In einem Text gelesen, der sie zitiert.
source-memory = Aus dem Gedächtnis, nicht gelesen.

# Die Kapitel eines Pflegeblatts.
chapter-glance = Auf einen Blick
chapter-suits = Ist dieses Tier etwas für Sie
chapter-enclosure = Terrarium
chapter-heat = Wärme und Licht
chapter-humidity = Feuchte und Wasser
chapter-feeding = Fütterung
chapter-company = Umgang und Gesellschaft
chapter-cleaning = Reinigung
chapter-health = Gesundheit
chapter-growth = Zucht und Wachstum
chapter-law = Recht und Herkunft

kind-snake = Schlange
kind-lizard = Echse
kind-tortoise = Landschildkröte
kind-turtle = Wasserschildkröte
kind-frog = Frosch
kind-salamander = Salamander
kind-invertebrate = wirbelloses Tier

sex-female = weiblich
sex-male = männlich
sex-unknown = nicht bekannt

whom-adult = adultes Tier
whom-female = Weibchen
whom-male = Männchen
whom-form = { $whom }, { $form }
whom-everyone = jede Form, jedes Geschlecht

habit-ground = am Boden
habit-climbing = über dem Boden: klettert
habit-burrowing = im Boden: gräbt sich ein
habit-semi-aquatic = am und im Wasser
habit-aquatic = im Wasser

active-day = am Tag
active-dusk-and-night = in der Dämmerung und nachts
active-night = nachts
active-day-and-night = am Tag und nachts

company-alone = ein Tier pro Terrarium
company-pairs = einzeln oder als Paar, das sich verträgt
company-groups = einzeln oder in einer Gruppe mit Platz für jedes Tier

# Was ein Krankheitszeichen verlangt.
urgency-now = sofort Tierarzt anrufen und hinfahren
urgency-day = innerhalb von 24 Stunden zum Tierarzt
urgency-days = in den nächsten Tagen zum Tierarzt
urgency-watch = aufschreiben und die Einrichtung prüfen

danger-large-constrictor = große Würgeschlange
danger-venom = Gift
danger-strong-bite = kräftiger Biss
danger-skin-secretion = Hautsekret
danger-strong-tail = kräftiger Schwanz

measure-total-length = Gesamtlänge
measure-snout-vent-length = Kopf-Rumpf-Länge
measure-carapace-length = Panzerlänge
measure-carapace-width = Panzerbreite
measure-title-total-length = Gesamtlänge
measure-title-snout-vent-length = Kopf-Rumpf-Länge
measure-title-carapace-length = Panzerlänge

heater-ceramic = Keramikstrahler
heater-halogen = Halogenstrahler
heater-basking-lamp = Spotstrahler
heater-mercury-vapour = Quecksilberdampflampe
heater-deep-heat-projector = Deep-Heat-Projektor
heater-radiant-panel = Heizpaneel
heater-mat = Heizmatte
heater-cable = Heizkabel
heater-water-heater = Wasserheizer
heater-room-heater = Raumheizung

zone-cool = kühl
zone-warm = warm
zone-basking-spot = Sonnenplatz
zone-warm-side = warme Seite
zone-cool-side = kühle Seite

cites-none = nicht in den CITES-Anhängen gelistet
cites-I = CITES-Anhang I
cites-II = CITES-Anhang II
cites-III = CITES-Anhang III

unit-zone = Zone

# Warum nach einem Standard kein Terrarium berechnet werden konnte: ein Satzteil hinter einem Doppelpunkt.
unmet = nicht berechnet: { $reason }
unmet-no-animals = ein Terrarium wird für mindestens ein Tier berechnet
unmet-not-a-length = eine Länge oder ein Alter muss eine Zahl über 0 sein
unmet-length-not-given = die Regel fragt nach der { $measure }, die nicht angegeben ist
unmet-no-class = keine Klasse deckt eine { $measure } von { $length } cm ab; die letzte endet bei { $last } cm
unmet-singly = der Standard verlangt, dieses Tier einzeln zu halten, und nennt keinen Wert für mehr als eines
unmet-no-further = { $animals ->
    [one] der Standard nennt keinen Wert für mehr als ein Tier
   *[other] der Standard nennt keinen Wert für mehr als { $animals } Tiere
}
unmet-no-classes = die Zeile des Standards hat keine Klasse

least-floor = Grundfläche { $amount }
least-height = Höhe { $amount }
least-water = Wasser { $amount }
least-water-depth = Wassertiefe { $amount }
least-land = Landteil { $amount }

# Die Angaben einer Art.
figure-size-birth = Bei Geburt oder Schlupf
figure-size-adult = Adult
figure-size-female = Adultes Weibchen
figure-size-male = Adultes Männchen
figure-size-form-adult = { $of }
figure-size-form-female = { $of }, Weibchen
figure-size-form-male = { $of }, Männchen
figure-size-total_length = Nase bis Schwanzspitze
figure-size-birth_mass = Gewicht bei Geburt oder Schlupf
figure-size-mass = Gewicht, adult
figure-size-mass_female = Gewicht, adultes Weibchen
figure-size-mass_male = Gewicht, adultes Männchen
figure-growth-k = Wachstumsrate
figure-growth-matures = Geschlechtsreif mit
figure-life-years = Lebensdauer
figure-origin-latitudes = Breitengrade der Herkunft
figure-temperature-basking = Sonnenplatz, Oberfläche
figure-temperature-warm = Warme Seite
figure-temperature-cool = Kühle Seite
figure-temperature-night = Nachts
figure-temperature-water = Wasser
figure-temperature-never_above = Nie über
figure-temperature-critical_low = Schädlich unter
figure-temperature-brumation = In der Winterruhe
figure-temperature-brumation_weeks = Dauer der Winterruhe
figure-humidity-range = Luftfeuchte
figure-humidity-ceiling = Luftfeuchte nie über, kühle Seite
figure-humidity-ceiling_for = Luftfeuchte darüber höchstens für
figure-humidity-shed = Luftfeuchte in der Häutung
figure-light-hours = Lichtstunden
figure-light-zone = UV-Zone
figure-light-uvi = UV-Index am Sonnenplatz
figure-feeding-stage-every = Von Mahlzeit zu Mahlzeit, { $of }
figure-feeding-stage-mass = Gewicht einer Mahlzeit, { $of }
figure-feeding-stage-share = Mahlzeit als Anteil am Körpergewicht, { $of }
figure-feeding-stage-count = Anzahl, { $of }
figure-energy-at_most = Energie des Futters zu Energie in Ruhe
figure-fasting-normal = Übliche Fresspause
figure-handling-after_meal = Nach einer Mahlzeit nicht anfassen für

# Sprachen.
language-own = Deutsch
language-en = Englisch
language-de = Deutsch
language-es = Spanisch
language-fr = Französisch
