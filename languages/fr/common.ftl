# Ce que plusieurs pages partagent.

# Le cadre de chaque page.
frame-skip = Aller à la fiche
frame-private = Privé : contient des noms, des numéros et des adresses
frame-navigation = Site
frame-index = Toutes les fiches
frame-compare = Comparer
frame-law = Législation
frame-sources = Sources
frame-feed = Fiches révisées
frame-vet = Cette fiche ne remplace pas un vétérinaire. Si un animal semble malade, appelez un vétérinaire qui soigne les reptiles et les amphibiens.
frame-day = État au { $day }.
frame-address = Adresse : { $address }

# Entre deux valeurs.
join-or = {" "}ou{" "}

# Derrière un chiffre qu’aucune publication n’appuie.
fact-practice = usage courant
fact-set-by = fixé ici par { $by } ; la bibliothèque indique
fact-set-by-on = fixé ici par { $by }, { $on } ; la bibliothèque indique
fact-others = autres :

# Les calculs d’un chapitre.
chapter-worked = Comment cela a été calculé
working-steps = Nombres utilisés :
working-assumptions = Hypothèses :
working-source = Source : { $publication }

cautions-title = Mises en garde
source-secondary = Lu dans un texte qui le cite.
source-memory = De mémoire, non lu.

# Les chapitres d’une fiche d’élevage.
chapter-glance = En un coup d’œil
chapter-suits = Cet animal est-il pour vous
chapter-enclosure = Terrarium
chapter-heat = Chaleur et lumière
chapter-humidity = Humidité et eau
chapter-feeding = Alimentation
chapter-company = Manipulation et compagnie
chapter-cleaning = Nettoyage
chapter-health = Santé
chapter-growth = Reproduction et croissance
chapter-law = Législation et origine

# Groupes d’animaux, au singulier.
kind-snake = serpent
kind-lizard = lézard
kind-tortoise = tortue terrestre
kind-turtle = tortue aquatique
kind-frog = grenouille
kind-salamander = salamandre
kind-invertebrate = invertébré

# Le sexe d’un animal.
sex-female = femelle
sex-male = mâle
sex-unknown = inconnu

# Pour qui vaut un chiffre.
whom-adult = adulte
whom-female = femelle
whom-male = mâle
whom-form = { $whom }, { $form }
whom-everyone = toutes formes, deux sexes

# Où vit un animal.
habit-ground = au sol
habit-climbing = en hauteur : il grimpe
habit-burrowing = dans le sol : il s’enfouit
habit-semi-aquatic = au bord de l’eau et dans l’eau
habit-aquatic = dans l’eau

# Quand il est actif.
active-day = le jour
active-dusk-and-night = au crépuscule et la nuit
active-night = la nuit
active-day-and-night = le jour et la nuit

# La compagnie d’un animal.
company-alone = un seul animal par terrarium
company-pairs = seul, ou un couple qui s’entend
company-groups = seul, ou en groupe avec de la place pour chacun

# Ce que demande un signe de maladie.
urgency-now = appeler un vétérinaire et partir tout de suite
urgency-day = un vétérinaire sous 24 heures
urgency-days = un vétérinaire dans les jours qui suivent
urgency-watch = le noter et contrôler l’installation

# Dangers pour les personnes.
danger-large-constrictor = grand constricteur
danger-venom = venin
danger-strong-bite = forte morsure
danger-skin-secretion = sécrétion cutanée
danger-strong-tail = queue puissante

# De quelle longueur il s’agit.
measure-total-length = longueur totale
measure-snout-vent-length = longueur museau-cloaque
measure-carapace-length = longueur de la dossière
measure-carapace-width = largeur de la dossière
measure-title-total-length = Longueur totale
measure-title-snout-vent-length = Longueur museau-cloaque
measure-title-carapace-length = Longueur de la dossière

# Chauffages.
heater-ceramic = céramique
heater-halogen = halogène
heater-basking-lamp = lampe chauffante
heater-mercury-vapour = vapeur de mercure
heater-deep-heat-projector = projecteur de chaleur profonde
heater-radiant-panel = panneau radiant
heater-mat = tapis chauffant
heater-cable = câble chauffant
heater-water-heater = chauffage de l’eau
heater-room-heater = chauffage de la pièce

# Endroits d’un terrarium.
zone-cool = frais
zone-warm = chaud
zone-basking-spot = point chaud
zone-warm-side = côté chaud
zone-cool-side = côté frais

# Les annexes de la CITES.
cites-none = non inscrit aux annexes de la CITES
cites-I = CITES, annexe I
cites-II = CITES, annexe II
cites-III = CITES, annexe III

unit-zone = zone

# Pourquoi aucun terrarium n’a pu être calculé selon une norme.
unmet = non calculé : { $reason }
unmet-no-animals = un terrarium se calcule pour au moins un animal
unmet-not-a-length = une longueur ou un âge doit être un nombre supérieur à 0
unmet-length-not-given = la règle demande la { $measure }, qui n’est pas indiquée
unmet-no-class = aucune classe ne couvre une { $measure } de { $length } cm ; la dernière s’arrête à { $last } cm
unmet-singly = la norme dit de tenir cet animal seul et ne donne aucun chiffre pour plusieurs
unmet-no-further = { $animals ->
    [one] la norme ne donne aucun chiffre pour plus d’un animal
   *[other] la norme ne donne aucun chiffre pour plus de { $animals } animaux
}
unmet-no-classes = la ligne de la norme n’a aucune classe

# Ce que demande une norme.
least-floor = sol { $amount }
least-height = hauteur { $amount }
least-water = eau { $amount }
least-water-depth = profondeur d’eau { $amount }
least-land = terre { $amount }

# Les chiffres d’une espèce.
figure-size-birth = À la naissance ou à l’éclosion
figure-size-adult = Adulte
figure-size-female = Femelle adulte
figure-size-male = Mâle adulte
figure-size-form-adult = { $of }
figure-size-form-female = { $of }, femelle
figure-size-form-male = { $of }, mâle
figure-size-total_length = Du museau au bout de la queue
figure-size-birth_mass = Masse à la naissance ou à l’éclosion
figure-size-mass = Masse adulte
figure-size-mass_female = Masse adulte, femelle
figure-size-mass_male = Masse adulte, mâle
figure-growth-k = Vitesse de croissance
figure-growth-matures = Maturité à
figure-life-years = Durée de vie
figure-origin-latitudes = Latitudes d’origine
figure-temperature-basking = Point chaud, surface
figure-temperature-warm = Côté chaud
figure-temperature-cool = Côté frais
figure-temperature-night = La nuit
figure-temperature-water = Eau
figure-temperature-never_above = Jamais au-dessus de
figure-temperature-critical_low = Dommages en dessous de
figure-temperature-brumation = Pendant la brumation
figure-temperature-brumation_weeks = Durée de la brumation
figure-humidity-range = Humidité
figure-humidity-ceiling = Humidité jamais au-dessus de, côté frais
figure-humidity-ceiling_for = Humidité au-dessus, au plus pendant
figure-humidity-shed = Humidité pendant la mue
figure-light-hours = Heures de lumière
figure-light-zone = Zone d’ultraviolets
figure-light-uvi = Indice ultraviolet au point chaud
# D’un stade de vie, par son nom.
figure-feeding-stage-every = D’un repas à l’autre, { $of }
figure-feeding-stage-mass = Masse d’un repas, { $of }
figure-feeding-stage-share = Part du repas dans sa masse, { $of }
figure-feeding-stage-count = Combien, { $of }
figure-energy-at_most = Énergie de sa nourriture rapportée à son énergie au repos
figure-fasting-normal = Jeûne normal
figure-handling-after_meal = Pas de manipulation après un repas pendant

# Langues.
language-own = Français
language-en = anglais
language-de = allemand
language-es = espagnol
language-fr = français
