# Ce que demande l’entretien d’un animal : dossier, fiches de remise, fiche du remplaçant.

upkeep-title = Chaleur, courant et eau

# Faits.
upkeep-heat = Chaleur
upkeep-not-worked-out = non calculé : { $reason }
upkeep-water = Eau pour tenir l’humidité
upkeep-water-in-a-day = environ { $water } ml s’évaporent par jour du bac d’eau, du substrat et des pulvérisations
upkeep-water-and-spray = environ { $water } ml s’évaporent par jour du bac d’eau, du substrat et des pulvérisations, { $each } ml à chaque pulvérisation
upkeep-dew = L’eau se condense sur tout ce qui est plus froid que
upkeep-lights = Éclairage
upkeep-lights-on-off = allumage à { $on }, extinction à { $off }
upkeep-lamp = { $lamp }, pour la plage d’ultraviolets de l’espèce
upkeep-lamp-distance = Distance d’une lampe
upkeep-lamp-above = de { $near } à { $far } au-dessus de son dos
upkeep-lamp-above-sure = de { $near } à { $far } au-dessus de son dos ; l’extrémité proche peut se situer entre { $low } et { $high } cm
upkeep-costs = Coûts par an, hors vétérinaire
upkeep-cost = environ { $low }–{ $high } { $currency }
upkeep-heat-lost = Chaleur perdue, pièce habituelle et nuit la plus froide
upkeep-heat-lost-watts = { $usual } W et { $coldest } W
upkeep-heaters = Chauffages installés
upkeep-heaters-enough = { $watts } W : suffit pour la nuit la plus froide
upkeep-heaters-enough-by-night = { $watts } W : suffit pour les températures de nuit, pas pour tenir le gradient de jour pendant la nuit la plus froide
upkeep-heaters-too-small = { $watts } W : trop faible pour la nuit la plus froide
upkeep-duty = Ils fonctionnent
upkeep-duty-share = environ { $share } % du temps
upkeep-electricity = Électricité de chauffage par mois
upkeep-electricity-kwh = environ { $kwh } kWh
upkeep-electricity-kwh-cost = environ { $kwh } kWh, { $amount } { $currency }
upkeep-savings = En économiserait
upkeep-savings-foam = 2 cm de mousse isolante sur chaque paroi sauf la façade, environ { $share } %
upkeep-savings-air = moitié moins de renouvellement d’air, environ { $share } %, si l’humidité le permet
upkeep-without-power = Sans courant
upkeep-hours-without-power = des dommages peuvent commencer après { $early } h pendant la nuit la plus froide ; attendus après { $expected } h
upkeep-heat-wave = En cas de canicule
upkeep-heat-wave-above = au-dessus de { $room } dans la pièce, un chauffage bloqué en marche surchaufferait le terrarium : coupez les chauffages à la prise
upkeep-sure = Certitude
upkeep-sure-share = une estimation en régime stable, qui peut s’écarter de { $share } % dans un sens ou l’autre ; le câblage est le travail d’un électricien

# Le tableau des instruments.
upkeep-instruments = Ce que les instruments doivent indiquer le jour
upkeep-instrument = Instrument
upkeep-right = Correct
upkeep-act-now = Agir tout de suite
upkeep-instruments-note = Entre les deux, regardez de nouveau après une demi-heure : la sonde est-elle à sa place, la porte est-elle fermée ? La précision propre de chaque instrument et ses contrôles sont compris dans ces nombres.
upkeep-temperature-at = { $probe }, température
upkeep-humidity-at = { $probe }, humidité
upkeep-too-rough = instrument trop imprécis pour en être sûr
upkeep-below-or-above = en dessous de { $below } ou au-dessus de { $above }

# Croissance et vie à venir.
upkeep-own-growth = Sa propre croissance
upkeep-own-growth-open = pas encore de quoi se prononcer : les longueurs laissent la longueur adulte aussi ouverte que l’espèce
upkeep-growth-to-come = Croissance à venir
upkeep-outgrown-at = Son terrarium devient trop petit à { $length }
upkeep-outgrown-dates = au plus tôt : { $earliest }, attendu : { $expected }, au plus tard : { $latest }
upkeep-outgrown-not-expected = pas attendu
upkeep-outgrown-when = Quand son terrarium devient trop petit
upkeep-life-lasts = Une telle vie s’achève
# Années du calendrier.
upkeep-life-between = entre { $first } et { $last }
upkeep-life-at-latest = en { $last } au plus tard
upkeep-life-at-least = en { $first } au plus tôt

# Comment va un animal.
upkeep-weight-over = Poids sur { $days } jours
upkeep-days-since-it-ate = Jours depuis son dernier repas
upkeep-days-fasted = { $days } ; jusqu’à { $limit } est normal pour son espèce

# Pourquoi un chiffre n’a pu être calculé.
absent-enclosure = aucun terrarium n’est indiqué
absent-inside = les dimensions intérieures du terrarium ne sont pas indiquées
absent-warm-and-cool = l’espèce n’indique pas de côté chaud et de côté frais pour l’air
absent-room-by-day = la température de la pièce le jour n’est pas indiquée
absent-coldest-night = la nuit la plus froide de la pièce n’est pas indiquée
absent-air-exchange = aucun renouvellement d’air n’est indiqué pour le terrarium
absent-walls = le matériau des parois n’est pas indiqué
absent-material = `{ $material }` n’est pas dans la table des matériaux
absent-critical-low = l’espèce n’indique pas de température en dessous de laquelle elle subit des dommages
absent-room-stays-above = la pièce ne descend pas en dessous de { $celsius } °C
absent-colder-already = il y fait déjà plus froid avec le courant
absent-band = l’espèce n’indique pas de plage d’ultraviolets
absent-band-end = la plage d’ultraviolets de l’espèce n’a pas de limite haute
absent-second-distance = il faut des mesures à deux distances ou plus
absent-not-falling = l’indice ne baisse pas avec la distance : mesurez la lampe de nouveau
absent-beyond-readings = la plage se situe hors des { $near }–{ $far } cm pour lesquels valent les mesures
absent-adult-length = aucune longueur adulte n’est connue
absent-too-small = il est déjà trop petit
absent-does-for-longest = il suffit à l’adulte le plus long attendu
absent-not-known = sa longueur, les dimensions de son terrarium ou une règle de norme n’est pas connue
