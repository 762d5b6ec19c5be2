//! The wall card of a species: one page that can be read from a metre away.

use serde::Serialize;

use crate::figures::{Figures, SpeciesFigures};
use crate::model::Species;
use crate::model::word::Word;

use super::blocks::{Caution, Fact, Table};
use super::citing::Citing;
use super::edition::Edition;
use super::frame::Frame;
use super::{care, cautions, tables};

/// A wall card.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct WallCard {
    /// The frame.
    pub frame: Frame,
    /// The trade's common name.
    pub name: String,
    /// The scientific name.
    pub scientific: String,
    /// What kind of animal it is.
    pub kind: String,
    /// The readings wanted.
    pub readings: Vec<Fact>,
    /// What the hygrometer may read.
    pub humidity: Option<Table>,
    /// Space, food, company.
    pub needs: Vec<Fact>,
    /// Its own dangers.
    pub cautions: Vec<Caution>,
    /// Signs that mean a vet now.
    pub urgent: Vec<String>,
    /// When it was last reviewed.
    pub reviewed: Option<String>,
}

/// How many of a species' own dangers a card has room for; Salmonella and the notices always stand after them.
const DANGERS: usize = 2;

/// Builds the wall card of a species.
pub fn card(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    species: &Species,
    of: &SpeciesFigures,
) -> WallCard {
    let mut citing = Citing::new(&edition.sources);
    let names = ["temperature.", "humidity."];
    let stated = species.stated();
    let readings =
        stated.iter().filter(|stated| names.iter().any(|name| stated.name.starts_with(name)));
    let readings = readings.filter(|stated| !stated.name.contains("brumation"));
    let readings = readings
        .map(|stated| {
            let Fact { label, value, .. } = citing.fact(stated, edition);
            Fact::plain(label, value)
        })
        .collect();
    let mut needs = vec![Fact::plain(edition.say("card-space"), care::space(of, edition))];
    for (stage, row) in species.feeding.iter().zip(&of.feeding) {
        let every = row.interval_days.map(|ends| {
            super::print::shown::<crate::quantity::Span>(
                Some(ends),
                edition,
                crate::quantity::Rounding::Nearest,
            )
            .first
        });
        let meal = stage.meal.clone().unwrap_or_default();
        let food = match every {
            Some(every) => {
                edition.tell("card-meal", [("meal", meal.into()), ("every", every.into())])
            }
            None => meal,
        };
        let label = edition.tell("card-food", [("stage", stage.name.as_str().into())]);
        needs.push(Fact::plain(label, food));
    }
    let urgent =
        species.signs.iter().filter(|sign| sign.urgency == crate::model::word::Urgency::Now);
    WallCard {
        frame: Frame::new(
            edition,
            &super::card_path(key),
            false,
            &edition.tell("card-title", [("name", edition.name(species).into())]),
            &edition.tell("card-description", [("name", edition.name(species).into())]),
            figures.as_of,
        ),
        name: edition.name(species).to_owned(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        readings,
        humidity: tables::humidity(&of.humidity, edition),
        needs,
        cautions: cautions::of_card(edition, species, DANGERS),
        urgent: urgent.map(|sign| sign.sign.clone()).collect(),
        reviewed: species.reviewed.map(|(date, _)| edition.long_date(date)),
    }
}
