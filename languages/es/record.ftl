# El expediente de un animal, para su cuidador y para un veterinario.

record-title = Expediente de { $name }
record-head = Expediente
record-contacts = A quién llamar
record-meal-year = Comidas del año
record-findings = Hallazgos abiertos
record-finding = { $severity ->
    [error] error
    [warning] advertencia
   *[note] nota
}, { $code }
record-no-findings = Nada es dudoso en los archivos de este animal.
record-condition = Estado general

# Encabezados de varias tablas.
record-day = Día
record-what = Qué
record-measured = Medido

# Lecturas de las sondas.
record-readings = Lecturas
record-readings-all = Todas las lecturas, primero la última
record-probe = Sonda
record-temperature = Temperatura
record-humidity = Humedad

# Quién es.
record-identity = Identidad
record-name = Nombre
record-species = Especie
record-form = Forma o localidad
record-sex = Sexo
record-sex-told = { $sex } ({ $basis })
record-sex-not-told = { $sex } (no se sabe cómo se determinó)
record-age = Edad
record-chip = Chip o marcas
record-temperament = Temperamento

# De dónde viene.
record-origin = Origen
record-came-from = Procede de
record-arrived = Llegada
record-status = Situación
status-resident = residente
status-quarantine = en cuarentena
status-seeking-a-home = busca hogar
status-rehomed = con nuevo hogar
status-died = murió

# Longitudes y pesos.
record-measurements = Mediciones
record-measurements-all = Todas las mediciones, primero la última
record-measurements-last = Las últimas mediciones
record-weight = Peso
record-lengths-weights = Longitudes y pesos

# Comidas.
record-feeding = Registro de alimentación
record-meals = Comidas
record-meals-all = Todas las comidas ofrecidas, primero la última
record-meals-last = Las últimas comidas ofrecidas
record-last-meal = Última comida ingerida
record-of-last = De las últimas { $count }
record-outcomes = { $taken } aceptadas, { $part } en parte, { $refused } rechazadas
record-food = Alimento
record-mass = Peso
record-not-weighed = sin pesar
record-outcome = Resultado
record-taken = aceptada
record-part = en parte
record-refused = rechazada

# Mudas.
record-sheds = Mudas
record-sheds-all = Todas las mudas, primero la última
record-sheds-last = Las últimas mudas
record-shed-how = Cómo
record-shed-remark = Observación
record-shed-complete = completa
record-shed-pieces = a trozos
record-shed-not-noted = no anotado
record-last-shed = Última muda

# Enfermedad y tratamiento.
record-health = Salud y tratamiento
record-illness = Enfermedad: { $what }
record-treatment = Tratamiento: { $what }
record-health-table = Enfermedad, pruebas y tratamiento
record-by = Por
record-illness-treatment = Enfermedad y tratamiento
record-none = nada registrado
record-treated-now = En tratamiento ahora
record-treated-yes = sí
record-treated-no = no
record-treated-logged = no se sabe: en el registro consta enfermedad o tratamiento el { $date }
record-treated-nothing = nada registrado
record-for-vet = Para un veterinario

# Documentos.
record-papers = Documentos
record-proof = Prueba de origen
record-proof-paper = lo acompaña el documento que muestra de dónde procede
record-handed-over = Entregado
record-law = Ley
record-law-decides = consulte la normativa local antes de que se traslade; decide la ley local
