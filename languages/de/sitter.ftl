# Das Blatt für jemanden, der die Tiere eine Zeit lang versorgt.

sitter-title = Vertretungsblatt, { $from } bis { $until }
sitter-heading = Vertretungsblatt
sitter-span = { $days ->
    [one] { $from } bis { $until }, { $days } Tag
   *[other] { $from } bis { $until }, { $days } Tage
}

# Wen man anruft, der Reihe nach.
sitter-contacts = Wen Sie anrufen
sitter-keeper = 1. Der Halter
sitter-second = 2. Niemand nimmt 15 Minuten lang ab
sitter-vet = Ein Tier ist krank: der Tierarzt
sitter-vet-out-of-hours = Tierärztlicher Notdienst

sitter-house = Das Haus
# Wo nichts über das Haus aufgeschrieben ist.
sitter-where-things-are = Wo alles ist

# Was nie getan wird. Sicherheitstexte.
sitter-never = Niemals
sitter-never-alone = Öffnen Sie nie allein das Terrarium einer großen Schlange: zwei Erwachsene, jedes Mal.
sitter-never-take-out = Nehmen Sie nie ein Tier heraus, und öffnen Sie nie zwei Terrarien zugleich.
sitter-never-set-points = Ändern Sie nie einen Sollwert, und schalten Sie nie eine Heizquelle ein, die aus war.
sitter-never-more-food = Geben Sie nie mehr Futter, als der Tag sagt, und lassen Sie nie lebende Nagetiere im Terrarium.
sitter-never-medicine = Geben Sie nie ein Medikament, das nicht ein Tierarzt für dieses Tier verordnet hat.
sitter-never-leave-open = Gehen Sie nie weg, bevor Türen, Schlösser und Deckel geschlossen und die Tiere gezählt sind.

# Wenn etwas geschieht, je eine Zeile. Wo Menschen in Gefahr sind, kommen sie zuerst.
sitter-events = Wenn etwas geschieht
sitter-power-cut = Stromausfall
sitter-power-cut-text = Deckel bleiben zu, Decken über das Glas, den Halter anrufen; dann die Karte am Ende dieses Blatts.
sitter-escape = Entwichen
sitter-escape-text = Schließen Sie die Zimmertür, suchen Sie den Boden ab, rufen Sie an. Greifen Sie nicht nach einer Schlange, die Sie nicht kennen.
sitter-bite = Biss
sitter-bite-text = Waschen Sie ihn mit Wasser und Seife aus. Tief, im Gesicht oder mit Schwellung: zum Arzt. Eine große Schlange, die nicht loslässt: Der zweite Erwachsene wickelt sie vom Schwanz her ab; wählen Sie den Notruf.
sitter-fire = Feuer
sitter-fire-text = Menschen hinaus, Tür zu, Notruf wählen. Niemand geht für ein Tier zurück.
sitter-hands = Hände
sitter-hands-text = Wasser und Seife nach jedem Terrarium. Kinder unter fünf Jahren, Schwangere, Menschen über 65 und alle mit geschwächter Abwehr bleiben fern: Reptilien und Amphibien können Salmonellen tragen.

# Was der Halter vor der Abreise erledigt, und was die Vertretung von dem erfährt, was in die Zeit fällt. `task` ist eine Bezeichnung aus `due-…`.
sitter-before = Bevor der Halter geht
sitter-before-lamp = { $name }: { $task }, fällig am { $date }, bevor Sie gehen
sitter-before-vet = { $name }: { $task }, fällig am { $date }: Gehen Sie vorher hin, oder vereinbaren Sie einen Tag danach
sitter-before-weigh = { $name }: wiegen, fällig am { $date }, oder am Tag Ihrer Rückkehr; die Vertretung wiegt nicht
sitter-quarantine = Quarantäne
sitter-quarantine-text = würde am { $date } enden; sie gilt weiter, bis der Halter zurück ist. Zuletzt in der Runde, eigenes Werkzeug, bis zum letzten Tag
sitter-enclosure = Terrarium
sitter-enclosure-text = dem Tier um den { $date } voraussichtlich zu klein; der Halter kümmert sich darum
sitter-care-sheet = Pflegeblatt
sitter-care-sheet-text = ist bis zum { $date } durchzusehen; das ist Arbeit des Halters und wartet

# Die Seite eines Tiers.
sitter-food = Futter
sitter-as-a-rule = In der Regel
sitter-in-a-power-cut = Bei Stromausfall
sitter-shed = Häutung
sitter-shed-on = die nächste kann am { $date } kommen, nach seinen eigenen letzten. Stumpfe Haut, trübe Augen und Verstecken sind dann normal, und es kann Futter verweigern: Lassen Sie es in Ruhe, halten Sie sein feuchtes Versteck feucht
sitter-shed-between = die nächste kann zwischen dem { $from } und dem { $until } kommen, nach seinen eigenen letzten. Stumpfe Haut, trübe Augen und Verstecken sind dann normal, und es kann Futter verweigern: Lassen Sie es in Ruhe, halten Sie sein feuchtes Versteck feucht
sitter-may = Sie dürfen
sitter-may-text = sein Wasser wechseln, sprühen, wie der Tag es sagt, die Mahlzeit des Tages anbieten und herausnehmen, was es übrig lässt, bei abgeschaltetem Strom eine Ersatzlampe einsetzen, es in seiner verschlossenen Transportbox zum Tierarzt bringen
# Für eine große Würgeschlange.
sitter-may-text-large = durch die Scheibe sehen. Mit einem zweiten Erwachsenen neben Ihnen: ihr Wasser wechseln, sprühen, wie der Tag es sagt, die Mahlzeit des Tages anbieten und herausnehmen, was sie übrig lässt, bei abgeschaltetem Strom eine Ersatzlampe einsetzen, sie in ihrer verschlossenen Transportbox zum Tierarzt bringen

# Krankheitszeichen, und was die Vertretung tut: „mich“ ist der Halter.
sitter-signs = Wenn Sie das sehen
sitter-sign = Zeichen
sitter-act = Was zu tun ist
sitter-act-now = sofort den Tierarzt anrufen
sitter-act-day = heute den Tierarzt anrufen, dann mich
sitter-act-days = mich anrufen
sitter-act-watch = weitermachen, aufschreiben

# Wie es in dieser Zeit gefüttert wird. `meal` sagt, was und wie viel. Die erste Zeile folgt jeder anderen, hinter einem Semikolon.
sitter-last-meal = letzte Mahlzeit am { $date }
sitter-skipped = keine Fütterung, solange der Halter fort ist: Am letzten Tag wird es { $days } Tage ohne Futter gewesen sein, und bis zu { $limit } sind für seine Art normal
sitter-none-due = in diesen Tagen ist keine Mahlzeit fällig
sitter-not-known = das Protokoll sagt nicht, wann eine Mahlzeit fällig ist: Fragen Sie den Halter, bevor er geht
sitter-as-due = { $meal } an den Tagen, die es sagen. Nehmen Sie heraus, was es übrig lässt
# Für Futtertiere, die gefroren gekauft werden.
sitter-as-due-thawed = { $meal } an den Tagen, die es sagen. Tauen Sie es über Nacht im Kühlschrank auf, in seinem Beutel; erwärmen Sie den Beutel in handwarmem Wasser, nie in einer Mikrowelle; bieten Sie es mit der Pinzette an. Nehmen Sie heraus, was übrig bleibt
# Anstelle einer Mahlzeit, die nicht bekannt ist.
sitter-meal-as-shown = wie vom Halter gezeigt

# Tag für Tag, eine Tabelle mit Kästchen zum Abhaken: ihre Köpfe, und was in den Kästchen steht.
sitter-days = Tag für Tag
sitter-days-order = In dieser Reihenfolge, und die in Quarantäne zuletzt, mit eigenem Werkzeug
sitter-day = Tag
sitter-animal = Tier
sitter-remarks = Bemerkungen
sitter-quarantined = { $name } (Quarantäne)
# Der Name eines leeren Kästchens für alle, die die Seite hören.
sitter-to-tick = zum Abhaken
sitter-job-water = Wasser
sitter-job-spray = Sprühen
sitter-job-readings = Messwerte
sitter-job-food = Futter
sitter-job-seen = Gesehen, zu, gezählt
sitter-fresh = frisch
sitter-right = richtig
sitter-ask = den Halter fragen
sitter-digests = nichts: es verdaut, in Ruhe lassen
sitter-no-feeding = keine Fütterung
sitter-nothing = nichts
# Hinter einem der vier darüber, am Tag vor einer Mahlzeit aus gefrorenen Futtertieren.
sitter-and-thaw = { $food }; heute Abend: für morgen auftauen
sitter-shed-may-come = Häutung möglich
# Wie oft am Tag gesprüht wird, und mit wie viel.
sitter-spray = { $times } ×
sitter-spray-each = { $times } × { $each } ml

# Ein Eintrag im Kalender der Vertretung: sein Titel, und eine Zeile für jedes Tier. `what` ist eine oder mehrere der Bezeichnungen `sitter-line-…`.
sitter-entry = Tiere: { $what }
sitter-entry-feed = { $name } füttern
sitter-entry-no-meal = Wasser, Messwerte, ein Blick auf jedes
sitter-line = { $name }: { $what }
sitter-line-apart = { $name } (Quarantäne, zuletzt): { $what }
sitter-line-water = Wasser { $text }
sitter-line-spray = Sprühen { $text }
sitter-line-readings = Messwerte { $text }
sitter-line-food = Futter { $text }
sitter-line-seen = gesehen, zu, gezählt { $text }

# Was Schritt für Schritt getan wird, wenn etwas schiefgeht. Sicherheitstexte.
sitter-cards = Wenn etwas schiefgeht
sitter-card-power = Der Strom ist weg
sitter-card-power-1 = Sehen Sie nach, ob die Straße dunkel ist. Ein ausgelöster Schutzschalter wird einmal wieder eingeschaltet; löst er noch einmal aus, lassen Sie ihn so und rufen Sie den Halter an. Elektroinstallation ist Arbeit für eine Elektrofachkraft.
sitter-card-power-2 = Halten Sie jeden Deckel und jede Tür geschlossen. Lassen Sie die Lüftung frei, legen Sie eine Decke über das Glas, geben Sie kein Futter.
sitter-card-power-3 = Rufen Sie den Halter an, und sagen Sie, welche der Stunden unten zuerst kommt.
sitter-card-power-4 = Wenn der Strom wieder da ist: Sehen Sie nach, ob jede Heizquelle arbeitet und jeder Messwert innerhalb von zwei Stunden richtig ist.
sitter-card-hot = Es ist zu heiß
sitter-card-hot-1 = Ein Messwert über der Obergrenze seiner Tabelle: Schalten Sie die Heizquellen dieses Terrariums an der Steckdose ab, öffnen Sie Tür und Fenster des Zimmers, lassen Sie das Terrarium zu, damit nichts entweicht.
sitter-card-hot-2 = Frisches, kühles Wasser in den Napf. Kein Eis, kein kaltes Bad.
sitter-card-hot-3 = Sehen Sie nach einer halben Stunde wieder nach. Noch zu heiß, oder es sperrt das Maul auf oder liegt schlaff: Rufen Sie sofort den Tierarzt an, dann den Halter.
sitter-card-gone = Eines ist nicht da
sitter-card-gone-1 = Zählen Sie noch einmal: Verstecke, unter dem Bodengrund, hinter der Rückwand.
sitter-card-gone-2 = Schließen Sie die Zimmertür, legen Sie ein Handtuch an ihre Unterkante, schalten Sie nichts ab, halten Sie Katzen und Hunde draußen.
sitter-card-gone-3 = Suchen Sie an den Wänden entlang, unter und hinter warmen Dingen, in Schuhen und Falten. Rufen Sie den Halter an.
sitter-card-gone-4 = Gesehen: einen Eimer oder eine Kiste darüber, dann anrufen. Eine große Schlange wird nie von einer Person allein eingefangen.
sitter-card-reading = Ein Messwert liegt außerhalb
sitter-card-reading-1 = Zwischen „Richtig“ und „Sofort handeln“: Ist der Fühler an seinem Platz, die Tür zu, die Lampe an? Sehen Sie nach einer halben Stunde wieder nach.
sitter-card-reading-2 = Jenseits von „Sofort handeln“: Rufen Sie sofort den Halter an, und lesen Sie ihm Fühler, Zahl und Uhrzeit vor. Ändern Sie keinen Sollwert, wenn er es nicht sagt.
sitter-card-reading-3 = Niemand nimmt innerhalb von 15 Minuten ab: die zweite Nummer, dann der Tierarzt.

# Wie lange jedes Terrarium einen Stromausfall aushält.
sitter-bears = Wie lange jedes es aushält
sitter-without-power = Ohne Strom
sitter-what-then = Was dann
sitter-hours-not-known = nicht berechnet: Fragen Sie den Halter
