# La ficha de cuidados de una especie y la página de sus cálculos.
care-title = Ficha de cuidados: { $name }
care-description = Ficha de cuidados: { $name } ({ $scientific }).
care-also = También se llama { $names }
care-reviewed = Última revisión: { $date }.
care-reviewed-by = Última revisión: { $date }, por { $who }.
care-review-due = Debe revisarse de nuevo a más tardar el { $date }.
care-not-reviewed = Aún no revisada.
care-card = Ficha de pared, una página
care-compare = Junto a otras especies
care-seconds = En diez segundos
care-contents = Contenido
care-on-this-sheet = En esta ficha
care-sources = Fuentes
care-sources-remark = Cada una se leyó directamente, salvo que se indique otra cosa. Una cifra marcada «práctica habitual» es lo que hacen los cuidadores; ninguna publicación la respalda.
care-sources-page = Qué más se apoya en cada una
care-neighbours = Fichas vecinas
care-before = Anterior:
care-after = Siguiente:
care-more = Más

# Datos.
care-measured = { $label }, { $measure }
care-space = Terrario mínimo, adulto
care-eats = Come, adulto
care-costs = Gastos de mantenimiento
care-costs-a-year = unos { $low }–{ $high } { $currency } al año, sin veterinario
care-dangers = Peligros
care-law = Ley
care-law-check = consulte la normativa local; véase el último capítulo
care-gradient = Gradiente, de lo más cálido a lo más fresco
care-fasts = Ayunos
care-company = Compañía
care-supplements = Suplementos, { $stage }
care-remark = Observación, { $stage }
care-origin = Procede de
care-looked-up = Consultado
care-looked-up-on = { $date }; consulte la normativa local: es la que decide
care-looked-up-never = aún no; consulte la normativa local: es la que decide
care-lives = Vive
care-active = Activo
care-hides = Refugios
care-hides-at-least = al menos { $hides }, en el extremo cálido y en el fresco
care-substrate = Sustrato
care-water = Agua
care-climbing = Trepar
care-digging = Excavar
care-bathing = Baño

# Tablas.
table-enclosure = Terrario mínimo para un animal adulto, medidas interiores: largo × ancho × alto
table-enclosure-for = Para
table-enclosure-length = Con una longitud de
table-enclosure-by = Según
table-least = Al menos
table-build = Medidas para comprar o construir
table-enclosure-note = Calculado para el extremo superior del intervalo adulto. Más espacio es mejor; una norma es un mínimo, no una meta.
table-enclosure-disagree = Las normas no coinciden: el suelo mayor es { $times } veces el menor. Construya según el mayor.
table-ladder = Con esta longitud, este terrario: lo que cumple todas las normas vigentes
table-humidity = Lo que puede marcar el higrómetro
table-humidity-zone = Zona
table-humidity-at = A
table-humidity-reading = Lectura
table-humidity-note = El mismo aire marca menos humedad donde hace más calor. En el límite máximo, el agua se condensa sobre todo lo que esté más frío que { $dew }.
table-feeding = Alimentación por etapa de la vida
table-feeding-stage = Etapa
table-feeding-until = Hasta
table-feeding-meal = Comida
table-feeding-amount = Cuánto
table-feeding-every = Cada
table-feeding-a-year = Comidas al año
table-feeding-energy = Energía sobre reposo
table-feeding-note = Una cifra de esta tabla que no figura aquí con su fuente es práctica habitual.
table-feeding-old-age = vejez
table-feeding-share = { $share } de su peso
table-light = Duración del día en su lugar de origen
table-light-month = Mes
table-light-hours = horas
table-signs = Signos, y en cuánto tiempo debe verlos un veterinario
table-signs-sign = Signo
table-signs-means = Puede indicar
table-signs-act = Qué hacer

# La página de los cálculos.
working-title = { $name }: cómo se calculó
working-description = Las cifras de la ficha de cuidados ({ $name }): cada fórmula, los valores introducidos, lo que se dio por supuesto y quién la publicó.
working-page = Cómo se calculó
working-nothing = En esta ficha no hubo que calcular nada.

# Cuando los textos están en otro idioma.
care-foreign-words = Los textos de esta ficha, y los textos breves como signos y comidas, están en { $language }: aún nadie los ha traducido.
care-foreign-texts = Los textos breves como signos y comidas están en { $language }: aún nadie los ha traducido.
