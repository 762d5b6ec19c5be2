//! What is on record of an animal: who it is, where it came from, what it weighed, ate and shed, how it has been.

use jiff::civil::Date;

use crate::figures::AnimalFigures;
use crate::figures::owed::{Treatment, treatment};
use crate::model::log::{Event, MealOutcome};
use crate::model::word::Word;
use crate::model::{Animal, Species};

use super::animal::{age, capital, sex};
use super::blocks::{Chapter, Fact, Shown, Table};
use super::edition::Edition;
use super::{law, laws, print, upkeep};

/// How many meals a handover tells of.
pub(super) const MEALS: usize = 10;
/// How many lengths and weights it has room for; the drawing beside them holds all.
pub(super) const MEASUREMENTS: usize = 6;
/// How many sheds.
pub(super) const SHEDS: usize = 3;
/// Every line there is.
pub(super) const ALL: usize = usize::MAX;

fn known(edition: &Edition<'_>, text: &Option<String>) -> Shown {
    text.clone().map_or_else(|| edition.missing(), Shown::plain)
}

/// What a table of so many lines holds.
fn which(lines: usize, what: &str) -> String {
    if lines == ALL { format!("All {what}, the latest first") } else { format!("The last {what}") }
}

/// Who it is, and how each of these is known.
pub(super) fn identity(
    edition: &Edition<'_>,
    animal: &Animal,
    species: &Species,
    as_of: Date,
) -> Chapter {
    let form = animal.form.as_ref().and_then(|form| species.size.forms.get(&form.name));
    let sex = match &animal.sex_basis {
        Some(basis) => format!("{} ({basis})", sex(edition, animal.sex)),
        None => format!("{} (how it was told is not known)", sex(edition, animal.sex)),
    };
    let mut chapter = Chapter::new("identity", "Identity");
    chapter.facts = vec![
        Fact::plain("Name", animal.name.clone()),
        Fact::plain("Species", format!("{}, {}", species.name, species.scientific)),
        Fact::plain(
            "Form or locality",
            form.map_or_else(|| edition.missing(), |form| Shown::plain(form.name.clone())),
        ),
        Fact::plain("Sex", sex),
        Fact::plain(
            "Age",
            age(edition, animal.hatched.map(|(date, basis, _)| (date, basis)), as_of),
        ),
        Fact::plain("Chip or marks", known(edition, &animal.chip)),
        Fact::plain("Temperament", known(edition, &animal.temperament)),
    ];
    chapter
}

/// Where it came from.
pub(super) fn origin(edition: &Edition<'_>, animal: &Animal) -> Chapter {
    let mut chapter = Chapter::new("origin", "Origin");
    let arrived = animal
        .arrived
        .map_or_else(|| edition.missing(), |(date, _)| Shown::plain(edition.long_date(date)));
    chapter.facts = vec![
        Fact::plain("Came from", known(edition, &animal.origin)),
        Fact::plain("Arrived", arrived),
        Fact::plain("Status", animal.status.spelling().to_owned()),
    ];
    chapter
}

/// Its lengths and weights, the latest first.
pub(super) fn measurements(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    edition: &Edition<'_>,
    as_of: Date,
    lines: usize,
) -> Chapter {
    let mut chapter = Chapter::new("measurements", "Measurements");
    let rows = animal.log.iter().rev().filter(|entry| entry.date <= as_of).filter_map(|entry| {
        let (what, value) = match entry.event {
            Event::Weight(mass) => ("Weight".to_owned(), print::mass(mass.grams(), edition)),
            Event::Length(length) => {
                (capital(species.size.measure.spelling()), print::length(length.cm(), edition))
            }
            _ => return None,
        };
        Some(vec![Shown::plain(edition.long_date(entry.date)), Shown::plain(what), value])
    });
    chapter.tables.extend(Table::of(
        which(lines, "measurements"),
        &["Day", "What", "Measured"],
        rows.take(lines).collect(),
    ));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain("Lengths and weights", edition.missing()));
    }
    chapter.facts.extend(upkeep::condition(edition, own));
    chapter
}

/// What it was last offered, and whether it ate.
pub(super) fn feeding_record(
    animal: &Animal,
    edition: &Edition<'_>,
    as_of: Date,
    lines: usize,
) -> Chapter {
    let mut chapter = Chapter::new("feeding-record", "Feeding record");
    let offered: Vec<_> =
        animal.meals().rev().filter(|(date, ..)| *date <= as_of).take(lines).collect();
    let count = |wanted| offered.iter().filter(|(.., outcome)| *outcome == wanted).count();
    if offered.is_empty() {
        chapter.facts.push(Fact::plain("Meals", edition.missing()));
        return chapter;
    }
    let last = animal.last_eaten().filter(|date| *date <= as_of);
    chapter.facts = vec![
        Fact::plain(
            "Last meal eaten",
            last.map_or_else(|| edition.missing(), |date| Shown::plain(edition.long_date(date))),
        ),
        Fact::plain(
            format!("Of the last {}", offered.len()),
            format!(
                "{} taken, {} in part, {} refused",
                count(MealOutcome::Taken),
                count(MealOutcome::Part),
                count(MealOutcome::Refused)
            ),
        ),
    ];
    let rows = offered.iter().map(|(date, food, mass, outcome)| {
        let outcome = match outcome {
            MealOutcome::Taken => "taken",
            MealOutcome::Part => "in part",
            MealOutcome::Refused => "refused",
        };
        let mass = mass
            .map_or_else(|| Shown::plain("not weighed"), |mass| print::mass(mass.grams(), edition));
        vec![
            Shown::plain(edition.long_date(*date)),
            Shown::plain((*food).to_owned()),
            mass,
            Shown::plain(outcome),
        ]
    });
    chapter.tables.extend(Table::of(
        which(lines, "meals offered"),
        &["Day", "Food", "Mass", "Outcome"],
        rows.collect(),
    ));
    chapter
}

/// Its last sheds.
pub(super) fn sheds(edition: &Edition<'_>, animal: &Animal, as_of: Date, lines: usize) -> Chapter {
    let mut chapter = Chapter::new("sheds", "Sheds");
    let rows = animal.log.iter().rev().filter(|entry| entry.date <= as_of).filter_map(|entry| {
        let Event::Shed { complete } = entry.event else { return None };
        let how = match complete {
            Some(true) => "complete",
            Some(false) => "in pieces",
            None => "not noted",
        };
        let note = entry.note.clone().unwrap_or_else(|| "–".to_owned());
        Some(vec![
            Shown::plain(edition.long_date(entry.date)),
            Shown::plain(how),
            Shown::plain(note),
        ])
    });
    chapter.tables.extend(Table::of(
        which(lines, "sheds"),
        &["Day", "How", "Remark"],
        rows.take(lines).collect(),
    ));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain("Last shed", edition.missing()));
    }
    chapter
}

/// Illness and treatment, without doses.
pub(super) fn health(edition: &Edition<'_>, animal: &Animal, as_of: Date) -> Chapter {
    let mut chapter = Chapter::new("health", "Health and treatment");
    let mut lines: Vec<(Option<Date>, String, String)> = animal
        .history
        .iter()
        .map(|entry| {
            (entry.date, entry.what.clone(), entry.by.clone().unwrap_or_else(|| "–".to_owned()))
        })
        .collect();
    for entry in animal.log.iter().filter(|entry| entry.date <= as_of) {
        match &entry.event {
            Event::Illness(what) => {
                lines.push((Some(entry.date), format!("Illness: {what}"), "–".to_owned()))
            }
            Event::Treatment(what) => {
                lines.push((Some(entry.date), format!("Treatment: {what}"), "–".to_owned()))
            }
            _ => {}
        }
    }
    lines.sort_by_key(|(date, ..)| std::cmp::Reverse(*date));
    let rows = lines.into_iter().map(|(date, what, by)| {
        vec![
            date.map_or_else(|| edition.missing(), |date| Shown::plain(edition.long_date(date))),
            Shown::plain(what),
            Shown::plain(by),
        ]
    });
    chapter.tables.extend(Table::of(
        "Illness, tests and treatment",
        &["Day", "What", "By"],
        rows.collect(),
    ));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain("Illness and treatment", "none on record"));
    }
    let now = match treatment(animal, as_of) {
        Treatment::Stated => "yes".to_owned(),
        Treatment::Logged(date) => {
            format!("not known: the log has illness or treatment on {}", edition.long_date(date))
        }
        Treatment::None if animal.under_treatment.is_some() => "no".to_owned(),
        Treatment::None => "nothing on record".to_owned(),
    };
    chapter.facts.push(Fact::plain("Under treatment now", now));
    chapter.facts.push(Fact::plain("For a vet", known(edition, &animal.notes.vet)));
    chapter
}

/// The papers that go with it.
pub(super) fn papers(animal: &Animal, species: &Species, edition: &Edition<'_>) -> Chapter {
    let mut chapter = Chapter::new("papers", "Papers");
    chapter.facts.push(Fact::plain("Chip or marks", known(edition, &animal.chip)));
    chapter.facts.push(Fact::plain(
        "Proof of origin",
        animal.origin.as_ref().map_or_else(
            || edition.missing(),
            |_| Shown::plain("the paper that shows where it came from goes with it"),
        ),
    ));
    for paper in &animal.papers {
        chapter.facts.push(Fact::plain("Handed over", paper.clone()));
    }
    if animal.papers.is_empty() {
        chapter.facts.push(Fact::plain("Handed over", "none on record"));
    }
    chapter.facts.extend(law::rules(edition, species));
    chapter.facts.push(Fact::plain("Law", "check locally before it moves; local law decides"));
    chapter.facts.extend(laws::release(edition));
    chapter.facts.extend(laws::written_for(edition));
    chapter
}
