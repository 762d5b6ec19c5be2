# Was Datenlogger aufgezeichnet haben, in der Akte eines Tiers: eine Tabelle mit einer Spalte je Fühler, und Kurven.

logger-title = Von Datenloggern aufgezeichnet
logger-table = Was jeder Fühler aufgezeichnet hat
logger-what = Was
logger-from = Von
logger-until = Bis
logger-readings = Messwerte
logger-readings-step = { $readings }, in der Regel einer alle { $minutes } Minuten
logger-by-day = Am Tag, von der Zeit
logger-by-night = Nachts, von der Zeit
logger-humidity = Luftfeuchte, von der Zeit
logger-above-ceiling = Am längsten über der Obergrenze
logger-above-never = Am längsten über dem, was nie überschritten wird
logger-coldest-night = Kälteste Nacht
# Das Datum ist das des Abends.
logger-coldest-night-from = { $temperature }, in der Nacht ab dem { $date }
logger-swing = Schwankung eines Tages
logger-swing-usual-widest = { $usual }; höchstens { $widest }, am { $date }
logger-gaps = Lücken
logger-no-gaps = keine
# `together` und `longest` sind Stunden, das Datum ein Zeitpunkt.
logger-gaps-told = { $count }, zusammen { $together }; die längste { $longest }, ab { $date }

# Anteile der Zeit. Der zweite und der dritte folgen dem ersten, hinter Kommas.
logger-within = { $share } % in { $range }
logger-below = { $share } % darunter
logger-above = { $share } % darüber
logger-no-range = kein Bereich angegeben
logger-no-reading = kein Messwert

# Die längste Zeit über einer Grenze.
logger-no-limit = kein Messwert oder keine Grenze
logger-never-above = nie über { $limit }
logger-spell = { $hours } über { $limit }, bis zu { $highest }, ab { $date }

# `hours` ist die Zahl, wie sie geschrieben wird, `count` dieselbe für die Form des Worts.
logger-hours = { $count ->
    [one] { $hours } Stunde
   *[other] { $hours } Stunden
}
logger-moment = { $date }, { $time }

# Unter der Tabelle.
logger-note = Tag ist von { $on } bis { $off } Uhr, { $lights ->
    [own] nach seiner Beleuchtung
   *[taken] wie vorausgesetzt
}. Länger als { $hours } am Stück über seiner Obergrenze ist ein Prüfpunkt ({ $limit ->
    [stated] wie für seine Art angegeben
   *[practice] gängige Praxis, keine Quelle
}). Eine Pause zählt nicht.

# Kurven des niedrigsten und höchsten Werts jedes Tages.
logger-temperature-at = Temperatur am Fühler { $probe }
logger-humidity-at = Luftfeuchte am Fühler { $probe }
logger-curve = { $days } Tage, vom { $from } bis zum { $until }: zwischen { $low } und { $high } { $unit }.
logger-key = durchgezogene Linie: der höchste Wert jedes Tages; gestrichelte Linie: der niedrigste
logger-key-level = durchgezogene Linie: der höchste Wert jedes Tages; gestrichelte Linie: der niedrigste; waagrechte Linie: { $limit }, nicht zu überschreiten
logger-by-month = Nach Monaten
logger-month = Monat
logger-days = Tage
logger-lowest = Niedrigster
logger-highest = Höchster
