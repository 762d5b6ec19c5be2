//! The tables of a care sheet: enclosure by standard, humidity by zone, feeding by stage, the year of light, signs.

use std::collections::BTreeSet;

use crate::figures::SpeciesFigures;
use crate::figures::humidity::HumidityFigures;
use crate::figures::space::disagreement;
use crate::model::Species;
use crate::model::species::Stage;
use crate::quantity::{Humidity, Length, Mass, Rounding, Span, Temperature, print_one};

use super::blocks::{Shown, Table};
use super::edition::Edition;
use super::{phrases, print};

/// For whom, the lengths that they reach, and the standard, what it asks for and what to build.
type SharedRow = (Vec<String>, (f64, f64), [Shown; 3]);

/// What each standard in force asks for a grown animal.
pub fn enclosure(
    figures: &SpeciesFigures,
    titles: &dyn Fn(&str) -> String,
    edition: &Edition<'_>,
) -> Option<Table> {
    let kinds = figures.enclosure.iter().map(|need| &need.for_whom).collect::<BTreeSet<_>>().len();
    let mut rows: Vec<SharedRow> = Vec::new();
    for need in &figures.enclosure {
        let least = match &need.least {
            Ok(least) => print::least(least, edition),
            Err(_) => Shown::plain(phrases::unmet(edition, need)),
        };
        let build = need
            .build
            .as_ref()
            .map_or_else(|| Shown::plain("–"), |build| print::sides(build.inside_cm, edition));
        let asked = [Shown::plain(titles(&need.standard)), least, build];
        let length = need.reference_length_cm;
        // Forms and sexes that a rule does not tell apart share a row.
        match rows.iter_mut().find(|(_, _, other)| *other == asked) {
            Some((names, (low, high), _)) => {
                names.push(phrases::for_whom(edition, &need.for_whom));
                (*low, *high) = (low.min(length), high.max(length));
            }
            None => {
                let whom = phrases::for_whom(edition, &need.for_whom);
                rows.push((vec![whom], (length, length), asked));
            }
        }
    }
    let rows: Vec<Vec<Shown>> = rows
        .into_iter()
        .map(|(names, (low, high), [standard, least, build])| {
            let length =
                print::shown::<Length>(Some((Some(low), Some(high))), edition, Rounding::Nearest);
            let everyone = names.len() > 2 && names.len() == kinds;
            let names = if everyone { edition.say("whom-everyone") } else { names.join("; ") };
            vec![Shown::plain(names), length, standard, least, build]
        })
        .collect();
    let head = [
        "table-enclosure-for",
        "table-enclosure-length",
        "table-enclosure-by",
        "table-least",
        "table-build",
    ];
    let mut table = table(edition, "table-enclosure", &head, rows)?;
    let mut note = edition.say("table-enclosure-note");
    if let Some(times) = disagreement(&figures.enclosure).filter(|times| *times >= 2.0) {
        let times = edition.number(times, 1);
        note.push(' ');
        note.push_str(&edition.tell("table-enclosure-disagree", [("times", times.into())]));
    }
    table.note = Some(note);
    Some(table)
}

/// A table whose caption and headings are labels.
pub(super) fn table(
    edition: &Edition<'_>,
    caption: &str,
    head: &[&str],
    rows: Vec<Vec<Shown>>,
) -> Option<Table> {
    let head: Vec<String> = head.iter().map(|label| edition.say(label)).collect();
    let head: Vec<&str> = head.iter().map(String::as_str).collect();
    Table::of(edition.say(caption), &head, rows)
}

/// At this length, this enclosure: from birth to the top of the adult range.
pub fn ladder(figures: &SpeciesFigures, measure: &str, edition: &Edition<'_>) -> Option<Table> {
    let rows = figures.ladder.iter().map(|rung| {
        let build = rung.space.build.as_ref();
        vec![
            print::length(rung.length_cm, edition),
            print::least(&rung.space.all, edition),
            build.map_or_else(|| Shown::plain("–"), |build| print::sides(build.inside_cm, edition)),
        ]
    });
    let head = [measure, &edition.say("table-least"), &edition.say("table-build")];
    Table::of(edition.say("table-ladder"), &head, rows.collect())
}

/// What a hygrometer may read at each zone.
pub fn humidity(figures: &HumidityFigures, edition: &Edition<'_>) -> Option<Table> {
    let rows = figures.readings.iter().map(|reading| {
        let percent = edition.shown(print_one(
            Humidity::from_percent(reading.at_most_percent),
            edition.units(),
            Rounding::Down,
        ));
        vec![
            Shown::plain(edition.say(&format!("zone-{}", reading.zone))),
            print::temperature(Some(reading.temperature_c), edition),
            Shown::plain(edition.tell("figure-at-most", [("figure", percent.first.into())])),
        ]
    });
    let head = ["table-humidity-zone", "table-humidity-at", "table-humidity-reading"];
    let mut table = table(edition, "table-humidity", &head, rows.collect())?;
    if let Some(dew) = figures.dew_point_c {
        let dew: Shown =
            edition.shown(print_one(Temperature::from_celsius(dew), edition.units(), Rounding::Up));
        table.note = Some(edition.tell("table-humidity-note", [("dew", dew.to_string().into())]));
    }
    Some(table)
}

/// Feeding by stage of life.
pub fn feeding(
    species: &Species,
    figures: &SpeciesFigures,
    edition: &Edition<'_>,
) -> Option<Table> {
    let rows = species.feeding.iter().zip(&figures.feeding).map(|(stage, row)| {
        vec![
            Shown::plain(stage.name.clone()),
            until(stage, edition),
            Shown::plain(stage.meal.clone().unwrap_or_else(|| "–".to_owned())),
            amount(stage, row.mass_g, edition),
            row.interval_days.map_or_else(
                || Shown::plain("–"),
                |ends| print::shown::<Span>(Some(ends), edition, Rounding::Nearest),
            ),
            per_year(row.meals_per_year),
            energy(row.energy_ratio, edition),
        ]
    });
    let head = [
        "table-feeding-stage",
        "table-feeding-until",
        "table-feeding-meal",
        "table-feeding-amount",
        "table-feeding-every",
        "table-feeding-a-year",
        "table-feeding-energy",
    ];
    let mut table = table(edition, "table-feeding", &head, rows.collect())?;
    table.note = Some(edition.say("table-feeding-note"));
    Some(table)
}

fn until(stage: &Stage, edition: &Edition<'_>) -> Shown {
    let age = stage
        .until_age
        .map(|age| edition.shown(print_one(age, edition.units(), Rounding::Nearest)));
    let length = stage.until_length.map(|length| {
        edition.shown(print_one::<Length>(length, edition.units(), Rounding::Nearest))
    });
    let mass = stage
        .until_mass
        .map(|mass| edition.shown(print_one::<Mass>(mass, edition.units(), Rounding::Nearest)));
    let bounds: Vec<Shown> = [age, length, mass].into_iter().flatten().collect();
    if bounds.is_empty() {
        Shown::plain(edition.say("table-feeding-old-age"))
    } else {
        print::join(&bounds, &edition.say("join-or"))
    }
}

/// How much a meal is: the count of insects, the share of the animal's mass, the mass.
fn amount(stage: &Stage, mass_g: Option<crate::figures::Ends>, edition: &Edition<'_>) -> Shown {
    let mut parts = Vec::new();
    if let Some(count) = &stage.count {
        let (low, high) = count.value;
        parts.push(Shown::plain(if low == high {
            format!("{low}")
        } else {
            format!("{low}–{high}")
        }));
    }
    if let Some(share) = &stage.share {
        let share: Shown = edition.shown(share.value.print(edition.units(), Rounding::Nearest));
        let share = edition.tell("table-feeding-share", [("share", share.first.into())]);
        parts.push(Shown::plain(share));
    }
    if let Some(range) = mass_g.and_then(print::range::<Mass>) {
        parts.push(edition.shown(range.print(edition.units(), Rounding::Nearest)));
    }
    if parts.is_empty() { Shown::plain("–") } else { print::join(&parts, "; ") }
}

fn per_year(meals: Option<crate::figures::Ends>) -> Shown {
    let Some((Some(fewest), Some(most))) = meals else { return Shown::plain("–") };
    let (fewest, most) = (fewest.round(), most.round());
    Shown::plain(if fewest == most { format!("{fewest}") } else { format!("{fewest}–{most}") })
}

fn energy(ratio: Option<(f64, f64)>, edition: &Edition<'_>) -> Shown {
    Shown::plain(ratio.map_or("–".to_owned(), |(low, high)| {
        format!("{}–{}", edition.number(low, 1), edition.number(high, 1))
    }))
}

/// The length of the day through the year.
pub fn year_of_light(figures: &SpeciesFigures, edition: &Edition<'_>) -> Option<Table> {
    let hours = figures.light.day_hours?;
    // Every month to a tenth, a whole hour too: the columns are read against each other.
    let figure = |hours: &f64| Shown::plain(edition.catalogue().figure(format!("{hours:.1}")));
    let row = std::iter::once(Shown::plain(edition.say("table-light-hours")))
        .chain(hours.iter().map(figure));
    let months = (1..=12).map(|month| edition.catalogue().short_month(month));
    let head: Vec<String> =
        std::iter::once(edition.say("table-light-month")).chain(months).collect();
    let head: Vec<&str> = head.iter().map(String::as_str).collect();
    Table::of(edition.say("table-light"), &head, vec![row.collect()])
}

/// Signs of illness, the most urgent first.
pub fn signs(species: &Species, edition: &Edition<'_>) -> Option<Table> {
    let mut signs: Vec<_> = species.signs.iter().collect();
    signs.sort_by_key(|sign| sign.urgency);
    let rows = signs.into_iter().map(|sign| {
        vec![
            Shown::plain(sign.sign.clone()),
            Shown::plain(sign.means.clone().unwrap_or_else(|| "–".to_owned())),
            Shown::plain(edition.word("urgency", sign.urgency)),
        ]
    });
    let head = ["table-signs-sign", "table-signs-means", "table-signs-act"];
    table(edition, "table-signs", &head, rows.collect())
}
