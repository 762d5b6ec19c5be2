# Das Übergabeblatt eines Tiers: was ein neuer Halter wissen muss, und unterschreibt.

handover-title = Übergabe von { $name }, { $species }
handover-head = Übergabeblatt
handover-for = Für { $name }
handover-care-sheet = Pflegeblatt { $species }
# Markdown: Was in eckigen Klammern steht, wird zum Verweis auf die Adresse in den runden.
handover-goes-with = [{ $sheet }]({ $address }) gehört zu diesem Blatt.
handover-contacts = Wen Sie anrufen
handover-by = Übergeben von
handover-vet = Tierarzt
handover-vet-hours = Tierärztlicher Notdienst
handover-before = Bevor es geht
handover-settle = Zu klären
handover-drawn = Wachstum und Gewicht
handover-drawn-growth = Wachstum und Gewicht, gezeichnet

# Wofür der neue Halter unterschreibt.
handover-signing = Übergeben
handover-read = Ich habe dieses Blatt und das zugehörige Pflegeblatt gelesen, und mir wurde gezeigt, wie { $name } gehalten wird.
handover-know-size = Ich weiß, wie groß es werden kann, wie lange es leben kann und was seine Haltung kosten wird.
handover-know-law = Ich weiß, dass das örtliche Recht entscheidet, ob und wie ich es halten darf, und dass mir die hier genannten Papiere übergeben wurden.
handover-ring-vet = Ich rufe einen Tierarzt an, der Reptilien und Amphibien behandelt, wenn ein Zeichen auf diesem Blatt es verlangt.
# `age` ist eine Spanne: „18 Jahre“; `law` ist der Name eines Gebiets mit seinem Gesetz.
handover-buyer-age = Ich bin mindestens { $age } alt, wie { $law } es von einem Käufer verlangt.
handover-buyer-age-memory = Ich bin mindestens { $age } alt, wie { $law } es von einem Käufer verlangt, soweit aus dem Gedächtnis bekannt.
# Steht vor der Zusage, das Tier zurückzunehmen.
handover-taken-back = Rücknahme.
handover-sign-keeper = Neuer Halter: Name und Unterschrift
handover-sign-by = Übergeben von: Name und Unterschrift
handover-sign-date = Datum

# Die Einrichtung, wie sie ist.
handover-set-up = Derzeitige Einrichtung
handover-enclosure = Terrarium
handover-inside = Terrarium innen, Länge × Breite × Höhe
# „Halogenstrahler, 50 W, eigener Dimmthermostat, Sollwert 34 °C“.
handover-heater = Heizquelle
handover-thermostat-on-off = eigener Ein-Aus-Thermostat
handover-thermostat-pulse = eigener Pulsthermostat
handover-thermostat-dimming = eigener Dimmthermostat
handover-thermostat-none = kein eigener Thermostat
handover-set-to = Sollwert { $temperature }
handover-set-night = nachts { $temperature }
handover-guarded = mit Schutz
handover-no-guard = kein Schutz vermerkt
handover-lamp = Lampe
handover-lamp-hours = { $hours } am Tag
# Abstand der Lampe über dem Sonnenplatz und der UV-Index dort.
handover-lamp-above = { $distance } über dem Platz
handover-lamp-there = dort { $uvi }
handover-lamp-fitted = eingesetzt: { $date }
handover-substrate = Bodengrund
handover-hides = Verstecke
handover-power-cut = Stromausfall
handover-readings = Messwerte
handover-probe = Fühler
handover-from-warm = Vom warmen Ende
handover-by-day = Am Tag
handover-by-night = Nachts
handover-humidity = Luftfeuchte
handover-humidity-most = Luftfeuchte höchstens

# Was es jetzt braucht.
handover-needs = Was es jetzt braucht
handover-stage = Lebensabschnitt
handover-meal = Mahlzeit
handover-interval = Von Mahlzeit zu Mahlzeit
handover-next-meal = Nächste Mahlzeit fällig
handover-meal-between = ab { $from }, bis { $until }
handover-rest = Nach einer Mahlzeit nicht anfassen für
handover-least = Mindestterrarium jetzt, { $standard }
handover-short = Sein Terrarium reicht nicht
# Vorhandenes, Nötiges und der Unterschied, jedes mit seiner Einheit.
handover-short-length = { $standard }: Länge { $inside }, nötig { $needed }, es fehlen { $by }
handover-short-width = { $standard }: Breite { $inside }, nötig { $needed }, es fehlen { $by }
handover-short-side = { $standard }: kürzeste Seite { $inside }, nötig { $needed }, es fehlen { $by }
handover-short-floor = { $standard }: Grundfläche { $inside }, nötig { $needed }, es fehlen { $by }
handover-short-height = { $standard }: Höhe { $inside }, nötig { $needed }, es fehlen { $by }
handover-short-water-depth = { $standard }: Raum für die Wassertiefe { $inside }, nötig { $needed }, es fehlen { $by }
handover-short-water = { $standard }: Raum für das Wasser { $inside }, nötig { $needed }, es fehlen { $by }
handover-quarantine = In Quarantäne bis
handover-energy = Sein Futter enthält
handover-energy-times = { $low }–{ $high }-mal seine Energie in Ruhe
handover-hide-width = Verstecke mindestens so breit wie
handover-hide-grown = { $now }, ausgewachsen { $grown }

# Was es ausgewachsen brauchen wird.
handover-grown = Was es brauchen wird
handover-length-grown = Länge, ausgewachsen
# Woraus diese Länge berechnet ist.
handover-rests-on = Das beruht auf
handover-rests-growth = { $count ->
    [0] seinem eigenen Wachstum: keine Länge verzeichnet
    [one] seinem eigenen Wachstum: eine Länge verzeichnet
   *[other] seinem eigenen Wachstum: { $count } Längen verzeichnet
}
handover-rests-species = { $count ->
    [0] der Spanne seiner Art: keine Länge verzeichnet
    [one] der Spanne seiner Art: eine Länge verzeichnet
   *[other] der Spanne seiner Art: { $count } Längen verzeichnet
}
handover-enclosure-grown = Terrarium, ausgewachsen, mindestens
handover-life = Lebensdauer
handover-eats-grown = Futter, ausgewachsen
# „Ratte, groß, alle 6 Wochen“.
handover-eats-every = { $meal }, alle { $every }

handover-signs = Wann Sie einen Tierarzt anrufen
handover-no-signs = Zeichen

# Die ersten zwei Wochen im neuen Zuhause.
handover-weeks = Die ersten zwei Wochen
handover-weeks-before = Bevor es kommt
handover-weeks-run = Betreiben Sie das Terrarium einige Tage, bis seine Messwerte am Tag und nachts stabil bleiben.
handover-weeks-run-at = Betreiben Sie das Terrarium einige Tage, bis seine Messwerte am Tag und nachts stabil bleiben, mit der kühlen Seite oder dem Wasser bei { $temperature }.
handover-weeks-daily = Jeden Tag
handover-weeks-daily-do = Frisches Wasser, Messwerte, Türen und Schlösser, ein Blick, ohne mehr zu öffnen als nötig. Danach Hände waschen.
handover-weeks-next-meal = Nächste Mahlzeit im alten Zuhause fällig
handover-weeks-refused = Eine verweigerte Mahlzeit
handover-weeks-refused-do = wird weggenommen und beim nächsten Termin wieder angeboten, nicht früher
handover-weeks-table = Tag für Tag
handover-weeks-day = Tag
handover-weeks-done = Was getan wird
# Was an einem Tag getan wird: eines oder mehrere davon, eines hinter dem anderen.
handover-weeks-put-in = Setzen Sie { $name } ein, schließen Sie das Terrarium und lassen Sie das Tier in Ruhe. Kein Futter, nicht anfassen.
handover-weeks-first-check = Notieren Sie die Messwerte am Tag und nachts. Rufen Sie einen Tierarzt an, der Reptilien und Amphibien behandelt, für eine Erstuntersuchung mit einer Kotprobe.
handover-weeks-papers = Legen Sie die Papiere ab, und melden Sie das Tier, wo das örtliche Recht es verlangt.
handover-weeks-first-meal = Bieten Sie die erste Mahlzeit an: { $meal }. Nehmen Sie heraus, was übrig bleibt.
handover-weeks-meal = Bieten Sie die nächste Mahlzeit an.
handover-weeks-digests = Es verdaut: Lassen Sie es in Ruhe.
handover-weeks-weigh = Wiegen Sie es und schreiben Sie das Gewicht auf.
handover-weeks-handle = Kurzer, ruhiger Umgang, wenn es zu denen gehört, die das vertragen.
handover-weeks-look = Nur ansehen: Augen, Haut, Atmung, Kot.
