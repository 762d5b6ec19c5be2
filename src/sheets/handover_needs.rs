//! What an animal lives in, what it needs now, and what it will need when it is grown.

use crate::figures::lifetime::inside_cm;
use crate::figures::working::number;
use crate::figures::{AnimalFigures, SpeciesFigures};
use crate::model::word::{Thermostat, Word};
use crate::model::{Animal, Species};
use crate::quantity::{Humidity, Length, Mass, Rounding, Span, print_one};

use super::blocks::{Chapter, Fact, Shown, Table, WorkingBlock};
use super::edition::Edition;
use super::{care, drawing, print, tables, upkeep};

/// The set-up as it stands, with its readings.
pub(super) fn set_up(animal: &Animal, own: &AnimalFigures, edition: &Edition<'_>) -> Chapter {
    let mut chapter = Chapter::new("set-up", "Set-up at present");
    let Some(housing) = &animal.housing else {
        chapter.facts.push(Fact::plain("Enclosure", edition.missing()));
        return chapter;
    };
    chapter.facts.push(Fact::plain(
        "Enclosure inside, length × width × height",
        inside_cm(housing).map_or_else(|| edition.missing(), |cm| print::sides(cm, edition)),
    ));
    for heater in &housing.heaters {
        let mut parts = vec![heater.kind.spelling().to_owned()];
        parts.extend(heater.power.map(|(power, _)| {
            edition.shown(print_one(power, edition.units(), Rounding::Nearest)).first
        }));
        parts.push(match heater.thermostat {
            Some((Thermostat::Absent, _)) | None => "no thermostat of its own".to_owned(),
            Some((kind, _)) => format!("{} thermostat of its own", kind.spelling()),
        });
        parts.extend(heater.set_point.map(|(set, _)| {
            format!(
                "set to {}",
                both(&edition.shown(print_one(set, edition.units(), Rounding::Nearest)))
            )
        }));
        parts.extend(heater.set_night.map(|(set, _)| {
            format!(
                "by night {}",
                both(&edition.shown(print_one(set, edition.units(), Rounding::Nearest)))
            )
        }));
        parts.push(
            if heater.guard.is_some_and(|(guard, _)| guard) { "guarded" } else { "no guard noted" }
                .to_owned(),
        );
        chapter.facts.push(Fact::plain("Heater", parts.join(", ")));
    }
    for lamp in &housing.lamps {
        let mut parts = vec![lamp.kind.clone()];
        parts.extend(lamp.hours.map(|(hours, _)| {
            format!(
                "{} a day",
                edition.shown(hours.print(edition.units(), Rounding::Nearest)).first
            )
        }));
        parts.extend(lamp.distance.map(|distance| {
            format!(
                "{} above the spot",
                both(&edition.shown(print_one::<Length>(
                    distance,
                    edition.units(),
                    Rounding::Nearest
                )))
            )
        }));
        parts.extend(lamp.uvi.map(|(uvi, _)| {
            format!("{} there", edition.shown(uvi.print(edition.units(), Rounding::Nearest)).first)
        }));
        parts.extend(lamp.fitted.map(|(date, _)| format!("fitted {}", edition.long_date(date))));
        chapter.facts.push(Fact::plain("Lamp", parts.join(", ")));
    }
    if let Some(substrate) = &housing.substrate {
        let depth: Shown =
            edition.shown(print_one(substrate.thickness, edition.units(), Rounding::Nearest));
        chapter
            .facts
            .push(Fact::plain("Substrate", format!("{}, {}", substrate.material, both(&depth))));
    }
    chapter.facts.push(Fact::plain("Hides", housing.hides.len().to_string()));
    chapter.facts.push(Fact::plain(
        "Power cut",
        housing.fallback.clone().map_or_else(|| edition.missing(), Shown::plain),
    ));
    chapter.tables.extend(readings(own, edition));
    chapter.drawings.extend(drawing::front(animal, own, edition));
    chapter
}

pub(super) fn both(shown: &Shown) -> String {
    shown.to_string()
}

/// What each probe reads and what the hygrometer beside it may read.
fn readings(own: &AnimalFigures, edition: &Edition<'_>) -> Option<Table> {
    let rows: Vec<Vec<Shown>> = own
        .zones
        .iter()
        .map(|zone| {
            let ceiling = own.humidity.readings.iter().find(|reading| reading.zone == zone.zone);
            let percent = |percent: Option<f64>, rounding| {
                percent.map_or_else(
                    || edition.missing(),
                    |percent| {
                        edition.shown(print_one(
                            Humidity::from_percent(percent),
                            edition.units(),
                            rounding,
                        ))
                    },
                )
            };
            vec![
                Shown::plain(zone.zone.clone()),
                zone.at_cm.map_or_else(|| edition.missing(), |cm| print::length(cm, edition)),
                print::temperature(zone.day_c, edition),
                print::temperature(zone.night_c, edition),
                percent(zone.humidity_percent, Rounding::Nearest),
                percent(ceiling.map(|reading| reading.at_most_percent), Rounding::Down),
            ]
        })
        .collect();
    let head = ["Probe", "From the warm end", "By day", "By night", "Humidity", "Humidity at most"];
    Table::of("Readings", &head, rows)
}

/// What it needs now.
pub(super) fn now(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    edition: &Edition<'_>,
) -> Chapter {
    let mut chapter = Chapter::new("needs", "What it needs now");
    for stated in species.stated().iter().filter(|stated| {
        stated.name.starts_with("temperature.") || stated.name.starts_with("humidity.")
    }) {
        chapter.facts.push(Fact::plain(
            stated.label.clone(),
            edition.shown(stated.amount.print(edition.units(), stated.rounding)),
        ));
    }
    let feeding = &own.feeding;
    chapter.facts.push(Fact::plain(
        "Stage of life",
        feeding.stage_name.clone().map_or_else(|| edition.missing(), Shown::plain),
    ));
    chapter.facts.push(Fact::plain("Meal", meal(own, edition)));
    chapter.facts.push(Fact::plain(
        "From meal to meal",
        print::shown::<Span>(feeding.interval_days, edition, Rounding::Nearest),
    ));
    chapter.facts.push(Fact::plain("Next meal due", next_meal(edition, own)));
    if let Some(practice) = species.rest_after_meal.as_ref() {
        chapter.facts.push(Fact::plain(
            "No handling after a meal for",
            edition.shown(practice.value.print(edition.units(), Rounding::Up)),
        ));
    }
    if let Some(space) = &own.now {
        for need in &space.needs {
            let least = need.least.as_ref().map_or_else(
                |why| Shown::plain(format!("not worked out: {why}")),
                |least| print::least(least, edition),
            );
            chapter.facts.push(Fact::plain(
                format!("Least enclosure now, {}", care::standard_title(edition, &need.standard)),
                least,
            ));
        }
    }
    if let Some(Err(short)) = &own.fits {
        chapter.facts.push(Fact::plain("Its enclosure falls short", short.join("; ")));
    }
    if let Some(until) = own.quarantine_until {
        chapter.facts.push(Fact::plain("In quarantine until", edition.long_date(until)));
    }
    if let Some(keeper) = &animal.notes.keeper {
        chapter.words = keeper.clone();
    }
    if let Some(((low, high), working)) = &own.energy {
        let ratio = format!("{}–{} times its energy at rest", number(*low, 1), number(*high, 1));
        chapter.facts.push(Fact::plain("Its food holds", ratio));
        chapter.workings.push(WorkingBlock::from(working));
    }
    if let Some(now) = own.upkeep.coil_cm[0] {
        let grown =
            own.upkeep.coil_cm[1].map(|cm| format!(", {} when grown", print::length(cm, edition)));
        chapter.facts.push(Fact::plain(
            "Hides at least as wide as",
            format!("{}{}", print::length(now, edition), grown.unwrap_or_default()),
        ));
    }
    chapter.workings.push(WorkingBlock::from(&feeding.working));
    chapter.workings.extend(own.humidity.working.as_ref().map(WorkingBlock::from));
    chapter
}

pub(super) fn meal(own: &AnimalFigures, edition: &Edition<'_>) -> Shown {
    let meal = own.feeding.meal.clone().map(Shown::plain);
    let mass = own
        .feeding
        .mass_g
        .and_then(print::range::<Mass>)
        .map(|range| edition.shown(range.print(edition.units(), Rounding::Nearest)));
    let parts: Vec<Shown> = [meal, mass].into_iter().flatten().collect();
    if parts.is_empty() { edition.missing() } else { print::join(&parts, ", ") }
}

pub(super) fn next_meal(edition: &Edition<'_>, own: &AnimalFigures) -> Shown {
    match (own.feeding.next_due, own.feeding.due_until) {
        (Some(from), Some(until)) if until > from => Shown::plain(format!(
            "from {}, by {}",
            edition.long_date(from),
            edition.long_date(until)
        )),
        (Some(on), _) => Shown::plain(edition.long_date(on)),
        _ => edition.missing(),
    }
}

/// What it will need when it is grown.
pub(super) fn grown(
    species: &Species,
    own: &AnimalFigures,
    general: &SpeciesFigures,
    edition: &Edition<'_>,
) -> Chapter {
    let mut chapter = Chapter::new("grown", "What it will need");
    let adult = own.growth.adult;
    let ends = adult.map(|adult| (Some(adult.low_cm), Some(adult.high_cm)));
    chapter.facts.push(Fact::plain(
        "Length when grown",
        print::shown::<Length>(ends, edition, Rounding::Nearest),
    ));
    let basis = rests_on(own);
    chapter.facts.push(Fact::plain("That rests on", basis));
    let build = own.grown.as_ref().and_then(|space| space.build.as_ref());
    chapter.facts.push(Fact::plain(
        "Enclosure when grown, at least",
        build.map_or_else(|| edition.missing(), |build| print::sides(build.inside_cm, edition)),
    ));
    if let Some(years) = general.years {
        let days = (years.0.map(|years| years * 365.25), years.1.map(|years| years * 365.25));
        chapter.facts.push(Fact::plain(
            "Span of life",
            print::shown::<Span>(Some(days), edition, Rounding::Nearest),
        ));
    }
    if let Some(stage) = species.grown_stage() {
        let every = stage.every.as_ref().map(|every| {
            format!(
                ", every {}",
                edition.shown(every.value.print(edition.units(), Rounding::Nearest)).first
            )
        });
        let meal = stage.meal.clone().unwrap_or_default();
        chapter
            .facts
            .push(Fact::plain("Eats when grown", format!("{meal}{}", every.unwrap_or_default())));
    }
    chapter.facts.extend(upkeep::lifetime(own, edition));
    chapter.workings.push(WorkingBlock::from(&own.growth.working));
    if let Some(least) = own.grown.as_ref().and_then(|space| space.strictest().least.as_ref().ok())
    {
        chapter.workings.push(WorkingBlock {
            title: "Enclosure when grown".to_owned(),
            formula: "the standard's rule, applied to the projected adult length".to_owned(),
            steps: least.steps.clone(),
            assumptions: least.assumptions.clone(),
            publication: own
                .grown
                .as_ref()
                .map(|space| care::publication(edition, &space.strictest().standard))
                .unwrap_or_default(),
        });
    }
    chapter
}

/// Signs of illness, the most urgent first.
pub(super) fn signs(edition: &Edition<'_>, species: &Species) -> Chapter {
    let mut chapter = Chapter::new("signs", "When to ring a vet");
    chapter.tables.extend(tables::signs(species, edition));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain("Signs", edition.missing()));
    }
    chapter
}

fn rests_on(own: &AnimalFigures) -> String {
    let lengths = match own.growth.measurements {
        0 => "no length on record".to_owned(),
        1 => "one length on record".to_owned(),
        many => format!("{many} lengths on record"),
    };
    match own.growth.basis {
        "log" => format!("its own growth: {lengths}"),
        _ => format!("its species' range: {lengths}"),
    }
}
