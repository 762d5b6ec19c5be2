# Lo que han registrado los registradores de datos (loggers), en el expediente de un animal: una tabla y curvas.

logger-title = Datos de los registradores
logger-table = Lo que registró cada sonda
logger-what = Qué
logger-from = Desde
logger-until = Hasta
logger-readings = Lecturas
logger-readings-step = { $readings }, por lo general una cada { $minutes } minutos
logger-by-day = De día, parte del tiempo
logger-by-night = De noche, parte del tiempo
logger-humidity = Humedad, parte del tiempo
logger-above-ceiling = Más tiempo sobre el límite máximo
logger-above-never = Más tiempo sobre lo que nunca se supera
logger-coldest-night = Noche más fría
logger-coldest-night-from = { $temperature }, la noche que empieza el { $date }
logger-swing = Oscilación de un día
logger-swing-usual-widest = { $usual }; como máximo { $widest }, el { $date }
logger-gaps = Interrupciones
logger-no-gaps = ninguna
logger-gaps-told = { $count }, en total { $together }; la más larga, { $longest }, desde el { $date }

# Partes del tiempo.
logger-within = { $share } % con { $range }
logger-below = { $share } % por debajo
logger-above = { $share } % por encima
logger-no-range = no se indica ningún intervalo
logger-no-reading = ninguna lectura

# El periodo más largo por encima de un límite.
logger-no-limit = ninguna lectura o ningún límite
logger-never-above = nunca por encima de { $limit }
logger-spell = { $hours } por encima de { $limit }, hasta { $highest }, desde el { $date }

logger-hours = { $count ->
    [one] { $hours } hora
   *[other] { $hours } horas
}
logger-moment = { $date }, { $time }

# Bajo la tabla.
logger-note = El día va de las { $on } a las { $off } horas, { $lights ->
    [own] según sus luces
   *[taken] como se da por supuesto
}. Por encima de su límite máximo durante más de { $hours } sin interrupción es un hallazgo ({ $limit ->
    [stated] como indica su especie
   *[practice] práctica habitual, sin fuente
}). Una pausa no cuenta para nada.

# Curvas del valor más bajo y del más alto de cada día.
logger-temperature-at = Temperatura en la sonda { $probe }
logger-humidity-at = Humedad en la sonda { $probe }
logger-curve = { $days } días, del { $from } al { $until }: entre { $low } y { $high } { $unit }.
logger-key = línea continua: lo más alto de cada día; línea discontinua: lo más bajo
logger-key-level = línea continua: lo más alto de cada día; línea discontinua: lo más bajo; línea horizontal: { $limit }, que no se debe superar
logger-by-month = Por mes
logger-month = Mes
logger-days = Días
logger-lowest = Lo más bajo
logger-highest = Lo más alto
