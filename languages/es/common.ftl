# Lo que comparten varias páginas.

# El marco de cada página.
frame-skip = Ir a la ficha
frame-private = Privado: contiene nombres, números y direcciones
frame-navigation = Sitio
frame-index = Todas las fichas
frame-compare = Comparar
frame-law = Ley
frame-sources = Fuentes
frame-feed = Fichas revisadas
frame-vet = Esta ficha no sustituye al veterinario. Si un animal parece enfermo, llame a un veterinario que trate reptiles y anfibios.
frame-day = A fecha de { $day }.
frame-address = Dirección: { $address }

# Entre valores: «40 cm o 50 cm».
join-or = {" "}o{" "}

fact-practice = práctica habitual
fact-set-by = fijado aquí por { $by }; la biblioteca dice
fact-set-by-on = fijado aquí por { $by }, { $on }; la biblioteca dice
fact-others = otras:

# Cómo se calcularon las cifras de un capítulo.
chapter-worked = Cómo se calculó
working-steps = Valores introducidos:
working-assumptions = Se da por supuesto:
working-source = Fuente: { $publication }

cautions-title = Precauciones
source-secondary = Leído en un texto que lo cita.
source-memory = De memoria, no leído.

# Capítulos.
chapter-glance = De un vistazo
chapter-suits = ¿Es este animal para usted?
chapter-enclosure = Terrario
chapter-heat = Calor y luz
chapter-humidity = Humedad y agua
chapter-feeding = Alimentación
chapter-company = Manejo y compañía
chapter-cleaning = Limpieza
chapter-health = Salud
chapter-growth = Cría y crecimiento
chapter-law = Ley y procedencia

# Clases de animales.
kind-snake = serpiente
kind-lizard = lagarto
kind-tortoise = tortuga terrestre
kind-turtle = tortuga acuática
kind-frog = rana
kind-salamander = salamandra
kind-invertebrate = invertebrado

# Sexo.
sex-female = hembra
sex-male = macho
sex-unknown = no se sabe

# Para quién es una cifra.
whom-adult = adulto
whom-female = hembra
whom-male = macho
whom-form = { $whom }, { $form }
whom-everyone = todas las formas y ambos sexos

# Dónde vive.
habit-ground = en el suelo
habit-climbing = por encima del suelo: trepa
habit-burrowing = bajo tierra: se entierra
habit-semi-aquatic = junto al agua y en ella
habit-aquatic = en el agua

# Cuándo está activo.
active-day = de día
active-dusk-and-night = al anochecer y de noche
active-night = de noche
active-day-and-night = de día y de noche

# Compañía.
company-alone = un solo animal por terrario
company-pairs = solo, o una pareja que se lleve bien
company-groups = solo o en grupo, con espacio para cada uno

# Qué exige un signo de enfermedad.
urgency-now = llame a un veterinario y acuda ya
urgency-day = veterinario en un plazo de 24 horas
urgency-days = veterinario en unos días
urgency-watch = anótelo y revise la instalación

# Peligros para las personas.
danger-large-constrictor = gran constrictora
danger-venom = veneno
danger-strong-bite = mordedura fuerte
danger-skin-secretion = secreción cutánea
danger-strong-tail = cola potente

# Medidas.
measure-total-length = longitud total
measure-snout-vent-length = longitud hocico-cloaca
measure-carapace-length = longitud del caparazón
measure-carapace-width = anchura del caparazón
measure-title-total-length = Longitud total
measure-title-snout-vent-length = Longitud hocico-cloaca
measure-title-carapace-length = Longitud del caparazón

# Calefactores.
heater-ceramic = emisor cerámico
heater-halogen = halógena
heater-basking-lamp = lámpara de asoleo
heater-mercury-vapour = vapor de mercurio
heater-deep-heat-projector = proyector de calor profundo
heater-radiant-panel = panel radiante
heater-mat = manta térmica
heater-cable = cable calefactor
heater-water-heater = calentador de agua
heater-room-heater = calefactor de ambiente

# Zonas del terrario.
zone-cool = fresca
zone-warm = cálida
zone-basking-spot = punto de asoleo
zone-warm-side = lado cálido
zone-cool-side = lado fresco

# CITES.
cites-none = no incluida en los apéndices de CITES
cites-I = Apéndice I de CITES
cites-II = Apéndice II de CITES
cites-III = Apéndice III de CITES

# Antes del número de una zona ultravioleta: «zona 2».
unit-zone = zona

# Por qué no se pudo calcular un terrario.
unmet = no calculado: { $reason }
unmet-no-animals = el terrario se calcula para al menos un animal
unmet-not-a-length = una longitud o una edad debe ser un número mayor que 0
unmet-length-not-given = la regla pide la { $measure }, que no se ha indicado
unmet-no-class = ninguna clase abarca una { $measure } de { $length } cm; la última termina en { $last } cm
unmet-singly = la norma dice que este animal se mantenga solo y no da cifra para más de uno
unmet-no-further = { $animals ->
    [one] la norma no da cifra para más de un animal
   *[other] la norma no da cifra para más de { $animals } animales
}
unmet-no-classes = la fila de la norma no tiene ninguna clase

# Lo que pide una norma.
least-floor = suelo { $amount }
least-height = altura { $amount }
least-water = agua { $amount }
least-water-depth = profundidad del agua { $amount }
least-land = tierra { $amount }

# Cifras de una especie.
figure-size-birth = Al nacer o eclosionar
figure-size-adult = Adulto
figure-size-female = Hembra adulta
figure-size-male = Macho adulto
figure-size-form-adult = { $of }
figure-size-form-female = { $of }, hembra
figure-size-form-male = { $of }, macho
figure-size-total_length = Del hocico a la punta de la cola
figure-size-birth_mass = Peso al nacer o eclosionar
figure-size-mass = Peso adulto
figure-size-mass_female = Peso adulto, hembra
figure-size-mass_male = Peso adulto, macho
figure-growth-k = Tasa de crecimiento
figure-growth-matures = Madurez sexual
figure-life-years = Esperanza de vida
figure-origin-latitudes = Latitudes de origen
figure-temperature-basking = Punto de asoleo, superficie
figure-temperature-warm = Lado cálido
figure-temperature-cool = Lado fresco
figure-temperature-night = De noche
figure-temperature-water = Agua
figure-temperature-never_above = Nunca por encima de
figure-temperature-critical_low = Daños por debajo de
figure-temperature-brumation = Durante la brumación
figure-temperature-brumation_weeks = Duración de la brumación
figure-humidity-range = Humedad
figure-humidity-ceiling = Humedad nunca por encima de, lado fresco
figure-humidity-ceiling_for = Humedad por encima de esa, como máximo durante
figure-humidity-shed = Humedad durante la muda
figure-light-hours = Horas de luz
figure-light-zone = Zona ultravioleta
figure-light-uvi = Índice ultravioleta donde se asolea
figure-feeding-stage-every = De una comida a otra, { $of }
figure-feeding-stage-mass = Peso de una comida, { $of }
figure-feeding-stage-share = Comida como parte de su peso, { $of }
figure-feeding-stage-count = Cantidad, { $of }
figure-energy-at_most = Energía del alimento respecto a la de reposo
figure-fasting-normal = Ayuno normal
figure-handling-after_meal = Sin manejo tras comer durante

# Idiomas.
language-own = Español
language-en = inglés
language-de = alemán
language-es = español
language-fr = francés
