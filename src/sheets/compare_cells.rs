//! What stands in the cells of the comparison: facts about one species, as a reader choosing an animal wants them.

use crate::model::Species;
use crate::model::species::Stage;
use crate::model::word::Habit;
use crate::quantity::{Length, Rounding};

use super::blocks::Shown;
use super::compare::Candidate;
use super::edition::Edition;
use super::print;

/// What a grown animal needs of a home.
pub(super) fn room(one: &Candidate<'_>, edition: &Edition<'_>) -> Vec<Shown> {
    let money = |(low, high): (f64, f64), currency: &str| {
        let (low, high) = (edition.number(low, 0), edition.number(high, 0));
        let range = if low == high { low } else { format!("{low}–{high}") };
        Shown::plain(format!("{range} {currency}"))
    };
    let cost = one.of.cost.as_ref();
    let no_cost = || {
        let in_water = one.species.habit == Habit::Aquatic;
        if in_water {
            Shown::plain(edition.say("compare-cost-not-worked-out"))
        } else {
            edition.missing()
        }
    };
    vec![
        print::shown::<Length>(one.lengths, edition, Rounding::Nearest),
        print::years(one.of.years, edition),
        floor(one, edition),
        size(one, edition),
        cost.map_or_else(no_cost, |cost| money(cost.electricity, &cost.currency)),
        cost.map_or_else(no_cost, |cost| money(cost.per_year, &cost.currency)),
    ]
}

/// The floor that a grown animal needs.
pub(super) fn floor(one: &Candidate<'_>, edition: &Edition<'_>) -> Shown {
    one.space
        .as_ref()
        .map_or_else(|| edition.missing(), |space| print::area(space.floor_m2, edition))
}

/// The size to buy or build.
pub(super) fn size(one: &Candidate<'_>, edition: &Edition<'_>) -> Shown {
    one.space
        .as_ref()
        .map_or_else(|| edition.missing(), |space| print::sides(space.inside_cm, edition))
}

/// What its days are like.
pub(super) fn daily(one: &Candidate<'_>, edition: &Edition<'_>) -> Vec<Shown> {
    let species = one.species;
    let zone = one.of.light.zone.map(|zone| Shown::plain(zone.to_string()));
    let humidity = species.humidity.range.as_ref();
    let humidity =
        humidity.map(|range| edition.shown(range.value.print(edition.units(), Rounding::Nearest)));
    let in_water = species.habit == Habit::Aquatic;
    let dangers: Vec<String> =
        species.cautions.iter().map(|danger| edition.word("danger", *danger)).collect();
    vec![
        food(species, edition),
        zone.unwrap_or_else(|| edition.missing()),
        humidity.unwrap_or_else(|| {
            if in_water {
                Shown::plain(edition.say("compare-humidity-in-water"))
            } else {
                edition.missing()
            }
        }),
        Shown::plain(edition.word("active", species.active)),
        Shown::plain(edition.word("compare-company", species.company)),
        Shown::plain(if dangers.is_empty() { "–".to_owned() } else { dangers.join(", ") }),
    ]
}

/// The words by which a feeding table names what must be bought alive.
const INSECTS: [&str; 7] =
    ["cricket", "locust", "cockroach", "insects", "fruit fly", "fruit flies", "springtail"];

/// Whether a stage of life is fed on insects, by what its meal and its remark name.
fn eats_insects(stage: &Stage) -> bool {
    let told = [stage.meal.as_deref(), stage.note.as_deref()];
    let told = told.into_iter().flatten().map(str::to_lowercase);
    told.into_iter().any(|told| INSECTS.iter().any(|insect| told.contains(insect)))
}

/// What makes it easier or harder to keep, as facts.
pub(super) fn asked(one: &Candidate<'_>, edition: &Edition<'_>) -> Vec<Shown> {
    let species = one.species;
    let live = match species.grown_stage() {
        Some(grown) if eats_insects(grown) => "compare-insects-always",
        _ if species.feeding.iter().any(eats_insects) => "compare-insects-young",
        Some(_) => "compare-insects-no",
        None => "compare-insects-unknown",
    };
    let lamp = match one.of.light.zone {
        // What lives in shade, or hunts by night, meets so little that none is owed.
        Some(1) => "compare-lamp-shade",
        Some(_) => "compare-lamp-yes",
        None => "compare-lamp-unknown",
    };
    let temperature = &species.temperature;
    let warmest = temperature.basking.as_ref().or(temperature.warm.as_ref());
    let warmest = warmest.or(temperature.water.as_ref());
    let rest = species.temperature.brumation_weeks.as_ref();
    let rest =
        rest.map(|weeks| edition.shown(weeks.value.print(edition.units(), Rounding::Nearest)));
    vec![
        Shown::plain(edition.say(live)),
        Shown::plain(edition.say(lamp)),
        warmest.map_or_else(
            || edition.missing(),
            |warmest| edition.shown(warmest.value.print(edition.units(), Rounding::Inward)),
        ),
        rest.unwrap_or_else(|| Shown::plain(edition.say("compare-rest-none"))),
        Shown::plain(species.legal.cites.map_or_else(
            || edition.say("compare-cites-unknown"),
            |cites| edition.word("compare-cites", cites),
        )),
    ]
}

/// What a grown animal eats and how often.
fn food(species: &Species, edition: &Edition<'_>) -> Shown {
    let Some(stage) = species.grown_stage() else { return edition.missing() };
    let every = stage
        .every
        .as_ref()
        .map(|every| edition.shown(every.value.print(edition.units(), Rounding::Nearest)).first);
    match (&stage.meal, every) {
        (Some(meal), Some(every)) => {
            let of = [("meal", meal.as_str().into()), ("every", every.into())];
            Shown::plain(edition.tell("compare-food", of))
        }
        (Some(meal), None) => Shown::plain(meal.clone()),
        _ => edition.missing(),
    }
}
