//! The figures of a species by name, to be replaced one at a time.

use crate::quantity::{
    Humidity, Latitude, Length, Mass, Multiple, PerYear, Share, Span, Temperature, UvIndex,
};

use super::cited::Cited;
use super::species::{Figure, Form, Size, Species, Stage};
use super::stated::stage_name;

/// The place in a species where a figure stands, by its quantity.
#[derive(Debug)]
pub enum Slot<'s> {
    /// Temperatures.
    Temperature(&'s mut Figure<Temperature>),
    /// Lengths.
    Length(&'s mut Figure<Length>),
    /// Masses.
    Mass(&'s mut Figure<Mass>),
    /// Humidities.
    Humidity(&'s mut Figure<Humidity>),
    /// Spans of time.
    Span(&'s mut Figure<Span>),
    /// Shares of the animal's mass.
    Share(&'s mut Figure<Share>),
    /// Ultraviolet indices.
    UvIndex(&'s mut Figure<UvIndex>),
    /// Latitudes.
    Latitude(&'s mut Figure<Latitude>),
    /// Rates of growth.
    PerYear(&'s mut Figure<PerYear>),
    /// Multiples.
    Multiple(&'s mut Figure<Multiple>),
    /// Whole numbers.
    Count(&'s mut Option<Cited<(u32, u32)>>),
    /// An ultraviolet zone.
    Zone(&'s mut Option<Cited<u8>>),
}

impl Species {
    /// Where a figure of [`Species::stated`] stands, by its name; none for a name that no species can have.
    pub fn slot(&mut self, name: &str) -> Option<Slot<'_>> {
        let (table, rest) = name.split_once('.')?;
        match (table, rest) {
            ("size", _) => of_size(&mut self.size, rest),
            ("feeding", _) => of_feeding(&mut self.feeding, rest),
            ("growth", "k") => Some(Slot::PerYear(&mut self.growth.k)),
            ("growth", "matures") => Some(Slot::Span(&mut self.growth.matures)),
            ("life", "years") => Some(Slot::Span(&mut self.years)),
            ("origin", "latitudes") => Some(Slot::Latitude(&mut self.latitudes)),
            ("temperature", "basking") => Some(Slot::Temperature(&mut self.temperature.basking)),
            ("temperature", "warm") => Some(Slot::Temperature(&mut self.temperature.warm)),
            ("temperature", "cool") => Some(Slot::Temperature(&mut self.temperature.cool)),
            ("temperature", "night") => Some(Slot::Temperature(&mut self.temperature.night)),
            ("temperature", "water") => Some(Slot::Temperature(&mut self.temperature.water)),
            ("temperature", "never_above") => {
                Some(Slot::Temperature(&mut self.temperature.never_above))
            }
            ("temperature", "critical_low") => {
                Some(Slot::Temperature(&mut self.temperature.critical_low))
            }
            ("temperature", "brumation") => {
                Some(Slot::Temperature(&mut self.temperature.brumation))
            }
            ("temperature", "brumation_weeks") => {
                Some(Slot::Span(&mut self.temperature.brumation_weeks))
            }
            ("humidity", "range") => Some(Slot::Humidity(&mut self.humidity.range)),
            ("humidity", "ceiling") => Some(Slot::Humidity(&mut self.humidity.ceiling)),
            ("humidity", "shed") => Some(Slot::Humidity(&mut self.humidity.shed)),
            ("light", "hours") => Some(Slot::Span(&mut self.light.hours)),
            ("light", "zone") => Some(Slot::Zone(&mut self.light.zone)),
            ("light", "uvi") => Some(Slot::UvIndex(&mut self.light.uvi)),
            ("energy", "at_most") => Some(Slot::Multiple(&mut self.energy_at_most)),
            ("fasting", "normal") => Some(Slot::Span(&mut self.fasting)),
            ("handling", "after_meal") => Some(Slot::Span(&mut self.rest_after_meal)),
            _ => None,
        }
    }
}

fn of_size<'s>(size: &'s mut Size, name: &str) -> Option<Slot<'s>> {
    if let Some((form, rest)) = name.split_once('.') {
        let Form { adult, male, female, .. } = size.forms.get_mut(form)?;
        return match rest {
            "adult" => Some(Slot::Length(adult)),
            "male" => Some(Slot::Length(male)),
            "female" => Some(Slot::Length(female)),
            _ => None,
        };
    }
    match name {
        "birth" => Some(Slot::Length(&mut size.birth)),
        "adult" => Some(Slot::Length(&mut size.adult)),
        "male" => Some(Slot::Length(&mut size.male)),
        "female" => Some(Slot::Length(&mut size.female)),
        "total_length" => Some(Slot::Length(&mut size.total_length)),
        "birth_mass" => Some(Slot::Mass(&mut size.birth_mass)),
        "mass" => Some(Slot::Mass(&mut size.mass)),
        "mass_male" => Some(Slot::Mass(&mut size.mass_male)),
        "mass_female" => Some(Slot::Mass(&mut size.mass_female)),
        _ => None,
    }
}

fn of_feeding<'s>(stages: &'s mut [Stage], name: &str) -> Option<Slot<'s>> {
    let (wanted, field) = name.split_once('.')?;
    let stage = stages.iter_mut().find(|stage| stage_name(&stage.name) == wanted)?;
    match field {
        "every" => Some(Slot::Span(&mut stage.every)),
        "mass" => Some(Slot::Mass(&mut stage.mass)),
        "share" => Some(Slot::Share(&mut stage.share)),
        "count" => Some(Slot::Count(&mut stage.count)),
        _ => None,
    }
}
