# The standing cautions. These are safety texts: what is to be done must be told in full, and no dose of a medicine is ever printed.

caution-large-constrictor = Large constrictor
caution-large-constrictor-text = Never handle or feed a large snake alone: have a second adult in the room. Never put it round a neck, and keep children away while the enclosure is open.

caution-venom = Venom
caution-venom-text = A bite may carry venom. Do not let it chew; wash the wound and ring a doctor if swelling, pain or illness follows. In many places a licence is needed.

caution-strong-bite = Strong bite
caution-strong-bite-text = A bite can wound. Feed with long tongs, move slowly, and have deep bites seen by a doctor.

caution-skin-secretion = Skin secretion
caution-skin-secretion-text = Its skin can irritate eyes and mouth. Wear wet, powder-free gloves and wash your hands after every contact.

caution-strong-tail = Strong tail
caution-strong-tail-text = A blow of the tail can injure an eye. Keep your face away and never hold the animal by its tail.

caution-salmonella = Salmonella
caution-salmonella-text =
    { $carrier ->
        [amphibian] Assume that every amphibian carries Salmonella, well or not.
        [invertebrate] Assume that any enclosure and feeder insect can carry Salmonella, well or not.
       *[reptile] Assume that every reptile carries Salmonella, well or not.
    } Wash your hands with soap after touching the animal, its water, its enclosure or its food, and keep all of them out of the kitchen. Children under five, pregnant women, people over 65 and anyone whose defences are weak should not touch it.
# The same on a sheet that carries the public-health notices of places: each draws its own line at an age, so none is drawn here.
caution-salmonella-text-beside-notices =
    { $carrier ->
        [amphibian] Assume that every amphibian carries Salmonella, well or not.
        [invertebrate] Assume that any enclosure and feeder insect can carry Salmonella, well or not.
       *[reptile] Assume that every reptile carries Salmonella, well or not.
    } Wash your hands with soap after touching the animal, its water, its enclosure or its food, and keep all of them out of the kitchen. Who should keep away is told below, place by place; in pregnancy or doubt ask a doctor.
# The same, short, on a wall card beside such notices.
caution-salmonella-text-on-card =
    { $carrier ->
        [amphibian] Assume that every amphibian carries Salmonella.
        [invertebrate] Assume that any enclosure and feeder insect can carry Salmonella.
       *[reptile] Assume that every reptile carries Salmonella.
    } Wash your hands with soap after every contact, and keep all of it out of the kitchen.

caution-heat = Heat and electricity
caution-heat-text = Guard every heater that the animal can reach and give each one a thermostat of its own. Mains wiring near water is an electrician's work. Keep lamps fixed, clear of anything that burns, and have a smoke alarm in the room.

caution-medicines = Medicines
caution-medicines-text = Only a vet decides on a medicine and its dose. None is printed here.

caution-law = Law
caution-law-text = Rules on keeping, selling and moving this animal differ from place to place and change. Ask your local authority; local law decides.
