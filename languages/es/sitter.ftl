# La hoja para quien cuida a los animales durante un tiempo.

sitter-title = Hoja para el cuidador suplente, del { $from } al { $until }
sitter-heading = Hoja para el cuidador suplente
sitter-span = { $days ->
    [one] del { $from } al { $until }, { $days } día
   *[other] del { $from } al { $until }, { $days } días
}

# A quién llamar, por orden.
sitter-contacts = A quién llamar
sitter-keeper = 1. El cuidador
sitter-second = 2. Si nadie responde en 15 minutos
sitter-vet = Un animal está enfermo: el veterinario
sitter-vet-out-of-hours = El veterinario fuera de horario

sitter-house = La casa
sitter-where-things-are = Dónde están las cosas

# Lo que nunca se hace. Son textos de seguridad.
sitter-never = Nunca
sitter-never-alone = No abra nunca a solas el terrario de una serpiente grande: dos adultos, todas las veces.
sitter-never-take-out = No saque nunca a un animal, y no abra nunca dos terrarios a la vez.
sitter-never-set-points = No cambie nunca una consigna, y no encienda nunca un calefactor que estaba apagado.
sitter-never-more-food = No dé nunca más alimento del que indica el día, y no deje nunca dentro roedores vivos.
sitter-never-medicine = No dé nunca un medicamento que un veterinario no haya prescrito para este animal.
sitter-never-leave-open = No se vaya nunca antes de que puertas, cierres y tapas estén cerrados y los animales contados.

# Cuando ocurre algo, una línea para cada caso.
sitter-events = Cuando ocurre algo
sitter-power-cut = Corte de luz
sitter-power-cut-text = Las tapas siguen cerradas, mantas sobre el cristal, llame al cuidador; después, la tarjeta al final de esta hoja.
sitter-escape = Fuga
sitter-escape-text = Cierre la puerta de la habitación, mire a ras del suelo, llame. No agarre una serpiente que no conozca.
sitter-bite = Mordedura
sitter-bite-text = Lávela con agua y jabón. Profunda, en la cara o con hinchazón: un médico. Una serpiente grande que no suelta: el segundo adulto la desenrolla empezando por la cola; llame al número de emergencias.
sitter-fire = Incendio
sitter-fire-text = Personas fuera, puerta cerrada, llame al número de emergencias. Nadie vuelve a por un animal.
sitter-hands = Manos
sitter-hands-text = Agua y jabón después de cada terrario. Los niños menores de cinco años, las embarazadas, los mayores de 65 años y cualquier persona con las defensas bajas se mantienen alejados: los reptiles y anfibios pueden portar Salmonella.

# De qué se ocupa el cuidador antes de irse, y qué se le dice al suplente.
sitter-before = Antes de que se vaya el cuidador
sitter-before-lamp = { $name }: { $task }, toca el { $date }, antes de irse
sitter-before-vet = { $name }: { $task }, toca el { $date }: vaya antes, o pida cita para un día posterior
sitter-before-weigh = { $name }: péselo, toca el { $date }, o el día de su regreso; el suplente no pesa
sitter-quarantine = Cuarentena
sitter-quarantine-text = terminaría el { $date }; continúa hasta que vuelva el cuidador. Al final de la ronda, con útiles propios, hasta el último día
sitter-enclosure = Terrario
sitter-enclosure-text = se espera que se le quede pequeño hacia el { $date }; de eso se ocupa el cuidador
sitter-care-sheet = Ficha de cuidados
sitter-care-sheet-text = debe repasarse a más tardar el { $date }; es trabajo del cuidador y puede esperar

# La página de un animal.
sitter-food = Alimento
sitter-as-a-rule = Por lo general
sitter-in-a-power-cut = En un corte de luz
sitter-shed = Muda
sitter-shed-on = la próxima puede llegar el { $date }, según sus últimas mudas. La piel apagada, los ojos turbios y esconderse son normales entonces, y puede rechazar la comida: déjelo tranquilo y mantenga húmedo su refugio húmedo
sitter-shed-between = la próxima puede llegar entre el { $from } y el { $until }, según sus últimas mudas. La piel apagada, los ojos turbios y esconderse son normales entonces, y puede rechazar la comida: déjelo tranquilo y mantenga húmedo su refugio húmedo
sitter-may = Usted puede
sitter-may-text = cambiarle el agua, pulverizar según indica el día, ofrecer la comida del día y retirar lo que deje, colocar una lámpara de repuesto con la corriente desconectada, llevarlo al veterinario en su caja cerrada con llave
# De una gran constrictora.
sitter-may-text-large = mirar a través del cristal. Con un segundo adulto a su lado: cambiarle el agua, pulverizar según indica el día, ofrecer la comida del día y retirar lo que deje, colocar una lámpara de repuesto con la corriente desconectada, llevarla al veterinario en su caja cerrada con llave

# Signos de enfermedad, y qué hace el suplente: quien habla es el cuidador.
sitter-signs = Cuando vea esto
sitter-sign = Signo
sitter-act = Qué hacer
sitter-act-now = llame al veterinario ya
sitter-act-day = llame hoy al veterinario, después a mí
sitter-act-days = llámeme
sitter-act-watch = siga como siempre, anótelo

# Cómo se alimenta durante la estancia.
sitter-last-meal = última comida: { $date }
sitter-skipped = no se alimenta mientras el cuidador está fuera: el último día llevará { $days } días sin comer, y hasta { $limit } es normal para su especie
sitter-none-due = no toca ninguna comida en estos días
sitter-not-known = el registro no dice cuándo toca una comida: pregunte al cuidador antes de que se vaya
sitter-as-due = { $meal } los días que lo indiquen. Retire lo que deje
# De presas que se compran congeladas.
sitter-as-due-thawed = { $meal } los días que lo indiquen. Descongele durante la noche en el frigorífico, dentro de su bolsa; caliente la bolsa en agua tibia al tacto, nunca en un microondas; ofrezca con pinzas. Retire lo que deje
sitter-meal-as-shown = como ha mostrado el cuidador

# Día a día, una tabla con casillas para marcar.
sitter-days = Día a día
sitter-days-order = En este orden, y los que están en cuarentena al final, con útiles propios
sitter-day = Día
sitter-animal = Animal
sitter-remarks = Observaciones
sitter-quarantined = { $name } (cuarentena)
sitter-to-tick = para marcar
sitter-job-water = Agua
sitter-job-spray = Pulverizar
sitter-job-readings = Lecturas
sitter-job-food = Comida
sitter-job-seen = Visto, cerrado, contado
sitter-fresh = limpia
sitter-right = correctas
sitter-ask = pregunte al cuidador
sitter-digests = nada (está digiriendo, déjelo tranquilo)
sitter-no-feeding = no se alimenta
sitter-nothing = nada
# Tras uno de los cuatro anteriores, la víspera de una comida de presa congelada.
sitter-and-thaw = { $food }; esta noche: descongele la de mañana
sitter-shed-may-come = puede llegar una muda
sitter-spray = { $times } ×
sitter-spray-each = { $times } × { $each } ml

# Una entrada del calendario del suplente: su título, y una línea para cada animal.
sitter-entry = Animales: { $what }
sitter-entry-feed = alimentar a { $name }
sitter-entry-no-meal = agua, lecturas, un vistazo a cada uno
sitter-line = { $name }: { $what }
sitter-line-apart = { $name } (cuarentena, al final): { $what }
sitter-line-water = agua { $text }
sitter-line-spray = pulverizar { $text }
sitter-line-readings = lecturas { $text }
sitter-line-food = comida: { $text }
sitter-line-seen = visto, cerrado, contado: { $text }

# Qué se hace paso a paso cuando algo va mal. Son textos de seguridad.
sitter-cards = Cuando algo va mal
sitter-card-power = No hay corriente
sitter-card-power-1 = Mire si la calle está a oscuras. Un interruptor automático que ha saltado se rearma una vez; si salta de nuevo, déjelo y llame al cuidador. La instalación eléctrica es trabajo de un electricista.
sitter-card-power-2 = Mantenga cerradas todas las tapas y puertas. Deje libres las rejillas de ventilación, ponga una manta sobre el cristal, no dé comida.
sitter-card-power-3 = Llame al cuidador y dígale cuál de las horas de abajo llega primero.
sitter-card-power-4 = Cuando vuelva la corriente: mire si en el plazo de dos horas funcionan todos los calefactores y son correctas todas las lecturas.
sitter-card-hot = Hace demasiado calor
sitter-card-hot-1 = Una lectura por encima del límite superior de su tabla: desconecte los calefactores de ese terrario en la toma de corriente, abra la puerta y las ventanas de la habitación, deje el terrario cerrado para que no se escape.
sitter-card-hot-2 = Agua limpia y fresca en el cuenco. Sin hielo, sin baño frío.
sitter-card-hot-3 = Vuelva a mirar al cabo de media hora. Sigue demasiado caliente, o el animal abre la boca o yace flácido: llame ya al veterinario, después al cuidador.
sitter-card-gone = Falta uno
sitter-card-gone-1 = Cuente de nuevo: refugios, bajo el sustrato, detrás de la pared del fondo.
sitter-card-gone-2 = Cierre la puerta de la habitación, ponga una toalla a lo largo de su parte inferior, no apague nada, mantenga fuera a gatos y perros.
sitter-card-gone-3 = Mire a lo largo de las paredes, debajo y detrás de lo que esté caliente, en zapatos y pliegues. Llame al cuidador.
sitter-card-gone-4 = Si lo ve: un cubo o una caja encima, después llame. Una persona sola no captura nunca una serpiente grande.
sitter-card-reading = Una lectura está fuera de los límites
sitter-card-reading-1 = Entre «correcto» y «actúe ya»: ¿está la sonda en su sitio, la puerta cerrada, la lámpara encendida? Vuelva a mirar al cabo de media hora.
sitter-card-reading-2 = Más allá de «actúe ya»: llame de inmediato al cuidador y léale la sonda, el número y la hora. No cambie ninguna consigna, salvo que se lo diga.
sitter-card-reading-3 = Si nadie responde en 15 minutos: el segundo número, después el veterinario.

# Cuánto tiempo aguanta cada terrario un corte de luz.
sitter-bears = Cuánto tiempo lo aguanta cada uno
sitter-without-power = Sin corriente
sitter-what-then = Qué hacer entonces
sitter-hours-not-known = no calculado: pregunte al cuidador
