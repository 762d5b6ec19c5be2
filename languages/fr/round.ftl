# Le travail d’une semaine pour toute la collection.

round-title = Tournée, semaine du { $date }
round-heading = La tournée de la semaine
round-span = du { $from } au { $until }
round-quarantined = { $name } (quarantaine)

# Le travail de chaque jour, et ce que la semaine contient une fois. Chaque ligne suit le nom d’un animal ou d’une espèce.
round-days = Jour par jour
# Un jour sans autre travail.
round-no-task = Eau, valeurs, un coup d’œil à chacun.
round-once = Dans la semaine
# `meal` dit quoi et combien : « souris, adulte, 26 g ».
round-feed = donner { $meal }
round-thaw = le soir, décongeler { $meal }
round-spray = pulvériser
# Combien de fois par jour, et avec combien d’eau.
round-spray-daily = pulvériser chaque jour, { $times } ×
round-spray-daily-each = pulvériser chaque jour, { $times } × { $each } ml
round-meals-not-known = son journal ne dit pas quand un repas est prévu
round-weigh = peser, échéance le { $date }, tous les { $days } jours (usage courant)
# `task` est un libellé de `due-…`.
round-due = { $task }, échéance le { $date }
round-review = revoir sa fiche d’élevage, échéance le { $date }

round-quarantine = Quarantaine
round-quarantine-order = Après tous les autres, dans cet ordre, avec des outils à part
round-animal = Animal
round-species = Espèce
round-until = Jusqu’au
round-days-left = Jours restants le lundi

round-cleaning = Nettoyage
round-cleaning-everybody = Tous : déjections et substrat souillé retirés dès qu’on les voit, bacs d’eau et gamelles lavés à l’eau chaude, vitres et surfaces essuyées, des animaux sains vers ceux en quarantaine.
round-cleaning-cloths = Les chiffons et outils d’un terrarium ne servent pas dans le suivant avant d’être lavés ; ceux de la quarantaine y restent.
round-cleaning-month = Première semaine du mois : les installations simples sont vidées, lavées, désinfectées, rincées et séchées ; d’un sol planté, on ne change que ce qui est souillé.
# `name` est un produit du soigneur ; la première quantité vient de son flacon. Un texte de sécurité.
round-mixture = { $name } : { $bottle } ml pour { $water } ml d’eau ; gants et fenêtres ouvertes, et jamais mélangé à un autre produit

round-store = Réserves
round-store-weeks = Congélateur et achats : ce qui est mangé cette semaine, et pendant les { $weeks } semaines à partir du { $date }
round-store-food = Nourriture
round-store-now = Cette semaine
round-store-mass = Masse
round-store-ahead = { $weeks } semaines
# À la place du nom d’une nourriture qui n’est pas connu.
round-store-unnamed = repas
round-meals = { $meals ->
    [one] { $meals } repas
   *[other] { $meals } repas
}
round-pieces = { $pieces ->
    [one] { $pieces } pièce
   *[other] { $pieces } pièces
}
round-not-weighed = non pesé
