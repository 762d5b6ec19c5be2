//! The figures of one animal's own file that no derived figure holds: what its instruments are set to and how it is fed.

use crate::model::Animal;
use crate::model::word::Word;
use crate::quantity::{Range, System};

use super::stated::print_own;
use super::{Change, Changes, Weight, Whose};

/// A figure of an animal's file: its name, what it is, and its value as shown.
type Own = (String, String, String);

pub(super) fn animal(
    changes: &mut Changes,
    key: &str,
    (before, after): (&Animal, &Animal),
    units: System,
) {
    let (old, new) = (figures(before, units), figures(after, units));
    for (name, label, value) in &old {
        let now = new.iter().find(|(other, ..)| other == name).map(|(.., value)| value.clone());
        if now.as_ref() != Some(value) {
            changes.figures.push(change(key, (name, label), (Some(value.clone()), now)));
        }
    }
    for (name, label, value) in &new {
        if !old.iter().any(|(other, ..)| other == name) {
            changes.figures.push(change(key, (name, label), (None, Some(value.clone()))));
        }
    }
}

fn change(
    key: &str,
    (name, label): (&str, &str),
    (before, after): (Option<String>, Option<String>),
) -> Change {
    Change {
        weight: Weight::of(name),
        loosened: false,
        whose: Whose::Animal,
        key: key.to_owned(),
        figure: name.to_owned(),
        label: label.to_owned(),
        before,
        after,
        by: None,
        sources: None,
        animals: vec![key.to_owned()],
    }
}

fn figures(animal: &Animal, units: System) -> Vec<Own> {
    let mut list: Vec<Own> = Vec::new();
    let mut add = |name: String, label: String, value: Option<String>| {
        if let Some(value) = value {
            list.push((name, label, value));
        }
    };
    if let Some(feeding) = &animal.feeding {
        let every = feeding.every.as_ref().map(|(every, _)| print_own(every, units));
        add("feeding.every".to_owned(), "From meal to meal, as practised".to_owned(), every);
        let mass = feeding.mass.as_ref().map(|(mass, _)| print_own(mass, units));
        add("feeding.mass".to_owned(), "Mass of a meal, as practised".to_owned(), mass);
        let meal = feeding.meal.clone();
        add("feeding.offered".to_owned(), "Meal, as practised".to_owned(), meal);
    }
    let Some(housing) = &animal.housing else { return list };
    let inside = housing
        .inside
        .as_ref()
        .map(|(inside, _)| inside.print(units, crate::quantity::Rounding::Nearest).to_string());
    add("enclosure.inside".to_owned(), "Enclosure, inside".to_owned(), inside);
    let room = housing.room_night.as_ref().map(|room| print_own(room, units));
    add("enclosure.room_night".to_owned(), "The room in the coldest night".to_owned(), room);
    let room = housing.room_day.as_ref().map(|room| print_own(room, units));
    add("enclosure.room_day".to_owned(), "The room by day".to_owned(), room);
    for (place, heater) in housing.heaters.iter().enumerate() {
        let named = |field: &str| format!("heater.{}.{field}", place + 1);
        let label =
            |what: &str| format!("{what} of heater {} ({})", place + 1, heater.kind.spelling());
        let set = heater.set_point.map(|(at, _)| print_own(&Range::exactly(at), units));
        add(named("set_point"), label("Set point"), set);
        let set = heater.set_night.map(|(at, _)| print_own(&Range::exactly(at), units));
        add(named("set_night"), label("Set point by night"), set);
        let power = heater.power.map(|(power, _)| print_own(&Range::exactly(power), units));
        add(named("watts"), label("Power"), power);
        let own = heater.thermostat.map(|(kind, _)| kind.spelling().to_owned());
        add(named("thermostat"), label("Thermostat"), own);
        let guard = heater.guard.map(|(guard, _)| if guard { "guarded" } else { "no guard" });
        add(named("guard"), label("Guard"), guard.map(str::to_owned));
    }
    for (place, lamp) in housing.lamps.iter().enumerate() {
        let named = |field: &str| format!("lamp.{}.{field}", place + 1);
        let label = |what: &str| format!("{what} of lamp {} ({})", place + 1, lamp.kind);
        let distance = lamp.distance.map(|at| print_own(&Range::exactly(at), units));
        add(named("distance"), label("Distance"), distance);
        let hours = lamp.hours.as_ref().map(|(hours, _)| print_own(hours, units));
        add(named("hours"), label("Hours"), hours);
    }
    list
}
