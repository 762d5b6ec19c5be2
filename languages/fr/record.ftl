# Le dossier d’un animal, pour son soigneur et pour un vétérinaire.

record-title = Dossier : { $name }
record-head = Dossier
record-contacts = Qui appeler
record-meal-year = Repas de l’année
record-findings = Points en suspens
record-finding = { $severity ->
    [error] erreur
    [warning] avertissement
   *[note] remarque
}, { $code }
record-no-findings = Rien n’est douteux dans les fichiers de cet animal.
record-condition = État

# Têtes de plusieurs tableaux.
record-day = Jour
record-what = Quoi
record-measured = Mesuré

# Valeurs des sondes.
record-readings = Valeurs
record-readings-all = Toutes les valeurs, la plus récente d’abord
record-probe = Sonde
record-temperature = Température
record-humidity = Humidité

# Qui il est.
record-identity = Identité
record-name = Nom
record-species = Espèce
record-form = Forme ou localité
record-sex = Sexe
record-sex-told = { $sex } ({ $basis })
record-sex-not-told = { $sex } (on ne sait pas comment il a été déterminé)
record-age = Âge
record-chip = Puce ou marques
record-temperament = Tempérament

# D’où il vient.
record-origin = Origine
record-came-from = Provenance
record-arrived = Arrivée
record-status = Statut
status-resident = résident
status-quarantine = quarantaine
status-seeking-a-home = cherche un foyer
status-rehomed = placé
status-died = mort

# Longueurs et poids.
record-measurements = Mesures
record-measurements-all = Toutes les mesures, la plus récente d’abord
record-measurements-last = Les dernières mesures
record-weight = Poids
record-lengths-weights = Longueurs et poids

# Repas.
record-feeding = Relevé des repas
record-meals = Repas
record-meals-all = Tous les repas proposés, le plus récent d’abord
record-meals-last = Les derniers repas proposés
record-last-meal = Dernier repas mangé
record-of-last = Sur les { $count } derniers
record-outcomes = pris { $taken }, pris en partie { $part }, refusés { $refused }
record-food = Nourriture
record-mass = Masse
record-not-weighed = non pesé
record-outcome = Résultat
record-taken = pris
record-part = pris en partie
record-refused = refusé

# Mues.
record-sheds = Mues
record-sheds-all = Toutes les mues, la plus récente d’abord
record-sheds-last = Les dernières mues
record-shed-how = Comment
record-shed-remark = Remarque
record-shed-complete = complète
record-shed-pieces = en morceaux
record-shed-not-noted = non noté
record-last-shed = Dernière mue

# Maladie et traitement.
record-health = Santé et traitement
record-illness = Maladie : { $what }
record-treatment = Traitement : { $what }
record-health-table = Maladie, analyses et traitement
record-by = Par
record-illness-treatment = Maladie et traitement
record-none = rien au dossier
record-treated-now = Actuellement sous traitement
record-treated-yes = oui
record-treated-no = non
record-treated-logged = inconnu : le journal porte une maladie ou un traitement le { $date }
record-treated-nothing = rien au dossier
record-for-vet = Pour un vétérinaire

# Documents.
record-papers = Documents
record-proof = Preuve d’origine
record-proof-paper = le document qui montre d’où il vient l’accompagne
record-handed-over = Remise
record-law = Législation
record-law-decides = à vérifier localement avant son départ ; la loi locale fait foi
