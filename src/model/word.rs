//! Words that a field may hold: each list is the whole of what the field knows.

/// A field that holds one of a few words.
pub trait Word: Sized + Copy + PartialEq + 'static {
    /// Every value with its spelling in the files, in the order in which they are listed to people.
    const ALL: &'static [(Self, &'static str)];

    /// The spelling in the files.
    fn spelling(self) -> &'static str {
        Self::ALL.iter().find(|(value, _)| *value == self).map_or("", |(_, spelling)| spelling)
    }
}

macro_rules! words {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $spelling:literal,)+ }) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$variant_doc])* $variant,)+ }
        impl Word for $name {
            const ALL: &'static [(Self, &'static str)] = &[$((Self::$variant, $spelling),)+];
        }
    };
}

words! {
    /// What kind of animal a species is.
    Kind {
        /// Snakes.
        Snake = "snake",
        /// Lizards.
        Lizard = "lizard",
        /// Land-dwelling chelonians.
        Tortoise = "tortoise",
        /// Water-dwelling chelonians.
        Turtle = "turtle",
        /// Frogs and toads.
        Frog = "frog",
        /// Salamanders, newts and axolotls.
        Salamander = "salamander",
        /// Spiders, scorpions, insects and the like.
        Invertebrate = "invertebrate",
    }
}

words! {
    /// The part of an enclosure that a probe reads.
    Zone {
        /// The surface where the animal basks.
        Basking = "basking",
        /// The warm side.
        Warm = "warm",
        /// The cool side.
        Cool = "cool",
        /// The water.
        Water = "water",
    }
}

impl Zone {
    /// The zone that the first word of a probe's name tells, in English: none where it tells no zone.
    ///
    /// # Examples
    /// ```
    /// use wardsheet::model::word::Zone;
    /// assert_eq!(Zone::of_name("Cold end, by the door"), Some(Zone::Cool));
    /// assert_eq!(Zone::of_name("hot-2"), Some(Zone::Basking));
    /// assert_eq!(Zone::of_name("hall"), None);
    /// ```
    pub fn of_name(name: &str) -> Option<Zone> {
        match name.split([' ', '-', '_']).next()?.to_lowercase().as_str() {
            "basking" | "hot" => Some(Zone::Basking),
            "warm" => Some(Zone::Warm),
            "cool" | "cold" => Some(Zone::Cool),
            "water" => Some(Zone::Water),
            _ => None,
        }
    }
}

words! {
    /// Where in its enclosure a species lives.
    Habit {
        /// On the ground.
        Ground = "ground",
        /// On branches.
        Climbing = "climbing",
        /// In the ground.
        Burrowing = "burrowing",
        /// By and in water.
        SemiAquatic = "semi-aquatic",
        /// In water.
        Aquatic = "aquatic",
    }
}

words! {
    /// What a species eats.
    Diet {
        /// Whole vertebrate prey.
        Carnivore = "carnivore",
        /// Insects and other small invertebrates.
        Insectivore = "insectivore",
        /// Plants.
        Herbivore = "herbivore",
        /// Both plants and animals.
        Omnivore = "omnivore",
    }
}

words! {
    /// When a species is active.
    Active {
        /// By day.
        Day = "day",
        /// At dusk and by night.
        DuskAndNight = "dusk and night",
        /// By night.
        Night = "night",
        /// By day and by night.
        DayAndNight = "day and night",
    }
}

words! {
    /// Which company a species keeps.
    Company {
        /// One to an enclosure.
        Alone = "alone",
        /// Pairs may live together.
        Pairs = "pairs",
        /// Groups may live together.
        Groups = "groups",
    }
}

words! {
    /// Dangers to people that a species' page must name.
    Caution {
        /// A snake that a person should not handle alone.
        LargeConstrictor = "large constrictor",
        /// Venom of any strength.
        Venom = "venom",
        /// A bite that wounds.
        StrongBite = "strong bite",
        /// Skin that irritates or poisons.
        SkinSecretion = "skin secretion",
        /// A tail that wounds.
        StrongTail = "strong tail",
    }
}

words! {
    /// Which length of an animal is meant.
    Measure {
        /// Nose to tail tip.
        TotalLength = "total length",
        /// Nose to vent.
        SnoutVent = "snout-vent length",
        /// The shell's straight length.
        Carapace = "carapace length",
    }
}

words! {
    /// How urgent a sign of illness is.
    Urgency {
        /// Ring and travel now.
        Now = "now",
        /// A vet within 24 hours.
        Day = "day",
        /// A vet within days.
        Days = "days",
        /// Write it down and check the set-up.
        Watch = "watch",
    }
}

words! {
    /// The CITES appendix that lists a species.
    Cites {
        /// Not listed.
        NotListed = "none",
        /// Appendix I.
        I = "I",
        /// Appendix II.
        II = "II",
        /// Appendix III.
        III = "III",
    }
}

words! {
    /// An animal's sex.
    Sex {
        /// Female.
        Female = "female",
        /// Male.
        Male = "male",
        /// Not known.
        Unknown = "unknown",
    }
}

words! {
    /// How sure a date is.
    Basis {
        /// Known from papers or witnessed.
        Known = "known",
        /// Estimated.
        Estimated = "estimated",
    }
}

words! {
    /// How an animal stands with its keeper.
    Status {
        /// It lives here.
        Resident = "resident",
        /// It is kept apart.
        Quarantine = "quarantine",
        /// It is looking for a new keeper.
        SeekingHome = "seeking a home",
        /// It has gone to a new keeper.
        Rehomed = "rehomed",
        /// It has died.
        Died = "died",
    }
}

words! {
    /// How a thermostat drives its heater.
    Thermostat {
        /// Switches off and on.
        OnOff = "on-off",
        /// Sends pulses of power.
        Pulse = "pulse",
        /// Dims.
        Dimming = "dimming",
        /// None of its own.
        Absent = "none",
    }
}

words! {
    /// Kinds of heater.
    HeaterKind {
        /// A ceramic heater without light.
        Ceramic = "ceramic",
        /// A halogen lamp.
        Halogen = "halogen",
        /// A basking lamp.
        BaskingLamp = "basking lamp",
        /// A mercury vapour lamp.
        MercuryVapour = "mercury vapour",
        /// A deep heat projector.
        DeepHeat = "deep heat projector",
        /// A radiant panel.
        RadiantPanel = "radiant panel",
        /// A heat mat.
        Mat = "mat",
        /// A heating cable.
        Cable = "cable",
        /// A heater in the water.
        WaterHeater = "water heater",
        /// A room heater.
        RoomHeater = "room heater",
    }
}

#[expect(
    clippy::derivable_impls,
    reason = "the macro derives the same for every list, and most have no natural first"
)]
impl Default for Measure {
    fn default() -> Measure {
        Measure::TotalLength
    }
}
