//! The record of an animal: everything known of it on paper, for a vet or a file. It is private.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::log::Event;
use crate::model::word::Word;
use crate::model::{Animal, Species};
use crate::quantity::{Humidity, Rounding, System, print_one};

use super::blocks::{Chapter, Fact, Shown, Table};
use super::chart::{Chart, Plot, Series, chart, chart_over_distance, days_through, measure};
use super::edition::Edition;
use super::frame::Frame;
use super::handover_record::{self as known, ALL};
use super::meal_strip::{MealStrip, meal_strip};
use super::picture::{self, Picture};
use super::{handover_needs as needs, loggers, print, upkeep};

/// A record.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct RecordSheet {
    /// The frame.
    pub frame: Frame,
    /// The animal's name.
    pub name: String,
    /// Its species' common name.
    pub species: String,
    /// The scientific name.
    pub scientific: String,
    /// What kind of animal it is.
    pub kind: String,
    /// Its picture.
    pub picture: Picture,
    /// Whom to ring.
    pub contacts: Vec<Fact>,
    /// Who it is and where it came from.
    pub first: Vec<Chapter>,
    /// Growth and weight.
    pub charts: Vec<Chart>,
    /// The meals of the last year.
    pub meal_strip: Option<MealStrip>,
    /// Everything else.
    pub rest: Vec<Chapter>,
    /// What is doubtful in its files; filled in once they have been checked.
    pub findings: Vec<OpenFinding>,
}

/// Something doubtful in an animal's files.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct OpenFinding {
    /// The code.
    pub code: String,
    /// How grave it is.
    pub severity: String,
    /// What is doubtful.
    pub message: String,
    /// What would put it right.
    pub help: Option<String>,
}

/// Builds the record of an animal.
pub fn record(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    animal: &Animal,
    species: &Species,
    of: (&AnimalFigures, &SpeciesFigures),
) -> RecordSheet {
    let (own, general) = of;
    let (as_of, edition) = (figures.as_of, edition);
    let title = edition.tell("record-title", [("name", animal.name.as_str().into())]);
    RecordSheet {
        frame: Frame::new(edition, &super::record_path(key), true, &title, &title, as_of),
        name: animal.name.clone(),
        species: edition.name(species).to_owned(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        picture: picture::of_animal(edition, key, animal, species),
        contacts: super::door::emergency(edition),
        first: vec![
            known::identity(edition, animal, species, as_of),
            known::origin(edition, animal),
        ],
        charts: charts(animal, species, own, as_of, edition)
            .into_iter()
            .chain(ultraviolet(own, edition))
            .chain(loggers::charts(own, edition))
            .collect(),
        meal_strip: meal_strip(edition, animal, as_of),
        rest: [
            Some(condition(edition, own)),
            Some(known::feeding_record(animal, edition, as_of, ALL)),
            Some(known::sheds(edition, animal, as_of, ALL)),
            Some(readings(animal, as_of, edition)),
            loggers::chapter(own, edition),
        ]
        .into_iter()
        .flatten()
        .chain([
            known::health(edition, animal, as_of),
            needs::set_up(animal, own, edition),
            upkeep::upkeep(animal, own, general, edition),
            known::papers(animal, species, edition),
        ])
        .collect(),
        findings: Vec::new(),
    }
}

/// Growth and weight, drawn.
pub(super) fn charts(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    as_of: Date,
    edition: &Edition<'_>,
) -> Vec<Chart> {
    let growth = growth(animal, species, own, as_of, edition);
    growth.into_iter().chain(weight(animal, as_of, edition)).collect()
}

fn condition(edition: &Edition<'_>, own: &AnimalFigures) -> Chapter {
    let mut chapter = Chapter::new("condition", &edition.say("record-condition"));
    chapter.facts = upkeep::condition(edition, own);
    chapter
}

/// The figure in the site's first system and that system's unit, for a scale.
fn scaled(
    edition: &Edition<'_>,
    metric: (f64, &'static str),
    imperial: (f64, &'static str),
) -> (f64, &'static str) {
    if edition.units() == System::Metric { metric } else { imperial }
}

/// A table whose caption and headings are labels.
fn table(edition: &Edition<'_>, caption: &str, head: &[&str], rows: Vec<Vec<Shown>>) -> Table {
    let head = head.iter().map(|label| edition.say(label)).collect();
    Table { caption: edition.say(caption), head, rows, note: None }
}

/// How many steps a curve is drawn in.
const STEPS: u32 = 48;
/// How far ahead growth is drawn, days: so far, a little beyond the day on which the enclosure runs out, never farther.
const AHEAD_DAYS: f64 = 730.0;
const AFTER_DAYS: f64 = 90.0;
const FARTHEST_DAYS: f64 = 3650.0;

/// The lengths in the log, and the curves to the ends and the middle of its projected adult length.
fn growth(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    as_of: Date,
    edition: &Edition<'_>,
) -> Option<Chart> {
    let (factor, unit) = scaled(edition, (1.0, "cm"), (1.0 / 2.54, "in"));
    let measured: Vec<_> = animal.lengths().filter(|(date, _)| *date <= as_of).collect();
    let (first, _) = *measured.first()?;
    let (last, latest) = *measured.last()?;
    // The day on which its enclosure is too small is worth a longer look ahead.
    let outgrown = own.outgrown.as_ref();
    let runs_out = outgrown.and_then(|outgrown| {
        outgrown.dates.latest.or(outgrown.dates.expected).or(outgrown.dates.earliest)
    });
    let until = runs_out
        .into_iter()
        .filter_map(|date| days_after(date, AFTER_DAYS))
        .chain(days_after(as_of, AHEAD_DAYS))
        .max()
        .min(days_after(as_of, FARTHEST_DAYS))?;
    let mut lines: Vec<Series> = Vec::new();
    let adult = own.growth.adult;
    if let Some([low, middle, high]) =
        own.growth.projection.as_ref().and_then(|projection| projection.curves())
    {
        for curve in [middle, low, high] {
            let days = days_through(first, until, STEPS).into_iter();
            let day = |date: Date| f64::from(days_between(as_of, date));
            lines.push(days.map(|date| (date, curve.length_cm(day(date)) * factor)).collect());
        }
    }
    let whole = |cm: f64| measure(edition, cm * factor, 0, unit);
    let exact = |cm: f64| measure(edition, cm * factor, 1, unit);
    let expected = adult.map(|adult| {
        edition.tell(
            "chart-growth-adult",
            [
                ("low", edition.number(adult.low_cm * factor, 0).into()),
                ("high", whole(adult.high_cm).into()),
                ("middle", whole(adult.estimate_cm).into()),
            ],
        )
    });
    let level = outgrown.map(|outgrown| {
        let dates = &outgrown.dates;
        let all = [dates.earliest, dates.expected, dates.latest].into_iter().flatten();
        let at: Vec<Date> = all.filter(|date| *date <= until).collect();
        (outgrown.at_cm * factor, edition.say("chart-level"), at)
    });
    let runs_out = outgrown.map(|outgrown| {
        let date = |date: Option<Date>| {
            date.map_or_else(|| edition.say("chart-not-expected"), |date| edition.long_date(date))
        };
        edition.tell(
            "chart-growth-outgrown",
            [
                ("length", whole(outgrown.at_cm).into()),
                ("earliest", date(outgrown.dates.earliest).into()),
                ("expected", date(outgrown.dates.expected).into()),
                ("latest", date(outgrown.dates.latest).into()),
            ],
        )
    });
    let rows = measured.iter().map(|(date, length)| {
        vec![Shown::plain(edition.long_date(*date)), print::length(length.cm(), edition)]
    });
    let key = adult.map_or_else(
        || edition.say("chart-growth-key"),
        |adult| {
            let level = edition.number(adult.level * 100.0, 0);
            edition.tell("chart-growth-key-curves", [("level", level.into())])
        },
    );
    let says = edition.tell(
        "chart-growth-says",
        [
            ("count", measured.len().into()),
            ("from", exact(measured.first()?.1.cm()).into()),
            ("first", edition.long_date(first).into()),
            ("to", exact(latest.cm()).into()),
            ("last", edition.long_date(last).into()),
        ],
    );
    let says: Vec<String> = [Some(says), expected, runs_out].into_iter().flatten().collect();
    let title = [("measure", edition.word("measure", species.size.measure).into())];
    chart(
        edition,
        Plot {
            id: "growth".to_owned(),
            title: edition.tell("chart-growth", title),
            says: says.join(" "),
            key,
            unit,
            points: measured.iter().map(|(date, length)| (*date, length.cm() * factor)).collect(),
            lines,
            level,
            table: table(
                edition,
                "chart-growth-table",
                &["chart-day", "chart-measured"],
                rows.collect(),
            ),
        },
    )
}

/// The weights in the log.
fn weight(animal: &Animal, as_of: Date, edition: &Edition<'_>) -> Option<Chart> {
    let (factor, unit) = scaled(edition, (1.0, "g"), (1.0 / 28.349_523_125, "oz"));
    let measured: Vec<_> = animal.weights().filter(|(date, _)| *date <= as_of).collect();
    let (first, from) = *measured.first()?;
    let (last, to) = *measured.last()?;
    let points: Series =
        measured.iter().map(|(date, mass)| (*date, mass.grams() * factor)).collect();
    let rows = measured.iter().map(|(date, mass)| {
        vec![Shown::plain(edition.long_date(*date)), print::mass(mass.grams(), edition)]
    });
    chart(
        edition,
        Plot {
            id: "weight".to_owned(),
            title: edition.say("chart-weight"),
            says: edition.tell(
                "chart-weight-says",
                [
                    ("count", measured.len().into()),
                    ("from", measure(edition, from.grams() * factor, 1, unit).into()),
                    ("first", edition.long_date(first).into()),
                    ("to", measure(edition, to.grams() * factor, 1, unit).into()),
                    ("last", edition.long_date(last).into()),
                ],
            ),
            key: edition.say("chart-weight-key"),
            unit,
            lines: vec![points.clone()],
            points,
            level: None,
            table: table(
                edition,
                "chart-weight-table",
                &["chart-day", "chart-weighed"],
                rows.collect(),
            ),
        },
    )
}

/// The ultraviolet of its first lamp that was read at several distances, against the band of its species.
fn ultraviolet(own: &AnimalFigures, edition: &Edition<'_>) -> Option<Chart> {
    let lamp = own.lamps.iter().flatten().next()?;
    let (factor, unit) = scaled(edition, (1.0, "cm"), (1.0 / 2.54, "in"));
    let place = |(cm, uvi): &(f64, f64)| (cm * factor, *uvi);
    let curve: Vec<(f64, f64)> = lamp.curve.iter().map(place).collect();
    let (near, far) = (curve.first()?.0, curve.last()?.0);
    let (low, high) = lamp.band_uvi;
    let rows = lamp
        .readings
        .iter()
        .map(|(cm, uvi)| vec![print::length(*cm, edition), Shown::plain(edition.number(*uvi, 2))]);
    chart_over_distance(
        edition,
        Plot {
            id: "ultraviolet".to_owned(),
            title: edition.tell("chart-ultraviolet", [("lamp", lamp.lamp.as_str().into())]),
            says: edition.tell(
                "chart-ultraviolet-says",
                [
                    ("low", edition.number(low, 1).into()),
                    ("high", edition.number(high, 1).into()),
                    ("near", edition.number(lamp.nearest_cm * factor, 0).into()),
                    ("far", measure(edition, lamp.farthest_cm * factor, 0, unit).into()),
                ],
            ),
            key: edition.say("chart-ultraviolet-key"),
            unit: "UVI",
            points: lamp.readings.iter().map(place).collect(),
            lines: [curve, vec![(near, low), (far, low)], vec![(near, high), (far, high)]]
                .into_iter()
                .collect(),
            level: None,
            table: table(
                edition,
                "chart-ultraviolet-table",
                &["chart-distance", "chart-uvi"],
                rows.collect(),
            ),
        },
        unit,
    )
}

/// Every reading in the log, the latest first.
fn readings(animal: &Animal, as_of: Date, edition: &Edition<'_>) -> Chapter {
    let mut chapter = Chapter::new("readings", &edition.say("record-readings"));
    let rows = animal.log.iter().rev().filter(|entry| entry.date <= as_of).filter_map(|entry| {
        let Event::Reading { probe, temperature, humidity } = &entry.event else { return None };
        let percent = humidity.map(|humidity| {
            edition.shown(print_one::<Humidity>(humidity, edition.units(), Rounding::Nearest))
        });
        Some(vec![
            Shown::plain(edition.long_date(entry.date)),
            Shown::plain(probe.clone()),
            temperature.map_or_else(
                || Shown::plain("–"),
                |temperature| print::temperature(Some(temperature.celsius()), edition),
            ),
            percent.unwrap_or_else(|| Shown::plain("–")),
        ])
    });
    let rows: Vec<_> = rows.collect();
    if rows.is_empty() {
        chapter.facts.push(Fact::plain(edition.say("record-readings"), edition.missing()));
    } else {
        chapter.tables.push(table(
            edition,
            "record-readings-all",
            &["record-day", "record-probe", "record-temperature", "record-humidity"],
            rows,
        ));
    }
    chapter
}
