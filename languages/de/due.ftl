# Was für ein Tier fällig wird: in seinem Kalender, auf dem Vertretungsblatt und in der Wochenrunde.

# Was zu tun ist, für eine Zeile hinter dem Namen des Tiers. `lamp` ist die Art der Lampe, wie ihr Halter sie schreibt.
due-lamp = { $lamp } ersetzen
# `fitted` ist der Name eines Felds in einer Datei und bleibt, wie er ist.
due-lamp-text = Bei abgeschaltetem Strom und kalter Lampe. Tragen Sie den Tag in `fitted` ein.
due-quarantine = Quarantäne endet
due-quarantine-text = Sie beginnt mit jeder Krankheit und jedem Neuzugang von vorn. Ob sie enden darf, entscheiden die Untersuchungen eines Tierarztes.
due-review = Pflegeblatt { $species } durchsehen
due-review-text = Gelten seine Angaben heute noch?
# Ob der Name einer Art in diesem Satz kleingeschrieben wird: „yes“ oder „no“. Im Deutschen bleibt er groß.
due-review-small-letters = no
due-vet = zum Tierarzt, mit einer Kotprobe
due-vet-text = Mindestens einmal im Jahr; ein junges, altes oder krankes Tier öfter. Nehmen Sie die Akte mit.
due-outgrown = wird seinem Terrarium voraussichtlich entwachsen sein
due-outgrown-text = Das größere steht vor diesem Tag bereit.

# Einträge eines Kalenders: sein Name, Titel und der Text zu Überfälligem.
due-calendar = Pflege von { $name }
due-feed = { $name } füttern
due-weigh = { $name } wiegen
due-weigh-text = Alle { $days } Tage, vor einer Mahlzeit (gängige Praxis).
# `task` ist eine der Bezeichnungen oben.
due-task = { $name }: { $task }
due-since = Fällig seit dem { $date }. { $text }

# Eine Notiz im Ordner der privaten Blätter. `public` ist der Name eines Ordners.
private-note =
    Diese Blätter enthalten Adressen, Telefonnummern und die Geschichten von Tieren.
    Veröffentlichen Sie diesen Ordner nicht. Der Ordner zum Veröffentlichen ist `public`, daneben.
