//! The record of an animal: everything known of it on paper, for a vet or a file. It is private.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::{days_after, days_between};
use crate::figures::working::number;
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::log::Event;
use crate::model::word::Word;
use crate::model::{Animal, Model, Species};
use crate::quantity::{Humidity, Rounding, System, print_one};

use super::blocks::{Chapter, Fact, Shown, Table};
use super::chart::{Chart, Plot, Series, chart, days_through};
use super::frame::{Frame, long_date};
use super::handover_record::{self as known, ALL};
use super::meal_strip::{MealStrip, meal_strip};
use super::picture::{self, Picture};
use super::{handover_needs as needs, print, upkeep};

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
    model: &Model,
    figures: &Figures,
    key: &str,
    animal: &Animal,
    species: &Species,
    of: (&AnimalFigures, &SpeciesFigures),
) -> RecordSheet {
    let (own, general) = of;
    let (as_of, units) = (figures.as_of, model.site.units);
    let title = format!("Record of {}", animal.name);
    RecordSheet {
        frame: Frame::new(model, &super::record_path(key), true, &title, &title, as_of),
        name: animal.name.clone(),
        species: species.name.clone(),
        scientific: species.scientific.clone(),
        kind: species.kind.spelling().to_owned(),
        picture: picture::of_animal(model, key, animal, species),
        contacts: super::door::emergency(model),
        first: vec![known::identity(animal, species, as_of), known::origin(animal)],
        charts: charts(animal, species, own, as_of, units),
        meal_strip: meal_strip(animal, as_of),
        rest: vec![
            condition(own),
            known::feeding_record(animal, model, as_of, ALL),
            known::sheds(animal, as_of, ALL),
            readings(animal, as_of, units),
            known::health(animal, as_of),
            needs::set_up(animal, own, model),
            upkeep::upkeep(animal, own, general, model),
            known::papers(animal, species),
        ],
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
    units: System,
) -> Vec<Chart> {
    let growth = growth(animal, species, own, as_of, units);
    growth.into_iter().chain(weight(animal, as_of, units)).collect()
}

fn condition(own: &AnimalFigures) -> Chapter {
    let mut chapter = Chapter::new("condition", "Condition");
    chapter.facts = upkeep::condition(own);
    chapter
}

/// The figure in the site's first system and that system's unit, for a scale.
fn scaled(
    units: System,
    metric: (f64, &'static str),
    imperial: (f64, &'static str),
) -> (f64, &'static str) {
    if units == System::Metric { metric } else { imperial }
}

fn table(caption: String, head: &[&str], rows: Vec<Vec<Shown>>) -> Table {
    let head = head.iter().map(|heading| (*heading).to_owned()).collect();
    Table { caption, head, rows, note: None }
}

/// How many steps a curve is drawn in.
const STEPS: u32 = 48;
/// How far ahead growth is drawn, days.
const AHEAD_DAYS: f64 = 730.0;

/// The lengths in the log, and the curves to the ends and the middle of its projected adult length.
fn growth(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    as_of: Date,
    units: System,
) -> Option<Chart> {
    let (factor, unit) = scaled(units, (1.0, "cm"), (1.0 / 2.54, "in"));
    let measured: Vec<_> = animal.lengths().filter(|(date, _)| *date <= as_of).collect();
    let (first, _) = *measured.first()?;
    let (last, latest) = *measured.last()?;
    let until = days_after(as_of, AHEAD_DAYS)?;
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
    let rows = measured.iter().map(|(date, length)| {
        vec![Shown::plain(long_date(*date)), print::length(length.cm(), units)]
    });
    let key = adult.map_or_else(
        || "dots: measured".to_owned(),
        |adult| {
            let level = number(adult.level * 100.0, 0);
            format!("dots: measured; whole line: expected; broken lines: the ends that hold {level} of 100 such animals")
        },
    );
    chart(Plot {
        id: "growth",
        title: format!("Growth: {measure}"),
        says: format!(
            "{measured}, from {from} {unit} on {first} to {to} {unit} on {last}.{expected}",
            measured = counted(measured.len(), "length"),
            from = number(measured.first()?.1.cm() * factor, 1),
            to = number(latest.cm() * factor, 1),
            first = long_date(first),
            last = long_date(last),
            expected = expected.unwrap_or_default(),
        ),
        key,
        unit,
        points: measured.iter().map(|(date, length)| (*date, length.cm() * factor)).collect(),
        lines,
        table: table("Every length".to_owned(), &["Day", "Measured"], rows.collect()),
    })
}

/// The weights in the log.
fn weight(animal: &Animal, as_of: Date, units: System) -> Option<Chart> {
    let (factor, unit) = scaled(units, (1.0, "g"), (1.0 / 28.349_523_125, "oz"));
    let measured: Vec<_> = animal.weights().filter(|(date, _)| *date <= as_of).collect();
    let (first, from) = *measured.first()?;
    let (last, to) = *measured.last()?;
    let points: Series =
        measured.iter().map(|(date, mass)| (*date, mass.grams() * factor)).collect();
    let rows = measured
        .iter()
        .map(|(date, mass)| vec![Shown::plain(long_date(*date)), print::mass(mass.grams(), units)]);
    chart(Plot {
        id: "weight",
        title: "Weight".to_owned(),
        says: format!(
            "{}, from {} {unit} on {} to {} {unit} on {}.",
            counted(measured.len(), "weight"),
            number(from.grams() * factor, 1),
            long_date(first),
            number(to.grams() * factor, 1),
            long_date(last)
        ),
        key: "dots: weighed".to_owned(),
        unit,
        lines: vec![points.clone()],
        points,
        table: table("Every weight".to_owned(), &["Day", "Weighed"], rows.collect()),
    })
}

/// Every reading in the log, the latest first.
fn readings(animal: &Animal, as_of: Date, units: System) -> Chapter {
    let mut chapter = Chapter::new("readings", "Readings");
    let rows = animal.log.iter().rev().filter(|entry| entry.date <= as_of).filter_map(|entry| {
        let Event::Reading { probe, temperature, humidity } = &entry.event else { return None };
        let percent = humidity
            .map(|humidity| Shown::from(print_one::<Humidity>(humidity, units, Rounding::Nearest)));
        Some(vec![
            Shown::plain(long_date(entry.date)),
            Shown::plain(probe.clone()),
            temperature.map_or_else(
                || Shown::plain("–"),
                |temperature| print::temperature(Some(temperature.celsius()), units),
            ),
            percent.unwrap_or_else(|| Shown::plain("–")),
        ])
    });
    let rows: Vec<_> = rows.collect();
    if rows.is_empty() {
        chapter.facts.push(Fact::plain("Readings", Shown::missing()));
    } else {
        chapter.tables.push(table(
            "All readings, the latest first".to_owned(),
            &["Day", "Probe", "Temperature", "Humidity"],
            rows,
        ));
    }
    chapter
}
