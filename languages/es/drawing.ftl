# Dibujos y gráficas: sus nombres y las palabras que los sustituyen donde no se ven.
drawing-year = El día a lo largo del año
drawing-year-text = Una columna por mes, enero la primera, tan alta como largo es su día: desde { $shortest } horas en el mes más corto hasta { $longest } en el más largo.

drawing-meals = Ocho semanas de comidas en cada etapa de la vida
drawing-meals-stage = { $stage }, cada { $interval }
drawing-meals-text = Una franja por etapa con una marca por comida: { $stages }.

# El terrario de un animal, de frente.
drawing-front = El terrario de frente
drawing-front-text = El extremo cálido está a la izquierda. Calefactores, lámparas y sondas: { $parts }. En el suelo: { $hides ->
    [one] 1 refugio
   *[other] { $hides } refugios
}.
drawing-front-note = Debajo del recuadro: la temperatura de día y lo que puede marcar el higrómetro. El extremo cálido está a la izquierda. El largo, el alto y las posiciones a lo largo están a escala; los calefactores y las lámparas figuran en una línea propia. Los bloques con contorno en el suelo son refugios; si no se conoce la altura de uno, se dibuja con la mitad de su largo.
drawing-probe = sonda, { $name }
drawing-by-day = { $reading } de día
drawing-by-night = { $reading } de noche
drawing-hygrometer = higrómetro { $reading }

# El terrario mínimo de un animal adulto, de frente.
drawing-grown = El terrario mínimo para un animal adulto, de frente, { $sides }
drawing-grown-text = Desde el extremo cálido, a la izquierda: { $places }.
drawing-grown-place = { $zone } { $reading }
drawing-grown-place-damp = { $zone } { $reading }, higrómetro { $damp }
drawing-grown-animal = La barra del suelo es un animal de { $length }.
drawing-grown-scale = El largo y el alto están a escala.

# Bajo una gráfica: qué son sus líneas, puntos y anillos.
chart-key = { $key }.
chart-key-rings = { $key }; anillos: el día más temprano, el esperado y el más tardío en que el terrario se le queda pequeño.
chart-meals = Las comidas de un año.
chart-meals-key = Línea larga: aceptada; línea corta: en parte; anillo sobre la línea: rechazada. Cada una consta en el registro de alimentación.
