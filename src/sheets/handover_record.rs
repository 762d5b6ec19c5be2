//! What is on record of an animal: who it is, where it came from, what it weighed, ate and shed, how it has been.

use jiff::civil::Date;

use crate::figures::AnimalFigures;
use crate::figures::owed::{Treatment, treatment};
use crate::model::log::{Event, MealOutcome};
use crate::model::{Animal, Species};

use super::animal::{age, sex};
use super::blocks::{Chapter, Fact, Shown};
use super::edition::Edition;
use super::{law, laws, print, tables, upkeep};

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

/// The caption of a table of so many lines: of every one there is, or of the last.
fn which<'l>(lines: usize, all: &'l str, last: &'l str) -> &'l str {
    if lines == ALL { all } else { last }
}

/// Who it is, and how each of these is known.
pub(super) fn identity(
    edition: &Edition<'_>,
    animal: &Animal,
    species: &Species,
    as_of: Date,
) -> Chapter {
    let form = animal.form.as_ref().and_then(|form| species.size.forms.get(&form.name));
    let sex = sex(edition, animal.sex);
    let sex = match &animal.sex_basis {
        Some(basis) => {
            edition.tell("record-sex-told", [("sex", sex.into()), ("basis", basis.as_str().into())])
        }
        None => edition.tell("record-sex-not-told", [("sex", sex.into())]),
    };
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("identity", &say("record-identity"));
    chapter.facts = vec![
        Fact::plain(say("record-name"), animal.name.clone()),
        Fact::plain(
            say("record-species"),
            format!("{}, {}", edition.name(species), species.scientific),
        ),
        Fact::plain(
            say("record-form"),
            form.map_or_else(|| edition.missing(), |form| Shown::plain(form.name.clone())),
        ),
        Fact::plain(say("record-sex"), sex),
        Fact::plain(
            say("record-age"),
            age(edition, animal.hatched.map(|(date, basis, _)| (date, basis)), as_of),
        ),
        Fact::plain(say("record-chip"), known(edition, &animal.chip)),
        Fact::plain(say("record-temperament"), known(edition, &animal.temperament)),
    ];
    chapter
}

/// Where it came from.
pub(super) fn origin(edition: &Edition<'_>, animal: &Animal) -> Chapter {
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("origin", &say("record-origin"));
    let arrived = animal
        .arrived
        .map_or_else(|| edition.missing(), |(date, _)| Shown::plain(edition.long_date(date)));
    chapter.facts = vec![
        Fact::plain(say("record-came-from"), known(edition, &animal.origin)),
        Fact::plain(say("record-arrived"), arrived),
        Fact::plain(say("record-status"), edition.word("status", animal.status)),
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
    let mut chapter = Chapter::new("measurements", &edition.say("record-measurements"));
    let rows = animal.log.iter().rev().filter(|entry| entry.date <= as_of).filter_map(|entry| {
        let (what, value) = match entry.event {
            Event::Weight(mass) => {
                (edition.say("record-weight"), print::mass(mass.grams(), edition))
            }
            Event::Length(length) => (
                edition.word("measure-title", species.size.measure),
                print::length(length.cm(), edition),
            ),
            _ => return None,
        };
        Some(vec![Shown::plain(edition.long_date(entry.date)), Shown::plain(what), value])
    });
    chapter.tables.extend(tables::table(
        edition,
        which(lines, "record-measurements-all", "record-measurements-last"),
        &["record-day", "record-what", "record-measured"],
        rows.take(lines).collect(),
    ));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain(edition.say("record-lengths-weights"), edition.missing()));
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
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("feeding-record", &say("record-feeding"));
    let offered: Vec<_> =
        animal.meals().rev().filter(|(date, ..)| *date <= as_of).take(lines).collect();
    let count = |wanted| offered.iter().filter(|(.., outcome)| *outcome == wanted).count();
    if offered.is_empty() {
        chapter.facts.push(Fact::plain(say("record-meals"), edition.missing()));
        return chapter;
    }
    let last = animal.last_eaten().filter(|date| *date <= as_of);
    chapter.facts = vec![
        Fact::plain(
            say("record-last-meal"),
            last.map_or_else(|| edition.missing(), |date| Shown::plain(edition.long_date(date))),
        ),
        Fact::plain(
            edition.tell("record-of-last", [("count", offered.len().into())]),
            edition.tell(
                "record-outcomes",
                [
                    ("taken", count(MealOutcome::Taken).into()),
                    ("part", count(MealOutcome::Part).into()),
                    ("refused", count(MealOutcome::Refused).into()),
                ],
            ),
        ),
    ];
    let rows = offered.iter().map(|(date, food, mass, outcome)| {
        let outcome = match outcome {
            MealOutcome::Taken => "record-taken",
            MealOutcome::Part => "record-part",
            MealOutcome::Refused => "record-refused",
        };
        let mass = mass.map_or_else(
            || Shown::plain(say("record-not-weighed")),
            |mass| print::mass(mass.grams(), edition),
        );
        vec![
            Shown::plain(edition.long_date(*date)),
            Shown::plain((*food).to_owned()),
            mass,
            Shown::plain(say(outcome)),
        ]
    });
    chapter.tables.extend(tables::table(
        edition,
        which(lines, "record-meals-all", "record-meals-last"),
        &["record-day", "record-food", "record-mass", "record-outcome"],
        rows.collect(),
    ));
    chapter
}

/// Its last sheds.
pub(super) fn sheds(edition: &Edition<'_>, animal: &Animal, as_of: Date, lines: usize) -> Chapter {
    let mut chapter = Chapter::new("sheds", &edition.say("record-sheds"));
    let rows = animal.log.iter().rev().filter(|entry| entry.date <= as_of).filter_map(|entry| {
        let Event::Shed { complete } = entry.event else { return None };
        let how = match complete {
            Some(true) => "record-shed-complete",
            Some(false) => "record-shed-pieces",
            None => "record-shed-not-noted",
        };
        let note = entry.note.clone().unwrap_or_else(|| "–".to_owned());
        Some(vec![
            Shown::plain(edition.long_date(entry.date)),
            Shown::plain(edition.say(how)),
            Shown::plain(note),
        ])
    });
    chapter.tables.extend(tables::table(
        edition,
        which(lines, "record-sheds-all", "record-sheds-last"),
        &["record-day", "record-shed-how", "record-shed-remark"],
        rows.take(lines).collect(),
    ));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain(edition.say("record-last-shed"), edition.missing()));
    }
    chapter
}

/// Illness and treatment, without doses.
pub(super) fn health(edition: &Edition<'_>, animal: &Animal, as_of: Date) -> Chapter {
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("health", &say("record-health"));
    let mut lines: Vec<(Option<Date>, String, String)> = animal
        .history
        .iter()
        .map(|entry| {
            (entry.date, entry.what.clone(), entry.by.clone().unwrap_or_else(|| "–".to_owned()))
        })
        .collect();
    for entry in animal.log.iter().filter(|entry| entry.date <= as_of) {
        let (label, what) = match &entry.event {
            Event::Illness(what) => ("record-illness", what),
            Event::Treatment(what) => ("record-treatment", what),
            _ => continue,
        };
        let what = edition.tell(label, [("what", what.as_str().into())]);
        lines.push((Some(entry.date), what, "–".to_owned()));
    }
    lines.sort_by_key(|(date, ..)| std::cmp::Reverse(*date));
    let rows = lines.into_iter().map(|(date, what, by)| {
        vec![
            date.map_or_else(|| edition.missing(), |date| Shown::plain(edition.long_date(date))),
            Shown::plain(what),
            Shown::plain(by),
        ]
    });
    chapter.tables.extend(tables::table(
        edition,
        "record-health-table",
        &["record-day", "record-what", "record-by"],
        rows.collect(),
    ));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain(say("record-illness-treatment"), say("record-none")));
    }
    let now = match treatment(animal, as_of) {
        Treatment::Stated => say("record-treated-yes"),
        Treatment::Logged(date) => {
            edition.tell("record-treated-logged", [("date", edition.long_date(date).into())])
        }
        Treatment::None if animal.under_treatment.is_some() => say("record-treated-no"),
        Treatment::None => say("record-treated-nothing"),
    };
    chapter.facts.push(Fact::plain(say("record-treated-now"), now));
    chapter.facts.push(Fact::plain(say("record-for-vet"), known(edition, &animal.notes.vet)));
    chapter
}

/// The papers that go with it.
pub(super) fn papers(animal: &Animal, species: &Species, edition: &Edition<'_>) -> Chapter {
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("papers", &say("record-papers"));
    chapter.facts.push(Fact::plain(say("record-chip"), known(edition, &animal.chip)));
    chapter.facts.push(Fact::plain(
        say("record-proof"),
        animal
            .origin
            .as_ref()
            .map_or_else(|| edition.missing(), |_| Shown::plain(say("record-proof-paper"))),
    ));
    for paper in &animal.papers {
        chapter.facts.push(Fact::plain(say("record-handed-over"), paper.clone()));
    }
    if animal.papers.is_empty() {
        chapter.facts.push(Fact::plain(say("record-handed-over"), say("record-none")));
    }
    chapter.facts.extend(law::rules(edition, species));
    chapter.facts.push(Fact::plain(say("record-law"), say("record-law-decides")));
    chapter.facts.extend(laws::release(edition));
    chapter.facts.extend(laws::written_for(edition));
    chapter
}
