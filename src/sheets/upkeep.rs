//! What keeping one animal takes: heat, power, water, light, and what its instruments should show.

use crate::figures::formula::cooling::STORE_UNCERTAINTY;
use crate::figures::formula::heat::UNCERTAINTY;
use crate::figures::heat::HeatFigures;
use crate::figures::instruments::{humidity_offset, sure_band, temperature_offset};
use crate::figures::lamp::LampDistance;
use crate::figures::upkeep::clock;
use crate::figures::{Absence, AnimalFigures, SpeciesFigures};
use crate::model::Animal;
use crate::model::housing::{Housing, Instrument, Probe};
use crate::model::word::Zone;
use crate::quantity::{Humidity, Range, Rounding, Temperature, print_one};

use super::blocks::{Chapter, Fact, Shown, Table, WorkingBlock};
use super::edition::Edition;
use super::{absent, print};

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
    let mut chapter = Chapter::new("upkeep", &edition.say("upkeep-title"));
    match &own.heat {
        Some(heat) => chapter.facts.extend(heating(heat, edition)),
        None => {
            let why = own.no_heat.as_ref().map(|reason| not_worked_out(edition, reason));
            chapter.facts.push(Fact::plain(edition.say("upkeep-heat"), why.unwrap_or_default()));
        }
    }
    if let Some(moisture) = &own.moisture {
        let water = ("water", edition.number(moisture.water_ml_per_day, 0).into());
        let water = match moisture.spray_ml {
            None => edition.tell("upkeep-water-in-a-day", [water]),
            Some(ml) => {
                let each = ("each", edition.number(ml, 0).into());
                edition.tell("upkeep-water-and-spray", [water, each])
            }
        };
        chapter.facts.push(Fact::plain(edition.say("upkeep-water"), water));
    }
    if let Some(celsius) = own.condenses_below_c {
        let dew: Shown = edition.shown(print_one(
            Temperature::from_celsius(celsius),
            edition.units(),
            Rounding::Up,
        ));
        chapter.facts.push(Fact::plain(edition.say("upkeep-dew"), dew));
    }
    chapter.facts.extend(lights(own, edition));
    chapter.facts.extend(own.lamps.iter().map(|found| lamp(found.as_ref(), edition)));
    if let Some(cost) = &own.cost {
        let (low, high) = cost.per_year;
        let about = [
            ("low", edition.number(low, 0).into()),
            ("high", edition.number(high, 0).into()),
            ("currency", cost.currency.as_str().into()),
        ];
        let cost = edition.tell("upkeep-cost", about);
        chapter.facts.push(Fact::plain(edition.say("upkeep-costs"), cost));
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

/// When its lights are switched.
pub(super) fn lights(own: &AnimalFigures, edition: &Edition<'_>) -> Option<Fact> {
    let (on, off) = own.upkeep.lights_h?;
    let hours = [("on", clock(on).into()), ("off", clock(off).into())];
    Some(Fact::plain(edition.say("upkeep-lights"), edition.tell("upkeep-lights-on-off", hours)))
}

fn lamp(found: Result<&LampDistance, &Absence>, edition: &Edition<'_>) -> Fact {
    let lamp = match found {
        Ok(lamp) => lamp,
        Err(why) => {
            let label = edition.say("upkeep-lamp-distance");
            return Fact::plain(label, not_worked_out(edition, why));
        }
    };
    let length = |cm: f64| print::length(cm, edition).to_string().into();
    let near = ("near", length(lamp.nearest_cm));
    let far = ("far", length(lamp.farthest_cm));
    let above = match lamp.nearest_interval_cm {
        None => edition.tell("upkeep-lamp-above", [near, far]),
        Some((low, high)) => {
            let low = ("low", edition.number(low, 0).into());
            let high = ("high", edition.number(high, 0).into());
            edition.tell("upkeep-lamp-above-sure", [near, far, low, high])
        }
    };
    Fact::plain(edition.tell("upkeep-lamp", [("lamp", lamp.lamp.as_str().into())]), above)
}

fn not_worked_out(edition: &Edition<'_>, reason: &Absence) -> String {
    edition.tell("upkeep-not-worked-out", [("reason", absent::told(edition, reason).into())])
}

fn heating(heat: &HeatFigures, edition: &Edition<'_>) -> Vec<Fact> {
    let say = |label| edition.say(label);
    let whole = |number: f64| edition.number(number, 0).into();
    let lost = [("usual", whole(heat.typical_w)), ("coldest", whole(heat.worst_w))];
    let installed = [("watts", whole(heat.installed_w))];
    let mut facts = vec![
        Fact::plain(say("upkeep-heat-lost"), edition.tell("upkeep-heat-lost-watts", lost)),
        Fact::plain(say("upkeep-heaters"), edition.tell(enough(heat), installed)),
    ];
    if let Some(duty) = heat.duty_percent {
        let share = edition.tell("upkeep-duty-share", [("share", whole(duty))]);
        facts.push(Fact::plain(say("upkeep-duty"), share));
    }
    let kwh = ("kwh", whole(heat.kwh_per_month));
    let used = match &heat.cost_per_month {
        None => edition.tell("upkeep-electricity-kwh", [kwh]),
        Some((amount, currency)) => edition.tell(
            "upkeep-electricity-kwh-cost",
            [kwh, ("amount", whole(*amount)), ("currency", currency.as_str().into())],
        ),
    };
    facts.push(Fact::plain(say("upkeep-electricity"), used));
    facts.extend(savings(heat, edition));
    facts.extend(bears_power_cut(heat, edition));
    if let Some(room) = heat.all_off_above_room_c {
        let room: Shown = edition.shown(print_one(
            Temperature::from_celsius(room),
            edition.units(),
            Rounding::Down,
        ));
        let above = [("room", room.to_string().into())];
        let above = edition.tell("upkeep-heat-wave-above", above);
        facts.push(Fact::plain(say("upkeep-heat-wave"), above));
    }
    let sure = edition.tell("upkeep-sure-share", [("share", whole(UNCERTAINTY * 100.0))]);
    facts.push(Fact::plain(say("upkeep-sure"), sure));
    facts
}

/// What better walls and less air would save, where it is worth a word.
fn savings(heat: &HeatFigures, edition: &Edition<'_>) -> Option<Fact> {
    let saved = |left_w: f64| 100.0 * (heat.typical_w - left_w) / heat.typical_w;
    let foam = heat.insulated_typical_w.map(saved).filter(|share| *share >= 1.0);
    let air = Some(saved(heat.half_air_typical_w)).filter(|share| *share >= 1.0);
    let share = |share: f64| [("share", edition.number(share, 0).into())];
    let foam = foam.map(|saved| edition.tell("upkeep-savings-foam", share(saved)));
    let air = air.map(|saved| edition.tell("upkeep-savings-air", share(saved)));
    let all: Vec<String> = [foam, air].into_iter().flatten().collect();
    (!all.is_empty()).then(|| Fact::plain(edition.say("upkeep-savings"), all.join("; ")))
}

/// How long it bears a power cut: rounded to the safe side, and as expected.
fn hours_without_power(heat: &HeatFigures, edition: &Edition<'_>) -> Option<String> {
    let hours = heat.hours_without_power?;
    let early = hours * (1.0 - STORE_UNCERTAINTY) / (1.0 + UNCERTAINTY);
    let (early, expected) = (edition.number(early.floor(), 0), edition.number(hours, 0));
    let hours = [("early", early.into()), ("expected", expected.into())];
    Some(edition.tell("upkeep-hours-without-power", hours))
}

/// How long it bears a power cut, or why no hours can be told.
fn bears_power_cut(heat: &HeatFigures, edition: &Edition<'_>) -> Option<Fact> {
    let why = || heat.no_hours.as_ref().map(|reason| absent::told(edition, reason));
    let told = hours_without_power(heat, edition).or_else(why)?;
    Some(Fact::plain(edition.say("upkeep-without-power"), told))
}

/// The same as a fact of its own.
pub(super) fn power_cut(own: &AnimalFigures, edition: &Edition<'_>) -> Option<Fact> {
    bears_power_cut(own.heat.as_ref()?, edition)
}

fn enough(heat: &HeatFigures) -> &'static str {
    if heat.installed_w >= heat.worst_w {
        "upkeep-heaters-enough"
    } else if heat.installed_w >= heat.night_w {
        "upkeep-heaters-enough-by-night"
    } else {
        "upkeep-heaters-too-small"
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
        let named = || [("probe", probe.name.as_str().into())];
        if let Some((low, high)) = wanted_c(probe, general) {
            let (offset, accuracy) = temperature_error(&probe.instrument);
            let margin = (TOLERANCE_K, TOLERANCE_K);
            rows.push(row::<Temperature>(
                edition.tell("upkeep-temperature-at", named()),
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
                edition.tell("upkeep-humidity-at", named()),
                &Wanted { low, high, offset, accuracy, margin },
                edition,
            ));
        }
    }
    let head =
        ["upkeep-instrument", "upkeep-right", "upkeep-act-now"].map(|head| edition.say(head));
    let head = head.each_ref().map(String::as_str);
    let mut table = Table::of(edition.say("upkeep-instruments"), &head, rows)?;
    table.note = Some(edition.say("upkeep-instruments-note"));
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
    label: String,
    wanted: &Wanted,
    edition: &Edition<'_>,
) -> Vec<Shown> {
    let sure = sure_band(wanted.low, wanted.high, wanted.offset, wanted.accuracy);
    let (below, above) = wanted.margin;
    let wrong = (wanted.low - below - wanted.offset, wanted.high + above - wanted.offset);
    let range =
        |(low, high): (f64, f64)| Range::between(Q::from_base(low), Q::from_base(high)).ok();
    let right = sure.and_then(range).map_or_else(
        || Shown::plain(edition.say("upkeep-too-rough")),
        |range| edition.shown(range.print(edition.units(), Rounding::Inward)),
    );
    let below: Shown =
        edition.shown(print_one(Q::from_base(wrong.0), edition.units(), Rounding::Up));
    let above: Shown =
        edition.shown(print_one(Q::from_base(wrong.1), edition.units(), Rounding::Down));
    let outside = |(below, above): (String, String)| {
        let ends = [("below", below.into()), ("above", above.into())];
        edition.tell("upkeep-below-or-above", ends)
    };
    let act = Shown {
        second: below.second.zip(above.second).map(outside),
        ..Shown::plain(outside((below.first, above.first)))
    };
    vec![Shown::plain(label), right, act]
}

/// What its species asks for in the zone that a probe reads, °C.
pub(super) fn wanted_c(probe: &Probe, general: &SpeciesFigures) -> Option<(f64, f64)> {
    let gradient = &general.gradient;
    let (low, high) = match probe.zone? {
        Zone::Basking => gradient.basking_c,
        Zone::Warm => gradient.warm_c,
        Zone::Cool => gradient.cool_c,
        Zone::Water => gradient.water_c,
    }?;
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
    let say = |label| edition.say(label);
    let date = |date: Option<jiff::civil::Date>| {
        date.map_or_else(|| say("upkeep-outgrown-not-expected"), |date| edition.long_date(date))
    };
    let mut facts = Vec::new();
    if own.growth.not_enough_yet {
        facts.push(Fact::plain(say("upkeep-own-growth"), say("upkeep-own-growth-open")));
    }
    if let Some(cm) = own.growth.still_to_come_cm.filter(|cm| *cm >= 0.5) {
        facts.push(Fact::plain(say("upkeep-growth-to-come"), print::length(cm, edition)));
    }
    match (&own.outgrown, &own.not_outgrown) {
        (Some(outgrown), _) => {
            let dates = &outgrown.dates;
            let at = print::length(outgrown.at_cm, edition);
            let dates = [
                ("earliest", date(dates.earliest).into()),
                ("expected", date(dates.expected).into()),
                ("latest", date(dates.latest).into()),
            ];
            facts.push(Fact::plain(
                edition.tell("upkeep-outgrown-at", [("length", at.first.into())]),
                edition.tell("upkeep-outgrown-dates", dates),
            ));
        }
        (None, Some(why)) => {
            facts.push(Fact::plain(say("upkeep-outgrown-when"), absent::told(edition, why)))
        }
        (None, None) => {}
    }
    if let Some((first, last)) = own.upkeep.until {
        let year = |year: i16| year.to_string().into();
        let text = match (first, last) {
            (Some(first), Some(last)) if first < last => {
                let years = [("first", year(first)), ("last", year(last))];
                edition.tell("upkeep-life-between", years)
            }
            (_, Some(last)) => edition.tell("upkeep-life-at-latest", [("last", year(last))]),
            (Some(first), None) => edition.tell("upkeep-life-at-least", [("first", year(first))]),
            (None, None) => return facts,
        };
        facts.push(Fact::plain(say("upkeep-life-lasts"), text));
    }
    facts
}

/// How its weight has changed, and how long it has gone without food.
pub(super) fn condition(edition: &Edition<'_>, own: &AnimalFigures) -> Vec<Fact> {
    let change = |percent: f64| {
        format!("{}{} %", if percent > 0.0 { "+" } else { "" }, edition.number(percent, 1))
    };
    let mut facts = Vec::new();
    for (percent, days) in own.upkeep.weight_percent.into_iter().zip([30, 90]) {
        let text = percent.map_or_else(|| edition.missing(), |percent| change(percent).into());
        facts.push(Fact::plain(edition.tell("upkeep-weight-over", [("days", days.into())]), text));
    }
    if let Some(days) = own.upkeep.fast_days {
        let text = match own.upkeep.fast_limit_days {
            None => days.to_string(),
            Some(limit) => {
                let limit = ("limit", print::days(limit, edition).first.into());
                edition.tell("upkeep-days-fasted", [("days", days.into()), limit])
            }
        };
        facts.push(Fact::plain(edition.say("upkeep-days-since-it-ate"), text));
    }
    facts
}
