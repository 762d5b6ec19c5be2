# Die Akte eines Tiers, für seinen Halter und für einen Tierarzt, und was ein Übergabeblatt daraus erzählt: wer es ist, woher es
# kam, was es wog, fraß und häutete, wie es ihm ging, seine Papiere.

record-title = Akte von { $name }
record-head = Akte
record-contacts = Wen Sie anrufen
record-meal-year = Mahlzeiten des Jahres
record-findings = Offene Prüfpunkte
# Ein Zweifel an den Dateien des Tiers: wie schwer er wiegt, und sein Code.
record-finding = { $severity ->
    [error] Fehler
    [warning] Warnung
   *[note] Hinweis
}, { $code }
record-no-findings = Nichts in den Dateien dieses Tiers ist zweifelhaft.
record-condition = Zustand

# Köpfe mehrerer Tabellen.
record-day = Tag
record-what = Was
record-measured = Gemessen

# Messwerte der Fühler.
record-readings = Messwerte
record-readings-all = Alle Messwerte, die neuesten zuerst
record-probe = Fühler
record-temperature = Temperatur
record-humidity = Luftfeuchte

# Wer es ist.
record-identity = Identität
record-name = Name
record-species = Art
record-form = Form oder Lokalität
record-sex = Geschlecht
# Ein Geschlecht, und wie es bestimmt wurde.
record-sex-told = { $sex } ({ $basis })
record-sex-not-told = { $sex } (wie bestimmt, ist nicht bekannt)
record-age = Alter
record-chip = Chip oder Kennzeichen
record-temperament = Wesen

# Woher es kam.
record-origin = Herkunft
record-came-from = Kam von
record-arrived = Angekommen
record-status = Status
# Wie ein Tier zu seinem Halter steht.
status-resident = lebt hier
status-quarantine = Quarantäne
status-seeking-a-home = sucht ein Zuhause
status-rehomed = vermittelt
status-died = gestorben

# Längen und Gewichte.
record-measurements = Messungen
record-measurements-all = Alle Messungen, die neuesten zuerst
record-measurements-last = Die letzten Messungen
record-weight = Gewicht
record-lengths-weights = Längen und Gewichte

# Mahlzeiten.
record-feeding = Fütterungsprotokoll
record-meals = Mahlzeiten
record-meals-all = Alle angebotenen Mahlzeiten, die neuesten zuerst
record-meals-last = Die zuletzt angebotenen Mahlzeiten
record-last-meal = Letzte gefressene Mahlzeit
# Wie viele von so vielen Mahlzeiten gefressen wurden.
record-of-last = Von den letzten { $count }
record-outcomes = { $taken } gefressen, { $part } zum Teil, { $refused } verweigert
record-food = Futter
record-mass = Gewicht
record-not-weighed = nicht gewogen
record-outcome = Ergebnis
record-taken = gefressen
record-part = zum Teil
record-refused = verweigert

# Häutungen.
record-sheds = Häutungen
record-sheds-all = Alle Häutungen, die neuesten zuerst
record-sheds-last = Die letzten Häutungen
record-shed-how = Wie
record-shed-remark = Bemerkung
record-shed-complete = vollständig
record-shed-pieces = in Stücken
record-shed-not-noted = nicht vermerkt
record-last-shed = Letzte Häutung

# Krankheit und Behandlung.
record-health = Gesundheit und Behandlung
record-illness = Krankheit: { $what }
record-treatment = Behandlung: { $what }
record-health-table = Krankheit, Untersuchungen und Behandlung
# Wer es behandelt oder untersucht hat.
record-by = Von
record-illness-treatment = Krankheit und Behandlung
record-none = nichts verzeichnet
record-treated-now = Derzeit in Behandlung
record-treated-yes = ja
record-treated-no = nein
record-treated-logged = nicht bekannt: Das Protokoll nennt Krankheit oder Behandlung am { $date }
record-treated-nothing = nichts verzeichnet
record-for-vet = Für einen Tierarzt

# Papiere.
record-papers = Papiere
record-proof = Herkunftsnachweis
record-proof-paper = das Papier, das seine Herkunft belegt, geht mit ihm
record-handed-over = Übergeben
record-law = Recht
record-law-decides = vor Ort prüfen, bevor es umzieht; das örtliche Recht entscheidet
