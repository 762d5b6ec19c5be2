//! What an animal lives in, what it needs now, and what it will need when it is grown.

use crate::figures::enclosure::Shortfall;
use crate::figures::lifetime::inside_cm;
use crate::figures::{AnimalFigures, SpeciesFigures};
use crate::model::word::Thermostat;
use crate::model::{Animal, Species};
use crate::quantity::{Humidity, Length, Mass, Rounding, Span, print_one};

use super::blocks::{Chapter, Fact, Shown, Table, WorkingBlock};
use super::edition::Edition;
use super::{care, chart, drawing, phrases, print, tables, upkeep};

/// The set-up as it stands, with its readings.
pub(super) fn set_up(animal: &Animal, own: &AnimalFigures, edition: &Edition<'_>) -> Chapter {
    let mut chapter = Chapter::new("set-up", &edition.say("handover-set-up"));
    let say = |label| edition.say(label);
    let Some(housing) = &animal.housing else {
        chapter.facts.push(Fact::plain(say("handover-enclosure"), edition.missing()));
        return chapter;
    };
    chapter.facts.push(Fact::plain(
        say("handover-inside"),
        inside_cm(housing).map_or_else(|| edition.missing(), |cm| print::sides(cm, edition)),
    ));
    for heater in &housing.heaters {
        let mut parts = vec![edition.word("heater", heater.kind)];
        parts.extend(heater.power.map(|(power, _)| {
            edition.shown(print_one(power, edition.units(), Rounding::Nearest)).first
        }));
        let thermostat = heater.thermostat.map_or(Thermostat::Absent, |(kind, _)| kind);
        parts.push(edition.word("handover-thermostat", thermostat));
        for (label, set) in
            [("handover-set-to", heater.set_point), ("handover-set-night", heater.set_night)]
        {
            let Some((set, _)) = set else { continue };
            let set = edition.shown(print_one(set, edition.units(), Rounding::Nearest));
            parts.push(edition.tell(label, [("temperature", both(&set).into())]));
        }
        let guarded = heater.guard.is_some_and(|(guard, _)| guard);
        parts.push(say(if guarded { "handover-guarded" } else { "handover-no-guard" }));
        chapter.facts.push(Fact::plain(say("handover-heater"), parts.join(", ")));
    }
    for lamp in &housing.lamps {
        let mut parts = vec![lamp.kind.clone()];
        parts.extend(lamp.hours.map(|(hours, _)| {
            let hours = edition.shown(hours.print(edition.units(), Rounding::Nearest)).first;
            edition.tell("handover-lamp-hours", [("hours", hours.into())])
        }));
        parts.extend(lamp.distance.map(|distance| {
            let shown =
                edition.shown(print_one::<Length>(distance, edition.units(), Rounding::Nearest));
            edition.tell("handover-lamp-above", [("distance", both(&shown).into())])
        }));
        parts.extend(lamp.uvi.map(|(uvi, _)| {
            let uvi = edition.shown(uvi.print(edition.units(), Rounding::Nearest)).first;
            edition.tell("handover-lamp-there", [("uvi", uvi.into())])
        }));
        parts.extend(lamp.fitted.map(|(date, _)| {
            edition.tell("handover-lamp-fitted", [("date", edition.long_date(date).into())])
        }));
        chapter.facts.push(Fact::plain(say("handover-lamp"), parts.join(", ")));
    }
    if let Some(substrate) = &housing.substrate {
        let depth: Shown =
            edition.shown(print_one(substrate.thickness, edition.units(), Rounding::Nearest));
        chapter.facts.push(Fact::plain(
            say("handover-substrate"),
            format!("{}, {}", substrate.material, both(&depth)),
        ));
    }
    chapter.facts.push(Fact::plain(say("handover-hides"), housing.hides.len().to_string()));
    chapter.facts.push(Fact::plain(
        say("handover-power-cut"),
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
    let head = [
        "handover-probe",
        "handover-from-warm",
        "handover-by-day",
        "handover-by-night",
        "handover-humidity",
        "handover-humidity-most",
    ];
    tables::table(edition, "handover-readings", &head, rows)
}

/// What it needs now.
pub(super) fn now(
    animal: &Animal,
    species: &Species,
    own: &AnimalFigures,
    edition: &Edition<'_>,
) -> Chapter {
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("needs", &say("handover-needs"));
    for stated in species.stated().iter().filter(|stated| {
        stated.name.starts_with("temperature.") || stated.name.starts_with("humidity.")
    }) {
        chapter.facts.push(Fact::plain(
            phrases::figure(edition, stated),
            edition.shown(stated.amount.print(edition.units(), stated.rounding)),
        ));
    }
    let feeding = &own.feeding;
    chapter.facts.push(Fact::plain(
        say("handover-stage"),
        feeding.stage_name.clone().map_or_else(|| edition.missing(), Shown::plain),
    ));
    chapter.facts.push(Fact::plain(say("handover-meal"), meal(own, edition)));
    chapter.facts.push(Fact::plain(
        say("handover-interval"),
        print::shown::<Span>(feeding.interval_days, edition, Rounding::Nearest),
    ));
    chapter.facts.push(Fact::plain(say("handover-next-meal"), next_meal(edition, own)));
    if let Some(practice) = species.rest_after_meal.as_ref() {
        chapter.facts.push(Fact::plain(
            say("handover-rest"),
            edition.shown(practice.value.print(edition.units(), Rounding::Up)),
        ));
    }
    if let Some(space) = &own.now {
        for need in &space.needs {
            let least = need.least.as_ref().map_or_else(
                |_| Shown::plain(phrases::unmet(edition, need)),
                |least| print::least(least, edition),
            );
            let standard = care::standard_title(edition, &need.standard);
            let label = edition.tell("handover-least", [("standard", standard.into())]);
            chapter.facts.push(Fact::plain(label, least));
        }
    }
    if let Some(Err(short)) = &own.fits {
        let short = short.iter().map(|(standard, short)| falls_short(edition, standard, *short));
        let short = short.collect::<Vec<String>>().join("; ");
        chapter.facts.push(Fact::plain(say("handover-short"), short));
    }
    if let Some(until) = own.quarantine_until {
        chapter.facts.push(Fact::plain(say("handover-quarantine"), edition.long_date(until)));
    }
    if let Some(keeper) = &animal.notes.keeper {
        chapter.words = keeper.clone();
    }
    if let Some(((low, high), working)) = &own.energy {
        let (low, high) = (edition.number(*low, 1), edition.number(*high, 1));
        let times = [("low", low.into()), ("high", high.into())];
        let ratio = edition.tell("handover-energy-times", times);
        chapter.facts.push(Fact::plain(say("handover-energy"), ratio));
        chapter.workings.push(WorkingBlock::from(working));
    }
    if let Some(now) = own.upkeep.coil_cm[0] {
        let wide = |cm: f64| print::length(cm, edition).to_string();
        let width = own.upkeep.coil_cm[1].map_or_else(
            || wide(now),
            |grown| {
                let widths = [("now", wide(now).into()), ("grown", wide(grown).into())];
                edition.tell("handover-hide-grown", widths)
            },
        );
        chapter.facts.push(Fact::plain(say("handover-hide-width"), width));
    }
    chapter.workings.push(WorkingBlock::from(&feeding.working));
    chapter.workings.extend(own.humidity.working.as_ref().map(WorkingBlock::from));
    chapter
}

/// How an enclosure falls short of a standard.
fn falls_short(edition: &Edition<'_>, standard: &str, short: Shortfall) -> String {
    let label = match short {
        Shortfall::Length { .. } => "handover-short-length",
        Shortfall::Width { .. } => "handover-short-width",
        Shortfall::ShortestSide { .. } => "handover-short-side",
        Shortfall::Floor { .. } => "handover-short-floor",
        Shortfall::Height { .. } => "handover-short-height",
        Shortfall::WaterDepth { .. } => "handover-short-water-depth",
        Shortfall::Water { .. } => "handover-short-water",
    };
    let (_, needed, inside, unit, places) = short.parts();
    let measure = |value: f64| chart::measure(edition, value, places, unit);
    edition.tell(
        label,
        [
            ("standard", standard.into()),
            ("inside", measure(inside).into()),
            ("needed", measure(needed).into()),
            ("by", measure(short.by()).into()),
        ],
    )
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
        (Some(from), Some(until)) if until > from => Shown::plain(edition.tell(
            "handover-meal-between",
            [("from", edition.long_date(from).into()), ("until", edition.long_date(until).into())],
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
    let say = |label| edition.say(label);
    let mut chapter = Chapter::new("grown", &say("handover-grown"));
    let adult = own.growth.adult;
    let ends = adult.map(|adult| (Some(adult.low_cm), Some(adult.high_cm)));
    chapter.facts.push(Fact::plain(
        say("handover-length-grown"),
        print::shown::<Length>(ends, edition, Rounding::Nearest),
    ));
    chapter.facts.push(Fact::plain(say("handover-rests-on"), rests_on(edition, own)));
    let build = own.grown.as_ref().and_then(|space| space.build.as_ref());
    chapter.facts.push(Fact::plain(
        say("handover-enclosure-grown"),
        build.map_or_else(|| edition.missing(), |build| print::sides(build.inside_cm, edition)),
    ));
    if let Some(years) = general.years {
        let days = (years.0.map(|years| years * 365.25), years.1.map(|years| years * 365.25));
        chapter.facts.push(Fact::plain(
            say("handover-life"),
            print::shown::<Span>(Some(days), edition, Rounding::Nearest),
        ));
    }
    if let Some(stage) = species.grown_stage() {
        let mut eats = stage.meal.clone().unwrap_or_default();
        if let Some(every) = &stage.every {
            let every = edition.shown(every.value.print(edition.units(), Rounding::Nearest)).first;
            let meals = [("meal", eats.into()), ("every", every.into())];
            eats = edition.tell("handover-eats-every", meals);
        }
        chapter.facts.push(Fact::plain(say("handover-eats-grown"), eats));
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
    let mut chapter = Chapter::new("signs", &edition.say("handover-signs"));
    chapter.tables.extend(tables::signs(species, edition));
    if chapter.tables.is_empty() {
        chapter.facts.push(Fact::plain(edition.say("handover-no-signs"), edition.missing()));
    }
    chapter
}

fn rests_on(edition: &Edition<'_>, own: &AnimalFigures) -> String {
    let label = match own.growth.basis {
        "log" => "handover-rests-growth",
        _ => "handover-rests-species",
    };
    edition.tell(label, [("count", own.growth.measurements.into())])
}
