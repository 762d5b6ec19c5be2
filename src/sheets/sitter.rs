//! The sheet for somebody who looks after the animals for a while: the house, a page for each animal, and every day with boxes
//! to tick. It is private.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::days_between;
use crate::figures::plan;
use crate::figures::{AnimalFigures, Figures};
use crate::model::word::Status;
use crate::model::{Animal, Species};

use super::animal::capital;
use super::blocks::{Fact, Shown, Table};
use super::door::{self, Whom};
use super::due::{self, What};
use super::edition::Edition;
use super::frame::Frame;
use super::picture::{self, Picture};
use super::sitter_cards::{self as cards, Card};
use super::sitter_days::{self as days, Event, Guesting};
use super::{Known, upkeep};

/// A sitter's sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct SitterSheet {
    /// The frame.
    pub frame: Frame,
    /// From when to when.
    pub span: String,
    /// Whom to ring, in order.
    pub contacts: Vec<Fact>,
    /// Where things are.
    pub house: Vec<Fact>,
    /// What is never done.
    pub never: Vec<String>,
    /// What to do when something happens.
    pub events: Vec<Fact>,
    /// What the keeper sees to before leaving, so that it does not fall into the stay.
    pub before: Vec<String>,
    /// The animals, those in quarantine last.
    pub animals: Vec<Guest>,
    /// Every day, with the animals in the order in which they are seen to.
    pub days: Vec<days::SitterDay>,
    /// What is done step by step when something goes wrong.
    pub cards: Vec<Card>,
    /// What goes into a calendar.
    #[serde(skip)]
    pub calendar: Vec<Event>,
}

/// The page of one animal.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Guest {
    /// Its name in files: its anchor.
    pub key: String,
    /// Its name.
    pub name: String,
    /// Its species.
    pub species: String,
    /// Its picture.
    pub picture: Picture,
    /// What must be known before the door is opened.
    pub warnings: Vec<String>,
    /// What normal looks like, in words of the keeper's own.
    pub note: Option<String>,
    /// Lights, power, food.
    pub facts: Vec<Fact>,
    /// What the instruments should show.
    pub instruments: Option<Table>,
    /// Signs: carry on, ring the keeper, ring the vet.
    pub signs: Option<Table>,
}

/// Whom the sheet is about and for which days.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Stay {
    /// The first day.
    pub from: Date,
    /// The last day.
    pub until: Date,
    /// The animals by the names of their files; none means every animal that is kept.
    pub animals: Vec<String>,
}

/// Builds a sitter's sheet.
pub fn sitter(edition: &Edition<'_>, figures: &Figures, stay: &Stay) -> SitterSheet {
    let mut known: Vec<(&str, Known<'_>, Guesting<'_>)> = Vec::new();
    for key in edition.animals.keys() {
        let asked = stay.animals.is_empty() || stay.animals.contains(key);
        let Some((animal, species, of)) = super::of_animal(edition, figures, key)
            .filter(|(animal, ..)| animal.is_kept() && asked)
        else {
            continue;
        };
        let as_of = figures.as_of;
        let plan = plan::plan(animal, species, of.0, as_of, (stay.from, stay.until), true);
        let apart = in_quarantine(animal, of.0, stay.from);
        let shed = plan::shed_expected(animal, as_of);
        let guesting = Guesting { animal, own: of.0, plan, apart, shed };
        known.push((key, (animal, species, of), guesting));
    }
    // Those in quarantine are seen to last, so that nothing is carried from them to the others.
    known.sort_by(|(one, _, a), (other, _, b)| a.apart.cmp(&b.apart).then_with(|| one.cmp(other)));
    let nights = days_between(stay.from, stay.until);
    let from = || ("from", edition.long_date(stay.from).into());
    let until = || ("until", edition.long_date(stay.until).into());
    let span = edition.tell("sitter-span", [from(), until(), ("days", (nights + 1).into())]);
    let title = edition.tell("sitter-title", [from(), until()]);
    let mut before = Vec::new();
    let mut guests = Vec::new();
    for &(key, of, ref guesting) in &known {
        let (animal, species, (own, _)) = of;
        let (moved, named) = falls_into(edition, figures.as_of, stay, (animal, species, own));
        before.extend(moved);
        guests.push(guest(edition, key, of, guesting, named));
    }
    let large = known.iter().any(|(_, (_, species, _), _)| {
        species.cautions.contains(&crate::model::word::Caution::LargeConstrictor)
    });
    let whose = if stay.animals.is_empty() { "all".to_owned() } else { stay.animals.join("+") };
    let guesting: Vec<Guesting<'_>> = known.into_iter().map(|(.., guesting)| guesting).collect();
    let uid = |date: Date| due::uid(edition, &format!("{date}.sitter.{whose}"));
    SitterSheet {
        frame: Frame::new(edition, &super::sitter_path(stay), true, &title, &title, figures.as_of),
        span,
        contacts: contacts(edition),
        house: house(edition),
        never: never(edition, large),
        events: cards::first_page(edition),
        before,
        days: days::days(&guesting, edition),
        cards: cards::cards(&guesting, edition),
        calendar: days::events(&guesting, edition, uid),
        animals: guests,
    }
}

/// What falls due in a stay: what the keeper does before leaving, and what the sitter is told.
fn falls_into(
    edition: &Edition<'_>,
    as_of: Date,
    stay: &Stay,
    (animal, species, own): (&Animal, &Species, &AnimalFigures),
) -> (Vec<String>, Vec<Fact>) {
    let (mut moved, mut named) = (Vec::new(), Vec::new());
    let name = || ("name", animal.name.as_str().into());
    for due in due::once(edition, animal, species, own, as_of) {
        let date = ("date", edition.long_date(due.date).into());
        let task = ("task", due.title.into());
        let told = |label: &str, text: &str| {
            Fact::plain(edition.say(label), edition.tell(text, [date.clone()]))
        };
        let inside = due.date >= stay.from && due.date <= stay.until;
        match due.what {
            // What is overdue on the first day is no work for a sitter either.
            What::Lamp if due.date <= stay.until => {
                moved.push(edition.tell("sitter-before-lamp", [name(), task, date]));
            }
            What::QuarantineEnds if inside => {
                named.push(told("sitter-quarantine", "sitter-quarantine-text"));
            }
            What::Vet if inside => {
                moved.push(edition.tell("sitter-before-vet", [name(), task, date]));
            }
            What::Outgrown if inside => {
                named.push(told("sitter-enclosure", "sitter-enclosure-text"));
            }
            What::Review if inside => {
                named.push(told("sitter-care-sheet", "sitter-care-sheet-text"));
            }
            _ => {}
        }
    }
    let weigh = plan::weigh_due(animal, species, own, as_of).filter(|due| *due <= stay.until);
    if let Some(due) = weigh {
        let date = ("date", edition.long_date(due).into());
        moved.push(edition.tell("sitter-before-weigh", [name(), date]));
    }
    (moved, named)
}

/// Whether an animal is in quarantine on a day.
pub(super) fn in_quarantine(animal: &Animal, own: &AnimalFigures, day: Date) -> bool {
    animal.status == Status::Quarantine || own.quarantine_until.is_some_and(|until| until >= day)
}

/// The keeper first, then the second; both vets after them, for an animal that is ill.
fn contacts(edition: &Edition<'_>) -> Vec<Fact> {
    let (vets, people): (Vec<_>, Vec<_>) = door::numbers(edition)
        .into_iter()
        .partition(|(whom, _)| matches!(whom, Whom::Vet | Whom::OutOfHours));
    let fact = |(whom, number)| {
        let label = match whom {
            Whom::Keeper => "sitter-keeper",
            Whom::Second => "sitter-second",
            Whom::Vet => "sitter-vet",
            Whom::OutOfHours => "sitter-vet-out-of-hours",
        };
        Fact::plain(edition.say(label), number)
    };
    people.into_iter().chain(vets).map(fact).collect()
}

fn house(edition: &Edition<'_>) -> Vec<Fact> {
    let own = edition.private.house.iter();
    let facts: Vec<Fact> = own
        .map(|(heading, text)| Fact::plain(capital(&heading.replace('_', " ")), text.clone()))
        .collect();
    if facts.is_empty() {
        return vec![Fact::plain(edition.say("sitter-where-things-are"), edition.missing())];
    }
    facts
}

fn never(edition: &Edition<'_>, large: bool) -> Vec<String> {
    let alone = large.then_some("sitter-never-alone");
    let always = [
        "sitter-never-take-out",
        "sitter-never-set-points",
        "sitter-never-more-food",
        "sitter-never-medicine",
        "sitter-never-leave-open",
    ];
    alone.into_iter().chain(always).map(|never| edition.say(never)).collect()
}

fn guest(
    edition: &Edition<'_>,
    key: &str,
    (animal, species, (own, general)): Known<'_>,
    guesting: &Guesting<'_>,
    named: Vec<Fact>,
) -> Guest {
    let plan = &guesting.plan;
    let say = |label| edition.say(label);
    let mut facts =
        vec![Fact::plain(say("sitter-food"), days::feeding(animal, own, plan, edition))];
    if let Some(temperament) = &animal.temperament {
        facts.push(Fact::plain(say("sitter-as-a-rule"), temperament.clone()));
    }
    facts.extend(upkeep::lights(own, edition));
    facts.extend(upkeep::power_cut(own, edition));
    if let Some(fallback) = animal.housing.as_ref().and_then(|housing| housing.fallback.clone()) {
        facts.push(Fact::plain(say("sitter-in-a-power-cut"), fallback));
    }
    if let Some((from, until)) = guesting.shed {
        let date = |date| edition.long_date(date).into();
        let text = if from == until {
            edition.tell("sitter-shed-on", [("date", date(from))])
        } else {
            edition.tell("sitter-shed-between", [("from", date(from)), ("until", date(until))])
        };
        facts.push(Fact::plain(say("sitter-shed"), text));
    }
    facts.extend(named);
    let large = species.cautions.contains(&crate::model::word::Caution::LargeConstrictor);
    let may = if large { "sitter-may-text-large" } else { "sitter-may-text" };
    facts.push(Fact::plain(say("sitter-may"), say(may)));
    Guest {
        key: key.to_owned(),
        name: animal.name.clone(),
        species: edition.name(species).to_owned(),
        picture: picture::of_animal(edition, key, animal, species),
        warnings: door::warnings(edition, animal, species, own),
        note: animal.notes.sitter.clone(),
        facts,
        instruments: animal
            .housing
            .as_ref()
            .and_then(|housing| upkeep::instruments(housing, own, general, edition)),
        signs: signs(edition, species),
    }
}

/// What is seen, sorted by what a sitter does.
fn signs(edition: &Edition<'_>, species: &Species) -> Option<Table> {
    let mut signs: Vec<_> = species.signs.iter().collect();
    signs.sort_by_key(|sign| sign.urgency);
    let rows: Vec<Vec<Shown>> = signs
        .iter()
        .map(|sign| {
            let act = edition.word("sitter-act", sign.urgency);
            vec![Shown::plain(sign.sign.clone()), Shown::plain(act)]
        })
        .collect();
    let head = [&*edition.say("sitter-sign"), &edition.say("sitter-act")];
    Table::of(edition.say("sitter-signs"), &head, rows)
}
