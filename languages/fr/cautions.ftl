# Les mises en garde permanentes. Aucune dose de médicament n’est jamais imprimée.

caution-large-constrictor = Grand constricteur
caution-large-constrictor-text = Ne manipulez et ne nourrissez jamais seul un grand serpent : ayez un second adulte dans la pièce. Ne le mettez jamais autour d’un cou, et tenez les enfants à l’écart tant que le terrarium est ouvert.

caution-venom = Venin
caution-venom-text = Une morsure peut contenir du venin. Ne laissez pas l’animal mâcher ; lavez la plaie et appelez un médecin si un gonflement, une douleur ou un malaise s’ensuit. À bien des endroits, une autorisation est nécessaire.

caution-strong-bite = Forte morsure
caution-strong-bite-text = Une morsure peut blesser. Nourrissez avec une longue pince, bougez lentement et faites voir les morsures profondes par un médecin.

caution-skin-secretion = Sécrétion cutanée
caution-skin-secretion-text = Sa peau peut irriter les yeux et la bouche. Portez des gants mouillés et non poudrés, et lavez-vous les mains après chaque contact.

caution-strong-tail = Queue puissante
caution-strong-tail-text = Un coup de queue peut blesser un œil. Gardez le visage à distance et ne tenez jamais l’animal par la queue.

caution-salmonella = Salmonelles
caution-salmonella-text =
    { $carrier ->
        [amphibian] Considérez que tout amphibien est porteur de salmonelles, bien portant ou non.
        [invertebrate] Considérez que tout terrarium et tout insecte nourricier peuvent porter des salmonelles, bien portants ou non.
       *[reptile] Considérez que tout reptile est porteur de salmonelles, bien portant ou non.
    } Lavez-vous les mains au savon après avoir touché l’animal, son eau, son terrarium ou sa nourriture, et gardez tout cela hors de la cuisine. Les enfants de moins de cinq ans, les femmes enceintes, les personnes de plus de 65 ans et toute personne aux défenses affaiblies ne devraient pas toucher l’animal.
# La même, sur une fiche qui porte les avis de santé publique.
caution-salmonella-text-beside-notices =
    { $carrier ->
        [amphibian] Considérez que tout amphibien est porteur de salmonelles, bien portant ou non.
        [invertebrate] Considérez que tout terrarium et tout insecte nourricier peuvent porter des salmonelles, bien portants ou non.
       *[reptile] Considérez que tout reptile est porteur de salmonelles, bien portant ou non.
    } Lavez-vous les mains au savon après avoir touché l’animal, son eau, son terrarium ou sa nourriture, et gardez tout cela hors de la cuisine. Qui devrait rester à l’écart est indiqué plus bas, lieu par lieu ; en cas de grossesse ou de doute, demandez à un médecin.
# La même, brève, sur une fiche murale.
caution-salmonella-text-on-card =
    { $carrier ->
        [amphibian] Considérez que tout amphibien est porteur de salmonelles.
        [invertebrate] Considérez que tout terrarium et tout insecte nourricier peuvent porter des salmonelles.
       *[reptile] Considérez que tout reptile est porteur de salmonelles.
    } Lavez-vous les mains au savon après chaque contact, et gardez tout cela hors de la cuisine.

caution-heat = Chaleur et électricité
caution-heat-text = Munissez d’une protection chaque chauffage que l’animal peut atteindre, et donnez à chacun son propre thermostat. Le câblage au secteur près de l’eau est le travail d’un électricien. Gardez les lampes fixées, loin de tout ce qui brûle, et ayez un détecteur de fumée dans la pièce.

caution-medicines = Médicaments
caution-medicines-text = Seul un vétérinaire décide d’un médicament et de sa dose. Aucune n’est imprimée ici.

caution-law = Législation
caution-law-text = Les règles sur la détention, la vente et le transport de cet animal diffèrent d’un lieu à l’autre et changent. Demandez à votre autorité locale ; la loi locale fait foi.
