//! The sheet for somebody who looks after the animals for a while: the house, a page for each animal, and every day with boxes
//! to tick. It is private.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::days_between;
use crate::figures::plan;
use crate::figures::{AnimalFigures, Figures};
use crate::model::word::{Status, Urgency};
use crate::model::{Animal, Species};

use super::animal::capital;
use super::blocks::{Fact, Shown, Table};
use super::door;
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
    let span = format!(
        "{} to {}, {} {}",
        edition.long_date(stay.from),
        edition.long_date(stay.until),
        nights + 1,
        if nights == 0 { "day" } else { "days" }
    );
    let title = format!(
        "Sitter's sheet, {} to {}",
        edition.long_date(stay.from),
        edition.long_date(stay.until)
    );
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
        never: never(large),
        events: cards::first_page(),
        before,
        days: days::days(&guesting, edition),
        cards: cards::cards(&guesting),
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
    let name = &animal.name;
    for due in due::once(edition, animal, species, own, as_of) {
        let day = edition.long_date(due.date);
        let inside = due.date >= stay.from && due.date <= stay.until;
        match due.what {
            // What is overdue on the first day is no work for a sitter either.
            What::Lamp if due.date <= stay.until => {
                moved.push(format!("{name}: {}, due {day}, before you leave", due.title));
            }
            What::QuarantineEnds if inside => named.push(Fact::plain(
                "Quarantine",
                format!("would end on {day}; it goes on until the keeper is back. Last in the round, tools of its own, to the last day"),
            )),
            What::Vet if inside => {
                moved.push(format!("{name}: {}, due {day}: go before, or book a day after", due.title));
            }
            What::Outgrown if inside => named.push(Fact::plain(
                "Enclosure",
                format!("expected to be outgrown about {day}; the keeper sees to it"),
            )),
            What::Review if inside => named.push(Fact::plain(
                "Care sheet",
                format!("is to be gone through by {day}; that is the keeper's work and waits"),
            )),
            _ => {}
        }
    }
    let weigh = plan::weigh_due(animal, species, own, as_of).filter(|due| *due <= stay.until);
    if let Some(due) = weigh {
        moved.push(format!(
            "{name}: weigh it, due {}, or on the day you are back; the sitter does not weigh",
            edition.long_date(due)
        ));
    }
    (moved, named)
}

/// Whether an animal is in quarantine on a day.
pub(super) fn in_quarantine(animal: &Animal, own: &AnimalFigures, day: Date) -> bool {
    animal.status == Status::Quarantine || own.quarantine_until.is_some_and(|until| until >= day)
}

/// The keeper first, then the second; both vets after them, for an animal that is ill.
fn contacts(edition: &Edition<'_>) -> Vec<Fact> {
    let (vets, people): (Vec<Fact>, Vec<Fact>) = door::emergency(edition)
        .into_iter()
        .partition(|fact| matches!(fact.label.as_str(), "Vet" | "Out of hours"));
    people.into_iter().chain(vets).map(numbered).collect()
}

fn numbered(fact: Fact) -> Fact {
    let label = match fact.label.as_str() {
        "Keeper" => "1. The keeper".to_owned(),
        "Second" => "2. Nobody answers for 15 minutes".to_owned(),
        "Vet" => "An animal is ill: the vet".to_owned(),
        "Out of hours" => "The vet out of hours".to_owned(),
        other => other.to_owned(),
    };
    Fact { label, ..fact }
}

fn house(edition: &Edition<'_>) -> Vec<Fact> {
    let own = edition.private.house.iter();
    let facts: Vec<Fact> = own
        .map(|(heading, text)| Fact::plain(capital(&heading.replace('_', " ")), text.clone()))
        .collect();
    if facts.is_empty() {
        return vec![Fact::plain("Where things are", edition.missing())];
    }
    facts
}

fn never(large: bool) -> Vec<String> {
    let mut never = vec![
        "Never take an animal out, and never open two enclosures at once.",
        "Never change a set point, and never switch a heater on that was off.",
        "Never give more food than the day says, and never leave live rodents in.",
        "Never give a medicine that a vet has not ordered for this animal.",
        "Never go away before doors, locks and lids are shut and the animals are counted.",
    ];
    if large {
        never.insert(0, "Never open the enclosure of a large snake alone: two adults, every time.");
    }
    never.into_iter().map(str::to_owned).collect()
}

fn guest(
    edition: &Edition<'_>,
    key: &str,
    (animal, species, (own, general)): Known<'_>,
    guesting: &Guesting<'_>,
    named: Vec<Fact>,
) -> Guest {
    let plan = &guesting.plan;
    let mut facts = vec![Fact::plain("Food", days::feeding(own, plan, edition))];
    if let Some(temperament) = &animal.temperament {
        facts.push(Fact::plain("As a rule", temperament.clone()));
    }
    if let Some((on, off)) = own.upkeep.lights_h {
        let clock = crate::figures::upkeep::clock;
        facts.push(Fact::plain("Lights", format!("on at {}, off at {}", clock(on), clock(off))));
    }
    facts.extend(upkeep::power_cut(own));
    if let Some(fallback) = animal.housing.as_ref().and_then(|housing| housing.fallback.clone()) {
        facts.push(Fact::plain("In a power cut", fallback));
    }
    if let Some((from, until)) = guesting.shed {
        let between = if from == until {
            edition.long_date(from)
        } else {
            format!("between {} and {}", edition.long_date(from), edition.long_date(until))
        };
        facts.push(Fact::plain("Shed", format!("the next may come {between}, by its own last ones. Dull skin, cloudy eyes and hiding are normal then, and it may refuse food: leave it alone, keep its damp hide damp")));
    }
    facts.extend(named);
    let allowed = "change its water, spray as the day says, offer the meal of the day and take back what it leaves, fit a spare lamp with the power off, take it to the vet in its locked box";
    let large = species.cautions.contains(&crate::model::word::Caution::LargeConstrictor);
    let allowed = if large {
        format!("look through the glass. With a second adult beside you: {allowed}")
    } else {
        allowed.to_owned()
    };
    facts.push(Fact::plain("You may", allowed));
    Guest {
        key: key.to_owned(),
        name: animal.name.clone(),
        species: species.name.clone(),
        picture: picture::of_animal(edition, key, animal, species),
        warnings: door::warnings(edition, animal, species, own),
        note: animal.notes.sitter.clone(),
        facts,
        instruments: animal
            .housing
            .as_ref()
            .and_then(|housing| upkeep::instruments(housing, own, general, edition)),
        signs: signs(species),
    }
}

/// What is seen, sorted by what a sitter does.
fn signs(species: &Species) -> Option<Table> {
    let mut signs: Vec<_> = species.signs.iter().collect();
    signs.sort_by_key(|sign| sign.urgency);
    let rows: Vec<Vec<Shown>> = signs
        .iter()
        .map(|sign| {
            let act = match sign.urgency {
                Urgency::Now => "phone the vet now",
                Urgency::Day => "phone the vet today, then me",
                Urgency::Days => "phone me",
                Urgency::Watch => "carry on, write it down",
            };
            vec![Shown::plain(sign.sign.clone()), Shown::plain(act)]
        })
        .collect();
    Table::of("When you see this", &["Sign", "What to do"], rows)
}
