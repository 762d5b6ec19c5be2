# Lo que toca hacer con un animal: en su calendario, en la hoja para el cuidador suplente y en la ronda semanal.

due-lamp = cambiar la lámpara ({ $lamp })
due-lamp-text = Con la corriente desconectada y la lámpara fría. Anote el día en `fitted`.
due-quarantine = termina la cuarentena
due-quarantine-text = Vuelve a empezar con cada enfermedad y con cada recién llegado. Las pruebas de un veterinario deciden si puede terminar.
# El nombre de la especie va entre comillas y conserva sus mayúsculas.
due-review = repasar la ficha de cuidados «{ $species }»
due-review-text = ¿Siguen siendo sus cifras lo que hoy se da por válido?
due-review-small-letters = no
due-vet = ir al veterinario, con una muestra de heces
due-vet-text = Al menos una vez al año; si es joven, viejo o está enfermo, más a menudo. Lleve el expediente.
due-outgrown = se espera que el terrario se le quede pequeño
due-outgrown-text = El más grande está listo antes de ese día.

# Entradas de un calendario.
due-calendar = Cuidados de { $name }
due-feed = Alimentar a { $name }
due-weigh = Pesar a { $name }
due-weigh-text = Cada { $days } días, antes de una comida (práctica habitual).
due-task = { $name }: { $task }
due-since = Pendiente desde el { $date }. { $text }

# Una nota en la carpeta de las hojas privadas.
private-note =
    Estas hojas contienen direcciones, números de teléfono y los historiales de animales.
    No publique esta carpeta. La carpeta que se publica es `public`, junto a esta.
