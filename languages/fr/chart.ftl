# Les mots des graphiques dans le temps, et de la bande des repas.

chart-month = { $month } { $year }

# La bande des repas d’une année.
chart-meals-says = { $count ->
    [one] { $count } repas proposé
   *[other] { $count } repas proposés
} du { $first } au { $last } : pris { $taken }, pris en partie { $part }, refusés { $refused }.

# Croissance.
chart-growth = Croissance : { $measure }
chart-growth-says = { $count ->
    [one] { $count } longueur
   *[other] { $count } longueurs
}, de { $from } le { $first } à { $to } le { $last }.
chart-growth-adult = À l’âge adulte, { $low } à { $high } sont attendus, { $middle } au milieu.
chart-growth-outgrown = Son terrarium devient trop petit à { $length } ; au plus tôt : { $earliest }, attendu : { $expected }, au plus tard : { $latest }.
chart-not-expected = pas attendu
chart-level = son terrarium devient trop petit
# Points et lignes.
chart-growth-key = points : mesuré
chart-growth-key-curves = points : mesuré ; trait plein : attendu ; traits brisés : les limites qui contiennent { $level } de ces animaux sur 100
chart-growth-table = Toutes les longueurs
chart-day = Jour
chart-measured = Mesuré

chart-weight = Poids
chart-weight-says = { $count ->
    [one] { $count } poids
   *[other] { $count } poids
}, de { $from } le { $first } à { $to } le { $last }.
chart-weight-key = points : pesé
chart-weight-table = Tous les poids
chart-weighed = Pesé

# L’ultraviolet d’une lampe selon la distance.
chart-ultraviolet = Ultraviolets : { $lamp }
chart-ultraviolet-says = Indice ultraviolet selon la distance à la lampe, à travers ce qui reste en place. La plage de l’espèce, { $low } à { $high } UVI, se situe entre { $near } et { $far }.
chart-ultraviolet-key = points : mesuré ; trait plein : ajusté à ces points ; traits brisés : les limites de la plage
chart-ultraviolet-table = Toutes les mesures de la lampe
chart-distance = Distance
chart-uvi = UVI
