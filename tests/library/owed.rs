//! What a species file of each kind owes its reader, as a table to be read.
//!
//! A line says for whom it is and which figures they owe, by the names that words use too. `a|b` is either of two. What a
//! kind does without is a line of [`WITHOUT`], with its reason: it is left out on purpose, not forgotten.

use wardsheet::model::Species;
use wardsheet::model::word::{Diet, Habit, Kind, Measure};

/// What some species owe.
pub(crate) struct Owed {
    /// Who owes it.
    pub(crate) who: &'static str,
    /// Whether a species is one of them.
    pub(crate) applies: fn(&Species) -> bool,
    /// The figures owed.
    pub(crate) figures: &'static [&'static str],
}

pub(crate) const OWED: &[Owed] = &[
    Owed {
        who: "every species",
        applies: |_| true,
        figures: &[
            "size.birth",
            "size.adult|size.male",
            "size.adult|size.female",
            "size.mass|size.mass_male",
            "size.mass|size.mass_female",
            "growth.matures",
            "life.years",
            "origin.latitudes",
            "temperature.night",
            "temperature.never_above",
            "temperature.critical_low",
            "light.hours",
            "light.zone",
            "light.uvi",
            "fasting.normal",
            "handling.after_meal",
        ],
    },
    Owed {
        who: "reptiles, which hatch or are born as they will be",
        applies: is_reptile,
        figures: &["size.birth_mass"],
    },
    Owed {
        who: "animals that live on land, burrow, climb or only bathe",
        applies: |species| species.habit != Habit::Aquatic,
        figures: &["temperature.warm", "temperature.cool", "humidity.range", "humidity.ceiling"],
    },
    Owed {
        who: "animals that live in water",
        applies: |species| species.habit == Habit::Aquatic,
        figures: &["temperature.water"],
    },
    Owed { who: "reptiles, which bask", applies: is_reptile, figures: &["temperature.basking"] },
    Owed {
        who: "snakes, which shed in one piece",
        applies: |species| species.kind == Kind::Snake,
        figures: &["humidity.shed"],
    },
    Owed {
        who: "lizards, which are measured without the tail",
        applies: |species| species.kind == Kind::Lizard,
        figures: &["size.total_length"],
    },
    Owed {
        who: "reptiles from outside the tropics, which have a winter",
        applies: |species| is_reptile(species) && has_winter(species),
        figures: &["temperature.brumation", "temperature.brumation_weeks"],
    },
];

/// What a species does without: its name, the figure, and why.
pub(crate) const WITHOUT: &[(&str, &str, &str)] = &[(
    "crested-gecko",
    "temperature.basking",
    "a basking spot would carry a room past 28 degrees, which kills it",
)];

/// Species for which no second enclosure standard is known, and where it was looked for.
pub(crate) const ONE_STANDARD: &[(&str, &str)] = &[
    ("axolotl", "Directive 2010/63/EU has amphibian tables, which could not be seen"),
    ("dyeing-dart-frog", "only a commercial rule of thumb besides the Austrian ordinance"),
    ("ornate-horned-frog", "nothing but the Austrian ordinance prints a figure"),
];

/// Which length the sizes of a kind mean.
pub(crate) fn measure(kind: Kind) -> Measure {
    match kind {
        Kind::Snake | Kind::Salamander | Kind::Invertebrate => Measure::TotalLength,
        Kind::Lizard | Kind::Frog => Measure::SnoutVent,
        Kind::Tortoise | Kind::Turtle => Measure::Carapace,
    }
}

pub(crate) fn is_reptile(species: &Species) -> bool {
    matches!(species.kind, Kind::Snake | Kind::Lizard | Kind::Tortoise | Kind::Turtle)
}

/// Whether all of its range lies outside the tropics.
fn has_winter(species: &Species) -> bool {
    let Some(latitudes) = &species.latitudes else { return false };
    let ends = [latitudes.value.low(), latitudes.value.high()];
    ends.iter().flatten().all(|latitude| latitude.degrees_north().abs() > 23.4)
        && ends
            .iter()
            .flatten()
            .map(|latitude| latitude.degrees_north().signum())
            .all(|side| side == ends[0].map_or(side, |low| low.degrees_north().signum()))
}

/// Whether plants are part of what it eats.
pub(crate) fn eats_plants(species: &Species) -> bool {
    matches!(species.diet, Diet::Herbivore | Diet::Omnivore)
}
