# Dessins et graphiques : leurs noms, et les mots qui les remplacent là où on ne les voit pas.
drawing-year = Le jour au fil de l’année
drawing-year-text = Une colonne par mois, janvier d’abord, aussi haute que le jour est long : de { $shortest } heures dans le mois le plus court à { $longest } dans le plus long.

drawing-meals = Huit semaines de repas à chaque stade de vie
drawing-meals-stage = { $stage }, à { $interval } d’intervalle
drawing-meals-text = Une bande par stade, avec une marque par repas : { $stages }.

# Le terrarium d’un animal, vu de face.
drawing-front = Le terrarium vu de face
drawing-front-text = L’extrémité chaude est à gauche. Chauffages, lampes et sondes : { $parts }. Sur le sol : { $hides ->
    [one] { $hides } cachette
   *[other] { $hides } cachettes
}.
drawing-front-note = Sous la boîte : la température de jour et ce que l’hygromètre peut indiquer. L’extrémité chaude est à gauche. La longueur, la hauteur et les emplacements dans la longueur sont à l’échelle ; chauffages et lampes ont leur propre ligne. Les blocs au trait sur le sol sont des cachettes ; celle dont la hauteur est inconnue est dessinée avec une hauteur égale à la moitié de sa longueur.
drawing-probe = sonde, { $name }
drawing-by-day = { $reading } le jour
drawing-by-night = { $reading } la nuit
drawing-hygrometer = hygromètre { $reading }

# Le terrarium minimal d’un adulte, vu de face.
drawing-grown = Le terrarium minimal d’un animal adulte, vu de face, { $sides }
drawing-grown-text = À partir de l’extrémité chaude, à gauche : { $places }.
drawing-grown-place = { $zone } { $reading }
drawing-grown-place-damp = { $zone } { $reading }, hygromètre { $damp }
drawing-grown-animal = La barre au sol est un animal de { $length }.
drawing-grown-scale = La longueur et la hauteur sont à l’échelle.

# Sous un graphique.
chart-key = { $key }.
chart-key-rings = { $key } ; anneaux : jour au plus tôt, jour attendu et jour au plus tard où son terrarium devient trop petit.
chart-meals = Les repas d’une année.
chart-meals-key = Trait long : pris ; trait court : pris en partie ; anneau au-dessus de la ligne : refusé. Chacun figure dans le relevé des repas.
