# Las palabras de las gráficas en el tiempo y de la franja de comidas.

chart-month = { $month } { $year }

# Las comidas de un año.
chart-meals-says = { $count ->
    [one] 1 comida ofrecida
   *[other] { $count } comidas ofrecidas
} del { $first } al { $last }: { $taken } aceptadas, { $part } en parte, { $refused } rechazadas.

# Crecimiento.
chart-growth = Crecimiento: { $measure }
chart-growth-says = { $count ->
    [one] 1 longitud
   *[other] { $count } longitudes
}, de { $from } el { $first } a { $to } el { $last }.
chart-growth-adult = De adulto se espera de { $low } a { $high }, con { $middle } en el centro.
chart-growth-outgrown = El terrario se le queda pequeño con { $length }: lo más temprano { $earliest }, lo esperado { $expected }, lo más tardío { $latest }.
chart-not-expected = no se espera
chart-level = el terrario se le queda pequeño
chart-growth-key = puntos: medido
chart-growth-key-curves = puntos: medido; línea continua: esperado; líneas discontinuas: los extremos que abarcan a { $level } de cada 100 animales como este
chart-growth-table = Todas las longitudes
chart-day = Día
chart-measured = Medido

chart-weight = Peso
chart-weight-says = { $count ->
    [one] 1 peso
   *[other] { $count } pesos
}, de { $from } el { $first } a { $to } el { $last }.
chart-weight-key = puntos: pesado
chart-weight-table = Todos los pesos
chart-weighed = Pesado

# El ultravioleta de una lámpara según la distancia.
chart-ultraviolet = Ultravioleta: { $lamp }
chart-ultraviolet-says = Índice ultravioleta según la distancia a la lámpara, a través de lo que queda en su sitio. La banda de la especie, de { $low } a { $high } UVI, está entre { $near } y { $far }.
chart-ultraviolet-key = puntos: leído; línea continua: ajustada a ellos; líneas discontinuas: los extremos de la banda
chart-ultraviolet-table = Todas las lecturas de la lámpara
chart-distance = Distancia
chart-uvi = UVI
