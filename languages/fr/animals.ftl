# La page publique d’un animal, son image, et la fiche murale d’une espèce.

animal-seeking = Cherche un foyer
animal-resident = Vit chez nous
animal-description-seeking = { $name }, { $species }, cherche un foyer. { $teaser }
animal-description-resident = { $name }, { $species }, vit chez nous. { $teaser }
animal-care-sheet = Fiche d’élevage : { $species }
animal-story = Histoire
animal-known = Ce que l’on sait
animal-needs = Ce qu’il lui faudra
animal-read-first = Avant de demander un animal, lisez en entier la fiche : [{ $sheet }]({ $address }).

# Faits.
animal-species = Espèce
animal-form = Forme
animal-sex = Sexe
animal-age = Âge
animal-weight = Poids
animal-length-grown = Longueur adulte
animal-enclosure-grown = Terrarium à l’âge adulte, au moins
animal-span-of-life = Durée de vie
animal-year-costs = Coût annuel d’un tel animal, hors vétérinaire
animal-cost = environ { $low }–{ $high } { $currency }
animal-eats-now = Mange actuellement

# Un âge, avec la date d’éclosion et son degré de certitude.
animal-age-known = { $age } (éclosion : { $date }, connue)
animal-age-estimated = environ { $age } (éclosion : { $date }, estimée)
animal-age-about = environ { $age }

# À la place d’une photo.
picture-none = { $name } : pas encore de photo ; le dessin représente { $animal }
picture-none-yet = Pas encore de photo
picture-of-snake = un serpent
picture-of-lizard = un lézard
picture-of-tortoise = une tortue terrestre
picture-of-turtle = une tortue aquatique
picture-of-frog = une grenouille
picture-of-salamander = une salamandre
picture-of-invertebrate = un invertébré

# La fiche murale.
card-title = Fiche murale : { $name }
card-description = { $name } sur une page.
card-whole-sheet = La fiche d’élevage complète
card-readings = Valeurs
card-needs = Espace et nourriture
card-humidity = Humidité à chaque endroit
card-cautions = Mises en garde
card-urgent = Appeler un vétérinaire et partir tout de suite
card-reviewed = Révisée : { $date }.
card-not-reviewed = Pas encore révisée.
card-space = Terrarium minimal, adulte
card-food = Nourriture, { $stage }
card-meal = { $meal }, à { $every } d’intervalle
