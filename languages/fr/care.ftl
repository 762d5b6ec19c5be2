# La fiche d’élevage d’une espèce, et la page de ses calculs.
care-title = Fiche d’élevage : { $name }
care-description = Fiche d’élevage : { $name } ({ $scientific }).
care-also = Aussi appelé { $names }
care-reviewed = Dernière révision : { $date }.
care-reviewed-by = Dernière révision : { $date }, par { $who }.
care-review-due = À réviser de nouveau au plus tard le { $date }.
care-not-reviewed = Pas encore révisée.
care-card = Fiche murale, une page
care-compare = À côté d’autres espèces
care-seconds = En dix secondes
care-contents = Sommaire
care-on-this-sheet = Sur cette fiche
care-sources = Sources
care-sources-remark = Chacune a été lue elle-même, sauf mention contraire. Un chiffre marqué « usage courant » est ce que font les soigneurs ; aucune publication ne l’appuie.
care-sources-page = Ce qui repose encore sur chacune
# Les fiches voisines ; le nom d’une espèce suit.
care-neighbours = Fiches voisines
care-before = Avant :
care-after = Après :
care-more = En plus

# Noms des faits, et ce qu’ils disent.
care-measured = { $label }, { $measure }
care-space = Terrarium minimal, adulte
care-eats = Mange, adulte
care-costs = Coûts courants
care-costs-a-year = environ { $low }–{ $high } { $currency } par an, hors vétérinaire
care-dangers = Dangers
care-law = Législation
care-law-check = à vérifier localement ; voir le dernier chapitre
care-gradient = Gradient, du plus chaud au plus frais
care-fasts = Jeûne
care-company = Compagnie
care-supplements = Compléments, { $stage }
care-remark = Remarque, { $stage }
care-origin = Origine
care-looked-up = Vérifié
care-looked-up-on = { $date } ; à vérifier localement, la loi locale fait foi
care-looked-up-never = pas encore ; à vérifier localement, la loi locale fait foi
care-lives = Vit
care-active = Actif
care-hides = Cachettes
care-hides-at-least = au moins { $hides }, à l’extrémité chaude et à l’extrémité fraîche
care-substrate = Substrat
care-water = Eau
care-climbing = Grimpe
care-digging = Creuse
care-bathing = Bain

# Les tableaux.
table-enclosure = Terrarium minimal pour un animal adulte, intérieur : longueur × largeur × hauteur
table-enclosure-for = Pour
table-enclosure-length = À la longueur de
table-enclosure-by = Selon
table-least = Au moins
table-build = Dimensions à acheter ou à construire
table-enclosure-note = Calculé pour la taille adulte maximale. Plus d’espace vaut mieux ; une norme est un plancher, pas un but.
table-enclosure-disagree = Les normes divergent : le plus grand sol vaut { $times } fois le plus petit. Construisez selon le plus grand.
table-ladder = À cette longueur, ce terrarium : ce qui satisfait toutes les normes en vigueur
table-humidity = Ce que l’hygromètre peut indiquer
table-humidity-zone = Zone
table-humidity-at = À
table-humidity-reading = Valeur
table-humidity-note = Le même air indique une humidité plus basse là où il est plus chaud. Au plafond, l’eau se condense sur tout ce qui est plus froid que { $dew }.
table-feeding = Alimentation par stade de vie
table-feeding-stage = Stade
table-feeding-until = Jusqu’à
table-feeding-meal = Repas
table-feeding-amount = Quantité
table-feeding-every = Intervalle
table-feeding-a-year = Repas par an
table-feeding-energy = Énergie / repos
table-feeding-note = Un chiffre de ce tableau qui ne figure pas ici avec sa source relève de l’usage courant.
table-feeding-old-age = vieillesse
table-feeding-share = { $share } de sa masse
table-light = Durée du jour dans la région d’origine
table-light-month = Mois
table-light-hours = heures
table-signs = Signes, et délai pour consulter un vétérinaire
table-signs-sign = Signe
table-signs-means = Peut signifier
table-signs-act = Que faire

# La page des calculs.
working-title = { $name } : comment cela a été calculé
working-description = Les chiffres de la fiche d’élevage : { $name } ; chaque formule, les nombres utilisés, ce qui a été admis et qui l’a publié.
working-page = Comment cela a été calculé
working-nothing = Rien sur cette fiche n’a dû être calculé.

# En tête d’une fiche non traduite.
care-foreign-words = Le texte de cette fiche et les textes courts, tels que signes et repas, sont en { $language } : personne ne les a encore traduits.
care-foreign-texts = Les textes courts, tels que signes et repas, sont en { $language } : personne ne les a encore traduits.
