//! What data loggers have recorded, for the record: one table for all probes, and a curve for each.

use crate::figures::AnimalFigures;
use crate::figures::logger::{DayEnds, LoggerFigures, Shares, Spell};
use crate::figures::working::{Ends, number};
use crate::quantity::{Humidity, Quantity, Range, Rounding, System, Temperature, print_one};

use super::blocks::{Chapter, Shown, Table};
use super::chart::{Chart, Plot, chart};
use super::edition::Edition;

/// The table of what was recorded; none where nothing was.
pub(super) fn chapter(own: &AnimalFigures, edition: &Edition<'_>) -> Option<Chapter> {
    let loggers = &own.loggers;
    if loggers.is_empty() {
        return None;
    }
    let mut chapter = Chapter::new("recorded", "Recorded by data loggers");
    let head = std::iter::once("What").chain(loggers.iter().map(|logger| logger.probe.as_str()));
    let head: Vec<&str> = head.collect();
    let row = |label: &str, cell: &dyn Fn(&LoggerFigures) -> Shown| {
        std::iter::once(Shown::plain(label)).chain(loggers.iter().map(cell)).collect::<Vec<_>>()
    };
    let rows = vec![
        row("From", &|one| Shown::plain(moment(edition, one.ends.0))),
        row("Until", &|one| Shown::plain(moment(edition, one.ends.1))),
        row("Readings", &|one| {
            let step = number(one.step_min, 1);
            Shown::plain(format!("{}, one every {step} minutes as a rule", one.readings))
        }),
        row("By day, of the time", &|one| shares(one.day, |ends| temperatures(ends, edition))),
        row("By night, of the time", &|one| shares(one.night, |ends| temperatures(ends, edition))),
        row("Humidity, of the time", &|one| shares(one.humidity, |ends| humidities(ends, edition))),
        row("Longest above the ceiling", &|one| {
            let ceiling = one.ceiling_percent.map(|most| {
                edition
                    .shown(print_one(Humidity::from_percent(most), edition.units(), Rounding::Down))
                    .first
            });
            spell(edition, one.above_ceiling, ceiling, |most| {
                edition
                    .shown(print_one(
                        Humidity::from_percent(most.round()),
                        edition.units(),
                        Rounding::Nearest,
                    ))
                    .first
            })
        }),
        row("Longest above what is never passed", &|one| {
            spell(
                edition,
                one.above_never,
                one.never_above_c.map(|most| degrees(most, edition)),
                |most| degrees(most, edition),
            )
        }),
        row("Coldest night", &|one| {
            one.coldest_night.map_or_else(
                || edition.missing(),
                |(evening, lowest)| {
                    let from = edition.long_date(evening);
                    Shown::plain(format!("{}, the night from {from}", degrees(lowest, edition)))
                },
            )
        }),
        row("Swing of a day", &|one| {
            let swing = |kelvin: f64| swing(kelvin, edition);
            match (one.usual_swing, one.widest_swing) {
                (Some(usual), Some((date, widest))) => Shown::plain(format!(
                    "{}; {} at most, on {}",
                    swing(usual),
                    swing(widest),
                    edition.long_date(date)
                )),
                _ => edition.missing(),
            }
        }),
        row("Gaps", &|one| {
            let (count, hours) = one.gaps;
            match one.longest_gap {
                None => Shown::plain("none"),
                Some(longest) => Shown::plain(format!(
                    "{count}, {} together; the longest {}, from {}",
                    self::hours(edition, hours),
                    self::hours(edition, longest.hours),
                    moment(edition, longest.from)
                )),
            }
        }),
    ];
    let mut table = Table::of("What each probe recorded", &head, rows)?;
    let (((on, off), known), bears) = (loggers.first()?.lights, loggers.first()?.bears_h);
    let lights = if known { "as its lights" } else { "as is taken for granted" };
    let stated = if bears.1 { "as its species states" } else { "common practice, no source" };
    table.note = Some(format!(
        "Day is from {} to {} o'clock, {lights}. Above its ceiling for more than {} on end is a finding ({stated}). A pause counts for nothing.",
        number(on, 1),
        number(off, 1),
        hours(edition, bears.0)
    ));
    chapter.tables.push(table);
    Some(chapter)
}

/// The lowest and highest of each day as curves, for every probe.
pub(super) fn charts(own: &AnimalFigures, edition: &Edition<'_>) -> Vec<Chart> {
    let metric = edition.units() == System::Metric;
    let temperature = |celsius: f64| if metric { celsius } else { celsius * 1.8 + 32.0 };
    let unit = if metric { "°C" } else { "°F" };
    let mut charts = Vec::new();
    for (place, one) in own.loggers.iter().enumerate() {
        let of = |ends: fn(&DayEnds) -> Option<(f64, f64)>, scale: &dyn Fn(f64) -> f64| {
            let all = one.days.iter().filter_map(move |day| Some((day.date, ends(day)?)));
            all.map(|(date, (low, high))| (date, (scale(low), scale(high)))).collect::<Vec<_>>()
        };
        let celsius = of(|day| day.celsius, &temperature);
        let percent = of(|day| day.percent, &|percent| percent);
        let never = one.never_above_c.map(temperature);
        for (what, unit, days, limit) in
            [("Temperature", unit, celsius, never), ("Humidity", "%", percent, one.ceiling_percent)]
        {
            let id = format!("recorded-{}-{what}", place + 1).to_lowercase();
            charts.extend(curve(edition, &id, (what, unit), &one.probe, (&days, limit)));
        }
    }
    charts
}

/// A month, the lowest and highest in it, and how many of its days have readings.
type Month = ((i16, i8), (f64, f64), usize);

/// Days, each with its lowest and highest.
type Days = [(jiff::civil::Date, (f64, f64))];

/// The highest and the lowest of each day, and a level line at what is not to be passed.
fn curve(
    edition: &Edition<'_>,
    id: &str,
    (what, unit): (&'static str, &'static str),
    probe: &str,
    (days, limit): (&Days, Option<f64>),
) -> Option<Chart> {
    let (first, last) = (days.first()?.0, days.last()?.0);
    let lowest = days.iter().map(|(_, (low, _))| *low).reduce(f64::min)?;
    let highest = days.iter().map(|(_, (_, high))| *high).reduce(f64::max)?;
    let mut months: Vec<Month> = Vec::new();
    for (date, (low, high)) in days {
        let month = (date.year(), date.month());
        match months.last_mut().filter(|(of, ..)| *of == month) {
            Some((_, ends, count)) => {
                *ends = (ends.0.min(*low), ends.1.max(*high));
                *count += 1;
            }
            None => months.push((month, (*low, *high), 1)),
        }
    }
    let rows = months.iter().map(|((year, month), (low, high), count)| {
        vec![
            Shown::plain(format!("{year}-{month:02}")),
            Shown::plain(count.to_string()),
            Shown::plain(format!("{} {unit}", number(*low, 1))),
            Shown::plain(format!("{} {unit}", number(*high, 1))),
        ]
    });
    chart(
        edition,
        Plot {
            id: id.to_owned(),
            title: format!("{what} at the probe {probe}"),
            says: format!(
                "{} days, from {} to {}: between {} and {} {unit}.",
                days.len(),
                edition.long_date(first),
                edition.long_date(last),
                number(lowest, 1),
                number(highest, 1)
            ),
            key: match limit {
                None => "whole line: the highest of each day; broken line: the lowest".to_owned(),
                Some(limit) => format!(
                    "whole line: the highest of each day; broken line: the lowest; level line: {} {unit}, not to be passed",
                    number(limit, 1)
                ),
            },
            unit,
            points: Vec::new(),
            level: limit.map(|limit| (limit, format!("{} {unit}", number(limit, 1)), Vec::new())),
            lines: vec![
                days.iter().map(|(date, (_, high))| (*date, *high)).collect(),
                days.iter().map(|(date, (low, _))| (*date, *low)).collect(),
            ],
            table: Table::of("By month", &["Month", "Days", "Lowest", "Highest"], rows.collect())?,
        },
    )
}

fn moment(edition: &Edition<'_>, at: jiff::civil::DateTime) -> String {
    format!("{}, {}", edition.long_date(at.date()), at.strftime("%H:%M"))
}

fn hours(_edition: &Edition<'_>, hours: f64) -> String {
    let number = number(hours, 1);
    if number == "1" { "1 hour".to_owned() } else { format!("{number} hours") }
}

fn degrees(celsius: f64, edition: &Edition<'_>) -> String {
    let rounded = (celsius * 10.0).round() / 10.0;
    edition
        .shown(print_one(Temperature::from_base(rounded), edition.units(), Rounding::Nearest))
        .first
}

fn swing(kelvin: f64, edition: &Edition<'_>) -> String {
    match edition.units() {
        System::Metric => format!("{} °C", number(kelvin, 1)),
        System::Imperial => format!("{} °F", number(kelvin * 1.8, 1)),
    }
}

fn range<Q: Quantity>(ends: Ends, edition: &Edition<'_>) -> String {
    let (low, high) = (ends.0.map(Q::from_base), ends.1.map(Q::from_base));
    let range = match (low, high) {
        (Some(low), Some(high)) => Range::between(low, high).ok(),
        (Some(low), None) => Some(Range::at_least(low)),
        (None, Some(high)) => Some(Range::at_most(high)),
        (None, None) => None,
    };
    range
        .map(|range| edition.shown(range.print(edition.units(), Rounding::Nearest)).first)
        .unwrap_or_default()
}

fn temperatures(ends: Ends, edition: &Edition<'_>) -> String {
    range::<Temperature>(ends, edition)
}

fn humidities(ends: Ends, edition: &Edition<'_>) -> String {
    range::<Humidity>(ends, edition)
}

/// The shares of time below, within and above a range.
fn shares(of: Option<(Ends, Shares)>, print: impl Fn(Ends) -> String) -> Shown {
    let Some((ends, shares)) = of else { return Shown::plain("no range is given") };
    let Some([below, within, above]) = shares.percent() else { return Shown::plain("no reading") };
    let mut text = format!("{} % in {}", number(within, 1), print(ends));
    for (share, word) in [(below, "below"), (above, "above")] {
        if share >= 0.05 {
            text.push_str(&format!(", {} % {word}", number(share, 1)));
        }
    }
    Shown::plain(text)
}

fn spell(
    edition: &Edition<'_>,
    spell: Option<Spell>,
    limit: Option<String>,
    print: impl Fn(f64) -> String,
) -> Shown {
    match (spell, limit) {
        (_, None) => Shown::plain("no reading, or no limit"),
        (None, Some(limit)) => Shown::plain(format!("never above {limit}")),
        (Some(spell), Some(limit)) => Shown::plain(format!(
            "{} above {limit}, up to {}, from {}",
            hours(edition, spell.hours),
            print(spell.highest),
            moment(edition, spell.from)
        )),
    }
}
