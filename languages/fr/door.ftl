# La fiche sur la porte d’un terrarium : lue à un mètre, donc courte.

door-title = Fiche de porte : { $name }
door-care-sheet = Fiche d’élevage : { $species }
door-sex-not-known = sexe inconnu

# Ce qu’il faut savoir avant d’ouvrir. Ce sont des textes de sécurité.
door-before = Avant d’ouvrir
door-quarantine = Quarantaine jusqu’au { $date }. En dernier dans la tournée, outils à part, mains lavées ensuite.
door-large-constrictor = Deux adultes : ne jamais ouvrir, manipuler ou nourrir ce serpent en étant seul.
door-venom = Sa morsure peut contenir du venin. Pas de mains à l’intérieur ; utiliser une pince.
door-strong-bite = Il mord fort. Nourrir avec une longue pince, bouger lentement.
door-skin-secretion = Sa peau irrite. Gants mouillés, non poudrés.
door-strong-tail = Sa queue frappe. Garder le visage à distance.
door-company = Vit avec { $names } : comptez-les avant de fermer.

door-readings = Valeurs voulues
door-basking = Point chaud
door-warm = Côté chaud
door-cool = Côté frais
door-water = Eau
door-night = La nuit

door-food = Nourriture
door-meal = Repas
door-from-meal-to-meal = D’un repas à l’autre
door-last-ate = Dernier repas
door-next-due = Prochain à partir du

# Qui appeler.
door-emergency = En cas d’urgence
door-vet = Vétérinaire
door-vet-out-of-hours = De garde
door-keeper = Soigneur
door-second = Deuxième contact

door-square = L’adresse de la fiche d’élevage, en carré à lire avec un téléphone
