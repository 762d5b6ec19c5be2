//! The sheet for somebody who looks after the animals for a while: the house, a page for each animal, and every day with boxes
//! to tick. It is private.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::calendar::days_between;
use crate::figures::plan::{self, Plan};
use crate::figures::{AnimalFigures, Figures, SpeciesFigures};
use crate::model::word::{Status, Urgency};
use crate::model::{Animal, Model, Species};

use super::animal::capital;
use super::blocks::{Fact, Shown, Table};
use super::door;
use super::frame::{Frame, long_date};
use super::sitter_days::{self as days, Event};
use super::upkeep;

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
    /// The animals, those in quarantine last.
    pub animals: Vec<Guest>,
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
    /// What must be known before the door is opened.
    pub warnings: Vec<String>,
    /// What normal looks like, in words of the keeper's own.
    pub note: Option<String>,
    /// Lights, power, food.
    pub facts: Vec<Fact>,
    /// What the instruments should show.
    pub instruments: Option<Table>,
    /// Every day.
    pub days: Vec<days::DayRow>,
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
pub fn sitter(model: &Model, figures: &Figures, stay: &Stay) -> SitterSheet {
    let mut guests: Vec<(bool, Guest, Vec<Event>)> = Vec::new();
    for key in model.animals.keys() {
        let asked = stay.animals.is_empty() || stay.animals.contains(key);
        let Some((animal, species, of)) =
            super::of_animal(model, figures, key).filter(|(animal, ..)| animal.is_kept() && asked)
        else {
            continue;
        };
        let plan = plan::plan(animal, species, of.0, figures.as_of, (stay.from, stay.until), true);
        let apart = in_quarantine(animal, of.0, stay.from);
        let events = days::events(key, animal, of.0, &plan, model.site.units);
        guests.push((apart, guest(model, key, animal, species, of, &plan), events));
    }
    // Those in quarantine are seen to last, so that nothing is carried from them to the others.
    guests.sort_by(|(a, one, _), (b, other, _)| a.cmp(b).then_with(|| one.key.cmp(&other.key)));
    let nights = days_between(stay.from, stay.until);
    let span = format!(
        "{} to {}, {} {}",
        long_date(stay.from),
        long_date(stay.until),
        nights + 1,
        if nights == 0 { "day" } else { "days" }
    );
    let title = format!("Sitter's sheet, {} to {}", long_date(stay.from), long_date(stay.until));
    let calendar = guests.iter().flat_map(|(.., events)| events.clone()).collect();
    let large = guests.iter().any(|(_, guest, _)| {
        guest.warnings.iter().any(|warning| warning.starts_with("Two adults"))
    });
    SitterSheet {
        frame: Frame::new(model, &super::sitter_path(stay), true, &title, &title, figures.as_of),
        span,
        contacts: contacts(model),
        house: house(model),
        never: never(large),
        events: what_happens(),
        animals: guests.into_iter().map(|(_, guest, _)| guest).collect(),
        calendar,
    }
}

/// Whether an animal is in quarantine on a day.
pub(super) fn in_quarantine(animal: &Animal, own: &AnimalFigures, day: Date) -> bool {
    animal.status == Status::Quarantine || own.quarantine_until.is_some_and(|until| until >= day)
}

/// The keeper first, then the second; both vets after them, for an animal that is ill.
fn contacts(model: &Model) -> Vec<Fact> {
    let (vets, people): (Vec<Fact>, Vec<Fact>) = door::emergency(model)
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

fn house(model: &Model) -> Vec<Fact> {
    let own = model.private.house.iter();
    let facts: Vec<Fact> = own
        .map(|(heading, text)| Fact::plain(capital(&heading.replace('_', " ")), text.clone()))
        .collect();
    if facts.is_empty() {
        return vec![Fact::plain("Where things are", Shown::missing())];
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

/// Common practice; where people are in danger they come first.
fn what_happens() -> Vec<Fact> {
    [
        ("Power cut", "Reset a tripped switch once. Lids stay shut, vents free, a blanket over the glass, no food. Ring the keeper; each animal's page says how long it bears it."),
        ("Too hot", "Switch its heaters off at the wall, let air through the room, ring. No ice, no cold water."),
        ("Escape", "Shut the room's door, look along the floor by warm and dark places, ring. Do not grab a snake that you do not know."),
        ("Bite", "Wash it with soap and water. Deep, in the face, or swelling: a doctor. A large snake that holds on: the second adult unwinds it from the tail; ring the emergency number."),
        ("Fire", "People out, door shut, ring the emergency number. Nobody goes back for an animal."),
        ("Hands", "Soap and water after every enclosure. Children under five, pregnant women, people over 65 and anyone whose defences are weak stay away: reptiles and amphibians can carry Salmonella."),
    ]
    .into_iter()
    .map(|(label, text)| Fact::plain(label, text))
    .collect()
}

fn guest(
    model: &Model,
    key: &str,
    animal: &Animal,
    species: &Species,
    of: (&AnimalFigures, &SpeciesFigures),
    plan: &Plan,
) -> Guest {
    let (own, general) = of;
    let units = model.site.units;
    let mut facts = vec![Fact::plain("Food", days::feeding(own, plan, units))];
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
        warnings: door::warnings(model, animal, species, own),
        note: animal.notes.sitter.clone(),
        facts,
        instruments: animal
            .housing
            .as_ref()
            .and_then(|housing| upkeep::instruments(housing, own, general, units)),
        days: days::rows(own, plan, units),
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
