# La página pública de un animal, su imagen y la ficha de pared de una especie.

animal-seeking = Busca hogar
animal-resident = Vive con nosotros
animal-description-seeking = { $name }, { $species }, busca hogar. { $teaser }
animal-description-resident = { $name }, { $species }, vive con nosotros. { $teaser }
animal-care-sheet = Ficha de cuidados: { $species }
animal-story = Historia
animal-known = Lo que se sabe
animal-needs = Lo que necesitará
animal-read-first = Lea entera esta ficha antes de pedir un animal: [{ $sheet }]({ $address }).

# Datos.
animal-species = Especie
animal-form = Forma
animal-sex = Sexo
animal-age = Edad
animal-weight = Peso
animal-length-grown = Longitud de adulto
animal-enclosure-grown = Terrario de adulto, al menos
animal-span-of-life = Esperanza de vida
animal-year-costs = Un año de su especie cuesta, sin veterinario
animal-cost = unos { $low }–{ $high } { $currency }
animal-eats-now = Come ahora

# Edades.
animal-age-known = { $age } (eclosión: { $date }, conocida)
animal-age-estimated = aprox. { $age } (eclosión: { $date }, estimada)
animal-age-about = aprox. { $age }

# En lugar de una foto.
picture-none = Aún no hay foto de { $name }; el dibujo representa { $animal }
picture-none-yet = Aún no hay foto
picture-of-snake = una serpiente
picture-of-lizard = un lagarto
picture-of-tortoise = una tortuga terrestre
picture-of-turtle = una tortuga acuática
picture-of-frog = una rana
picture-of-salamander = una salamandra
picture-of-invertebrate = un invertebrado

# La ficha de pared.
card-title = Ficha de pared: { $name }
card-description = { $name } en una página.
card-whole-sheet = La ficha de cuidados completa
card-readings = Lecturas
card-needs = Espacio y alimento
card-humidity = Humedad en cada lugar
card-cautions = Precauciones
card-urgent = Llame a un veterinario y acuda ya
card-reviewed = Revisada: { $date }.
card-not-reviewed = Aún no revisada.
card-space = Terrario mínimo, adulto
card-food = Alimento, { $stage }
card-meal = { $meal }, cada { $every }
