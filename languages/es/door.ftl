# La ficha en la puerta de un terrario: se lee a un metro, así que es breve.

door-title = Ficha de puerta de { $name }
door-care-sheet = Ficha de cuidados: { $species }
door-sex-not-known = sexo desconocido

# Lo que hay que saber antes de abrir la puerta. Son textos de seguridad.
door-before = Antes de abrir
door-quarantine = Cuarentena hasta el { $date }. Al final de la ronda, con útiles propios, manos lavadas después.
door-large-constrictor = Dos adultos: nunca abra el terrario ni manipule o alimente a esta serpiente a solas.
door-venom = Su mordedura puede llevar veneno. No meta las manos; use pinzas.
door-strong-bite = Muerde fuerte. Alimente con pinzas largas, muévase despacio.
door-skin-secretion = Su piel irrita. Guantes húmedos y sin polvo.
door-strong-tail = Golpea con la cola. Mantenga la cara alejada.
door-company = Vive con { $names }: cuéntelos antes de cerrar.

door-readings = Lecturas deseadas
door-basking = Punto de asoleo
door-warm = Lado cálido
door-cool = Lado fresco
door-water = Agua
door-night = De noche

door-food = Alimento
door-meal = Comida
door-from-meal-to-meal = De una comida a otra
door-last-ate = Comió por última vez
door-next-due = Próxima desde

# A quién llamar.
door-emergency = En una emergencia
door-vet = Veterinario
door-vet-out-of-hours = Fuera de horario
door-keeper = Cuidador
door-second = Segundo contacto

door-square = La dirección de la ficha de cuidados como cuadrado para leer con un teléfono
