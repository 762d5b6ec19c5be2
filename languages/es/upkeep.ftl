# Lo que exige mantener a un animal: calor, luz, agua, dinero, crecimiento.

upkeep-title = Calor, electricidad y agua

# Datos: qué son y qué dicen.
upkeep-heat = Calor
upkeep-not-worked-out = no calculado: { $reason }
upkeep-water = Agua para mantener la humedad
upkeep-water-in-a-day = se evaporan unos { $water } ml al día del cuenco, el sustrato y la pulverización
upkeep-water-and-spray = se evaporan unos { $water } ml al día del cuenco, el sustrato y la pulverización, { $each } ml en cada pulverización
upkeep-dew = El agua se condensa sobre todo lo más frío que
upkeep-lights = Luces
upkeep-lights-on-off = se encienden a las { $on }, se apagan a las { $off }
upkeep-lamp = { $lamp }, para la banda ultravioleta de la especie
upkeep-lamp-distance = Distancia de una lámpara
upkeep-lamp-above = de { $near } a { $far } por encima de su dorso
upkeep-lamp-above-sure = de { $near } a { $far } por encima de su dorso; el extremo más cercano puede estar entre { $low } y { $high } cm
upkeep-costs = Gastos en un año, sin veterinario
upkeep-cost = unos { $low }–{ $high } { $currency }
upkeep-heat-lost = Calor perdido en la habitación habitual y en la noche más fría
upkeep-heat-lost-watts = { $usual } W y { $coldest } W
upkeep-heaters = Calefactores instalados
upkeep-heaters-enough = { $watts } W: suficiente para la noche más fría
upkeep-heaters-enough-by-night = { $watts } W: suficiente para las temperaturas propias de la noche, no para mantener el gradiente del día durante la noche más fría
upkeep-heaters-too-small = { $watts } W: demasiado poco para la noche más fría
upkeep-duty = Funcionan
upkeep-duty-share = cerca del { $share } % del tiempo
upkeep-electricity = Electricidad para calor en un mes
upkeep-electricity-kwh = unos { $kwh } kWh
upkeep-electricity-kwh-cost = unos { $kwh } kWh, { $amount } { $currency }
upkeep-savings = Ahorraría de eso
upkeep-savings-foam = 2 cm de espuma aislante en todas las paredes menos la frontal, cerca del { $share } %
upkeep-savings-air = la mitad de la renovación de aire, cerca del { $share } %, si la humedad lo permite
upkeep-without-power = Sin corriente
upkeep-hours-without-power = los daños pueden empezar a las { $early } horas en la noche más fría; lo esperado son { $expected } horas
upkeep-heat-wave = En una ola de calor
upkeep-heat-wave-above = por encima de { $room } en la habitación, un calefactor que se quede encendido lo sobrecalentaría: desconéctelos en la toma de corriente
upkeep-sure = Grado de certeza
upkeep-sure-share = una estimación en régimen estable que puede desviarse un { $share } % en ambos sentidos; la instalación eléctrica es trabajo de un electricista

# La tabla de los instrumentos.
upkeep-instruments = Qué deben marcar los instrumentos de día
upkeep-instrument = Instrumento
upkeep-right = Correcto
upkeep-act-now = Actúe ya
upkeep-instruments-note = Entre ambos, vuelva a mirar al cabo de media hora: ¿está la sonda en su sitio, está cerrada la puerta? Estos números incluyen la precisión y las pruebas de cada instrumento.
upkeep-temperature-at = { $probe }, temperatura
upkeep-humidity-at = { $probe }, humedad
upkeep-too-rough = instrumento demasiado impreciso para saberlo con certeza
upkeep-below-or-above = por debajo de { $below } o por encima de { $above }

# Crecimiento y vida por venir.
upkeep-own-growth = Su propio crecimiento
upkeep-own-growth-open = aún no basta para saberlo: las longitudes dejan la longitud adulta tan abierta como la especie
upkeep-growth-to-come = Crecimiento por venir
upkeep-outgrown-at = El terrario se le queda pequeño con { $length }
upkeep-outgrown-dates = lo más temprano { $earliest }, lo esperado { $expected }, lo más tardío { $latest }
upkeep-outgrown-not-expected = no se espera
upkeep-outgrown-when = Cuándo se le queda pequeño el terrario
upkeep-life-lasts = Una vida como esta dura
upkeep-life-between = entre { $first } y { $last }
upkeep-life-at-latest = hasta { $last } como muy tarde
upkeep-life-at-least = al menos hasta { $first }

# Cómo está un animal.
upkeep-weight-over = Peso a lo largo de { $days } días
upkeep-days-since-it-ate = Días desde que comió
upkeep-days-fasted = { $days }; hasta { $limit } es normal para su especie

# Por qué no se pudo calcular una cifra: tras «no calculado:» o solo.
absent-enclosure = no se ha indicado ningún terrario
absent-inside = no se han indicado las medidas interiores del terrario
absent-warm-and-cool = la especie no indica lado cálido ni lado fresco del aire
absent-room-by-day = no se ha indicado la temperatura de la habitación de día
absent-coldest-night = no se ha indicado la noche más fría de la habitación
absent-air-exchange = no se ha indicado la renovación de aire del terrario
absent-walls = no se ha indicado de qué son las paredes
absent-material = `{ $material }` no está en la tabla de materiales
absent-critical-low = la especie no indica la temperatura por debajo de la cual sufre daños
absent-room-stays-above = la habitación no baja de { $celsius } °C
absent-colder-already = ya hace más frío que eso con la corriente conectada
absent-band = la especie no indica banda ultravioleta
absent-band-end = la banda ultravioleta de la especie no tiene extremo superior
absent-second-distance = se necesitan lecturas a dos distancias o más
absent-not-falling = el índice no disminuye con la distancia: vuelva a medir la lámpara
absent-beyond-readings = la banda queda fuera de los { $near }–{ $far } cm que cubren las lecturas
absent-adult-length = no se conoce ninguna longitud adulta
absent-too-small = ya es demasiado pequeño
absent-does-for-longest = sirve para el adulto más largo que se espera
absent-not-known = no se conoce su longitud, las medidas de su terrario o la regla de una norma
