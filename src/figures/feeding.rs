//! Feeding: the table by stage of a species, and an animal's own stage and next meal.

use jiff::civil::Date;

use crate::model::species::Stage;
use crate::model::{Animal, Site, Species};

use super::calendar::{days_after, days_between};
use super::energy;
use super::prey;
use super::working::{self, Ends, Why, Working, absent, both, ends, number};

/// How a stage of life is fed.
#[derive(Debug, Clone, PartialEq)]
pub struct StageFeeding {
    /// The stage's name.
    pub stage: String,
    /// From meal to meal, days.
    pub interval_days: Option<Ends>,
    /// What a meal is.
    pub meal: Option<String>,
    /// The mass of a meal, g.
    pub mass_g: Option<Ends>,
    /// Meals in a year.
    pub meals_per_year: Option<Ends>,
    /// Food energy over resting energy, over the published equations.
    pub energy_ratio: Option<(f64, f64)>,
    /// How they were worked out.
    pub working: Working,
    /// How the energy was worked out.
    pub energy_working: Option<Working>,
}

/// The days of a year.
const YEAR_DAYS: f64 = 365.25;

/// Works out the feeding table of a species, from hatchling to old age.
///
/// Intervals in days, masses in grams. A meal's mass is as stated; where the rule is a share of the animal's own mass it is
/// that share of the lightest and the heaviest that the stage allows. Meals per year are 365.25 days over the interval.
pub fn table(species: &Species, why: &mut Why) -> Vec<StageFeeding> {
    if species.feeding.is_empty() {
        why.insert("feeding".to_owned(), "no feeding stages are given".to_owned());
    }
    let mut rows = Vec::new();
    for (stage, body_g) in species.feeding.iter().zip(stage_masses_g(species)) {
        let mut row = of_stage(stage, body_g);
        // The middle of the masses that the stage runs through stands for an animal in it.
        let middle_g = body_g.map(|(from_g, until_g)| (from_g * until_g).sqrt());
        match energy_of(species, &row, middle_g) {
            Ok((ratio, working)) => {
                (row.energy_ratio, row.energy_working) = (Some(ratio), Some(working));
            }
            Err(reason) => drop(why.insert(format!("feeding.{}.energy_ratio", stage.name), reason)),
        }
        rows.push(row);
    }
    rows
}

/// The masses that an animal runs through in each stage, g: from one bound to the next, from birth on; the adult range from the
/// grown stage on. Absent where the bounds of a stage are ages or lengths.
fn stage_masses_g(species: &Species) -> Vec<Option<(f64, f64)>> {
    let size = &species.size;
    let adults = [&size.mass, &size.mass_female, &size.mass_male].into_iter().flatten();
    let adults: Vec<(f64, f64)> = adults
        .filter_map(|cited| {
            cited.value.low().or(cited.value.high()).zip(cited.value.high().or(cited.value.low()))
        })
        .map(|(low, high)| (low.grams(), high.grams()))
        .collect();
    let adult_g = adults.iter().copied().reduce(|(a, b), (c, d)| (a.min(c), b.max(d)));
    let grown = species
        .grown_stage()
        .and_then(|grown| species.feeding.iter().position(|stage| stage == grown));
    let mut from_g =
        size.birth_mass.as_ref().and_then(|cited| cited.value.low()).map(|mass| mass.grams());
    let mut masses = Vec::new();
    for (number, stage) in species.feeding.iter().enumerate() {
        let until_g = stage.until_mass.map(|mass| mass.grams());
        let is_grown = grown.is_some_and(|grown| number >= grown);
        masses.push(if is_grown && until_g.is_none() { adult_g } else { from_g.zip(until_g) });
        from_g = until_g;
    }
    masses
}

fn middle(ends: Option<Ends>) -> Option<f64> {
    both(ends?).map(|(low, high)| (low + high) / 2.0)
}

fn energy_of(
    species: &Species,
    row: &StageFeeding,
    body_g: Option<f64>,
) -> Result<((f64, f64), Working), String> {
    let meal = energy::Meal {
        food: row.meal.as_deref().ok_or("no meal is named")?,
        mass_g: middle(row.mass_g).ok_or("no mass of a meal is given")?,
        interval_days: middle(row.interval_days).ok_or("no interval is given")?,
    };
    energy::ratio(species, body_g.ok_or("the mass of an animal in this stage is not given")?, meal)
}

fn of_stage(stage: &Stage, body_g: Option<(f64, f64)>) -> StageFeeding {
    let mut working = Working::new(
        format!("Feeding, {}", stage.name),
        "meals in a year = 365.25 days / interval; meal = share × the animal's own mass",
        "definition; the interval and the share are the species'",
    );
    let interval_days = stage.every.as_ref().map(|cited| ends(&cited.value));
    let meals_per_year = interval_days
        .map(|(low, high)| (high.map(|days| YEAR_DAYS / days), low.map(|days| YEAR_DAYS / days)));
    if let (Some((Some(low), Some(high))), Some((Some(fewest), Some(most)))) =
        (interval_days, meals_per_year)
    {
        working.step(format!(
            "365.25 / {} = {}; 365.25 / {} = {}",
            number(high, 2),
            number(fewest, 1),
            number(low, 2),
            number(most, 1)
        ));
    }
    let share = stage.share.as_ref().and_then(|cited| both(ends(&cited.value)));
    let stated = stage.mass.as_ref().map(|cited| ends(&cited.value));
    let by_share = match (share, body_g) {
        (Some((low, high)), Some((from_g, until_g))) => {
            let mass_g = (from_g * low / 100.0, until_g * high / 100.0);
            working.step(format!(
                "{} % of {} g = {} g; {} % of {} g = {} g",
                number(low, 1),
                number(from_g, 1),
                number(mass_g.0, 1),
                number(high, 1),
                number(until_g, 1),
                number(mass_g.1, 1)
            ));
            Some((Some(mass_g.0), Some(mass_g.1)))
        }
        _ => None,
    };
    let (stage, meal) = (stage.name.clone(), stage.meal.clone());
    StageFeeding {
        stage,
        interval_days,
        meal,
        mass_g: stated.or(by_share),
        meals_per_year,
        energy_ratio: None,
        working,
        energy_working: None,
    }
}

/// An animal's own feeding.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct AnimalFeeding {
    /// Its stage of life, by its place in the species' table.
    pub stage: Option<usize>,
    /// The stage's name.
    pub stage_name: Option<String>,
    /// What a meal is.
    pub meal: Option<String>,
    /// The mass of a meal, g.
    pub mass_g: Option<Ends>,
    /// The class of prey that the mass belongs to on the site's ladder.
    pub prey_class: Option<String>,
    /// From meal to meal, days.
    pub interval_days: Option<Ends>,
    /// The day it last ate.
    pub last_eaten: Option<Date>,
    /// Days since it last ate.
    pub days_since: Option<i32>,
    /// The next meal is due from this day.
    pub next_due: Option<Date>,
    /// It is overdue after this day.
    pub due_until: Option<Date>,
    /// How they were worked out.
    pub working: Working,
}

/// What is known of an animal's body on a day.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Body {
    /// Its age in days.
    pub age_days: Option<f64>,
    /// Its last measured length by the species' own measure, cm.
    pub length_cm: Option<f64>,
    /// Its last weight, g.
    pub mass_g: Option<f64>,
}

/// Gathers what the log knows of an animal's body up to a day.
pub fn body(animal: &Animal, as_of: Date) -> Body {
    let known = |date: &Date| *date <= as_of;
    Body {
        age_days: animal
            .hatched
            .map(|(date, ..)| f64::from(days_between(date, as_of)))
            .filter(|days| *days >= 0.0),
        length_cm: animal.lengths().rfind(|(date, _)| known(date)).map(|(_, length)| length.cm()),
        mass_g: animal.weights().rfind(|(date, _)| known(date)).map(|(_, mass)| mass.grams()),
    }
}

/// Tells which stage of life an animal is in: the first whose bounds of age, length or mass it has not reached.
///
/// A stage ends at the first of its bounds that is reached. A stage that ends by age alone holds an animal of unknown age
/// that has outgrown the stages before it, and this is said: most animals of unknown age are grown, few are known to be old.
pub fn stage_of(species: &Species, body: &Body) -> Option<(usize, Option<&'static str>)> {
    let unsure = "its age is not known; it is taken for grown and not for old";
    let last = species.feeding.len().checked_sub(1)?;
    for (number, stage) in species.feeding.iter().enumerate() {
        let by_size = stage.until_length.is_some() || stage.until_mass.is_some();
        let bounds = [
            stage.until_age.map(|age| age.days()).zip(body.age_days),
            stage.until_length.map(|length| length.cm()).zip(body.length_cm),
            stage.until_mass.map(|mass| mass.grams()).zip(body.mass_g),
        ];
        let known: Vec<(f64, f64)> = bounds.into_iter().flatten().collect();
        if known.is_empty() && !by_size && stage.until_age.is_some() {
            return Some((number, Some(unsure)));
        }
        if !known.is_empty() && known.iter().all(|(until, now)| now < until) {
            return Some((number, None));
        }
    }
    Some((last, None))
}

/// Works out an animal's stage, meal and next due day from its body and its log.
///
/// The keeper's own practice wins over the species' table, a weighed share over a stated mass. The next meal is due from
/// the last day on which food was offered plus the shortest interval; a refused meal is offered again at the next turn.
pub fn of_animal(
    animal: &Animal,
    species: &Species,
    site: &Site,
    body: &Body,
    as_of: Date,
    why: &mut Why,
) -> AnimalFeeding {
    let mut working = Working::new(
        "Next meal",
        "due = the last day food was offered + the interval; meal = share × the last weight",
        "definition; interval and share are the keeper's practice or the species'",
    );
    let told = stage_of(species, body);
    if told.is_none() {
        absent(why, "feeding.stage", "the species gives no feeding stages");
    }
    let stage = told.map(|(place, _)| &species.feeding[place]);
    if let Some(unsure) = told.and_then(|(_, unsure)| unsure) {
        working.assume(unsure);
    }
    let practice = animal.feeding.as_ref();
    let own_interval = practice.and_then(|practice| practice.every).map(|(range, _)| ends(&range));
    let interval_days = own_interval
        .or(stage.and_then(|stage| stage.every.as_ref()).map(|cited| ends(&cited.value)));
    let own_mass = practice.and_then(|practice| practice.mass).map(|(range, _)| ends(&range));
    let share =
        stage.and_then(|stage| stage.share.as_ref()).and_then(|cited| both(ends(&cited.value)));
    let by_share = share.zip(body.mass_g).map(|((low, high), mass_g)| {
        working.step(format!(
            "{}–{} % of {} g = {}–{} g",
            number(low, 1),
            number(high, 1),
            number(mass_g, 1),
            number(mass_g * low / 100.0, 1),
            number(mass_g * high / 100.0, 1)
        ));
        (Some(mass_g * low / 100.0), Some(mass_g * high / 100.0))
    });
    let mass_g = own_mass
        .or(by_share)
        .or(stage.and_then(|stage| stage.mass.as_ref()).map(|cited| ends(&cited.value)));
    if mass_g.is_none() {
        absent(why, "feeding.mass_g", "no mass, and no share with a weight, is given for a meal");
    }
    let meal = practice
        .and_then(|practice| practice.meal.clone())
        .or(stage.and_then(|stage| stage.meal.clone()));
    let last_offered = animal.meals().map(|(date, ..)| date).filter(|date| *date <= as_of).max();
    let last_eaten = animal.last_eaten().filter(|date| *date <= as_of);
    let due = |days: Option<f64>| days_after(last_offered?, days?);
    let (shortest, longest) = interval_days.unwrap_or((None, None));
    let next_due = due(shortest.or(longest));
    let due_until = due(longest.or(shortest));
    match (last_offered, next_due) {
        (Some(last), Some(next)) => working.step(format!(
            "{last} + {} days = {next}",
            number(shortest.or(longest).unwrap_or(0.0), 1)
        )),
        (last, _) => {
            let reason =
                if last.is_none() { "the log holds no meal" } else { "no interval is given" };
            absent(why, "feeding.next_due", reason);
            absent(why, "feeding.due_until", reason);
        }
    }
    let prey_class = meal
        .as_deref()
        .zip(working::middle(mass_g))
        .and_then(|(meal, mass_g)| prey::class(site, meal, mass_g));
    if prey_class.is_none() {
        absent(
            why,
            "feeding.prey_class",
            "its meal is on no ladder of prey, or its mass is not known",
        );
    }
    if meal.is_none() {
        absent(why, "feeding.meal", "no meal is named");
    }
    AnimalFeeding {
        stage: told.map(|(place, _)| place),
        stage_name: stage.map(|stage| stage.name.clone()),
        prey_class,
        meal,
        mass_g,
        interval_days,
        last_eaten,
        days_since: last_eaten.map(|date| days_between(date, as_of)),
        next_due,
        due_until,
        working,
    }
}

/// Works out how many times its resting energy an animal is fed, from its own meal, interval and last weight.
///
/// # Errors
/// Which of the things that must be known is not.
pub fn energy_of_animal(
    species: &Species,
    feeding: &AnimalFeeding,
    body: &Body,
) -> Result<((f64, f64), Working), String> {
    let meal = energy::Meal {
        food: feeding.meal.as_deref().ok_or("no meal is named")?,
        mass_g: working::middle(feeding.mass_g).ok_or("no mass of a meal is given")?,
        interval_days: working::middle(feeding.interval_days).ok_or("no interval is given")?,
    };
    energy::ratio(species, body.mass_g.ok_or("no weight has been written down")?, meal)
}
