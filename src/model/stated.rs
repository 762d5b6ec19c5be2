//! The figures that a species states, each by its name: what words may quote and pages show with its sources.
//!
//! A name is the path of the figure in its file: `humidity.ceiling`, `feeding.hatchling.every`.

use crate::finding::Place;
use crate::quantity::{
    Humidity, Latitude, Length, Mass, Multiple, PerYear, Printed, Quantity, Range, Rounding, Share,
    Span, System, Temperature, UvIndex,
};

use super::cited::{Cited, Named};
use super::overriding::Override;
use super::species::{Figure, Species};
use super::word::{Cites, Word};

/// A figure that a species states.
#[derive(Debug, Clone, PartialEq)]
pub struct Stated<'a> {
    /// Its name.
    pub name: String,
    /// What it is, for people.
    pub label: String,
    /// The form or the stage of life that it is of, as people call it.
    pub of: Option<&'a str>,
    /// Its value.
    pub amount: Amount,
    /// To which side it may be rounded.
    pub rounding: Rounding,
    /// Where it is written.
    pub place: Place,
    /// Its sources; none means common practice.
    pub sources: &'a [Named],
    /// One sentence about it.
    pub note: Option<&'a str>,
    /// What other sources say.
    pub others: Vec<(Amount, &'a [Named])>,
    /// The entry that put it in place of a farther folder's, where one did.
    pub overridden: Option<&'a Override>,
}

/// A value of any of the quantities that a species states.
#[derive(Debug, Clone, PartialEq)]
pub enum Amount {
    /// Temperatures.
    Temperature(Range<Temperature>),
    /// Lengths.
    Length(Range<Length>),
    /// Masses.
    Mass(Range<Mass>),
    /// Humidities.
    Humidity(Range<Humidity>),
    /// Spans of time.
    Span(Range<Span>),
    /// Shares of the animal's mass.
    Share(Range<Share>),
    /// Ultraviolet indices.
    UvIndex(Range<UvIndex>),
    /// Latitudes.
    Latitude(Range<Latitude>),
    /// Rates of growth.
    PerYear(Range<PerYear>),
    /// Multiples.
    Multiple(Range<Multiple>),
    /// Whole numbers.
    Count(u32, u32),
    /// A word.
    Word(String),
}

impl Amount {
    /// An ultraviolet zone as an amount.
    pub(crate) fn of_zone(zone: &u8) -> Amount {
        Amount::Word(format!("zone {zone}"))
    }

    /// Prints it in both systems.
    pub fn print(&self, first: System, rounding: Rounding) -> Printed {
        match self {
            Amount::Temperature(range) => range.print(first, rounding),
            Amount::Length(range) => range.print(first, rounding),
            Amount::Mass(range) => range.print(first, rounding),
            Amount::Humidity(range) => range.print(first, rounding),
            Amount::Span(range) => range.print(first, rounding),
            Amount::Share(range) => range.print(first, rounding),
            Amount::UvIndex(range) => range.print(first, rounding),
            Amount::Latitude(range) => range.print(first, rounding),
            Amount::PerYear(range) => range.print(first, rounding),
            Amount::Multiple(range) => range.print(first, rounding),
            Amount::Count(low, high) if low == high => {
                Printed { first: low.to_string(), second: None }
            }
            Amount::Count(low, high) => Printed { first: format!("{low}–{high}"), second: None },
            Amount::Word(word) => Printed { first: word.clone(), second: None },
        }
    }
}

/// Quantities that an [`Amount`] can hold.
pub(crate) trait Statable: Quantity {
    /// A range of it as an amount.
    fn amount(range: Range<Self>) -> Amount;
}

macro_rules! statable {
    ($($quantity:ident),+) => { $(impl Statable for $quantity {
        fn amount(range: Range<Self>) -> Amount { Amount::$quantity(range) }
    })+ };
}
statable!(Temperature, Length, Mass, Humidity, Span, Share, UvIndex, Latitude, PerYear, Multiple);

struct List<'a>(Vec<Stated<'a>>);

impl<'a> List<'a> {
    fn figure<Q: Statable>(
        &mut self,
        name: &str,
        label: &str,
        rounding: Rounding,
        figure: &'a Figure<Q>,
    ) {
        if let Some(cited) = figure {
            let others = cited
                .others
                .iter()
                .map(|other| (Q::amount(other.value), other.sources.as_slice()))
                .collect();
            self.push(name, label, rounding, cited, Q::amount(cited.value), others);
        }
    }

    fn push<T>(
        &mut self,
        name: &str,
        label: &str,
        rounding: Rounding,
        cited: &'a Cited<T>,
        amount: Amount,
        others: Vec<(Amount, &'a [Named])>,
    ) {
        let (name, label) = (name.to_owned(), label.to_owned());
        let (sources, note) = (cited.sources.as_slice(), cited.note.as_deref());
        self.0.push(Stated {
            name,
            label,
            of: None,
            amount,
            rounding,
            place: cited.place,
            sources,
            note,
            others,
            overridden: None,
        });
    }

    fn stage(&mut self, species: &'a Species) {
        for stage in &species.feeding {
            let first = self.0.len();
            let named = |field: &str| format!("feeding.{}.{field}", stage_name(&stage.name));
            let label = |what: &str| format!("{what}, {}", stage.name);
            self.figure(
                &named("every"),
                &label("From meal to meal"),
                Rounding::Nearest,
                &stage.every,
            );
            self.figure(&named("mass"), &label("Mass of a meal"), Rounding::Nearest, &stage.mass);
            self.figure(
                &named("share"),
                &label("Meal as a share of its mass"),
                Rounding::Nearest,
                &stage.share,
            );
            if let Some(count) = &stage.count {
                let (low, high) = count.value;
                self.push(
                    &named("count"),
                    &label("How many"),
                    Rounding::Nearest,
                    count,
                    Amount::Count(low, high),
                    Vec::new(),
                );
            }
            self.of(first, &stage.name);
        }
    }

    /// Says of every figure from a place on which form or stage it is of.
    fn of(&mut self, first: usize, name: &'a str) {
        self.0.iter_mut().skip(first).for_each(|stated| stated.of = Some(name));
    }
}

/// A stage's name as it stands in the name of a figure.
pub fn stage_name(stage: &str) -> String {
    stage.trim().to_lowercase().replace(' ', "-")
}

impl Species {
    /// Every figure that the species states, in the order of its page.
    ///
    /// Ranges that an animal is kept within are rounded inwards, ceilings down, floors up; what merely describes it goes
    /// to the nearest.
    pub fn stated(&self) -> Vec<Stated<'_>> {
        use Rounding::{Down, Inward, Nearest, Up};
        let mut list = List(Vec::new());
        let size = &self.size;
        list.figure("size.birth", "At birth or hatching", Nearest, &size.birth);
        list.figure("size.adult", "Adult", Nearest, &size.adult);
        list.figure("size.female", "Adult female", Nearest, &size.female);
        list.figure("size.male", "Adult male", Nearest, &size.male);
        for (name, form) in &size.forms {
            let first = list.0.len();
            list.figure(&format!("size.{name}.adult"), &form.name, Nearest, &form.adult);
            list.figure(
                &format!("size.{name}.female"),
                &format!("{}, female", form.name),
                Nearest,
                &form.female,
            );
            list.figure(
                &format!("size.{name}.male"),
                &format!("{}, male", form.name),
                Nearest,
                &form.male,
            );
            list.of(first, &form.name);
        }
        list.figure("size.total_length", "Nose to tail tip", Nearest, &size.total_length);
        list.figure("size.birth_mass", "Mass at birth or hatching", Nearest, &size.birth_mass);
        list.figure("size.mass", "Adult mass", Nearest, &size.mass);
        list.figure("size.mass_female", "Adult mass, female", Nearest, &size.mass_female);
        list.figure("size.mass_male", "Adult mass, male", Nearest, &size.mass_male);
        list.figure("growth.k", "Rate of growth", Nearest, &self.growth.k);
        list.figure("growth.matures", "Matures at", Nearest, &self.growth.matures);
        list.figure("life.years", "Span of life", Nearest, &self.years);
        list.figure("origin.latitudes", "Latitudes it comes from", Nearest, &self.latitudes);

        let temperature = &self.temperature;
        list.figure("temperature.basking", "Basking spot, surface", Inward, &temperature.basking);
        list.figure("temperature.warm", "Warm side", Inward, &temperature.warm);
        list.figure("temperature.cool", "Cool side", Inward, &temperature.cool);
        list.figure("temperature.night", "By night", Inward, &temperature.night);
        list.figure("temperature.water", "Water", Inward, &temperature.water);
        list.figure("temperature.never_above", "Never above", Down, &temperature.never_above);
        list.figure("temperature.critical_low", "Harm below", Up, &temperature.critical_low);
        list.figure("temperature.brumation", "While brumating", Inward, &temperature.brumation);
        list.figure(
            "temperature.brumation_weeks",
            "Brumates for",
            Nearest,
            &temperature.brumation_weeks,
        );

        list.figure("humidity.range", "Humidity", Inward, &self.humidity.range);
        list.figure(
            "humidity.ceiling",
            "Humidity never above, at the cool side",
            Down,
            &self.humidity.ceiling,
        );
        list.figure(
            "humidity.ceiling_for",
            "Humidity above that at most for",
            Down,
            &self.humidity.ceiling_for,
        );
        list.figure("humidity.shed", "Humidity while shedding", Inward, &self.humidity.shed);

        list.figure("light.hours", "Hours of light", Nearest, &self.light.hours);
        if let Some(zone) = &self.light.zone {
            list.push(
                "light.zone",
                "Ultraviolet zone",
                Nearest,
                zone,
                Amount::of_zone(&zone.value),
                zone.others
                    .iter()
                    .map(|other| (Amount::of_zone(&other.value), other.sources.as_slice()))
                    .collect(),
            );
        }
        list.figure("light.uvi", "Ultraviolet index where it basks", Inward, &self.light.uvi);
        list.stage(self);
        list.figure(
            "energy.at_most",
            "Energy of its food over its energy at rest",
            Down,
            &self.energy_at_most,
        );
        list.figure("fasting.normal", "Goes without food normally", Nearest, &self.fasting);
        list.figure(
            "handling.after_meal",
            "No handling after a meal for",
            Up,
            &self.rest_after_meal,
        );
        for stated in &mut list.0 {
            stated.overridden =
                self.overrides.iter().find(|entry| entry.figure.name == stated.name);
        }
        list.0
    }

    /// The figures that are words: what words may quote beside [`Species::stated`].
    pub fn stated_words(&self) -> Vec<(&'static str, String)> {
        let cites = self.legal.cites.map(|cites| match cites {
            Cites::NotListed => "not listed in the CITES appendices".to_owned(),
            listed => format!("CITES Appendix {}", listed.spelling()),
        });
        cites.into_iter().map(|cites| ("legal.cites", cites)).collect()
    }
}
