//! What a site keeps in store: its ladder of prey sizes, its disinfectants, its rooms and socket strips, and the hours of
//! its lights.

use crate::finding::Finding;
use crate::model::site::{Disinfectant, MixStrength, Room, Strip};
use crate::quantity::{Fault, Mass, Power, Range, Share, Volume, parse_one};

use super::codes;
use super::table::Table;

/// `[prey]`: a name and the mass of one animal of it, in rising order of mass.
pub(super) fn prey(table: &Table<'_, '_>) -> Vec<(String, Range<Mass>)> {
    let mut ladder: Vec<(String, Range<Mass>)> = table
        .names()
        .into_iter()
        .filter_map(|named| Some((table.range(&named.name)?.0, named.name)))
        .map(|(mass, name)| (name, mass))
        .collect();
    let from_g = |range: &Range<Mass>| range.low().or(range.high()).map_or(0.0, Mass::grams);
    ladder.sort_by(|(_, a), (_, b)| from_g(a).total_cmp(&from_g(b)));
    table.close();
    ladder
}

/// Takes an hour of the day, `"08:30"`, as hours after midnight.
pub(super) fn hour(table: &Table<'_, '_>, key: &str) -> Option<f64> {
    let named = table.named(key)?;
    let read = named.name.split_once(':').and_then(|(hours, minutes)| {
        let (hours, minutes) = (hours.parse::<u8>().ok()?, minutes.parse::<u8>().ok()?);
        (hours < 24 && minutes < 60).then(|| f64::from(hours) + f64::from(minutes) / 60.0)
    });
    if read.is_none() {
        let message = format!("`{}` is not an hour of the day", table.full_name(key));
        table.report(
            Finding::new(&codes::DATE_UNREADABLE, named.place, message)
                .help("write hours and minutes: \"08:30\""),
        );
    }
    read
}

/// `[[disinfectant]]`: a mix by ratio (`one_part_in = 32`) or by per cent, and the bucket it is mixed in.
pub(super) fn disinfectant(table: &Table<'_, '_>) -> Option<Disinfectant> {
    let name = table.text("name");
    let parts = table.number("one_part_in").map(|(parts, _)| f64::from(parts));
    let percent = |key| table.one::<Share>(key).map(|(share, _)| share.percent());
    let (mix, active, bottle) = (percent("of_bottle"), percent("active"), percent("bottle_active"));
    let bucket = table.one::<Volume>("bucket").map(|(bucket, _)| bucket);
    let keeps = table.one("keeps").map(|(span, _)| span);
    let against = table.list("against");
    let strength = match (parts, mix, active, bottle) {
        (Some(parts), ..) => Some(MixStrength::OnePartIn(parts)),
        (_, Some(percent), ..) => Some(MixStrength::PercentOfBottle(percent)),
        (.., Some(wanted), Some(bottle)) => Some(MixStrength::PercentActive { wanted, bottle }),
        _ => None,
    };
    if name.is_none() {
        table.missing("name", "what it is: name = \"household bleach\"");
    }
    if strength.is_none() {
        table.missing("one_part_in", "its strength: one_part_in = 32, of_bottle = \"3 %\", or active = \"0.5 %\" with bottle_active = \"4 %\"");
    }
    if bucket.is_none() {
        table.missing("bucket", "how much is mixed: bucket = \"5 l\"");
    }
    table.close();
    Some(Disinfectant {
        name: name?,
        place: table.place(),
        strength: strength?,
        bucket: bucket?,
        keeps,
        against,
    })
}

/// `[[strip]]`: a socket strip and what it may carry.
pub(super) fn strip(table: &Table<'_, '_>) -> Option<Strip> {
    let name = table.text("name");
    let rating = table.parsed("rating", rating).map(|(rating, _)| rating);
    if name.is_none() {
        table.missing("name", "what it is called: name = \"shelf, left\"");
    }
    if rating.is_none() {
        table.missing("rating", "what it may carry: rating = \"3000 W\", or \"13 A x 230 V\"");
    }
    table.close();
    Some(Strip { name: name?, place: table.place(), rating: rating? })
}

/// A rating stands on a strip in watts, or in amperes beside the volts of the mains: power is their product.
fn rating(text: &str) -> Result<Power, Fault> {
    let product = text.split_once(['x', '×', 'X']).and_then(|(amperes, volts)| {
        let number = |text: &str, unit| text.trim().strip_suffix(unit)?.trim().parse::<f64>().ok();
        let watts = number(amperes, 'A')? * number(volts, 'V')?;
        (watts.is_finite() && watts >= 0.0).then_some(watts)
    });
    match product {
        Some(watts) => Ok(Power::from_watts(watts)),
        None => parse_one(text),
    }
}

/// `[[room]]`: a room, and whether a smoke alarm hangs in it.
pub(super) fn room(table: &Table<'_, '_>) -> Option<Room> {
    let name = table.text("name");
    if name.is_none() {
        table.missing("name", "what it is called: name = \"back room\"");
    }
    let smoke_alarm = table.flag("smoke_alarm");
    table.close();
    Some(Room { name: name?, place: table.place(), smoke_alarm })
}
