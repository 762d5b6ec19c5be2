//! The tables of a care sheet: enclosure by standard, humidity by zone, feeding by stage, the year of light, signs.

use std::collections::BTreeSet;

use crate::figures::SpeciesFigures;
use crate::figures::humidity::HumidityFigures;
use crate::figures::space::disagreement;
use crate::figures::working::number;
use crate::model::Species;
use crate::model::species::Stage;
use crate::model::word::Urgency;
use crate::quantity::{Humidity, Length, Mass, Rounding, Span, Temperature, print_one};

use super::blocks::{Shown, Table};
use super::edition::Edition;
use super::print;

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
            Err(reason) => Shown::plain(format!("not worked out: {reason}")),
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
                names.push(need.for_whom.clone());
                (*low, *high) = (low.min(length), high.max(length));
            }
            None => rows.push((vec![need.for_whom.clone()], (length, length), asked)),
        }
    }
    let rows: Vec<Vec<Shown>> = rows
        .into_iter()
        .map(|(names, (low, high), [standard, least, build])| {
            let length =
                print::shown::<Length>(Some((Some(low), Some(high))), edition, Rounding::Nearest);
            let everyone = names.len() > 2 && names.len() == kinds;
            let names = if everyone { "every form and sex".to_owned() } else { names.join("; ") };
            vec![Shown::plain(names), length, standard, least, build]
        })
        .collect();
    let mut table = Table::of(
        "Least enclosure for one grown animal, inside: length × width × height",
        &["For", "At a length of", "By", "At least", "Sizes to buy or build"],
        rows,
    )?;
    let mut note = "Worked out at the top of the adult range. More room is better; a standard is a floor, not a goal.".to_owned();
    if let Some(times) = disagreement(&figures.enclosure).filter(|times| *times >= 2.0) {
        note.push_str(&format!(" The standards disagree: the largest floor is {} times the smallest. Build by the larger.", number(times, 1)));
    }
    table.note = Some(note);
    Some(table)
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
    let head = [measure, "At least", "Sizes to buy or build"];
    Table::of(
        "At this length, this enclosure: what satisfies every standard in force",
        &head,
        rows.collect(),
    )
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
            Shown::plain(reading.zone.clone()),
            print::temperature(Some(reading.temperature_c), edition),
            Shown::plain(format!("at most {}", percent.first)),
        ]
    });
    let mut table =
        Table::of("What the hygrometer may read", &["Zone", "At", "Reading"], rows.collect())?;
    if let Some(dew) = figures.dew_point_c {
        let dew: Shown =
            edition.shown(print_one(Temperature::from_celsius(dew), edition.units(), Rounding::Up));
        table.note = Some(format!(
            "The same air reads drier where it is warmer. At the ceiling, water condenses on anything colder than {dew}."
        ));
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
            energy(row.energy_ratio),
        ]
    });
    let mut table = Table::of(
        "Feeding by stage of life",
        &["Stage", "Until", "Meal", "How much", "Every", "Meals a year", "Energy over rest"],
        rows.collect(),
    )?;
    table.note = Some(
        "A figure of this table that is not listed here with its source is common practice."
            .to_owned(),
    );
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
    if bounds.is_empty() { Shown::plain("old age") } else { print::join(&bounds, " or ") }
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
        parts.push(Shown::plain(format!("{} of its mass", share.first)));
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

fn energy(ratio: Option<(f64, f64)>) -> Shown {
    Shown::plain(
        ratio.map_or("–".to_owned(), |(low, high)| {
            format!("{}–{}", number(low, 1), number(high, 1))
        }),
    )
}

/// The length of the day through the year.
pub fn year_of_light(figures: &SpeciesFigures) -> Option<Table> {
    const MONTHS: [&str; 12] =
        ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
    let hours = figures.light.day_hours?;
    let row = std::iter::once(Shown::plain("hours"))
        .chain(hours.iter().map(|hours| Shown::plain(format!("{hours:.1}"))))
        .collect();
    let head: Vec<&str> = std::iter::once("Month").chain(MONTHS).collect();
    Table::of("Length of the day where it comes from", &head, vec![row])
}

/// Signs of illness, the most urgent first.
pub fn signs(species: &Species) -> Option<Table> {
    let mut signs: Vec<_> = species.signs.iter().collect();
    signs.sort_by_key(|sign| sign.urgency);
    let rows = signs.into_iter().map(|sign| {
        vec![
            Shown::plain(sign.sign.clone()),
            Shown::plain(sign.means.clone().unwrap_or_else(|| "–".to_owned())),
            Shown::plain(urgency(sign.urgency)),
        ]
    });
    Table::of(
        "Signs, and how soon a vet should see them",
        &["Sign", "May mean", "What to do"],
        rows.collect(),
    )
}

/// What an urgency asks for.
pub fn urgency(urgency: Urgency) -> &'static str {
    match urgency {
        Urgency::Now => "ring a vet and travel now",
        Urgency::Day => "a vet within 24 hours",
        Urgency::Days => "a vet within days",
        Urgency::Watch => "write it down and check the set-up",
    }
}
