//! Everything that is worked out for a species.

use jiff::civil::Date;

use crate::model::word::Habit;
use crate::model::{Model, Species};

use super::cost::{self, RunningCost};
use super::feeding::{self, StageFeeding};
use super::gradient::{self, Gradient};
use super::humidity::{self, HumidityFigures};
use super::light::{self, LightFigures};
use super::overriding::{self, Overriding};
use super::space::{self, Need, Rung};
use super::working::{Ends, Why, Working, absent, ends};

/// The derived figures of a species.
#[derive(Debug, Clone, PartialEq)]
pub struct SpeciesFigures {
    /// The thermal gradient.
    pub gradient: Gradient,
    /// The humidity and its ceiling at each zone.
    pub humidity: HumidityFigures,
    /// The least enclosure for grown animals, by standard.
    pub enclosure: Vec<Need>,
    /// What it needs on its way to its adult length.
    pub ladder: Vec<Rung>,
    /// Feeding by stage.
    pub feeding: Vec<StageFeeding>,
    /// Light.
    pub light: LightFigures,
    /// The years of keeping it.
    pub years: Option<Ends>,
    /// What a grown animal costs in a year.
    pub cost: Option<RunningCost>,
    /// The figures that stand in place of a farther folder's.
    pub overrides: Vec<Overriding>,
    /// Why a figure is absent.
    pub why: Why,
}

/// Works out everything for a species.
pub fn species(model: &Model, species: &Species, as_of: Date) -> SpeciesFigures {
    let mut why = Why::new();
    let gradient = gradient::gradient(&species.temperature, &mut why);
    let humidity = humidity::of_species(&species.humidity, &gradient, &mut why);
    let aquatic = species.habit == Habit::Aquatic;
    let stated = [
        ("gradient.basking_c", gradient.basking_c.is_some(), "it has no basking spot"),
        ("gradient.warm_c", gradient.warm_c.is_some(), "no warm side of the air is given"),
        ("gradient.cool_c", gradient.cool_c.is_some(), "no cool side of the air is given"),
        ("gradient.night_c", gradient.night_c.is_some(), "no temperature by night is given"),
        ("gradient.water_c", gradient.water_c.is_some(), "no temperature of the water is given"),
        ("humidity.range_percent", humidity.range_percent.is_some(), "no humidity range is given"),
        (
            "humidity.ceiling_percent",
            humidity.ceiling_percent.is_some(),
            "no humidity ceiling is given",
        ),
    ];
    for (name, _, reason) in stated.into_iter().filter(|(_, given, _)| !given) {
        let reason =
            if aquatic && name != "gradient.water_c" { "it lives in water" } else { reason };
        why.insert(name.to_owned(), reason.to_owned());
    }
    let enclosure = space::of_species(model, species);
    if enclosure.is_empty() {
        why.insert(
            "enclosure".to_owned(),
            "no standard in force has a rule for this species".to_owned(),
        );
    }
    for need in &enclosure {
        if let Err(reason) = &need.least {
            why.insert(format!("enclosure.{}.{}", need.standard, need.for_whom), reason.clone());
        }
    }
    let feeding = feeding::table(species, &mut why);
    let ladder = space::ladder(model, species);
    let light = light::light(species, as_of, &mut why);
    let years = species.years.as_ref().map(|cited| {
        let (low, high) = ends(&cited.value);
        (low.map(|days| days / 365.25), high.map(|days| days / 365.25))
    });
    if years.is_none() {
        why.insert("commitment.years".to_owned(), "no span of life is given".to_owned());
    }
    let largest = space::largest_build(&enclosure);
    let grown =
        species.grown_stage().and_then(|stage| feeding.iter().find(|row| row.stage == stage.name));
    let cost = match cost::of_species(&model.site, species, largest, grown) {
        Ok(cost) => Some(cost),
        Err(reason) => {
            for name in cost::FIGURES {
                absent(&mut why, name, &reason);
            }
            None
        }
    };
    let overrides = overriding::of_species(species);
    SpeciesFigures {
        gradient,
        humidity,
        enclosure,
        ladder,
        feeding,
        light,
        years,
        cost,
        overrides,
        why,
    }
}

impl SpeciesFigures {
    /// How each of them was worked out.
    pub fn workings(&self) -> Vec<&Working> {
        let single = [&self.gradient.working, &self.humidity.working, &self.light.working];
        let feeding =
            self.feeding.iter().map(|row| &row.working).filter(|working| !working.steps.is_empty());
        let energy = self.feeding.iter().filter_map(|row| row.energy_working.as_ref());
        let cost = self.cost.iter().map(|cost| &cost.working);
        single.into_iter().flatten().chain(feeding).chain(energy).chain(cost).collect()
    }
}
