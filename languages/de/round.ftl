# Die Arbeit einer Woche für den ganzen Bestand.

round-title = Wochenrunde, Woche vom { $date }
round-heading = Die Wochenrunde
round-span = { $from } bis { $until }
round-quarantined = { $name } (Quarantäne)

# Die Arbeit jedes Tages, und was die Woche einmal bringt. Jede Zeile steht hinter dem Namen eines Tiers oder einer Art.
round-days = Tag für Tag
# An einem Tag ohne andere Arbeit.
round-no-task = Wasser, Messwerte, ein Blick auf jedes Tier.
round-once = In der Woche
# `meal` sagt, was und wie viel: „Maus, adult, 26 g“.
round-feed = füttern: { $meal }
round-thaw = am Abend auftauen: { $meal }
round-spray = sprühen
# Wie oft am Tag, und mit wie viel.
round-spray-daily = jeden Tag sprühen, { $times } ×
round-spray-daily-each = jeden Tag sprühen, { $times } × { $each } ml
round-meals-not-known = sein Protokoll sagt nicht, wann eine Mahlzeit fällig ist
round-weigh = wiegen: fällig am { $date }, alle { $days } Tage (gängige Praxis)
# `task` ist eine Bezeichnung aus `due-…`.
round-due = { $task }: fällig am { $date }
round-review = Pflegeblatt durchsehen: fällig am { $date }

round-quarantine = Quarantäne
round-quarantine-order = Nach allen anderen, in dieser Reihenfolge, mit eigenem Werkzeug
round-animal = Tier
round-species = Art
round-until = Bis
round-days-left = Tage übrig am Montag

round-cleaning = Reinigung
round-cleaning-everybody = Alle: Kot und verschmutzten Bodengrund entfernen, sobald sie zu sehen sind, Näpfe mit heißem Wasser spülen, Scheiben und Flächen abwischen, von den gesunden zu denen in Quarantäne.
round-cleaning-cloths = Tücher und Werkzeug eines Terrariums kommen nicht ins nächste, bevor sie gewaschen sind; die der Quarantäne bleiben dort.
round-cleaning-month = Erste Woche des Monats: Schlichte Einrichtungen werden ausgeräumt, gewaschen, desinfiziert, gespült und getrocknet; von einem bepflanzten Boden wird nur gewechselt, was verschmutzt ist.
# `name` ist ein Mittel des Halters; die erste Menge kommt aus dessen Flasche. Sicherheitstext.
round-mixture = { $name }: { $bottle } ml auf { $water } ml Wasser; Handschuhe und offene Fenster, und nie mit einem anderen Mittel mischen

round-store = Im Vorrat
round-store-weeks = Gefrierschrank und Einkauf: was diese Woche frisst, und die { $weeks } Wochen ab dem { $date }
round-store-food = Futter
round-store-now = Diese Woche
round-store-mass = Gewicht
round-store-ahead = { $weeks } Wochen
# Anstelle des Namens eines Futters, der nicht bekannt ist.
round-store-unnamed = Mahlzeiten
round-meals = { $meals ->
    [one] 1 Mahlzeit
   *[other] { $meals } Mahlzeiten
}
round-pieces = { $pieces ->
    [one] 1 Stück
   *[other] { $pieces } Stück
}
round-not-weighed = nicht gewogen
