//! How much a figure matters for the safety of an animal, told by its name.

/// How much a figure matters. The gravest stands first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Weight {
    /// What is never passed: never-aboves, humidity ceilings, the temperature below which it comes to harm.
    Limit,
    /// Heat and air.
    Climate,
    /// Food and fasting.
    Food,
    /// Everything else.
    Other,
}

/// Parts of names, each with what a figure of that name weighs; the first that fits counts.
const PARTS: [(&str, Weight); 29] = [
    ("never_above", Weight::Limit),
    ("ceiling", Weight::Limit),
    ("critical_low", Weight::Limit),
    ("at_most_percent", Weight::Limit),
    ("humidity.readings", Weight::Limit),
    ("night_readings", Weight::Limit),
    ("dew_point", Weight::Limit),
    ("condenses", Weight::Limit),
    ("brumation_weeks", Weight::Other),
    ("temperature.", Weight::Climate),
    ("humidity.", Weight::Climate),
    ("gradient.", Weight::Climate),
    ("heater.", Weight::Climate),
    ("probe.", Weight::Climate),
    ("room_", Weight::Climate),
    ("heat.loss_w", Weight::Climate),
    ("heat.duty", Weight::Climate),
    ("heat.installed", Weight::Climate),
    ("heat.hours_without_power", Weight::Climate),
    ("heat.all_off", Weight::Climate),
    ("moisture.", Weight::Climate),
    ("feeding.", Weight::Food),
    ("fasting.", Weight::Food),
    ("fast.", Weight::Food),
    ("weight.", Weight::Food),
    ("handling.", Weight::Food),
    ("energy", Weight::Food),
    ("size.birth_mass", Weight::Other),
    ("", Weight::Other),
];

impl Weight {
    /// What a figure of that name weighs.
    pub fn of(figure: &str) -> Weight {
        let found = PARTS.iter().find(|(part, _)| figure.contains(part));
        found.map_or(Weight::Other, |(_, weight)| *weight)
    }

    /// The heading under which figures of this weight stand.
    pub fn heading(self) -> &'static str {
        match self {
            Weight::Limit => "What is never passed",
            Weight::Climate => "Heat and air",
            Weight::Food => "Food",
            Weight::Other => "Everything else",
        }
    }

    /// The word for it in a document.
    pub fn word(self) -> &'static str {
        match self {
            Weight::Limit => "limit",
            Weight::Climate => "climate",
            Weight::Food => "food",
            Weight::Other => "other",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Weight;

    #[test]
    fn what_is_never_passed_weighs_most() {
        for name in [
            "temperature.never_above",
            "humidity.ceiling",
            "humidity.readings.warm.at_most_percent",
        ] {
            assert_eq!(Weight::of(name), Weight::Limit, "{name}");
        }
        assert_eq!(Weight::of("temperature.cool"), Weight::Climate);
        assert_eq!(Weight::of("feeding.adult.every"), Weight::Food);
        assert_eq!(Weight::of("size.adult"), Weight::Other);
        assert!(Weight::Limit < Weight::Climate && Weight::Climate < Weight::Food);
    }
}
