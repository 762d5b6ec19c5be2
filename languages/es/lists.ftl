# Las páginas que enumeran y comparan especies.

# Grupos de especies.
group-snake = Serpientes
group-lizard = Lagartos
group-tortoise = Tortugas terrestres
group-turtle = Tortugas acuáticas
group-frog = Ranas
group-salamander = Salamandras
group-invertebrate = Invertebrados

# El índice.
index-description = Fichas de cuidados con sus fuentes, comprobadas y calculadas.
index-find = Buscar un animal
index-by-kind = Por grupo:
index-ways = O por [tamaño]({ $sizes }), por [nombre]({ $names }) o [lado a lado]({ $compare }).
index-seeking = Buscan hogar
index-residents = Viven con nosotros
index-grows-to = Crece hasta
index-lives = Vive
index-space = Espacio, al menos
index-sizes = Por tamaño
index-names = Por nombre
index-up-to = Hasta { $length }
index-more-than = Más de { $length }
index-see = { $also }: véase { $name }
index-more = Más lecturas
index-compare = Las especies lado a lado
index-fits = Qué cabe en este espacio
index-binder = Todas las fichas de cuidados en un documento, para imprimir
index-review = Revisiones de las fichas de cuidados y cuáles tocan
index-sources = Fuentes y qué se apoya en cada una

# Las especies lado a lado, en cinco órdenes.
compare-title-name = Las especies lado a lado
compare-title-space = Las especies lado a lado, por espacio
compare-title-length = Las especies lado a lado, por longitud
compare-title-years = Las especies lado a lado, por años
compare-title-cost = Las especies lado a lado, por gastos
compare-order-name = Las especies van por nombre común.
compare-order-space = Las especies van por el suelo que necesita un animal adulto, primero el menor; al final, aquellas para las que ninguna norma vigente lo indica.
compare-order-length = Las especies van por la longitud que pueden alcanzar, primero la menor.
compare-order-years = Las especies van por los años que pueden vivir, primero las que menos; al final, aquellas cuya esperanza de vida está abierta o no se sabe.
compare-order-cost = Las especies van por lo que puede costar mantener una durante un año a los precios del sitio, primero la menos costosa; al final, aquellas para las que no se pudo calcular.
compare-description = { $order } Tamaño, años, espacio, dinero, luz y compañía de cada animal.
compare-turns = Órdenes
compare-turn-name = Por nombre
compare-turn-space = Por espacio
compare-turn-length = Por longitud
compare-turn-years = Por años
compare-turn-cost = Por gastos
compare-turn-fits = Qué cabe en un espacio
compare-meaning = Qué significan estas cifras
compare-note-space = El suelo y las medidas son para un animal adulto en el extremo superior de su intervalo, del sexo o la forma que más necesita. Cumplen todas las normas vigentes y se redondean al alza a medidas que se pueden comprar o construir. Una norma es un mínimo, no una meta.
compare-note-cost = Los gastos incluyen el calor y, cuando el sitio conoce el precio del alimento, también el alimento, a los precios del sitio; no incluyen lámparas, veterinario ni terrario. Para los animales que viven en el agua no se calculan.
compare-note-choose = Un animal fácil para un cuidador es difícil para otro: aquí no hay ninguna clasificación. Lea entera la ficha de cuidados antes de elegir.

# Sus tablas.
compare-animal = Animal
compare-room = Espacio, años y dinero
compare-room-caption = Qué necesita de un hogar un animal adulto
compare-grows-to = Crece hasta
compare-lives = Vive
compare-floor = Suelo
compare-size = Medidas para comprar o construir
compare-electricity = Electricidad, al año
compare-cost = Gastos, al año
compare-daily = Alimento, clima y compañía
compare-daily-caption = Cómo son sus días
compare-eats = Come, adulto
compare-uv-zone = Zona UV
compare-humidity = Humedad
compare-active = Activo
compare-company = Compañía
compare-dangers = Peligros
compare-asks = Qué exige a su cuidador
compare-asks-caption = Lo que hace a un animal más fácil o más difícil, en datos
compare-insects = Insectos vivos
compare-lamp = Lámpara ultravioleta
compare-warmest = Lugar más cálido
compare-rest = Reposo invernal
compare-cites = CITES

# En las celdas.
compare-cost-not-worked-out = no calculado
compare-humidity-in-water = vive en el agua
compare-company-alone = ninguna
compare-company-pairs = ninguna, o uno con el que se lleve bien
compare-company-groups = ninguna, o un grupo
compare-insects-always = sí, toda su vida
compare-insects-young = mientras es joven
compare-insects-no = no
compare-insects-unknown = no se sabe
compare-lamp-shade = no perjudica, no es obligada
compare-lamp-yes = sí
compare-lamp-unknown = no se sabe
compare-rest-none = ninguno
compare-cites-unknown = no se sabe
compare-cites-none = no incluida
compare-cites-I = I
compare-cites-II = II
compare-cites-III = III
compare-food = { $meal }, cada { $every }

# Qué cabe en un espacio.
fits-title = Qué cabe en este espacio
fits-description = Qué especies caben en qué suelo cuando son adultas, según todas las normas vigentes.
fits-first = Suficiente para
fits-also = Suficiente para todas las anteriores y para
fits-more = Más de { $floor }
fits-more-caption = Estas necesitan un suelo de medida propia
fits-open = Sin certeza
fits-open-caption = Para estas no se pudieron calcular todas las normas vigentes, o ninguna tiene una regla para ellas
fits-note-shape = Un suelo con el área correcta debe tener también la forma y la altura correctas: mire las medidas. Un animal joven necesita menos durante un tiempo; lo que cuenta es lo que necesitará.
fits-note-all-standards = Las normas vigentes son todas las que nombra una especie.
fits-note-standards = Las normas vigentes: { $standards }.

# Revisiones de las fichas.
review-title = Revisiones de las fichas de cuidados
review-description = Cuándo se revisó por última vez cada ficha de cuidados con sus fuentes, quién lo hizo y cuándo toca de nuevo.
review-overdue = Tocan ya
review-overdue-caption = Nunca revisadas, o no desde hace demasiado tiempo
review-soon = Tocan en medio año
review-soon-caption = Las próximas en revisarse
review-later = Más adelante
review-later-caption = Revisadas no hace mucho
review-animal = Animal
review-last = Última revisión
review-by = Por
review-due = Próxima revisión
review-never = nunca
review-nobody = nadie
review-now = ya
review-note = Una revisión vale durante { $span }. Quien revisa una ficha repasa cada cifra con su fuente, busca publicaciones más recientes y después anota el día y el nombre en el archivo de la especie.

# La bibliografía.
sources-title = Fuentes
sources-description = Todas las publicaciones en las que se apoya una cifra.
sources-standards = Normas vigentes
sources-practice = Práctica habitual
sources-practice-count = Cifras que se apoyan solo en la práctica habitual, sin publicación que las respalde:
sources-practice-marked = Cada una está marcada donde aparece.
sources-set-here = Fijadas aquí
sources-publications = Publicaciones
sources-what-rests = Qué se apoya en ella
sources-signs = signos de enfermedad
sources-law = ley, { $place }
sources-least-enclosure = terrario mínimo
sources-law-page = Qué pide la ley
# Se deja «small»: minúscula inicial.
sources-figures-begin = small
sources-overrides = Cifras que difieren de la biblioteca
sources-override-figure = Cifra
sources-override-here = Aquí
sources-override-library = En la biblioteca
sources-override-sources = Sus fuentes
sources-override-by = Fijada por
sources-override-why = Por qué, y con qué autoridad
sources-override-practice = práctica habitual

# Todas las fichas en un documento.
binder-title = Todas las fichas de cuidados
binder-description = Todas las fichas de cuidados en un documento, para imprimir de una vez.
binder-contents = Contenido
binder-own-page = Su propia página, con los cálculos

# Donde no hay página.
lost-title = Esa página no existe
lost-description = La dirección no lleva a ninguna parte de este sitio.
lost-why = Puede estar mal escrita, o la página ya no existe.
lost-index = Todas las fichas
lost-compare = Las especies lado a lado
lost-sources = Fuentes y qué se apoya en cada una
