# La hoja de entrega de un animal: lo que necesita saber un nuevo cuidador, y firma.

handover-title = Entrega de { $name }, { $species }
handover-head = Hoja de entrega
handover-for = Para { $name }
handover-care-sheet = Ficha de cuidados: { $species }
handover-goes-with = Esta hoja va acompañada de: [{ $sheet }]({ $address }).
handover-contacts = A quién llamar
handover-by = Entregado por
handover-vet = Veterinario
handover-vet-hours = Veterinario fuera de horario
handover-before = Antes de que se vaya
handover-settle = Por resolver
handover-drawn = Crecimiento y peso
handover-drawn-growth = Crecimiento y peso, en gráficas

# Lo que firma el nuevo cuidador.
handover-signing = Entregado
handover-read = He leído esta hoja y la ficha de cuidados que la acompaña, y se me ha mostrado cómo se mantiene a { $name }.
handover-know-size = Sé cuánto puede crecer, cuánto puede vivir y cuánto costará mantenerlo.
handover-know-law = Sé que la ley local decide si puedo tenerlo y cómo, y que se me han entregado los documentos aquí nombrados.
handover-ring-vet = Llamaré a un veterinario que trate reptiles y anfibios cuando un signo de esta hoja lo indique.
handover-buyer-age = Tengo al menos { $age }, como exige { $law } a quien compra.
handover-buyer-age-memory = Tengo al menos { $age }, como exige { $law } a quien compra, hasta donde se recuerda.
handover-taken-back = Devolución.
handover-sign-keeper = Nuevo cuidador: nombre y firma
handover-sign-by = Entregado por: nombre y firma
handover-sign-date = Fecha

# La instalación tal como está.
handover-set-up = Instalación actual
handover-enclosure = Terrario
handover-inside = Interior del terrario, largo × ancho × alto
handover-heater = Calefactor
handover-thermostat-on-off = termostato propio de encendido y apagado
handover-thermostat-pulse = termostato propio de pulsos
handover-thermostat-dimming = termostato propio de atenuación
handover-thermostat-none = sin termostato propio
handover-set-to = consigna { $temperature }
handover-set-night = de noche { $temperature }
handover-guarded = con protección
handover-no-guard = sin protección anotada
handover-lamp = Lámpara
handover-lamp-hours = { $hours } al día
handover-lamp-above = { $distance } por encima del punto
handover-lamp-there = { $uvi } allí
handover-lamp-fitted = instalada: { $date }
handover-substrate = Sustrato
handover-hides = Refugios
handover-power-cut = Corte de luz
handover-readings = Lecturas
handover-probe = Sonda
handover-from-warm = Desde el extremo cálido
handover-by-day = De día
handover-by-night = De noche
handover-humidity = Humedad
handover-humidity-most = Humedad como máximo

# Lo que necesita ahora.
handover-needs = Lo que necesita ahora
handover-stage = Etapa de la vida
handover-meal = Comida
handover-interval = De una comida a otra
handover-next-meal = Próxima comida
handover-meal-between = desde el { $from }, a más tardar el { $until }
handover-rest = Sin manejo tras comer durante
handover-least = Terrario mínimo ahora, { $standard }
handover-short = Su terrario se queda corto
handover-short-length = { $standard }: largo { $inside }, de { $needed } necesarios faltan { $by }
handover-short-width = { $standard }: ancho { $inside }, de { $needed } necesarios faltan { $by }
handover-short-side = { $standard }: lado más corto { $inside }, de { $needed } necesarios faltan { $by }
handover-short-floor = { $standard }: suelo { $inside }, de { $needed } necesarios faltan { $by }
handover-short-height = { $standard }: alto { $inside }, de { $needed } necesarios faltan { $by }
handover-short-water-depth = { $standard }: espacio para la profundidad del agua { $inside }, de { $needed } necesarios faltan { $by }
handover-short-water = { $standard }: espacio para el agua { $inside }, de { $needed } necesarios faltan { $by }
handover-quarantine = En cuarentena hasta
handover-energy = Su alimento contiene
handover-energy-times = { $low }–{ $high } veces su energía en reposo
handover-hide-width = Refugios de al menos este ancho
handover-hide-grown = { $now }; de adulto, { $grown }

# Lo que necesitará de adulto.
handover-grown = Lo que necesitará
handover-length-grown = Longitud de adulto
handover-rests-on = Eso se apoya en
handover-rests-growth = { $count ->
    [0] su propio crecimiento: ninguna longitud registrada
    [one] su propio crecimiento: una longitud registrada
   *[other] su propio crecimiento: { $count } longitudes registradas
}
handover-rests-species = { $count ->
    [0] el intervalo de su especie: ninguna longitud registrada
    [one] el intervalo de su especie: una longitud registrada
   *[other] el intervalo de su especie: { $count } longitudes registradas
}
handover-enclosure-grown = Terrario de adulto, al menos
handover-life = Esperanza de vida
handover-eats-grown = Come de adulto
handover-eats-every = { $meal }, cada { $every }

handover-signs = Cuándo llamar a un veterinario
handover-no-signs = Signos

# Las dos primeras semanas en un nuevo hogar.
handover-weeks = Las dos primeras semanas
handover-weeks-before = Antes de que llegue
handover-weeks-run = Ponga en marcha el terrario durante unos días, hasta que sus lecturas se mantengan de día y de noche.
handover-weeks-run-at = Ponga en marcha el terrario durante unos días, hasta que sus lecturas se mantengan de día y de noche, con el lado fresco o el agua a { $temperature }.
handover-weeks-daily = Cada día
handover-weeks-daily-do = Agua limpia, lecturas, puertas y cierres, un vistazo sin abrir más de lo imprescindible. Después, manos lavadas.
handover-weeks-next-meal = Próxima comida que le tocaba donde estaba
handover-weeks-refused = Una comida que rechaza
handover-weeks-refused-do = se retira y se ofrece de nuevo la vez siguiente, no antes
handover-weeks-table = Día a día
handover-weeks-day = Día
handover-weeks-done = Qué se hace
handover-weeks-put-in = Meta a { $name }, cierre y déjelo tranquilo. Sin comida, sin manejo.
handover-weeks-first-check = Anote las lecturas de día y de noche. Llame a un veterinario que trate reptiles y anfibios para una primera revisión con una muestra de heces.
handover-weeks-papers = Guarde los documentos y declare el animal donde lo pida la ley local.
handover-weeks-first-meal = Ofrezca la primera comida: { $meal }. Retire lo que deje.
handover-weeks-meal = Ofrezca la próxima comida.
handover-weeks-digests = Está digiriendo: déjelo tranquilo.
handover-weeks-weigh = Péselo y anótelo.
handover-weeks-handle = Manejo breve y tranquilo, si es de una clase que lo tolera.
handover-weeks-look = Solo mirar: ojos, piel, respiración, heces.
