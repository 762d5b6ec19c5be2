# Die ständigen Warnhinweise. Sicherheitstexte: Was zu tun ist, steht vollständig da; nie die Dosis eines Medikaments.

caution-large-constrictor = Große Würgeschlange
caution-large-constrictor-text = Hantieren Sie mit einer großen Schlange nie allein und füttern Sie sie nie allein: Ein zweiter Erwachsener muss im Raum sein. Legen Sie sie nie um einen Hals, und halten Sie Kinder fern, solange das Terrarium offen ist.

caution-venom = Gift
caution-venom-text = Ein Biss kann Gift übertragen. Lassen Sie das Tier nicht kauen; waschen Sie die Wunde und rufen Sie einen Arzt an, wenn Schwellung, Schmerzen oder Krankheitsgefühl folgen. Vielerorts ist eine Genehmigung nötig.

caution-strong-bite = Kräftiger Biss
caution-strong-bite-text = Ein Biss kann verletzen. Füttern Sie mit einer langen Pinzette, bewegen Sie sich langsam und lassen Sie tiefe Bisse von einem Arzt ansehen.

caution-skin-secretion = Hautsekret
caution-skin-secretion-text = Die Haut des Tiers kann Augen und Mund reizen. Tragen Sie angefeuchtete, puderfreie Handschuhe und waschen Sie sich nach jedem Kontakt die Hände.

caution-strong-tail = Kräftiger Schwanz
caution-strong-tail-text = Ein Schlag mit dem Schwanz kann ein Auge verletzen. Halten Sie Ihr Gesicht fern und halten Sie das Tier nie am Schwanz fest.

caution-salmonella = Salmonellen
caution-salmonella-text =
    { $carrier ->
        [amphibian] Gehen Sie davon aus, dass jedes Amphibium Salmonellen trägt, ob gesund oder nicht.
        [invertebrate] Gehen Sie davon aus, dass jedes Terrarium und jedes Futterinsekt Salmonellen tragen kann, ob gesund oder nicht.
       *[reptile] Gehen Sie davon aus, dass jedes Reptil Salmonellen trägt, ob gesund oder nicht.
    } Waschen Sie sich die Hände mit Seife, nachdem Sie das Tier, sein Wasser, sein Terrarium oder sein Futter berührt haben, und halten Sie all das aus der Küche heraus. Kinder unter fünf Jahren, Schwangere, Menschen über 65 und alle mit geschwächter Abwehr sollten das Tier nicht berühren.
# Dasselbe auf einem Blatt mit den Gesundheitshinweisen der Gebiete: Jedes zieht seine eigene Altersgrenze, darum steht hier keine.
caution-salmonella-text-beside-notices =
    { $carrier ->
        [amphibian] Gehen Sie davon aus, dass jedes Amphibium Salmonellen trägt, ob gesund oder nicht.
        [invertebrate] Gehen Sie davon aus, dass jedes Terrarium und jedes Futterinsekt Salmonellen tragen kann, ob gesund oder nicht.
       *[reptile] Gehen Sie davon aus, dass jedes Reptil Salmonellen trägt, ob gesund oder nicht.
    } Waschen Sie sich die Hände mit Seife, nachdem Sie das Tier, sein Wasser, sein Terrarium oder sein Futter berührt haben, und halten Sie all das aus der Küche heraus. Wer sich fernhalten sollte, steht unten, Gebiet für Gebiet; fragen Sie in der Schwangerschaft oder im Zweifel einen Arzt.
# Dasselbe, kurz, auf einer Wandkarte neben solchen Hinweisen.
caution-salmonella-text-on-card =
    { $carrier ->
        [amphibian] Gehen Sie davon aus, dass jedes Amphibium Salmonellen trägt.
        [invertebrate] Gehen Sie davon aus, dass jedes Terrarium und jedes Futterinsekt Salmonellen tragen kann.
       *[reptile] Gehen Sie davon aus, dass jedes Reptil Salmonellen trägt.
    } Waschen Sie sich nach jedem Kontakt die Hände mit Seife, und halten Sie all das aus der Küche heraus.

caution-heat = Wärme und Strom
caution-heat-text = Sichern Sie jede Heizquelle, die das Tier erreichen kann, mit einem Schutz, und geben Sie jeder einen eigenen Thermostat. Netzinstallation in Wassernähe ist Arbeit für eine Elektrofachkraft. Lampen müssen fest sitzen und von allem Brennbaren Abstand haben; im Raum muss ein Rauchmelder sein.

caution-medicines = Medikamente
caution-medicines-text = Über ein Medikament und seine Dosis entscheidet nur ein Tierarzt. Hier ist keine abgedruckt.

caution-law = Recht
caution-law-text = Die Regeln für Haltung, Verkauf und Transport dieses Tiers sind von Ort zu Ort verschieden und ändern sich. Fragen Sie Ihre örtliche Behörde; das örtliche Recht entscheidet.
