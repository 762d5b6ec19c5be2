# Zeichnungen und Diagramme: ihre Namen und die Worte, die für sie stehen, wo sie nicht zu sehen sind.
drawing-year = Der Tag im Lauf des Jahres
drawing-year-text = Eine Säule für jeden Monat, Januar zuerst, so hoch, wie sein Tag lang ist: von { $shortest } Stunden im Monat mit den kürzesten Tagen bis { $longest } im Monat mit den längsten.

drawing-meals = Acht Wochen Mahlzeiten in jedem Lebensabschnitt
drawing-meals-stage = { $stage }, alle { $interval }
drawing-meals-text = Ein Streifen für jeden Lebensabschnitt mit einer Marke für jede Mahlzeit: { $stages }.

# Das Terrarium eines Tiers von vorn.
drawing-front = Das Terrarium von vorn
drawing-front-text = Das warme Ende ist links. Heizquellen, Lampen und Fühler: { $parts }. Auf dem Boden: { $hides ->
    [one] 1 Versteck
   *[other] { $hides } Verstecke
}.
drawing-front-note = Unter dem Kasten: die Temperatur am Tag und was das Hygrometer anzeigen darf. Das warme Ende ist links. Länge, Höhe und die Plätze entlang der Länge sind maßstäblich; Heizquellen und Lampen stehen auf einer eigenen Linie. Umrandete Blöcke auf dem Boden sind Verstecke; eines, dessen Höhe nicht bekannt ist, ist halb so hoch wie lang gezeichnet.
drawing-probe = Fühler, { $name }
drawing-by-day = { $reading } am Tag
drawing-by-night = { $reading } nachts
drawing-hygrometer = Hygrometer { $reading }

# Das Mindestterrarium eines ausgewachsenen Tiers von vorn.
drawing-grown = Das Mindestterrarium für ein ausgewachsenes Tier von vorn, { $sides }
drawing-grown-text = Vom warmen Ende links an: { $places }.
drawing-grown-place = { $zone } { $reading }
drawing-grown-place-damp = { $zone } { $reading }, Hygrometer { $damp }
drawing-grown-animal = Der Balken auf dem Boden ist ein Tier von { $length }.
drawing-grown-scale = Länge und Höhe sind maßstäblich.

# Unter einem Diagramm.
chart-key = { $key }.
chart-key-rings = { $key }; Ringe: frühester, erwarteter und spätester Tag, an dem das Tier seinem Terrarium entwachsen ist.
chart-meals = Die Mahlzeiten eines Jahres.
chart-meals-key = Langer Strich: gefressen; kurzer Strich: zum Teil; Ring über dem Strich: verweigert. Jede steht im Fütterungsprotokoll.
