# Ce qui arrive à échéance pour un animal : dans son calendrier, sur la fiche du remplaçant et dans la tournée de la semaine.

# Ce qui est à faire, derrière le nom de l’animal. `lamp` est un type de lampe tel que son soigneur l’écrit.
due-lamp = remplacer la lampe ({ $lamp })
# `fitted` est le nom d’un champ dans un fichier et reste tel quel.
due-lamp-text = Courant coupé et lampe froide. Notez le jour dans `fitted`.
due-quarantine = fin de la quarantaine
due-quarantine-text = Elle recommence à chaque maladie et à chaque nouvel arrivant. Les analyses d’un vétérinaire décident si elle peut prendre fin.
due-review = revoir la fiche d’élevage ({ $species })
due-review-text = Ses chiffres sont-ils encore ceux que l’on retient aujourd’hui ?
# Le nom d’une espèce est-il écrit en minuscules dans cette phrase : « yes » ou « no ».
due-review-small-letters = no
due-vet = consulter un vétérinaire, avec un échantillon de déjections
due-vet-text = Au moins une fois par an ; plus souvent pour un animal jeune, âgé ou malade. Emportez le dossier.
due-outgrown = son terrarium devrait devenir trop petit
due-outgrown-text = Le terrarium plus grand est prêt avant ce jour.

# Entrées d’un calendrier : son nom, des titres, et le texte de ce qui est en retard.
due-calendar = Soins : { $name }
due-feed = Nourrir { $name }
due-weigh = Peser { $name }
due-weigh-text = Tous les { $days } jours, avant un repas (usage courant).
# `task` est l’un des libellés ci-dessus.
due-task = { $name } : { $task }
due-since = À faire depuis le { $date }. { $text }

# Une note dans le répertoire des fiches privées. `public` est le nom d’un répertoire.
private-note =
    Ces fiches contiennent des adresses, des numéros de téléphone et l’histoire d’animaux.
    Ne publiez pas ce répertoire. Le répertoire à publier est `public`, à côté de celui-ci.
