# Die Karte an der Tür eines Terrariums: aus einem Meter zu lesen, darum kurz. Die Telefonnummern stehen auch auf Akten.

door-title = Türkarte von { $name }
door-care-sheet = Pflegeblatt { $species }
# Eine Zeile unter dem Namen: Art und Geschlecht. Dies gilt für ein Tier, dessen Geschlecht nicht bekannt ist.
door-sex-not-known = Geschlecht nicht bekannt

# Was man wissen muss, bevor die Tür geöffnet wird. Sicherheitstexte.
# Der Name dieser Liste für alle, die die Seite hören.
door-before = Vor dem Öffnen
door-quarantine = Quarantäne bis { $date }. Zuletzt in der Runde, eigenes Werkzeug, danach Hände waschen.
door-large-constrictor = Zwei Erwachsene: Nie allein öffnen, nie allein mit dieser Schlange hantieren, nie allein füttern.
door-venom = Der Biss kann Gift übertragen. Hände draußen lassen; Pinzette benutzen.
door-strong-bite = Beißt kräftig. Mit langer Pinzette füttern, langsam bewegen.
door-skin-secretion = Die Haut reizt. Angefeuchtete, puderfreie Handschuhe.
door-strong-tail = Schlägt mit dem Schwanz. Gesicht fernhalten.
# `names` sind Namen von Tieren, mit Kommas dazwischen.
door-company = Lebt mit { $names }: Vor dem Schließen zählen.

door-readings = Gewünschte Messwerte
door-basking = Sonnenplatz
door-warm = Warme Seite
door-cool = Kühle Seite
door-water = Wasser
door-night = Nachts

door-food = Futter
door-meal = Mahlzeit
door-from-meal-to-meal = Von Mahlzeit zu Mahlzeit
door-last-ate = Zuletzt gefressen
door-next-due = Nächste fällig ab

# Wen man anruft.
door-emergency = Im Notfall
door-vet = Tierarzt
door-vet-out-of-hours = Tierärztlicher Notdienst
door-keeper = Halter
# Jemand, den man anrufen kann, wenn der Halter nicht abnimmt.
door-second = Zweite Nummer

door-square = Die Adresse des Pflegeblatts als Quadrat, das ein Telefon lesen kann
