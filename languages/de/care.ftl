# Das Pflegeblatt einer Art und die Seite mit dem Rechenweg.
care-title = Pflegeblatt { $name }
care-description = Pflegeblatt für { $name } ({ $scientific }).
care-also = Auch { $names } genannt
care-reviewed = Zuletzt durchgesehen: { $date }.
care-reviewed-by = Zuletzt durchgesehen: { $date }, von { $who }.
care-review-due = Nächste Durchsicht bis { $date }.
care-not-reviewed = Noch nicht durchgesehen.
care-card = Wandkarte, eine Seite
care-compare = Neben anderen Arten
care-seconds = In zehn Sekunden
care-contents = Inhalt
care-on-this-sheet = Auf diesem Blatt
care-sources = Quellen
care-sources-remark = Jede wurde selbst gelesen, wo nichts anderes steht. Eine Angabe mit dem Vermerk „gängige Praxis“ ist, was Halter tun; keine Veröffentlichung steht dahinter.
care-sources-page = Was sonst auf jeder von ihnen beruht
care-neighbours = Benachbarte Blätter
care-before = Davor:
care-after = Danach:
care-more = Weiteres

# Namen von Angaben, und was sie sagen.
care-measured = { $label }, { $measure }
care-space = Mindestterrarium, ausgewachsen
care-eats = Futter, ausgewachsen
care-costs = Laufende Kosten
care-costs-a-year = etwa { $low }–{ $high } { $currency } im Jahr, ohne Tierarzt
care-dangers = Gefahren
care-law = Recht
care-law-check = vor Ort prüfen; siehe letztes Kapitel
care-gradient = Temperaturgefälle, wärmste bis kühlste Stelle
care-fasts = Fresspausen
care-company = Gesellschaft
care-supplements = Futterzusätze, { $stage }
care-remark = Bemerkung, { $stage }
care-origin = Herkunft
care-looked-up = Nachgeschlagen
care-looked-up-on = { $date }; vor Ort prüfen, das örtliche Recht entscheidet
care-looked-up-never = noch nicht; vor Ort prüfen, das örtliche Recht entscheidet
care-lives = Lebt
care-active = Aktiv
care-hides = Verstecke
care-hides-at-least = mindestens { $hides }, am warmen und am kühlen Ende
care-substrate = Bodengrund
care-water = Wasser
care-climbing = Klettern
care-digging = Graben
care-bathing = Baden

# Die Tabellen.
table-enclosure = Mindestterrarium für ein ausgewachsenes Tier, innen: Länge × Breite × Höhe
table-enclosure-for = Für
table-enclosure-length = Bei einer Länge von
table-enclosure-by = Nach
table-least = Mindestens
table-build = Maße zum Kaufen oder Bauen
table-enclosure-note = Berechnet für das obere Ende der Adultgröße. Mehr Platz ist besser; ein Standard ist eine Untergrenze, kein Ziel.
table-enclosure-disagree = Die Standards weichen voneinander ab: Die größte Grundfläche ist { $times }-mal so groß wie die kleinste. Bauen Sie nach der größeren.
table-ladder = Bei dieser Länge dieses Terrarium: was jeden geltenden Standard erfüllt
table-humidity = Was das Hygrometer anzeigen darf
table-humidity-zone = Zone
table-humidity-at = Bei
table-humidity-reading = Anzeige
table-humidity-note = Dieselbe Luft wird trockener angezeigt, wo es wärmer ist. An der Obergrenze kondensiert Wasser an allem, was kälter ist als { $dew }.
table-feeding = Fütterung nach Lebensabschnitt
table-feeding-stage = Abschnitt
table-feeding-until = Bis
table-feeding-meal = Mahlzeit
table-feeding-amount = Wie viel
table-feeding-every = Alle
table-feeding-a-year = Mahlzeiten im Jahr
table-feeding-energy = Energie zu Ruhebedarf
table-feeding-note = Eine Angabe dieser Tabelle, die hier nicht mit ihrer Quelle aufgeführt ist, ist gängige Praxis.
table-feeding-old-age = ins hohe Alter
table-feeding-share = { $share } des Körpergewichts
table-light = Tageslänge in der Heimat
table-light-month = Monat
table-light-hours = Stunden
table-signs = Krankheitszeichen, und wie bald ein Tierarzt sie sehen sollte
table-signs-sign = Zeichen
table-signs-means = Kann bedeuten
table-signs-act = Was zu tun ist

# Die Seite mit dem Rechenweg.
working-title = { $name }: der Rechenweg
working-description = Die Zahlen des Pflegeblatts { $name }: jede Formel, die eingesetzten Zahlen, was vorausgesetzt wurde und wer es veröffentlicht hat.
working-page = Der Rechenweg
working-nothing = Auf diesem Blatt musste nichts berechnet werden.

# Am Kopf eines Blatts, dessen Texte niemand übersetzt hat: { $language } ist etwa „Englisch“.
care-foreign-words = Der Text dieses Blatts und kurze Texte wie Krankheitszeichen und Mahlzeiten sind auf { $language }: Bisher hat sie niemand übersetzt.
care-foreign-texts = Kurze Texte wie Krankheitszeichen und Mahlzeiten sind auf { $language }: Bisher hat sie niemand übersetzt.
