# Was die Haltung eines Tiers braucht, in seiner Akte, auf den Blättern einer Übergabe und auf dem Vertretungsblatt.

upkeep-title = Wärme, Strom und Wasser

# Angaben: was sie sind, und was sie sagen.
upkeep-heat = Wärme
upkeep-not-worked-out = nicht berechnet: { $reason }
upkeep-water = Wasser, um die Feuchte zu halten
upkeep-water-in-a-day = etwa { $water } ml verdunsten am Tag aus Napf, Bodengrund und Sprühwasser
upkeep-water-and-spray = etwa { $water } ml verdunsten am Tag aus Napf, Bodengrund und Sprühwasser, { $each } ml bei jedem Sprühen
upkeep-dew = Wasser schlägt sich nieder an allem, was kälter ist als
upkeep-lights = Beleuchtung
upkeep-lights-on-off = an um { $on }, aus um { $off }
# `lamp` ist die Art der Lampe, wie ihr Halter sie schreibt.
upkeep-lamp = { $lamp }, für den UV-Bereich der Art
upkeep-lamp-distance = Abstand einer Lampe
upkeep-lamp-above = { $near } bis { $far } über seinem Rücken
upkeep-lamp-above-sure = { $near } bis { $far } über seinem Rücken; das nähere Ende kann zwischen { $low } und { $high } cm liegen
upkeep-costs = Kosten im Jahr, ohne Tierarzt
upkeep-cost = etwa { $low }–{ $high } { $currency }
upkeep-heat-lost = Wärmeverlust im Zimmer wie üblich, und in der kältesten Nacht
upkeep-heat-lost-watts = { $usual } W und { $coldest } W
upkeep-heaters = Eingebaute Heizquellen
upkeep-heaters-enough = { $watts } W: genug für die kälteste Nacht
upkeep-heaters-enough-by-night = { $watts } W: genug für die Temperaturen der Nacht, nicht um das Temperaturgefälle des Tages durch die kälteste Nacht zu halten
upkeep-heaters-too-small = { $watts } W: zu wenig für die kälteste Nacht
upkeep-duty = Sie laufen
upkeep-duty-share = etwa { $share } % der Zeit
upkeep-electricity = Strom für Wärme im Monat
upkeep-electricity-kwh = etwa { $kwh } kWh
upkeep-electricity-kwh-cost = etwa { $kwh } kWh, { $amount } { $currency }
upkeep-savings = Davon würde sparen
upkeep-savings-foam = 2 cm Schaumstoff an jeder Wand außer der vorderen etwa { $share } %
upkeep-savings-air = halber Luftwechsel etwa { $share } %, wenn die Feuchte es erlaubt
upkeep-without-power = Ohne Strom
upkeep-hours-without-power = Schaden kann in der kältesten Nacht nach { $early } Stunden beginnen, erwartet nach { $expected } Stunden
upkeep-heat-wave = Bei einer Hitzewelle
upkeep-heat-wave-above = über { $room } im Zimmer würde eine Heizquelle, die nicht mehr abschaltet, es überhitzen: Schalten Sie die Heizquellen an der Steckdose ab
upkeep-sure = Wie sicher
upkeep-sure-share = eine Schätzung für gleichbleibende Verhältnisse, die um { $share } % nach oben oder unten abweichen kann; Elektroinstallation ist Arbeit für eine Elektrofachkraft

# Die Tabelle der Messgeräte: in welchem Bereich jedes sein darf, und wo es Zeit ist zu handeln.
upkeep-instruments = Was die Messgeräte am Tag anzeigen sollten
upkeep-instrument = Messgerät
upkeep-right = Richtig
upkeep-act-now = Sofort handeln
upkeep-instruments-note = Liegt ein Wert dazwischen, sehen Sie nach einer halben Stunde wieder nach: Ist der Fühler an seinem Platz, ist die Tür zu? Die eigene Genauigkeit und die Prüfungen jedes Messgeräts sind in diesen Zahlen enthalten.
upkeep-temperature-at = { $probe }, Temperatur
upkeep-humidity-at = { $probe }, Luftfeuchte
upkeep-too-rough = Messgerät zu ungenau, um sicher zu sein
upkeep-below-or-above = unter { $below } oder über { $above }

# Wachstum und Leben, die noch kommen.
upkeep-own-growth = Sein eigenes Wachstum
upkeep-own-growth-open = noch nicht genug, um es zu sagen: Die Längen lassen die Adultlänge so offen wie die Art
upkeep-growth-to-come = Noch zu erwartendes Wachstum
upkeep-outgrown-at = Seinem Terrarium ist es entwachsen bei { $length }
upkeep-outgrown-dates = frühester Tag { $earliest }, erwarteter { $expected }, spätester { $latest }
# Anstelle eines dieser Tage.
upkeep-outgrown-not-expected = nicht zu erwarten
upkeep-outgrown-when = Wann es seinem Terrarium entwachsen ist
upkeep-life-lasts = Ein solches Leben reicht bis
# Jahre des Kalenders.
upkeep-life-between = zwischen { $first } und { $last }
upkeep-life-at-latest = spätestens { $last }
upkeep-life-at-least = mindestens { $first }

# Wie es einem Tier geht.
upkeep-weight-over = Gewicht über { $days } Tage
upkeep-days-since-it-ate = Tage, seit es gefressen hat
upkeep-days-fasted = { $days }; bis zu { $limit } sind für seine Art normal

# Warum eine Angabe nicht berechnet werden konnte: Satzteile, hinter „nicht berechnet:“ oder allein.
absent-enclosure = kein Terrarium ist angegeben
absent-inside = die Innenmaße des Terrariums sind nicht angegeben
absent-warm-and-cool = für die Art ist keine warme und kühle Seite der Luft angegeben
absent-room-by-day = die Temperatur des Zimmers am Tag ist nicht angegeben
absent-coldest-night = die kälteste Nacht des Zimmers ist nicht angegeben
absent-air-exchange = für das Terrarium ist kein Luftwechsel angegeben
absent-walls = woraus die Wände sind, ist nicht angegeben
absent-material = `{ $material }` steht nicht in der Tabelle der Materialien
absent-critical-low = für die Art ist keine Temperatur angegeben, unter der sie Schaden nimmt
absent-room-stays-above = das Zimmer fällt nicht unter { $celsius } °C
absent-colder-already = es ist mit Strom schon kälter als das
absent-band = für die Art ist kein UV-Bereich angegeben
absent-band-end = der UV-Bereich der Art hat kein oberes Ende
absent-second-distance = Messwerte in zwei oder mehr Abständen sind nötig
absent-not-falling = der Index fällt nicht mit dem Abstand: Messen Sie die Lampe noch einmal
absent-beyond-readings = der Bereich liegt außerhalb der { $near }–{ $far } cm, für die die Messwerte sprechen
absent-adult-length = keine Adultlänge ist bekannt
absent-too-small = es ist schon zu klein
absent-does-for-longest = es reicht für das längste ausgewachsene Tier, das zu erwarten ist
absent-not-known = seine Länge, die Maße seines Terrariums oder die Regel eines Standards ist nicht bekannt
