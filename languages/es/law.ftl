# Qué pide la ley de los lugares del sitio, y los avisos de salud pública.

law-title = Qué pide la ley
law-description = Qué pide a estas fichas la ley de cada lugar, y dónde responden a ello.
law-held = Cotejado con la ley de { $places }. Contado con nuestras palabras a partir de notas de lectura, con el día en que ya se habían leído; lo que se cuenta de memoria lo indica. La ley cambia, y obliga a unas personas y no a otras. Decide la ley local: pregunte a la autoridad del lugar.
law-notices = Avisos para imprimir
law-public-health = { $place }: salud pública

# Datos sobre la ley de un lugar.
law-act = Ley o reglamento
law-read = Lectura
law-binds = Obliga a
law-lies-within = Está dentro de
law-form = Forma
law-buyer = Comprador
law-buyer-age = edad de al menos { $age }
law-treatment = En tratamiento
law-size = Tamaño
law-paper = Documento
law-mark = Marca
law-records = Registros
law-also = Además
# La venta de un animal en tratamiento está …
law-sale-forbidden = prohibida
law-sale-on-conditions = sujeta a condiciones
law-shell-below = caparazón de menos de { $size }
law-shell-from = caparazón desde { $size }
law-mass-from = peso desde { $size }
law-article-unknown = artículo no recogido en nuestras notas
law-article-memory = { $article }; de memoria, no leído

# Lo que la ley pide que diga una ficha.
law-asks = Qué pide { $place } que diga una ficha
law-asked-for = Se pide
law-article = Artículo
law-answered = Se responde en
law-remark = Observación
law-wider = incluido en un término más amplio del texto
law-wording-set = la ley fija las palabras
law-item-names = nombre científico y común
law-item-life-expectancy = esperanza de vida
law-item-adult-size = tamaño adulto
law-item-housing = alojamiento: tamaño y equipamiento
law-item-environment = ambiente: calor, humedad, luz
law-item-feeding = alimentación
law-item-daily-ration = ración diaria
law-item-watering = suministro de agua
law-item-general-care = cuidados generales
law-item-handling = manejo
law-item-cleaning = limpieza
law-item-equipment = equipo y accesorios
law-item-movement = movimiento
law-item-enrichment = enriquecimiento
law-item-social-life = vida social: solo o en compañía
law-item-behaviour = comportamiento
law-item-danger = peligro para las personas
law-item-reproduction = reproducción y cría
law-item-signs-of-illness = signos de enfermedad
law-item-veterinary-care = atención veterinaria
law-item-yearly-cost = coste anual de mantenimiento
law-item-protection-status = estado de protección
law-item-legal-basis = base legal de la tenencia
law-item-no-release = advertencia contra la suelta
law-item-health-on-the-day = salud de este animal en el día
law-item-particulars = origen, edad, sexo e historial veterinario
law-on-handover = hoja de entrega: { $headings }
law-under-head = el encabezado de la ficha
law-under-seconds = En diez segundos
law-under-cautions = Precauciones
law-under-identity = Identidad
law-under-origin = Origen
law-under-measurements = Mediciones
law-under-treatment = Salud y tratamiento

# En las fichas de un animal o una especie.
law-held-against = Cotejado con la ley de
law-held-read = { $places } (leído a fecha de { $date })
law-release = Suelta, { $place }
law-release-ours = No suelte nunca a este animal.
law-release-note = Son palabras nuestras: la ley de allí fija las suyas, que deben tomarse de ella.
law-trade = Comercio internacional
law-with-paper = { $says } Documento: { $paper }.

# Los avisos de salud pública.
notice-title-binding = Aviso de salud pública, { $place }
notice-title-advice = Consejo de salud pública, { $place }
notice-description = { $title }, en una página.
notice-law = Qué pide la ley
notice-says = Dice
notice-ages = Edades
notice-ages-line = Edades: { $ages }.
notice-given-to = Se entrega a
notice-wall = En la pared
notice-for = Para
notice-words = Las palabras exactas
notice-words-set = puede fijarlas la ley y deben tomarse de ella
notice-rests-on = Se apoya en
notice-local-law = Decide la ley local.
notice-own-words = Contado con nuestras palabras: la ley puede fijar las suyas, y se toman de ella.
notice-read-by = leído a fecha de { $date }
notice-from-memory = de memoria, no leído
notice-read-unknown = nadie dice cuándo se leyó
notice-for-snake = serpientes
notice-for-lizard = lagartos
notice-for-tortoise = tortugas terrestres
notice-for-turtle = tortugas acuáticas
notice-for-frog = ranas
notice-for-salamander = salamandras
notice-for-invertebrate = invertebrados
