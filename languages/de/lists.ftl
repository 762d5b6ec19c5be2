# Die Seiten, die Arten auflisten und vergleichen: Übersicht, Vergleich, was passt, Durchsichten, Quellen, Sammelmappe,
# und die Seite für eine Adresse, die nirgendwohin führt.

# Gruppen von Arten, als Überschriften.
group-snake = Schlangen
group-lizard = Echsen
group-tortoise = Landschildkröten
group-turtle = Wasserschildkröten
group-frog = Frösche
group-salamander = Salamander
group-invertebrate = Wirbellose

# Die Übersicht.
index-description = Pflegeblätter mit ihren Quellen, geprüft und berechnet.
index-find = Ein Tier finden
index-by-kind = Nach Tiergruppe:
# Markdown: Was in eckigen Klammern steht, wird zum Verweis auf die Adresse in den runden.
index-ways = Oder nach [Größe]({ $sizes }), nach [Namen]({ $names }) oder [nebeneinander]({ $compare }).
index-seeking = Suchen ein Zuhause
index-residents = Leben bei uns
index-grows-to = Endgröße
index-lives = Lebt
index-space = Platz, mindestens
index-sizes = Nach Größe
index-names = Nach Namen
index-up-to = Bis { $length }
index-more-than = Mehr als { $length }
index-see = { $also }: siehe { $name }
index-more = Mehr zu lesen
index-compare = Die Arten nebeneinander
index-fits = Was in diesen Platz passt
index-binder = Alle Pflegeblätter in einem Dokument, zum Ausdrucken
index-review = Durchsichten der Pflegeblätter, und was fällig ist
index-sources = Quellen, und was auf jeder beruht

# Die Arten nebeneinander, in fünf Reihenfolgen.
compare-title-name = Die Arten nebeneinander
compare-title-space = Die Arten nebeneinander, nach Platz
compare-title-length = Die Arten nebeneinander, nach Länge
compare-title-years = Die Arten nebeneinander, nach Jahren
compare-title-cost = Die Arten nebeneinander, nach laufenden Kosten
compare-order-name = Die Arten stehen nach ihrem gebräuchlichen Namen.
compare-order-space = Die Arten stehen nach der Grundfläche, die ein ausgewachsenes Tier braucht, die kleinste zuerst; zuletzt die, für die kein geltender Standard eine nennt.
compare-order-length = Die Arten stehen nach der Länge, die sie erreichen können, die kürzeste zuerst.
compare-order-years = Die Arten stehen nach den Jahren, die sie leben können, die wenigsten zuerst; zuletzt die, deren Lebensdauer offen oder nicht bekannt ist.
compare-order-cost = Die Arten stehen nach dem, was ein Jahr Haltung zu den Preisen der Website kosten kann, das wenigste zuerst; zuletzt die, für die es nicht berechnet werden konnte.
compare-description = { $order } Größe, Jahre, Platz, Geld, Licht und Gesellschaft jedes Tiers.
compare-turns = Reihenfolgen
compare-turn-name = Nach Namen
compare-turn-space = Nach Platz
compare-turn-length = Nach Länge
compare-turn-years = Nach Jahren
compare-turn-cost = Nach laufenden Kosten
compare-turn-fits = Was in einen Platz passt
compare-meaning = Was diese Zahlen bedeuten
compare-note-space = Grundfläche und Maße gelten für ein ausgewachsenes Tier am oberen Ende der Adultgröße, für das Geschlecht oder die Form mit dem größten Bedarf. Sie erfüllen jeden geltenden Standard und sind auf Maße aufgerundet, die sich kaufen oder bauen lassen. Ein Standard ist eine Untergrenze, kein Ziel.
compare-note-cost = Die laufenden Kosten gelten für Wärme und, wo die Website den Preis des Futters kennt, für Futter, zu den Preisen der Website; Lampen, Tierarzt und Terrarium sind nicht enthalten. Für Tiere, die im Wasser leben, sind sie nicht berechnet.
compare-note-choose = Ein Tier, das für den einen Halter leicht ist, ist für den anderen schwer: Hier gibt es keine Rangfolge. Lesen Sie das ganze Pflegeblatt, bevor Sie wählen.

# Die Tabellen: Überschrift, Beschriftung, dann die Spaltenköpfe.
compare-animal = Tier
compare-room = Platz, Jahre und Geld
compare-room-caption = Was ein ausgewachsenes Tier von einem Zuhause braucht
compare-grows-to = Endgröße
compare-lives = Lebt
compare-floor = Grundfläche
compare-size = Maße zum Kaufen oder Bauen
compare-electricity = Strom im Jahr
compare-cost = Laufende Kosten im Jahr
compare-daily = Futter, Klima und Gesellschaft
compare-daily-caption = Wie seine Tage aussehen
compare-eats = Futter, ausgewachsen
compare-uv-zone = UV-Zone
compare-humidity = Luftfeuchte
compare-active = Aktiv
compare-company = Gesellschaft
compare-dangers = Gefahren
compare-asks = Was es von seinem Halter verlangt
compare-asks-caption = Was ein Tier leichter oder schwerer macht, als Tatsachen
compare-insects = Lebende Insekten
compare-lamp = UV-Lampe
compare-warmest = Wärmste Stelle
compare-rest = Winterruhe
compare-cites = CITES

# Was in den Zellen steht.
compare-cost-not-worked-out = nicht berechnet
compare-humidity-in-water = lebt im Wasser
compare-company-alone = keine
compare-company-pairs = keine oder ein Tier, mit dem es sich verträgt
compare-company-groups = keine oder eine Gruppe
compare-insects-always = ja, das ganze Leben lang
compare-insects-young = solange es jung ist
compare-insects-no = nein
compare-insects-unknown = nicht bekannt
compare-lamp-shade = schadet nicht, nicht gefordert
compare-lamp-yes = ja
compare-lamp-unknown = nicht bekannt
compare-rest-none = keine
compare-cites-unknown = nicht bekannt
compare-cites-none = nicht gelistet
compare-cites-I = I
compare-cites-II = II
compare-cites-III = III
# „Maus, adult, alle 7–10 Tage“.
compare-food = { $meal }, alle { $every }

# Was in einen Platz passt. Die Überschriften der Tabellen sind Flächen.
fits-title = Was in diesen Platz passt
fits-description = Welche Arten ausgewachsen auf welche Grundfläche passen, nach jedem geltenden Standard.
fits-first = Genug für
fits-also = Genug für alle obigen und für
fits-more = Mehr als { $floor }
fits-more-caption = Diese brauchen eine Grundfläche eigener Größe
fits-open = Nicht sicher
fits-open-caption = Nicht jeder geltende Standard konnte für diese berechnet werden, oder keiner hat eine Regel für sie
fits-note-shape = Eine Grundfläche der richtigen Größe muss auch die richtige Form und Höhe haben: Sehen Sie auf die Maße. Ein junges Tier braucht eine Zeit lang weniger; es zählt, was es brauchen wird.
fits-note-all-standards = Die geltenden Standards sind alle, die eine Art nennt.
fits-note-standards = Die geltenden Standards: { $standards }.

# Durchsichten der Pflegeblätter.
review-title = Durchsichten der Pflegeblätter
review-description = Wann jedes Pflegeblatt zuletzt mit seinen Quellen durchgesehen wurde, von wem, und wann das wieder fällig ist.
review-overdue = Jetzt fällig
review-overdue-caption = Nie durchgesehen oder zu lange nicht
review-soon = Fällig innerhalb eines halben Jahres
review-soon-caption = Die nächsten zur Durchsicht
review-later = Später
review-later-caption = Vor nicht langer Zeit durchgesehen
review-animal = Tier
review-last = Zuletzt durchgesehen
review-by = Von
review-due = Wieder fällig
review-never = nie
review-nobody = niemand
review-now = jetzt
review-note = Geltungsdauer einer Durchsicht: { $span }. Wer ein Blatt durchsieht, geht jede Angabe mit ihrer Quelle durch, sucht nach neueren Veröffentlichungen und trägt dann Tag und Namen in die Datei der Art ein.

# Das Literaturverzeichnis.
sources-title = Quellen
sources-description = Jede Veröffentlichung, auf der eine Angabe beruht.
sources-standards = Geltende Standards
sources-practice = Gängige Praxis
# Eine Zahl folgt, und ein Punkt.
sources-practice-count = Angaben, die allein auf gängiger Praxis beruhen, ohne Veröffentlichung dahinter:
sources-practice-marked = Jede ist dort gekennzeichnet, wo sie steht.
sources-set-here = Hier festgelegt
sources-publications = Veröffentlichungen
sources-what-rests = Was darauf beruht
sources-signs = Krankheitszeichen
sources-law = Recht, { $place }
sources-least-enclosure = Mindestterrarium
sources-law-page = Was das Recht verlangt
# „small“ machte den Anfangsbuchstaben klein; im Deutschen bleibt er.
sources-figures-begin = unverändert
# Die Tabelle der Angaben, die die Website selbst festgelegt hat.
sources-overrides = Angaben, die von der Bibliothek abweichen
sources-override-figure = Angabe
sources-override-here = Hier
sources-override-library = In der Bibliothek
sources-override-sources = Ihre Quellen
sources-override-by = Festgelegt von
sources-override-why = Warum, und auf wessen Autorität
sources-override-practice = gängige Praxis

# Alle Pflegeblätter in einem Dokument.
binder-title = Alle Pflegeblätter
binder-description = Jedes Pflegeblatt in einem Dokument, zum Ausdrucken in einem Zug.
binder-contents = Inhalt
binder-own-page = Seine eigene Seite, mit dem Rechenweg

# Was ein Server zeigt, wo keine Seite ist.
lost-title = Diese Seite gibt es nicht
lost-description = Die Adresse führt auf dieser Website nirgendwohin.
lost-why = Sie ist vielleicht falsch geschrieben, oder die Seite gibt es nicht mehr.
lost-index = Alle Blätter
lost-compare = Die Arten nebeneinander
lost-sources = Quellen, und was auf jeder beruht
