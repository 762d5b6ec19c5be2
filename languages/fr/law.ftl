# Ce que demande la loi des lieux du site, et les avis de santé publique.

law-title = Ce que demande la loi
law-description = Ce que la loi de chaque lieu demande à ces fiches, et où elles y répondent.
law-held = Comparé à la législation de : { $places }. Rapporté dans nos propres mots d’après des notes de lecture, avec le jour auquel, au plus tard, les textes avaient été lus ; ce qui est rapporté de mémoire est signalé. La loi change, et elle oblige certains et pas d’autres. La loi locale fait foi : demandez à l’autorité du lieu.
law-notices = Avis à imprimer
law-public-health = { $place } : santé publique

# La loi d’un lieu.
law-act = Loi ou arrêté
law-read = Lu
law-binds = Oblige
law-lies-within = Se trouve dans
law-form = Forme
law-buyer = Acheteur
law-buyer-age = au moins { $age }
law-treatment = Sous traitement
law-size = Taille
law-paper = Document
law-mark = Marquage
law-records = Registres
law-also = Aussi
# La vente d’un animal sous traitement est …
law-sale-forbidden = interdite
law-sale-on-conditions = soumise à conditions
law-shell-below = dossière de moins de { $size }
law-shell-from = dossière à partir de { $size }
law-mass-from = masse à partir de { $size }
law-article-unknown = article absent de nos notes
law-article-memory = { $article } ; de mémoire, non lu

# Ce que la loi d’un lieu demande à une fiche.
law-asks = Ce qu’une fiche doit dire : { $place }
law-asked-for = Demandé
law-article = Article
law-answered = Réponse sous
law-remark = Remarque
law-wider = couvert par un terme plus large du texte
law-wording-set = la loi fixe les mots
law-item-names = nom scientifique et nom commun
law-item-life-expectancy = espérance de vie
law-item-adult-size = taille adulte
law-item-housing = logement : dimensions et aménagement
law-item-environment = milieu : chaleur, humidité, lumière
law-item-feeding = alimentation
law-item-daily-ration = ration quotidienne
law-item-watering = abreuvement
law-item-general-care = soins généraux
law-item-handling = manipulation
law-item-cleaning = nettoyage
law-item-equipment = équipement et accessoires
law-item-movement = mouvement
law-item-enrichment = enrichissement
law-item-social-life = vie sociale : seul ou en compagnie
law-item-behaviour = comportement
law-item-danger = danger pour les personnes
law-item-reproduction = reproduction et élevage des jeunes
law-item-signs-of-illness = signes de maladie
law-item-veterinary-care = soins vétérinaires
law-item-yearly-cost = coût annuel de la détention
law-item-protection-status = statut de protection
law-item-legal-basis = base légale de la détention
law-item-no-release = mise en garde contre le lâcher
law-item-health-on-the-day = santé de cet animal au jour dit
law-item-particulars = origine, âge, sexe et dossier vétérinaire
law-on-handover = fiche de remise : { $headings }
law-under-head = l’en-tête de la fiche
law-under-seconds = En dix secondes
law-under-cautions = Mises en garde
law-under-identity = Identité
law-under-origin = Origine
law-under-measurements = Mesures
law-under-treatment = Santé et traitement

# Sur les fiches d’un animal ou d’une espèce.
law-held-against = Comparé à la législation de
law-held-read = { $places } (lu au plus tard le { $date })
law-release = Lâcher, { $place }
law-release-ours = Ne relâchez jamais cet animal dans la nature.
law-release-note = Nos propres mots : la loi de ce lieu fixe les siens, à reprendre dans son texte.
law-trade = Commerce international
law-with-paper = { $says } Document : { $paper }.

# Les avis de santé publique.
notice-title-binding = Avis de santé publique, { $place }
notice-title-advice = Conseil de santé publique, { $place }
notice-description = { $title }, sur une page.
notice-law = Ce que demande la loi
notice-says = Contenu
notice-ages = Âges
notice-ages-line = Âges : { $ages }.
notice-given-to = Remis à
notice-wall = Au mur
notice-for = Pour
notice-words = Les mots exacts
notice-words-set = peuvent être fixés par la loi et doivent alors en être repris
notice-rests-on = Repose sur
notice-local-law = La loi locale fait foi.
notice-own-words = Rapporté dans nos mots : la loi peut fixer les siens, qui sont à reprendre dans son texte.
notice-read-by = lu au plus tard le { $date }
notice-from-memory = de mémoire, non lu
notice-read-unknown = personne ne dit quand cela a été lu
notice-for-snake = serpents
notice-for-lizard = lézards
notice-for-tortoise = tortues terrestres
notice-for-turtle = tortues aquatiques
notice-for-frog = grenouilles
notice-for-salamander = salamandres
notice-for-invertebrate = invertébrés
