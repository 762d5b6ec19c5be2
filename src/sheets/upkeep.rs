//! What keeping one animal takes: heat, power, water, light, and what its instruments should show.

use crate::figures::formula::cooling::STORE_UNCERTAINTY;
use crate::figures::formula::heat::UNCERTAINTY;
use crate::figures::heat::HeatFigures;
use crate::figures::instruments::{humidity_offset, sure_band, temperature_offset};
use crate::figures::upkeep::clock;
use crate::figures::working::number;
use crate::figures::{AnimalFigures, SpeciesFigures};
use crate::model::Animal;
use crate::model::housing::{Housing, Instrument, Probe};
use crate::quantity::{Humidity, Range, Rounding, Temperature, print_one};

use super::blocks::{Chapter, Fact, Shown, Table, WorkingBlock};
use super::edition::Edition;
use super::print;

/// How far outside its range a reading calls for action and not for a second look; common practice, no source.
const TOLERANCE_K: f64 = 1.0;
/// The same for a humidity below its range.
const TOLERANCE_PERCENT: f64 = 5.0;

/// Heat, power, water and light of an animal's enclosure.
pub(super) fn upkeep(
    animal: &Animal,
    own: &AnimalFigures,
    general: &SpeciesFigures,
    edition: &Edition<'_>,
) -> Chapter {
    let mut chapter = Chapter::new("upkeep", "Heat, power and water");
    match &own.heat {
        Some(heat) => chapter.facts.extend(heating(heat, edition)),
        None => {
            let why = own.why.get("heat").cloned().unwrap_or_default();
            chapter.facts.push(Fact::plain("Heat", format!("not worked out: {why}")));
        }
    }
    if let Some(moisture) = &own.moisture {
        let each = moisture
            .spray_ml
            .map(|ml| format!(", {} ml at each spraying", number(ml, 0)))
            .unwrap_or_default();
        let water = format!(
            "about {} ml evaporates in a day from bowl, substrate and spray{each}",
            number(moisture.water_ml_per_day, 0)
        );
        chapter.facts.push(Fact::plain("Water to hold the humidity", water));
    }
    if let Some(celsius) = own.condenses_below_c {
        let dew: Shown = edition.shown(print_one(
            Temperature::from_celsius(celsius),
            edition.units(),
            Rounding::Up,
        ));
        chapter.facts.push(Fact::plain("Water settles on anything colder than", dew));
    }
    if let Some((on, off)) = own.upkeep.lights_h {
        chapter
            .facts
            .push(Fact::plain("Lights", format!("on at {}, off at {}", clock(on), clock(off))));
    }
    for lamp in &own.lamps {
        let (label, text) = match lamp {
            Ok(lamp) => {
                let (near, far) = (
                    print::length(lamp.nearest_cm, edition),
                    print::length(lamp.farthest_cm, edition),
                );
                let sure = lamp.nearest_interval_cm.map(|(low, high)| {
                    format!(
                        "; the nearer end may lie between {} and {} cm",
                        number(low, 0),
                        number(high, 0)
                    )
                });
                (
                    format!("{}, for the species' ultraviolet band", lamp.lamp),
                    format!("{near} to {far} above its back{}", sure.unwrap_or_default()),
                )
            }
            Err(why) => ("Distance of a lamp".to_owned(), format!("not worked out: {why}")),
        };
        chapter.facts.push(Fact::plain(label, text));
    }
    if let Some(cost) = &own.cost {
        let (low, high) = cost.per_year;
        chapter.facts.push(Fact::plain(
            "Costs in a year, without vets",
            format!("about {}–{} {}", number(low, 0), number(high, 0), cost.currency),
        ));
    }
    if let Some(housing) = &animal.housing {
        chapter.tables.extend(instruments(housing, own, general, edition));
    }
    chapter.workings.extend(own.heat.iter().map(|heat| WorkingBlock::from(&heat.working)));
    chapter
        .workings
        .extend(own.moisture.iter().map(|moisture| WorkingBlock::from(&moisture.working)));
    chapter.workings.extend(own.cost.iter().map(|cost| WorkingBlock::from(&cost.working)));
    chapter
}

fn heating(heat: &HeatFigures, edition: &Edition<'_>) -> Vec<Fact> {
    let watts = |watts: f64| format!("{} W", number(watts, 0));
    let mut facts = vec![
        Fact::plain(
            "Heat lost in the usual room, and in the coldest night",
            format!("{} and {}", watts(heat.typical_w), watts(heat.worst_w)),
        ),
        Fact::plain("Heaters installed", format!("{}: {}", watts(heat.installed_w), enough(heat))),
    ];
    if let Some(duty) = heat.duty_percent {
        facts.push(Fact::plain("They run", format!("about {} % of the time", number(duty, 0))));
    }
    let cost = heat
        .cost_per_month
        .as_ref()
        .map(|(amount, currency)| format!(", {} {currency}", number(*amount, 0)))
        .unwrap_or_default();
    facts.push(Fact::plain(
        "Electricity for heat in a month",
        format!("about {} kWh{cost}", number(heat.kwh_per_month, 0)),
    ));
    facts.extend(savings(heat));
    if let Some(text) = bears_power_cut(heat) {
        facts.push(Fact::plain("Without power", text));
    }
    if let Some(room) = heat.all_off_above_room_c {
        let room: Shown = edition.shown(print_one(
            Temperature::from_celsius(room),
            edition.units(),
            Rounding::Down,
        ));
        facts.push(Fact::plain("In a heat wave", format!("above {room} in the room, a heater that sticks on would overheat it: switch them off at the wall")));
    }
    let share = number(UNCERTAINTY * 100.0, 0);
    facts.push(Fact::plain("How sure", format!("a steady estimate that may be off by {share} % either way; wiring is an electrician's work")));
    facts
}

/// What better walls and less air would save, where it is worth a word.
fn savings(heat: &HeatFigures) -> Option<Fact> {
    let saved = |left_w: f64| 100.0 * (heat.typical_w - left_w) / heat.typical_w;
    let foam = heat.insulated_typical_w.map(saved).filter(|share| *share >= 1.0);
    let air = Some(saved(heat.half_air_typical_w)).filter(|share| *share >= 1.0);
    let foam = foam.map(|share| {
        format!("2 cm of foam on every wall but the front about {} %", number(share, 0))
    });
    let air = air.map(|share| {
        format!("half the air exchange about {} %, if the humidity allows it", number(share, 0))
    });
    let all: Vec<String> = [foam, air].into_iter().flatten().collect();
    (!all.is_empty()).then(|| Fact::plain("Would save of that", all.join("; ")))
}

/// How long it bears a power cut: rounded to the safe side, and as expected.
fn hours_without_power(heat: &HeatFigures) -> Option<String> {
    let hours = heat.hours_without_power?;
    let early = hours * (1.0 - STORE_UNCERTAINTY) / (1.0 + UNCERTAINTY);
    Some(format!(
        "harm may begin after {} hours in the coldest night, {} hours expected",
        number(early.floor(), 0),
        number(hours, 0)
    ))
}

/// How long it bears a power cut, or why no hours can be told.
fn bears_power_cut(heat: &HeatFigures) -> Option<String> {
    let why = || heat.why.iter().find(|(name, _)| *name == "heat.hours_without_power");
    hours_without_power(heat).or_else(|| why().map(|(_, why)| why.clone()))
}

/// The same as a fact of its own.
pub(super) fn power_cut(own: &AnimalFigures) -> Option<Fact> {
    Some(Fact::plain("Without power", bears_power_cut(own.heat.as_ref()?)?))
}

fn enough(heat: &HeatFigures) -> &'static str {
    if heat.installed_w >= heat.worst_w {
        "enough for the coldest night"
    } else if heat.installed_w >= heat.night_w {
        "enough for the night's own temperatures, not to hold the day's gradient through the coldest night"
    } else {
        "too small for the coldest night"
    }
}

/// What each instrument should show: surely right, look again, act now. Rounded to the safe side.
pub(super) fn instruments(
    housing: &Housing,
    own: &AnimalFigures,
    general: &SpeciesFigures,
    edition: &Edition<'_>,
) -> Option<Table> {
    let mut rows = Vec::new();
    for probe in &housing.probes {
        if let Some((low, high)) = wanted_c(probe, general) {
            let (offset, accuracy) = temperature_error(&probe.instrument);
            let margin = (TOLERANCE_K, TOLERANCE_K);
            rows.push(row::<Temperature>(
                &format!("{}, temperature", probe.name),
                &Wanted { low, high, offset, accuracy, margin },
                edition,
            ));
        }
        let ceiling = own.humidity.readings.iter().find(|reading| reading.zone == probe.name);
        let floor = own.humidity.range_percent.and_then(|(low, _)| low);
        if let (Some(ceiling), Some(floor), true) = (ceiling, floor, probe.humidity.is_some()) {
            // The range holds at the cool side; a warmer hygrometer reads the same air drier, so its floor is carried too.
            let carried = ceiling.at_most_percent
                / own.humidity.ceiling_percent.unwrap_or(ceiling.at_most_percent);
            let (low, high) = (floor * carried, ceiling.at_most_percent);
            let (offset, accuracy) = humidity_error(&probe.instrument);
            // A ceiling is a ceiling: nothing is allowed above it.
            let margin = (TOLERANCE_PERCENT, 0.0);
            rows.push(row::<Humidity>(
                &format!("{}, humidity", probe.name),
                &Wanted { low, high, offset, accuracy, margin },
                edition,
            ));
        }
    }
    let caption = "What the instruments should show by day";
    let mut table = Table::of(caption, &["Instrument", "Right", "Act now"], rows)?;
    table.note = Some("Between the two, look again after half an hour: is the probe in its place, is the door shut? Each instrument's own accuracy and tests are in these numbers.".to_owned());
    Some(table)
}

/// What is wanted at a place, what the instrument does to it, and how far outside it a reading is no accident.
struct Wanted {
    low: f64,
    high: f64,
    offset: f64,
    accuracy: f64,
    margin: (f64, f64),
}

fn row<Q: crate::quantity::Quantity>(
    label: &str,
    wanted: &Wanted,
    edition: &Edition<'_>,
) -> Vec<Shown> {
    let sure = sure_band(wanted.low, wanted.high, wanted.offset, wanted.accuracy);
    let (below, above) = wanted.margin;
    let wrong = (wanted.low - below - wanted.offset, wanted.high + above - wanted.offset);
    let range =
        |(low, high): (f64, f64)| Range::between(Q::from_base(low), Q::from_base(high)).ok();
    let right = sure.and_then(range).map_or_else(
        || Shown::plain("too rough an instrument to be sure"),
        |range| edition.shown(range.print(edition.units(), Rounding::Inward)),
    );
    let below: Shown =
        edition.shown(print_one(Q::from_base(wrong.0), edition.units(), Rounding::Up));
    let above: Shown =
        edition.shown(print_one(Q::from_base(wrong.1), edition.units(), Rounding::Down));
    let act = Shown {
        missing: false,
        first: format!("below {} or above {}", below.first, above.first),
        second: below
            .second
            .zip(above.second)
            .map(|(below, above)| format!("below {below} or above {above}")),
    };
    vec![Shown::plain(label), right, act]
}

/// The zone that a probe's name begins with, °C.
pub(super) fn wanted_c(probe: &Probe, general: &SpeciesFigures) -> Option<(f64, f64)> {
    let gradient = &general.gradient;
    let zone = match probe.name.split_whitespace().next()? {
        "basking" | "hot" => gradient.basking_c,
        "warm" => gradient.warm_c,
        "cool" | "cold" => gradient.cool_c,
        "water" => gradient.water_c,
        _ => None,
    };
    let (low, high) = zone?;
    low.zip(high)
}

fn temperature_error(instrument: &Instrument) -> (f64, f64) {
    let offset = temperature_offset(instrument).unwrap_or(0.0);
    (offset, instrument.accuracy.map_or(0.0, |accuracy| accuracy.kelvin()))
}

fn humidity_error(instrument: &Instrument) -> (f64, f64) {
    let offset = humidity_offset(instrument).unwrap_or(0.0);
    (offset, instrument.humidity_accuracy.map_or(0.0, |accuracy| accuracy.percent()))
}

/// The growth still to come and when the present enclosure runs out.
pub(super) fn lifetime(own: &AnimalFigures, edition: &Edition<'_>) -> Vec<Fact> {
    let date = |date: Option<jiff::civil::Date>| {
        date.map_or("not expected".to_owned(), |date| edition.long_date(date))
    };
    let mut facts = Vec::new();
    if own.growth.not_enough_yet {
        facts.push(Fact::plain("Its own growth", "not enough to tell yet: the lengths leave the adult length as open as the species does"));
    }
    if let Some(cm) = own.growth.still_to_come_cm.filter(|cm| *cm >= 0.5) {
        facts.push(Fact::plain("Growth still to come", print::length(cm, edition)));
    }
    match (&own.outgrown, own.why.get("enclosure.outgrown")) {
        (Some(outgrown), _) => {
            let dates = &outgrown.dates;
            let at = print::length(outgrown.at_cm, edition);
            facts.push(Fact::plain(
                format!("Its enclosure is outgrown at {}", at.first),
                format!(
                    "earliest {}, expected {}, latest {}",
                    date(dates.earliest),
                    date(dates.expected),
                    date(dates.latest)
                ),
            ));
        }
        (None, Some(why)) => facts.push(Fact::plain("When its enclosure is outgrown", why.clone())),
        (None, None) => {}
    }
    if let Some((first, last)) = own.upkeep.until {
        let text = match (first, last) {
            (Some(first), Some(last)) if first < last => format!("between {first} and {last}"),
            (_, Some(last)) => format!("until {last} at the latest"),
            (Some(first), None) => format!("until {first} at least"),
            (None, None) => return facts,
        };
        facts.push(Fact::plain("A life like this lasts", text));
    }
    facts
}

/// How its weight has changed, and how long it has gone without food.
pub(super) fn condition(edition: &Edition<'_>, own: &AnimalFigures) -> Vec<Fact> {
    let change =
        |percent: f64| format!("{}{} %", if percent > 0.0 { "+" } else { "" }, number(percent, 1));
    let mut facts = Vec::new();
    for (percent, span) in own.upkeep.weight_percent.into_iter().zip(["30 days", "90 days"]) {
        let text = percent.map_or_else(|| "not known".to_owned(), change);
        facts.push(Fact::plain(format!("Weight over {span}"), text));
    }
    if let Some(days) = own.upkeep.fast_days {
        let limit = own.upkeep.fast_limit_days.map(|limit| {
            format!("; up to {} is normal for its species", print::days(limit, edition).first)
        });
        facts
            .push(Fact::plain("Days since it ate", format!("{days}{}", limit.unwrap_or_default())));
    }
    facts
}
