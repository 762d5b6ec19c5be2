//! The animals that live here with their enclosures, and what is read in them: what every rule on equipment looks at.

use crate::figures::AnimalFigures;
use crate::finding::Place;
use crate::model::housing::{Housing, Probe};
use crate::model::log::Event;
use crate::model::word::Zone;
use crate::model::{Animal, Species};
use crate::quantity::{
    Humidity, Quantity, Range, Rounding, System, Temperature, UvIndex, print_one,
};

use super::Evidence;

/// An animal that lives here, in an enclosure that is described, of a species that is known.
pub(super) struct Housed<'a> {
    pub(super) animal: &'a Animal,
    pub(super) species: &'a Species,
    pub(super) housing: &'a Housing,
    pub(super) figures: &'a AnimalFigures,
    units: System,
}

/// What one probe reads, the log's latest line before the typical reading, each with its place.
pub(super) struct Reading<'a> {
    pub(super) probe: &'a Probe,
    pub(super) day: Option<(Temperature, Place)>,
    pub(super) night: Option<(Temperature, Place)>,
    pub(super) humidity: Option<(Humidity, Place)>,
}

impl<'a> Evidence<'a> {
    /// Every animal that lives here, in an enclosure that is described, of a species that is known.
    ///
    /// The enclosure of an animal that has left or died is history, and nothing in it is at fault any more.
    pub(super) fn housed(&self) -> impl Iterator<Item = Housed<'a>> {
        let (model, figures) = (self.model, self.figures);
        model.animals.iter().filter(|(_, animal)| animal.is_kept()).filter_map(|(name, animal)| {
            Some(Housed {
                animal,
                species: model.species.get(&animal.species.name)?,
                housing: animal.housing.as_ref()?,
                figures: figures.animals.get(name)?,
                units: model.site.units,
            })
        })
    }
}

impl<'a> Housed<'a> {
    /// What every probe reads.
    pub(super) fn readings(&self) -> Vec<Reading<'a>> {
        let probes = self.housing.probes.iter().zip(&self.figures.zones);
        probes
            .map(|(probe, read)| {
                let logged = self.animal.log.iter().rev().find_map(|entry| match &entry.event {
                    Event::Reading { probe: name, temperature, humidity }
                        if *name == probe.name && Some(entry.date) == read.read_on =>
                    {
                        Some((entry.place, *temperature, *humidity))
                    }
                    _ => None,
                });
                let logged_day = logged.and_then(|(place, day, _)| Some((day?, place)));
                let logged_humidity = logged.and_then(|(place, _, humid)| Some((humid?, place)));
                Reading {
                    probe,
                    day: logged_day.or(probe.day),
                    night: probe.night,
                    humidity: logged_humidity.or(probe.humidity),
                }
            })
            .collect()
    }

    /// What the probe of a zone reads by day, the first of them where there are several.
    pub(super) fn by_day(&self, zone: Zone) -> Option<(Temperature, Place)> {
        self.readings()
            .into_iter()
            .filter(|read| read.probe.zone == Some(zone))
            .find_map(|read| read.day)
    }

    /// Whether a temperature is one at which this species winters.
    pub(super) fn winters_at(&self, temperature: Temperature) -> bool {
        let brumation = self.species.temperature.brumation.as_ref();
        brumation.is_some_and(|cited| cited.value.contains(temperature))
    }

    /// A value in both systems, the site's first.
    pub(super) fn one<Q: Quantity>(&self, value: Q) -> String {
        print_one(value, self.units, Rounding::Nearest).to_string()
    }

    /// A range in both systems, the site's first.
    pub(super) fn range<Q: Quantity>(&self, range: &Range<Q>) -> String {
        range.print(self.units, Rounding::Inward).to_string()
    }

    /// The band of the ultraviolet index that its species basks in: its own figure, or the band of its zone.
    pub(super) fn uv_band(&self, evidence: &Evidence<'_>) -> Option<Range<UvIndex>> {
        let figures = evidence.figures.species.get(&self.animal.species.name)?;
        let (low, high) = figures.light.uvi?;
        match (low.map(UvIndex::from_uvi), high.map(UvIndex::from_uvi)) {
            (Some(low), Some(high)) => Range::between(low, high).ok(),
            (Some(low), None) => Some(Range::at_least(low)),
            (None, Some(high)) => Some(Range::at_most(high)),
            (None, None) => None,
        }
    }
}
