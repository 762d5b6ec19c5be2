//! What is due on which day: meals, rest after them, sprayings and weighings, from the logs of the example's animals.

use std::path::Path;

use jiff::civil::{Date, date};
use wardsheet::compile::check;
use wardsheet::figures::figures;
use wardsheet::figures::plan::{Food, Plan, plan, weigh_due, weigh_every_days};
use wardsheet::model::Model;
use wardsheet::quantity::{self, Span};
use wardsheet::source::Folder;

const TODAY: Date = date(2026, 11, 25);

fn model() -> Model {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("site-example");
    let (sources, found) = Folder::find(Some(&folder), &folder)
        .and_then(|folder| folder.read(&["builtin".to_owned()]))
        .expect("the example can be read");
    check(&sources, found, TODAY).model
}

fn planned(model: &Model, name: &str, today: Date, span: (Date, Date), may_skip: bool) -> Plan {
    let worked_out = figures(model, today);
    let animal = &model.animals[name];
    let species = &model.species[&animal.species.name];
    plan(animal, species, &worked_out.animals[name], today, span, may_skip)
}

fn meals(plan: &Plan) -> Vec<Date> {
    plan.days.iter().filter(|day| day.meal).map(|day| day.date).collect()
}

fn resting(plan: &Plan) -> Vec<Date> {
    plan.days.iter().filter(|day| day.resting).map(|day| day.date).collect()
}

/// Juniper was fed on 19 November and eats every 12 days; a corn snake is left alone for 2 days after a meal.
#[test]
fn meals_follow_each_other_at_the_animals_own_interval() {
    let plan = planned(&model(), "juniper", TODAY, (date(2026, 12, 1), date(2026, 12, 26)), false);
    assert_eq!(plan.days.len(), 26);
    assert_eq!(plan.food, Food::AsDue);
    assert_eq!(meals(&plan), [date(2026, 12, 1), date(2026, 12, 13), date(2026, 12, 25)]);
    let expected = [2, 3, 14, 15, 26].map(|day| date(2026, 12, day));
    assert_eq!(resting(&plan), expected);
}

#[test]
fn a_meal_before_the_span_is_still_digested_in_it() {
    let plan = planned(&model(), "juniper", TODAY, (date(2026, 12, 2), date(2026, 12, 6)), false);
    assert_eq!((plan.food, plan.last_before), (Food::NoneDue, Some(date(2026, 12, 1))));
    assert_eq!(resting(&plan), [date(2026, 12, 2), date(2026, 12, 3)]);
}

#[test]
fn an_overdue_meal_is_due_today() {
    let today = date(2026, 12, 10);
    let plan = planned(&model(), "juniper", today, (today, date(2026, 12, 23)), false);
    assert_eq!(meals(&plan), [today, date(2026, 12, 22)]);
}

#[test]
fn without_a_meal_in_its_log_nothing_is_planned() {
    let mut model = model();
    model.animals.get_mut("juniper").expect("an animal").log.clear();
    let plan = planned(&model, "juniper", TODAY, (TODAY, date(2026, 12, 1)), true);
    assert_eq!(plan.food, Food::NotKnown);
    assert!(meals(&plan).is_empty());
}

/// Bellrope, a grown boa, last ate on 14 November and eats every four weeks.
#[test]
fn a_grown_animal_skips_a_meal_inside_the_normal_fast_and_no_longer() {
    let mut model = model();
    let limit = |days: f64| quantity::Range::at_most(Span::from_days(days));
    let span = (date(2026, 12, 1), date(2026, 12, 14));
    let mut fast = |days: f64| {
        let species = model.species.get_mut("boa-constrictor").expect("a species");
        species.fasting.as_mut().expect("a normal fast").value = limit(days);
        planned(&model, "bellrope", TODAY, span, true)
    };
    let inside = fast(30.0);
    assert_eq!(inside.food, Food::Skipped { days: 30, limit_days: 30.0 });
    assert!(meals(&inside).is_empty());
    let outside = fast(29.0);
    assert_eq!(outside.food, Food::AsDue);
    assert_eq!(meals(&outside), [date(2026, 12, 12)]);
}

/// Two weeks are inside the normal fast of a bearded dragon, but it eats every day.
#[test]
fn an_animal_that_eats_every_day_is_fed_every_day() {
    let span = (date(2026, 12, 1), date(2026, 12, 14));
    let plan = planned(&model(), "saffron", TODAY, span, true);
    assert_eq!(plan.food, Food::AsDue);
    assert_eq!(meals(&plan).len(), 14);
}

#[test]
fn a_young_animal_never_skips_a_meal() {
    let model = model();
    let plan = planned(&model, "tuppence", TODAY, (TODAY, TODAY), true);
    assert_eq!(plan.food, Food::AsDue);
}

#[test]
fn sprayings_follow_their_interval() {
    let mut model = model();
    let mut sprayed = |every: f64| {
        let housing = model.animals.get_mut("juniper").and_then(|animal| animal.housing.as_mut());
        let housing = housing.expect("an enclosure");
        housing.spray_every = Some((Span::from_days(every), housing.place));
        let plan = planned(&model, "juniper", TODAY, (TODAY, date(2026, 12, 1)), false);
        plan.days.iter().map(|day| day.sprayings).collect::<Vec<_>>()
    };
    assert_eq!(sprayed(0.5), [2; 7]);
    assert_eq!(sprayed(1.0), [1; 7]);
    assert_eq!(sprayed(3.0), [1, 0, 0, 1, 0, 0, 1]);
}

/// Common practice: a young animal is weighed weekly, a grown one monthly.
#[test]
fn weighings_are_counted_from_the_last() {
    let mut model = model();
    let worked_out = figures(&model, TODAY);
    let due = |model: &Model, name: &str| {
        let animal = &model.animals[name];
        let species = &model.species[&animal.species.name];
        let own = &worked_out.animals[name];
        (weigh_every_days(species, own), weigh_due(animal, species, own, TODAY))
    };
    assert_eq!(due(&model, "bellrope").0, 30);
    assert_eq!(due(&model, "tuppence").0, 7);
    model.animals.get_mut("bellrope").expect("an animal").log.clear();
    assert_eq!(due(&model, "bellrope").1, Some(TODAY));
}
