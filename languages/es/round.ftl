# El trabajo de una semana para toda la colección.

round-title = Ronda, semana del { $date }
round-heading = Ronda semanal
round-span = del { $from } al { $until }
round-quarantined = { $name } (cuarentena)

# El trabajo de cada día, y lo que la semana trae una vez.
round-days = Día a día
round-no-task = Agua, lecturas, un vistazo a todos.
round-once = En la semana
round-feed = dar de comer { $meal }
round-thaw = por la noche, descongelar { $meal }
round-spray = pulverizar
round-spray-daily = pulverizar cada día, { $times } ×
round-spray-daily-each = pulverizar cada día, { $times } × { $each } ml
round-meals-not-known = su registro no dice cuándo toca una comida
round-weigh = pesar: toca el { $date }, cada { $days } días (práctica habitual)
round-due = { $task }: toca el { $date }
round-review = repasar su ficha de cuidados: toca el { $date }

round-quarantine = Cuarentena
round-quarantine-order = Después de todos los demás, en este orden, con útiles propios
round-animal = Animal
round-species = Especie
round-until = Hasta
round-days-left = Días que quedan el lunes

round-cleaning = Limpieza
round-cleaning-everybody = Todos: heces y sustrato sucio se retiran en cuanto se ven, los cuencos se lavan con agua caliente, el cristal y las superficies se limpian con un paño, de los sanos a los que están en cuarentena.
round-cleaning-cloths = Los paños y útiles de un terrario no se usan en el siguiente antes de lavarlos; los de la cuarentena se quedan allí.
round-cleaning-month = Primera semana del mes: las instalaciones sencillas se vacían, se lavan, se desinfectan, se aclaran y se secan; de un suelo plantado solo se cambia lo que está sucio.
# Un texto de seguridad.
round-mixture = { $name }: { $bottle } ml añadidos a { $water } ml de agua; guantes y ventanas abiertas, y nunca mezclado con otro

round-store = En reserva
round-store-weeks = Congelador y compras: lo que come esta semana, y las { $weeks } semanas desde el { $date }
round-store-food = Alimento
round-store-now = Esta semana
round-store-mass = Peso
round-store-ahead = { $weeks } semanas
round-store-unnamed = comidas
round-meals = { $meals ->
    [one] 1 comida
   *[other] { $meals } comidas
}
round-pieces = { $pieces ->
    [one] 1 pieza
   *[other] { $pieces } piezas
}
round-not-weighed = sin pesar
