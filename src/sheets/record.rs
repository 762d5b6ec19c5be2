//! The record of an animal: everything known of it on paper, for a vet or a file. It is private.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::working::number;
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::log::Event;
use crate::model::word::Word;
use crate::model::{Animal, Species};
use crate::quantity::{Humidity, Rounding, System, print_one};

use super::blocks::{Chapter, Fact, Shown, Table};
use super::chart::{Chart, Plot, Series, chart, chart_over_distance, days_through};
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
    let title = format!("Record of {}", animal.name);
    RecordSheet {
        frame: Frame::new(edition, &super::record_path(key), true, &title, &title, as_of),
        name: animal.name.clone(),
        species: species.name.clone(),
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

/// How many of something, in words that fit one and many.
pub(super) fn counted(many: usize, what: &str) -> String {
    if many == 1 { format!("1 {what}") } else { format!("{many} {what}s") }
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
    let mut chapter = Chapter::new("condition", "Condition");
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

fn table(caption: String, head: &[&str], rows: Vec<Vec<Shown>>) -> Table {
    let head = head.iter().map(|heading| (*heading).to_owned()).collect();
    Table { caption, head, rows, note: None }
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
    let measure = species.size.measure.spelling();
    let expected = adult.map(|adult| {
        format!(
            " Grown, {} to {} {unit} is expected, {} {unit} at the middle.",
            number(adult.low_cm * factor, 0),
            number(adult.high_cm * factor, 0),
            number(adult.estimate_cm * factor, 0)
        )
    });
    let level = outgrown.map(|outgrown| {
        let dates = &outgrown.dates;
        let all = [dates.earliest, dates.expected, dates.latest].into_iter().flatten();
        let at: Vec<Date> = all.filter(|date| *date <= until).collect();
        (outgrown.at_cm * factor, "its enclosure is outgrown".to_owned(), at)
    });
    let runs_out = outgrown.map_or(String::new(), |outgrown| {
        let date = |date: Option<Date>| {
            date.map_or("not expected".to_owned(), |date| edition.long_date(date))
        };
        format!(
            " Its enclosure is outgrown at {} {unit}: earliest {}, expected {}, latest {}.",
            number(outgrown.at_cm * factor, 0),
            date(outgrown.dates.earliest),
            date(outgrown.dates.expected),
            date(outgrown.dates.latest)
        )
    });
    let rows = measured.iter().map(|(date, length)| {
        vec![Shown::plain(edition.long_date(*date)), print::length(length.cm(), edition)]
    });
    let key = adult.map_or_else(
        || "dots: measured".to_owned(),
        |adult| {
            let level = number(adult.level * 100.0, 0);
            format!("dots: measured; whole line: expected; broken lines: the ends that hold {level} of 100 such animals")
        },
    );
    chart(
        edition,
        Plot {
            id: "growth".to_owned(),
            title: format!("Growth: {measure}"),
            says: format!(
                "{measured}, from {from} {unit} on {first} to {to} {unit} on {last}.{expected}{runs_out}",
                measured = counted(measured.len(), "length"),
                from = number(measured.first()?.1.cm() * factor, 1),
                to = number(latest.cm() * factor, 1),
                first = edition.long_date(first),
                last = edition.long_date(last),
                expected = expected.unwrap_or_default(),
            ),
            key,
            unit,
            points: measured.iter().map(|(date, length)| (*date, length.cm() * factor)).collect(),
            lines,
            level,
            table: table("Every length".to_owned(), &["Day", "Measured"], rows.collect()),
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
            title: "Weight".to_owned(),
            says: format!(
                "{}, from {} {unit} on {} to {} {unit} on {}.",
                counted(measured.len(), "weight"),
                number(from.grams() * factor, 1),
                edition.long_date(first),
                number(to.grams() * factor, 1),
                edition.long_date(last)
            ),
            key: "dots: weighed".to_owned(),
            unit,
            lines: vec![points.clone()],
            points,
            level: None,
            table: table("Every weight".to_owned(), &["Day", "Weighed"], rows.collect()),
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
        .map(|(cm, uvi)| vec![print::length(*cm, edition), Shown::plain(number(*uvi, 2))]);
    chart_over_distance(
        Plot {
            id: "ultraviolet".to_owned(),
            title: format!("Ultraviolet of the {}", lamp.lamp),
            says: format!(
                "Ultraviolet index against the distance from the lamp, through what stays in place. The species' band, {} to {} UVI, lies between {} and {} {unit}.",
                number(low, 1),
                number(high, 1),
                number(lamp.nearest_cm * factor, 0),
                number(lamp.farthest_cm * factor, 0)
            ),
            key: "dots: read; whole line: fitted to them; broken lines: the ends of the band"
                .to_owned(),
            unit: "UVI",
            points: lamp.readings.iter().map(place).collect(),
            lines: [curve, vec![(near, low), (far, low)], vec![(near, high), (far, high)]]
                .into_iter()
                .collect(),
            level: None,
            table: table(
                "Every reading of the lamp".to_owned(),
                &["Distance", "UVI"],
                rows.collect(),
            ),
        },
        unit,
    )
}

/// Every reading in the log, the latest first.
fn readings(animal: &Animal, as_of: Date, edition: &Edition<'_>) -> Chapter {
    let mut chapter = Chapter::new("readings", "Readings");
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
        chapter.facts.push(Fact::plain("Readings", edition.missing()));
    } else {
        chapter.tables.push(table(
            "All readings, the latest first".to_owned(),
            &["Day", "Probe", "Temperature", "Humidity"],
            rows,
        ));
    }
    chapter
}
