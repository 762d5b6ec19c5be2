# Was das Recht der Gebiete der Website verlangt, und die Gesundheitshinweise. Was die Gesetze selbst sagen, kommt aus Dateien.

law-title = Was das Recht verlangt
law-description = Was das Recht jedes Gebiets von diesen Blättern verlangt und wo sie darauf antworten.
law-held = Abgeglichen mit dem Recht dieser Gebiete: { $places }. In unseren eigenen Worten nach Lesenotizen wiedergegeben, mit dem Tag, bis zu dem sie gelesen waren; was aus dem Gedächtnis stammt, ist so bezeichnet. Recht ändert sich, und es bindet manche und andere nicht. Das örtliche Recht entscheidet: Fragen Sie die Behörde vor Ort.
law-notices = Hinweise zum Ausdrucken
law-public-health = { $place }: öffentliche Gesundheit

# Angaben zum Recht eines Gebiets.
law-act = Gesetz oder Verordnung
law-read = Gelesen
law-binds = Bindet
law-lies-within = Liegt in
law-form = Form
law-buyer = Käufer
law-buyer-age = mindestens { $age } alt
law-treatment = In Behandlung
law-size = Größe
law-paper = Papier
law-mark = Kennzeichen
law-records = Aufzeichnungen
law-also = Außerdem
# Der Verkauf eines Tiers in Behandlung ist …
law-sale-forbidden = verboten
law-sale-on-conditions = unter Bedingungen erlaubt
# Für welche Tiere eine Regel gilt.
law-shell-below = Panzer unter { $size }
law-shell-from = Panzer ab { $size }
law-mass-from = Gewicht ab { $size }
# Anstelle des Artikels; dann dahinter.
law-article-unknown = Artikel nicht in unseren Notizen
law-article-memory = { $article }; aus dem Gedächtnis, nicht gelesen

# Die Tabelle dessen, was das Recht eines Gebiets von einem Blatt verlangt.
law-asks = Was ein Blatt sagen muss: { $place }
law-asked-for = Verlangt
law-article = Artikel
law-answered = Beantwortet unter
law-remark = Bemerkung
law-wider = von einem weiteren Wort des Textes abgedeckt
law-wording-set = das Gesetz gibt den Wortlaut vor
law-item-names = wissenschaftlicher und gebräuchlicher Name
law-item-life-expectancy = Lebenserwartung
law-item-adult-size = Größe ausgewachsen
law-item-housing = Unterbringung: Größe und Einrichtung
law-item-environment = Klima: Wärme, Feuchte, Licht
law-item-feeding = Fütterung
law-item-daily-ration = Tagesration
law-item-watering = Wasserversorgung
law-item-general-care = allgemeine Pflege
law-item-handling = Umgang
law-item-cleaning = Reinigung
law-item-equipment = Ausrüstung und Zubehör
law-item-movement = Bewegung
law-item-enrichment = Beschäftigung
law-item-social-life = Sozialleben: einzeln oder in Gesellschaft
law-item-behaviour = Verhalten
law-item-danger = Gefahr für Menschen
law-item-reproduction = Fortpflanzung und Aufzucht
law-item-signs-of-illness = Krankheitszeichen
law-item-veterinary-care = tierärztliche Versorgung
law-item-yearly-cost = jährliche Haltungskosten
law-item-protection-status = Schutzstatus
law-item-legal-basis = Rechtsgrundlage der Haltung
law-item-no-release = Warnung vor dem Freilassen
law-item-health-on-the-day = Gesundheit dieses Tiers am Tag selbst
law-item-particulars = Herkunft, Alter, Geschlecht und tierärztliche Akte
# Wo ein Blatt antwortet: Überschriften, durch Semikolon getrennt.
law-on-handover = Übergabeblatt: { $headings }
law-under-head = der Kopf des Blatts
law-under-seconds = In zehn Sekunden
law-under-cautions = Warnhinweise
law-under-identity = Identität
law-under-origin = Herkunft
law-under-measurements = Messungen
law-under-treatment = Gesundheit und Behandlung

# Auf den Blättern eines Tiers oder einer Art.
law-held-against = Abgeglichen mit dem Recht
law-held-read = { $places } (gelesen bis { $date })
law-release = Freilassen, { $place }
law-release-ours = Lassen Sie dieses Tier niemals frei.
law-release-note = Unsere Worte: Das dortige Recht gibt eigene vor, und sie sind ihm zu entnehmen.
law-trade = Internationaler Handel
law-with-paper = { $says } Papier: { $paper }.

# Die Gesundheitshinweise. Den ersten verlangt das Recht.
notice-title-binding = Hinweis zur öffentlichen Gesundheit, { $place }
notice-title-advice = Empfehlung zur öffentlichen Gesundheit, { $place }
notice-description = { $title }, auf einer Seite.
notice-law = Was das Recht verlangt
notice-says = Inhalt
notice-ages = Alter
notice-ages-line = Alter: { $ages }.
notice-given-to = Empfänger
notice-wall = An der Wand
notice-for = Für
notice-words = Der genaue Wortlaut
notice-words-set = kann vom Gesetz vorgegeben sein und ist ihm zu entnehmen
notice-rests-on = Beruht auf
notice-local-law = Das örtliche Recht entscheidet.
notice-own-words = In unseren Worten wiedergegeben: Das Gesetz kann eigene vorgeben, und sie sind ihm zu entnehmen.
# Wann das gelesen wurde, worauf eine Zeile beruht.
notice-read-by = gelesen bis { $date }
notice-from-memory = aus dem Gedächtnis, nicht gelesen
notice-read-unknown = niemand sagt, wann es gelesen wurde
# Für welche Tiere ein Hinweis gilt.
notice-for-snake = Schlangen
notice-for-lizard = Echsen
notice-for-tortoise = Landschildkröten
notice-for-turtle = Wasserschildkröten
notice-for-frog = Frösche
notice-for-salamander = Salamander
notice-for-invertebrate = wirbellose Tiere
