# Die Worte der Diagramme und des Streifens der Mahlzeiten. Alle Werte kommen mit ihren Einheiten.

chart-month = { $month } { $year }

chart-meals-says = { $count ->
    [one] 1 Mahlzeit
   *[other] { $count } Mahlzeiten
} angeboten vom { $first } bis zum { $last }: { $taken } gefressen, { $part } zum Teil, { $refused } verweigert.

# Wachstum. `measure` ist eine der Längen von `measure-…`.
chart-growth = Wachstum: { $measure }
chart-growth-says = { $count ->
    [one] 1 Länge
   *[other] { $count } Längen
}, von { $from } am { $first } bis { $to } am { $last }.
chart-growth-adult = Ausgewachsen sind { $low } bis { $high } zu erwarten, { $middle } in der Mitte.
chart-growth-outgrown = Seinem Terrarium ist es bei { $length } entwachsen: frühester Tag { $earliest }, erwarteter { $expected }, spätester { $latest }.
# Anstelle eines der Tage darüber.
chart-not-expected = nicht zu erwarten
chart-level = seinem Terrarium entwachsen
# Was Punkte und Linien sind.
chart-growth-key = Punkte: gemessen
chart-growth-key-curves = Punkte: gemessen; durchgezogene Linie: erwartet; gestrichelte Linien: die Grenzen, zwischen denen { $level } von 100 solchen Tieren liegen
chart-growth-table = Jede Länge
chart-day = Tag
chart-measured = Gemessen

chart-weight = Gewicht
chart-weight-says = { $count ->
    [one] 1 Gewicht
   *[other] { $count } Gewichte
}, von { $from } am { $first } bis { $to } am { $last }.
chart-weight-key = Punkte: gewogen
chart-weight-table = Jedes Gewicht
chart-weighed = Gewogen

# Das UV einer Lampe nach dem Abstand von ihr. `near` und `far` sind Längen.
chart-ultraviolet = UV der Lampe: { $lamp }
chart-ultraviolet-says = UV-Index nach dem Abstand von der Lampe, durch alles hindurch, was an seinem Platz bleibt. Der Bereich der Art, { $low } bis { $high } UVI, liegt zwischen { $near } und { $far }.
chart-ultraviolet-key = Punkte: gemessen; durchgezogene Linie: an sie angepasst; gestrichelte Linien: die Grenzen des Bereichs
chart-ultraviolet-table = Jede Messung der Lampe
chart-distance = Abstand
chart-uvi = UVI
