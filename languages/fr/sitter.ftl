# La fiche de la personne qui s’occupe des animaux pendant un temps.

sitter-title = Fiche du remplaçant, du { $from } au { $until }
sitter-heading = Fiche du remplaçant
sitter-span = { $days ->
    [one] du { $from } au { $until }, { $days } jour
   *[other] du { $from } au { $until }, { $days } jours
}

# Qui appeler, dans l’ordre.
sitter-contacts = Qui appeler
sitter-keeper = 1. Le soigneur
sitter-second = 2. Personne ne répond pendant 15 minutes
sitter-vet = Un animal est malade : le vétérinaire
sitter-vet-out-of-hours = Le vétérinaire de garde

sitter-house = La maison
sitter-where-things-are = Où sont les choses

# Ce qui ne se fait jamais. Ce sont des textes de sécurité.
sitter-never = Jamais
sitter-never-alone = N’ouvrez jamais seul le terrarium d’un grand serpent : deux adultes, à chaque fois.
sitter-never-take-out = Ne sortez jamais un animal, et n’ouvrez jamais deux terrariums à la fois.
sitter-never-set-points = Ne changez jamais une consigne, et n’allumez jamais un chauffage qui était éteint.
sitter-never-more-food = Ne donnez jamais plus de nourriture que le jour ne le dit, et ne laissez jamais de rongeurs vivants à l’intérieur.
sitter-never-medicine = Ne donnez jamais un médicament qu’un vétérinaire n’a pas prescrit pour cet animal.
sitter-never-leave-open = Ne partez jamais avant que portes, serrures et couvercles soient fermés et les animaux comptés.

# Quand il se passe quelque chose.
sitter-events = Quand il se passe quelque chose
sitter-power-cut = Coupure de courant
sitter-power-cut-text = Les couvercles restent fermés, des couvertures sur les vitres, appelez le soigneur ; puis la carte à la fin de cette fiche.
sitter-escape = Évasion
sitter-escape-text = Fermez la porte de la pièce, regardez au ras du sol, appelez. N’attrapez pas un serpent que vous ne connaissez pas.
sitter-bite = Morsure
sitter-bite-text = Lavez-la à l’eau et au savon. Profonde, au visage, ou gonflement : un médecin. Un grand serpent qui ne lâche pas : le second adulte le déroule en partant de la queue ; appelez le numéro d’urgence.
sitter-fire = Incendie
sitter-fire-text = Tout le monde dehors, porte fermée, appelez le numéro d’urgence. Personne ne retourne chercher un animal.
sitter-hands = Mains
sitter-hands-text = Eau et savon après chaque terrarium. Les enfants de moins de cinq ans, les femmes enceintes, les personnes de plus de 65 ans et toute personne aux défenses affaiblies restent à l’écart : reptiles et amphibiens peuvent porter des salmonelles.

# Avant le départ du soigneur, et ce qui tombe pendant le séjour.
sitter-before = Avant le départ du soigneur
sitter-before-lamp = { $name } : { $task }, échéance le { $date }, avant votre départ
sitter-before-vet = { $name } : { $task }, échéance le { $date } : allez-y avant, ou prenez rendez-vous pour un jour après
sitter-before-weigh = { $name } : à peser, échéance le { $date }, ou le jour de votre retour ; le remplaçant ne pèse pas
sitter-quarantine = Quarantaine
sitter-quarantine-text = prendrait fin le { $date } ; elle continue jusqu’au retour du soigneur. En dernier dans la tournée, outils à part, jusqu’au dernier jour
sitter-enclosure = Terrarium
sitter-enclosure-text = devrait devenir trop petit vers le { $date } ; le soigneur s’en occupe
sitter-care-sheet = Fiche d’élevage
sitter-care-sheet-text = est à revoir au plus tard le { $date } ; c’est le travail du soigneur et cela attend

# La page d’un animal.
sitter-food = Nourriture
sitter-as-a-rule = En règle générale
sitter-in-a-power-cut = En cas de coupure de courant
sitter-shed = Mue
sitter-shed-on = la prochaine peut venir le { $date }, d’après ses dernières mues. Peau terne, yeux troubles et envie de se cacher sont alors normaux, et il peut refuser la nourriture : laissez-le tranquille, gardez humide sa cachette humide
sitter-shed-between = la prochaine peut venir entre le { $from } et le { $until }, d’après ses dernières mues. Peau terne, yeux troubles et envie de se cacher sont alors normaux, et il peut refuser la nourriture : laissez-le tranquille, gardez humide sa cachette humide
sitter-may = Vous pouvez
sitter-may-text = changer son eau, pulvériser comme le jour l’indique, proposer le repas du jour et reprendre ce qu’il laisse, monter une lampe de rechange le courant coupé, l’emmener chez le vétérinaire dans sa boîte verrouillée
# D’un grand constricteur.
sitter-may-text-large = regarder à travers la vitre. Avec un second adulte à vos côtés : changer son eau, pulvériser comme le jour l’indique, proposer le repas du jour et reprendre ce qu’il laisse, monter une lampe de rechange le courant coupé, l’emmener chez le vétérinaire dans sa boîte verrouillée

# Signes de maladie ; « moi » est le soigneur.
sitter-signs = Quand vous voyez ceci
sitter-sign = Signe
sitter-act = Que faire
sitter-act-now = appeler le vétérinaire tout de suite
sitter-act-day = appeler le vétérinaire aujourd’hui, puis moi
sitter-act-days = m’appeler
sitter-act-watch = continuer, le noter

# Comment il est nourri pendant le séjour.
sitter-last-meal = dernier repas le { $date }
sitter-skipped = pas de nourriture pendant l’absence du soigneur : au dernier jour il aura passé { $days } jours sans manger, et jusqu’à { $limit } est normal pour son espèce
sitter-none-due = aucun repas n’est prévu ces jours-ci
sitter-not-known = le journal ne dit pas quand un repas est prévu : demandez au soigneur avant son départ
sitter-as-due = { $meal } les jours qui l’indiquent. Reprenez ce qu’il laisse
# D’une proie achetée congelée.
sitter-as-due-thawed = { $meal } les jours qui l’indiquent. Décongelez la proie pendant la nuit au réfrigérateur, dans son sachet ; réchauffez le sachet dans de l’eau tiède, jamais au micro-ondes ; proposez la proie avec une pince. Reprenez ce qu’il laisse
sitter-meal-as-shown = comme le soigneur l’a montré

# Jour par jour, un tableau à cocher.
sitter-days = Jour par jour
sitter-days-order = Dans cet ordre, et ceux en quarantaine en dernier, avec des outils à part
sitter-day = Jour
sitter-animal = Animal
sitter-remarks = Remarques
sitter-quarantined = { $name } (quarantaine)
sitter-to-tick = à cocher
sitter-job-water = Eau
sitter-job-spray = Pulvériser
sitter-job-readings = Valeurs
sitter-job-food = Nourriture
sitter-job-seen = Vu, fermé, compté
sitter-fresh = fraîche
sitter-right = correctes
sitter-ask = demander au soigneur
sitter-digests = rien : il digère, le laisser tranquille
sitter-no-feeding = pas de nourriture
sitter-nothing = rien
# Derrière l’un des quatre ci-dessus, la veille d’un repas de proie congelée.
sitter-and-thaw = { $food } ; ce soir : décongeler pour demain
sitter-shed-may-come = une mue peut venir
sitter-spray = { $times } ×
sitter-spray-each = { $times } × { $each } ml

# Une entrée du calendrier du remplaçant.
sitter-entry = Animaux : { $what }
sitter-entry-feed = nourrir { $name }
sitter-entry-no-meal = eau, valeurs, un coup d’œil à chacun
sitter-line = { $name } : { $what }
sitter-line-apart = { $name } (quarantaine, en dernier) : { $what }
sitter-line-water = eau { $text }
sitter-line-spray = pulvériser { $text }
sitter-line-readings = valeurs { $text }
sitter-line-food = nourriture { $text }
sitter-line-seen = vu, fermé, compté { $text }

# Pas à pas, quand quelque chose ne va pas. Ce sont des textes de sécurité.
sitter-cards = Quand quelque chose ne va pas
sitter-card-power = Le courant est coupé
sitter-card-power-1 = Regardez si la rue est dans le noir. Un disjoncteur qui a sauté se réenclenche une fois ; s’il saute de nouveau, laissez-le et appelez le soigneur. Le câblage est le travail d’un électricien.
sitter-card-power-2 = Gardez tous les couvercles et toutes les portes fermés. Dégagez les aérations, posez une couverture sur les vitres, ne donnez pas de nourriture.
sitter-card-power-3 = Appelez le soigneur, et dites laquelle des heures ci-dessous vient en premier.
sitter-card-power-4 = Quand le courant revient : regardez si chaque chauffage fonctionne et si chaque valeur est correcte dans les deux heures.
sitter-card-hot = Il fait trop chaud
sitter-card-hot-1 = Une valeur au-dessus de la limite haute de son tableau : coupez à la prise les chauffages de ce terrarium, ouvrez la porte et les fenêtres de la pièce, laissez le terrarium fermé contre l’évasion.
sitter-card-hot-2 = De l’eau renouvelée et fraîche dans le bac. Pas de glace, pas de bain froid.
sitter-card-hot-3 = Regardez de nouveau après une demi-heure. Encore trop chaud, ou l’animal garde la gueule ouverte ou gît mollement : appelez le vétérinaire tout de suite, puis le soigneur.
sitter-card-gone = Il en manque un
sitter-card-gone-1 = Comptez de nouveau : cachettes, sous le substrat, derrière le fond.
sitter-card-gone-2 = Fermez la porte de la pièce, mettez une serviette au bas de la porte, n’éteignez rien, tenez chats et chiens dehors.
sitter-card-gone-3 = Regardez le long des murs, sous et derrière les objets chauds, dans les chaussures et les plis. Appelez le soigneur.
sitter-card-gone-4 = Aperçu : un seau ou une boîte par-dessus, puis appelez. Un grand serpent n’est jamais capturé par une personne seule.
sitter-card-reading = Une valeur est hors limites
sitter-card-reading-1 = Entre « correct » et « agir tout de suite » : la sonde est-elle à sa place, la porte fermée, la lampe allumée ? Regardez de nouveau après une demi-heure.
sitter-card-reading-2 = Au-delà de « agir tout de suite » : appelez le soigneur immédiatement, et lisez-lui la sonde, le nombre et l’heure. Ne changez aucune consigne sauf s’il le dit.
sitter-card-reading-3 = Personne ne répond dans les 15 minutes : le deuxième numéro, puis le vétérinaire.

# Combien de temps chaque terrarium supporte une coupure.
sitter-bears = Combien de temps chacun la supporte
sitter-without-power = Sans courant
sitter-what-then = Que faire alors
sitter-hours-not-known = non calculé : demandez au soigneur
