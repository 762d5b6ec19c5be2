# La fiche de remise d’un animal : ce qu’un nouveau soigneur doit savoir, et signe.

handover-title = Remise : { $name }, { $species }
handover-head = Fiche de remise
handover-for = Pour { $name }
handover-care-sheet = Fiche d’élevage : { $species }
handover-goes-with = Avec cette fiche va celle-ci : [{ $sheet }]({ $address }).
handover-contacts = Qui appeler
handover-by = Remis par
handover-vet = Vétérinaire
handover-vet-hours = Vétérinaire de garde
handover-before = Avant son départ
handover-settle = À régler
handover-drawn = Croissance et poids
handover-drawn-growth = Croissance et poids, en graphiques

# Ce que signe le nouveau soigneur.
handover-signing = Remise
handover-read = J’ai lu cette fiche et la fiche d’élevage qui l’accompagne, et l’on m’a montré les soins à donner à { $name }.
handover-know-size = Je sais quelle taille il peut atteindre, combien de temps il peut vivre et ce que coûtera son entretien.
handover-know-law = Je sais que la loi locale décide si et comment je peux le détenir, et que les documents nommés ici m’ont été remis.
handover-ring-vet = J’appellerai un vétérinaire qui soigne les reptiles et les amphibiens quand un signe de cette fiche le demande.
handover-buyer-age = J’ai au moins { $age }, comme la loi le demande à un acheteur ({ $law }).
handover-buyer-age-memory = J’ai au moins { $age }, comme la loi le demande à un acheteur ({ $law }), autant qu’on s’en souvienne.
# Devant la promesse de reprendre l’animal.
handover-taken-back = Reprise.
handover-sign-keeper = Nouveau soigneur : nom et signature
handover-sign-by = Remis par : nom et signature
handover-sign-date = Date

# L’installation actuelle.
handover-set-up = Installation actuelle
handover-enclosure = Terrarium
handover-inside = Terrarium, intérieur : longueur × largeur × hauteur
# Un chauffage ou une lampe, puis, après des virgules, ce qui suit.
handover-heater = Chauffage
handover-thermostat-on-off = thermostat propre, tout ou rien
handover-thermostat-pulse = thermostat propre, à impulsions
handover-thermostat-dimming = thermostat propre, à gradation
handover-thermostat-none = pas de thermostat propre
handover-set-to = consigne { $temperature }
handover-set-night = la nuit { $temperature }
handover-guarded = avec protection
handover-no-guard = aucune protection notée
handover-lamp = Lampe
handover-lamp-hours = { $hours } par jour
handover-lamp-above = { $distance } au-dessus du point chaud
handover-lamp-there = { $uvi } à cet endroit
handover-lamp-fitted = montée le { $date }
handover-substrate = Substrat
handover-hides = Cachettes
handover-power-cut = Coupure de courant
handover-readings = Valeurs
handover-probe = Sonde
handover-from-warm = Depuis l’extrémité chaude
handover-by-day = Le jour
handover-by-night = La nuit
handover-humidity = Humidité
handover-humidity-most = Humidité au plus

# Ce qu’il lui faut maintenant.
handover-needs = Ce qu’il lui faut maintenant
handover-stage = Stade de vie
handover-meal = Repas
handover-interval = D’un repas à l’autre
handover-next-meal = Prochain repas
handover-meal-between = à partir du { $from }, au plus tard le { $until }
handover-rest = Pas de manipulation après un repas pendant
handover-least = Terrarium minimal actuel, { $standard }
handover-short = Son terrarium est insuffisant
handover-short-length = { $standard } : longueur { $inside }, il manque { $by } pour { $needed }
handover-short-width = { $standard } : largeur { $inside }, il manque { $by } pour { $needed }
handover-short-side = { $standard } : plus petit côté { $inside }, il manque { $by } pour { $needed }
handover-short-floor = { $standard } : sol { $inside }, il manque { $by } pour { $needed }
handover-short-height = { $standard } : hauteur { $inside }, il manque { $by } pour { $needed }
handover-short-water-depth = { $standard } : place pour la profondeur de l’eau { $inside }, il manque { $by } pour { $needed }
handover-short-water = { $standard } : place pour l’eau { $inside }, il manque { $by } pour { $needed }
handover-quarantine = En quarantaine jusqu’au
handover-energy = Sa nourriture contient
handover-energy-times = { $low }–{ $high } fois son énergie au repos
handover-hide-width = Cachettes d’une largeur d’au moins
handover-hide-grown = { $now }, { $grown } à l’âge adulte

# Ce qu’il lui faudra à l’âge adulte.
handover-grown = Ce qu’il lui faudra
handover-length-grown = Longueur adulte
handover-rests-on = Cela repose sur
handover-rests-growth = { $count ->
    [0] sa propre croissance : aucune longueur au dossier
    [one] sa propre croissance : une longueur au dossier
   *[other] sa propre croissance : { $count } longueurs au dossier
}
handover-rests-species = { $count ->
    [0] la fourchette de son espèce : aucune longueur au dossier
    [one] la fourchette de son espèce : une longueur au dossier
   *[other] la fourchette de son espèce : { $count } longueurs au dossier
}
handover-enclosure-grown = Terrarium à l’âge adulte, au moins
handover-life = Durée de vie
handover-eats-grown = Mange à l’âge adulte
handover-eats-every = { $meal }, à { $every } d’intervalle

handover-signs = Quand appeler un vétérinaire
handover-no-signs = Signes

# Les deux premières semaines.
handover-weeks = Les deux premières semaines
handover-weeks-before = Avant son arrivée
handover-weeks-run = Faites fonctionner le terrarium quelques jours, jusqu’à ce que ses valeurs tiennent le jour et la nuit.
handover-weeks-run-at = Faites fonctionner le terrarium quelques jours, jusqu’à ce que ses valeurs tiennent le jour et la nuit, avec le côté frais ou l’eau à { $temperature }.
handover-weeks-daily = Chaque jour
handover-weeks-daily-do = Eau fraîche, valeurs, portes et serrures, un coup d’œil sans ouvrir plus qu’il ne faut. Se laver les mains ensuite.
handover-weeks-next-meal = Prochain repas là où il était
handover-weeks-refused = Un repas qu’il refuse
handover-weeks-refused-do = est retiré et proposé de nouveau au tour suivant, pas avant
handover-weeks-table = Jour par jour
handover-weeks-day = Jour
handover-weeks-done = À faire
handover-weeks-put-in = Installez { $name }, fermez, laissez au calme. Pas de nourriture, pas de manipulation.
handover-weeks-first-check = Notez les valeurs le jour et la nuit. Appelez un vétérinaire qui soigne les reptiles et les amphibiens pour un premier contrôle avec un échantillon de déjections.
handover-weeks-papers = Rangez les documents, et déclarez l’animal là où la loi locale le demande.
handover-weeks-first-meal = Proposez le premier repas : { $meal }. Reprenez ce qu’il laisse.
handover-weeks-meal = Proposez le repas suivant.
handover-weeks-digests = Il digère : laissez-le tranquille.
handover-weeks-weigh = Pesez-le et notez le poids.
handover-weeks-handle = Manipulation brève et calme, s’il est d’un genre qui la supporte.
handover-weeks-look = Regarder seulement : yeux, peau, respiration, déjections.
