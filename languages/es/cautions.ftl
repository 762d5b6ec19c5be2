# Las precauciones fijas. Son textos de seguridad: se dice completo lo que hay que hacer, y nunca se imprime una dosis.

caution-large-constrictor = Gran constrictora
caution-large-constrictor-text = No manipule ni alimente nunca a solas a una serpiente grande: tenga a un segundo adulto en la habitación. No la ponga nunca alrededor de un cuello, y mantenga alejados a los niños mientras el terrario esté abierto.

caution-venom = Veneno
caution-venom-text = Una mordedura puede llevar veneno. No deje que mastique; lave la herida y llame a un médico si después aparecen hinchazón, dolor o malestar. En muchos lugares se necesita una licencia.

caution-strong-bite = Mordedura fuerte
caution-strong-bite-text = Una mordedura puede herir. Alimente con pinzas largas, muévase despacio y haga que un médico vea las mordeduras profundas.

caution-skin-secretion = Secreción cutánea
caution-skin-secretion-text = Su piel puede irritar los ojos y la boca. Use guantes húmedos y sin polvo, y lávese las manos después de cada contacto.

caution-strong-tail = Cola potente
caution-strong-tail-text = Un coletazo puede lesionar un ojo. Mantenga la cara alejada y no sujete nunca al animal por la cola.

caution-salmonella = Salmonela
caution-salmonella-text =
    { $carrier ->
        [amphibian] Dé por hecho que todo anfibio es portador de Salmonella, esté sano o no.
        [invertebrate] Dé por hecho que cualquier terrario e insecto de alimento puede portar Salmonella, esté sano o no.
       *[reptile] Dé por hecho que todo reptil es portador de Salmonella, esté sano o no.
    } Lávese las manos con jabón después de tocar el animal, su agua, su terrario o su alimento, y mantenga todo ello fuera de la cocina. Los niños menores de cinco años, las embarazadas, los mayores de 65 años y cualquier persona con las defensas bajas no deben tocarlo.
# Junto a los avisos de los lugares: aquí no se traza ningún límite de edad.
caution-salmonella-text-beside-notices =
    { $carrier ->
        [amphibian] Dé por hecho que todo anfibio es portador de Salmonella, esté sano o no.
        [invertebrate] Dé por hecho que cualquier terrario e insecto de alimento puede portar Salmonella, esté sano o no.
       *[reptile] Dé por hecho que todo reptil es portador de Salmonella, esté sano o no.
    } Lávese las manos con jabón después de tocar el animal, su agua, su terrario o su alimento, y mantenga todo ello fuera de la cocina. Quién debe mantenerse alejado se indica más abajo, lugar por lugar; en caso de embarazo o duda, pregunte a un médico.
# Lo mismo, breve, en una ficha de pared.
caution-salmonella-text-on-card =
    { $carrier ->
        [amphibian] Dé por hecho que todo anfibio es portador de Salmonella.
        [invertebrate] Dé por hecho que cualquier terrario e insecto de alimento puede portar Salmonella.
       *[reptile] Dé por hecho que todo reptil es portador de Salmonella.
    } Lávese las manos con jabón después de cada contacto, y mantenga todo ello fuera de la cocina.

caution-heat = Calor y electricidad
caution-heat-text = Proteja todo calefactor que el animal pueda alcanzar y ponga a cada uno su propio termostato. La instalación de red eléctrica cerca del agua es trabajo de un electricista. Mantenga las lámparas fijas y apartadas de todo lo que arda, y tenga un detector de humo en la habitación.

caution-medicines = Medicamentos
caution-medicines-text = Solo un veterinario decide sobre un medicamento y su dosis. Aquí no se imprime ninguna.

caution-law = Ley
caution-law-text = Las normas sobre la tenencia, la venta y el traslado de este animal difieren según el lugar y cambian. Pregunte a su autoridad local; decide la ley local.
