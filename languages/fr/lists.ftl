# Les pages qui listent et comparent les espèces.

# Groupes d’espèces, en titres.
group-snake = Serpents
group-lizard = Lézards
group-tortoise = Tortues terrestres
group-turtle = Tortues aquatiques
group-frog = Grenouilles
group-salamander = Salamandres
group-invertebrate = Invertébrés

# L’index.
index-description = Fiches d’élevage avec leurs sources, vérifiées et calculées.
index-find = Trouver un animal
# Les groupes suivent, sous forme de liens.
index-by-kind = Par groupe :
index-ways = Ou par [taille]({ $sizes }), par [nom]({ $names }), ou [côte à côte]({ $compare }).
index-seeking = Cherchent un foyer
index-residents = Vivent chez nous
index-grows-to = Atteint
index-lives = Vit
index-space = Espace, au moins
index-sizes = Par taille
index-names = Par nom
index-up-to = Jusqu’à { $length }
index-more-than = Plus de { $length }
index-see = { $also } : voir { $name }
index-more = À lire aussi
index-compare = Les espèces côte à côte
index-fits = Ce qui tient dans cet espace
index-binder = Toutes les fiches d’élevage en un seul document, à imprimer
index-review = Révisions des fiches d’élevage, et échéances
index-sources = Sources, et ce qui repose sur chacune

# Les espèces côte à côte, en cinq ordres.
compare-title-name = Les espèces côte à côte
compare-title-space = Les espèces côte à côte, par espace
compare-title-length = Les espèces côte à côte, par longueur
compare-title-years = Les espèces côte à côte, par durée de vie
compare-title-cost = Les espèces côte à côte, par coûts courants
compare-order-name = Les espèces sont rangées par nom commun.
compare-order-space = Les espèces sont rangées selon le sol qu’il faut à un animal adulte, le plus petit d’abord ; en dernier, celles pour lesquelles aucune norme en vigueur n’en donne.
compare-order-length = Les espèces sont rangées selon la longueur qu’elles peuvent atteindre, la plus courte d’abord.
compare-order-years = Les espèces sont rangées selon le nombre d’années qu’elles peuvent vivre, le plus petit d’abord ; en dernier, celles dont la durée de vie est ouverte ou inconnue.
compare-order-cost = Les espèces sont rangées selon ce que peut coûter une année d’élevage d’un animal aux prix du site, le moins cher d’abord ; en dernier, celles pour lesquelles ce coût n’a pu être calculé.
compare-description = { $order } Taille, années, espace, coût, lumière et compagnie de chaque animal.
compare-turns = Ordres
compare-turn-name = Par nom
compare-turn-space = Par espace
compare-turn-length = Par longueur
compare-turn-years = Par durée de vie
compare-turn-cost = Par coûts courants
compare-turn-fits = Ce qui tient dans un espace
compare-meaning = Ce que signifient ces chiffres
compare-note-space = Le sol et les dimensions valent pour un animal adulte de taille maximale, pour le sexe ou la forme qui demande le plus. Ils satisfont toutes les normes en vigueur et sont arrondis vers le haut à des dimensions que l’on peut acheter ou construire. Une norme est un plancher, pas un but.
compare-note-cost = Les coûts courants comprennent la chaleur et, là où le site connaît le prix de la nourriture, la nourriture, aux prix du site ; les lampes, le vétérinaire et le terrarium n’y sont pas. Pour les animaux qui vivent dans l’eau, ils ne sont pas calculés.
compare-note-choose = Un animal facile pour un soigneur est difficile pour un autre : rien n’est classé ici par mérite. Lisez toute la fiche d’élevage avant de choisir.

# Ses tableaux.
compare-animal = Animal
compare-room = Place, années et argent
compare-room-caption = Ce qu’un animal adulte demande d’un foyer
compare-grows-to = Atteint
compare-lives = Vit
compare-floor = Sol
compare-size = Dimensions à acheter ou à construire
compare-electricity = Électricité, par an
compare-cost = Coûts courants, par an
compare-daily = Nourriture, climat et compagnie
compare-daily-caption = À quoi ressemblent ses journées
compare-eats = Mange, adulte
compare-uv-zone = Zone UV
compare-humidity = Humidité
compare-active = Actif
compare-company = Compagnie
compare-dangers = Dangers
compare-asks = Ce qu’il demande à son soigneur
compare-asks-caption = Ce qui rend un animal plus facile ou plus difficile, en faits
compare-insects = Insectes vivants
compare-lamp = Lampe à ultraviolets
compare-warmest = Endroit le plus chaud
compare-rest = Repos hivernal
compare-cites = CITES

# Ce qui se trouve dans les cases.
compare-cost-not-worked-out = non calculé
compare-humidity-in-water = vit dans l’eau
compare-company-alone = aucune
compare-company-pairs = aucune, ou un congénère avec qui il s’entend
compare-company-groups = aucune, ou un groupe
compare-insects-always = oui, toute sa vie
compare-insects-young = tant qu’il est jeune
compare-insects-no = non
compare-insects-unknown = inconnu
compare-lamp-shade = sans danger, non exigée
compare-lamp-yes = oui
compare-lamp-unknown = inconnu
compare-rest-none = aucun
compare-cites-unknown = inconnu
compare-cites-none = non inscrit
compare-cites-I = I
compare-cites-II = II
compare-cites-III = III
# Un repas et l’intervalle jusqu’au suivant.
compare-food = { $meal }, à { $every } d’intervalle

# Ce qui tient dans un espace.
fits-title = Ce qui tient dans cet espace
fits-description = Quelles espèces tiennent sur quel sol à l’âge adulte, selon toutes les normes en vigueur.
fits-first = Suffit pour
fits-also = Suffit pour toutes celles ci-dessus, et pour
fits-more = Plus de { $floor }
fits-more-caption = Il leur faut un sol à leur mesure
fits-open = Incertain
fits-open-caption = Certaines normes en vigueur n’ont pas pu être calculées pour elles, ou aucune n’a de règle pour elles
fits-note-shape = Un sol de la bonne surface doit aussi avoir la bonne forme et la bonne hauteur : regardez les dimensions. Un jeune animal a besoin de moins pendant un temps ; ce qui compte est ce dont il aura besoin.
fits-note-all-standards = Les normes en vigueur sont toutes celles qu’une espèce nomme.
fits-note-standards = Les normes en vigueur : { $standards }.

# Révisions des fiches d’élevage.
review-title = Révisions des fiches d’élevage
review-description = Quand chaque fiche d’élevage a été revue pour la dernière fois avec ses sources, par qui, et pour quand la suivante est due.
review-overdue = À faire maintenant
review-overdue-caption = Jamais revues, ou pas depuis trop longtemps
review-soon = À faire sous six mois
review-soon-caption = Les prochaines à revoir
review-later = Plus tard
review-later-caption = Revues il y a peu
review-animal = Animal
review-last = Dernière révision
review-by = Par
review-due = À revoir
review-never = jamais
review-nobody = personne
review-now = maintenant
review-note = Une révision est valable { $span }. Qui révise une fiche reprend chaque chiffre avec sa source, cherche des publications plus récentes, puis inscrit la date et le nom dans le fichier de l’espèce.

# La bibliographie.
sources-title = Sources
sources-description = Toutes les publications sur lesquelles repose un chiffre.
sources-standards = Normes en vigueur
sources-practice = Usage courant
# Un nombre et un point suivent.
sources-practice-count = Chiffres qui ne reposent que sur l’usage courant, sans publication à l’appui :
sources-practice-marked = Chacun est marqué là où il figure.
sources-set-here = Fixé ici
sources-publications = Publications
sources-what-rests = Ce qui repose dessus
sources-signs = signes de maladie
sources-law = législation, { $place }
sources-least-enclosure = terrarium minimal
sources-law-page = Ce que demande la loi
# « small » : minuscule dans une liste.
sources-figures-begin = small
sources-overrides = Chiffres différents de la bibliothèque
sources-override-figure = Chiffre
sources-override-here = Ici
sources-override-library = Bibliothèque
sources-override-sources = Ses sources
sources-override-by = Fixé par
sources-override-why = Pourquoi, et sur quelle autorité
sources-override-practice = usage courant

# Toutes les fiches d’élevage en un document.
binder-title = Toutes les fiches d’élevage
binder-description = Toutes les fiches d’élevage en un seul document, à imprimer d’un coup.
binder-contents = Sommaire
binder-own-page = Sa propre page, avec les calculs

# Là où il n’y a pas de page.
lost-title = Cette page n’existe pas
lost-description = L’adresse ne mène nulle part sur ce site.
lost-why = Elle est peut-être mal écrite, ou la page a disparu.
lost-index = Toutes les fiches
lost-compare = Les espèces côte à côte
lost-sources = Sources, et ce qui repose sur chacune
