# Ce que des enregistreurs de données ont relevé, au dossier d’un animal : un tableau avec une colonne par sonde, et des courbes.

logger-title = Relevés des enregistreurs
logger-table = Ce que chaque sonde a enregistré
logger-what = Quoi
logger-from = Début
logger-until = Fin
logger-readings = Valeurs
logger-readings-step = { $readings }, une toutes les { $minutes } minutes en règle générale
logger-by-day = Le jour, part du temps
logger-by-night = La nuit, part du temps
logger-humidity = Humidité, part du temps
logger-above-ceiling = Plus longue période au-dessus du plafond
logger-above-never = Plus longue période au-dessus de la limite à ne jamais dépasser
logger-coldest-night = Nuit la plus froide
# La date est celle du soir.
logger-coldest-night-from = { $temperature }, la nuit commençant le { $date }
logger-swing = Amplitude d’une journée
logger-swing-usual-widest = { $usual } ; au plus { $widest }, le { $date }
logger-gaps = Lacunes
logger-no-gaps = aucune
# `together` et `longest` sont des heures, la date un moment.
logger-gaps-told = { $count }, { $together } au total ; la plus longue { $longest }, à partir du { $date }

# Parts du temps. La deuxième et la troisième suivent la première, après des virgules.
logger-within = { $share } % dans la plage ({ $range })
logger-below = { $share } % en dessous
logger-above = { $share } % au-dessus
logger-no-range = aucune plage n’est indiquée
logger-no-reading = aucune valeur

# La plus longue période au-dessus d’une limite.
logger-no-limit = aucune valeur, ou aucune limite
logger-never-above = jamais au-dessus de { $limit }
logger-spell = { $hours } au-dessus de { $limit }, jusqu’à { $highest }, à partir du { $date }

# `hours` est le nombre tel qu’il s’écrit, `count` le même pour la forme du mot.
logger-hours = { $count ->
    [one] { $hours } heure
   *[other] { $hours } heures
}
logger-moment = { $date }, { $time }

# Sous le tableau.
logger-note = Le jour va de { $on } h à { $off } h, { $lights ->
    [own] selon son éclairage
   *[taken] comme on l’admet par défaut
}. Plus de { $hours } d’affilée au-dessus de son plafond est un point en suspens ({ $limit ->
    [stated] comme l’indique son espèce
   *[practice] usage courant, sans source
}). Une interruption ne compte pour rien.

# Courbes du minimum et du maximum de chaque jour.
logger-temperature-at = Température à la sonde { $probe }
logger-humidity-at = Humidité à la sonde { $probe }
logger-curve = { $days } jours, du { $from } au { $until } : entre { $low } et { $high } { $unit }.
logger-key = trait plein : le maximum de chaque jour ; trait brisé : le minimum
logger-key-level = trait plein : le maximum de chaque jour ; trait brisé : le minimum ; trait horizontal : { $limit }, à ne pas dépasser
logger-by-month = Par mois
logger-month = Mois
logger-days = Jours
logger-lowest = Minimum
logger-highest = Maximum
