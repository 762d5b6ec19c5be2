//! What data loggers have recorded, for the record: one table for all probes, and a curve for each.

use crate::figures::AnimalFigures;
use crate::figures::logger::{DayEnds, LoggerFigures, Shares, Spell};
use crate::figures::working::Ends;
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
    let mut chapter = Chapter::new("recorded", &edition.say("logger-title"));
    let what = edition.say("logger-what");
    let head = std::iter::once(&*what).chain(loggers.iter().map(|logger| logger.probe.as_str()));
    let head: Vec<&str> = head.collect();
    let row = |label: &str, cell: &dyn Fn(&LoggerFigures) -> Shown| {
        std::iter::once(Shown::plain(edition.say(label)))
            .chain(loggers.iter().map(cell))
            .collect::<Vec<_>>()
    };
    let rows = vec![
        row("logger-from", &|one| Shown::plain(moment(edition, one.ends.0))),
        row("logger-until", &|one| Shown::plain(moment(edition, one.ends.1))),
        row("logger-readings", &|one| {
            let minutes = ("minutes", edition.number(one.step_min, 1).into());
            let readings = ("readings", one.readings.to_string().into());
            Shown::plain(edition.tell("logger-readings-step", [readings, minutes]))
        }),
        row("logger-by-day", &|one| shares(edition, one.day, |ends| temperatures(ends, edition))),
        row("logger-by-night", &|one| {
            shares(edition, one.night, |ends| temperatures(ends, edition))
        }),
        row("logger-humidity", &|one| {
            shares(edition, one.humidity, |ends| humidities(ends, edition))
        }),
        row("logger-above-ceiling", &|one| {
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
        row("logger-above-never", &|one| {
            spell(
                edition,
                one.above_never,
                one.never_above_c.map(|most| degrees(most, edition)),
                |most| degrees(most, edition),
            )
        }),
        row("logger-coldest-night", &|one| {
            one.coldest_night.map_or_else(
                || edition.missing(),
                |(evening, lowest)| {
                    let date = ("date", edition.long_date(evening).into());
                    let lowest = ("temperature", degrees(lowest, edition).into());
                    Shown::plain(edition.tell("logger-coldest-night-from", [lowest, date]))
                },
            )
        }),
        row("logger-swing", &|one| {
            let swing = |kelvin: f64| swing(kelvin, edition);
            match (one.usual_swing, one.widest_swing) {
                (Some(usual), Some((date, widest))) => Shown::plain(edition.tell(
                    "logger-swing-usual-widest",
                    [
                        ("usual", swing(usual).into()),
                        ("widest", swing(widest).into()),
                        ("date", edition.long_date(date).into()),
                    ],
                )),
                _ => edition.missing(),
            }
        }),
        row("logger-gaps", &|one| {
            let (count, hours) = one.gaps;
            match one.longest_gap {
                None => Shown::plain(edition.say("logger-no-gaps")),
                Some(longest) => Shown::plain(edition.tell(
                    "logger-gaps-told",
                    [
                        ("count", count.to_string().into()),
                        ("together", self::hours(edition, hours).into()),
                        ("longest", self::hours(edition, longest.hours).into()),
                        ("date", moment(edition, longest.from).into()),
                    ],
                )),
            }
        }),
    ];
    let mut table = Table::of(edition.say("logger-table"), &head, rows)?;
    let (((on, off), known), bears) = (loggers.first()?.lights, loggers.first()?.bears_h);
    let note = [
        ("on", edition.number(on, 1).into()),
        ("off", edition.number(off, 1).into()),
        ("lights", if known { "own" } else { "taken" }.into()),
        ("hours", hours(edition, bears.0).into()),
        ("limit", if bears.1 { "stated" } else { "practice" }.into()),
    ];
    table.note = Some(edition.tell("logger-note", note));
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
        let at = |label| edition.tell(label, [("probe", one.probe.as_str().into())]);
        for (what, title, unit, days, limit) in [
            ("temperature", at("logger-temperature-at"), unit, celsius, never),
            ("humidity", at("logger-humidity-at"), "%", percent, one.ceiling_percent),
        ] {
            let id = format!("recorded-{}-{what}", place + 1);
            charts.extend(curve(edition, id, (title, unit), (&days, limit)));
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
    id: String,
    (title, unit): (String, &'static str),
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
    let amount = |value: f64| format!("{} {unit}", edition.number(value, 1));
    let rows = months.iter().map(|((year, month), (low, high), count)| {
        vec![
            Shown::plain(format!("{year}-{month:02}")),
            Shown::plain(count.to_string()),
            Shown::plain(amount(*low)),
            Shown::plain(amount(*high)),
        ]
    });
    let says = [
        ("days", days.len().into()),
        ("from", edition.long_date(first).into()),
        ("until", edition.long_date(last).into()),
        ("low", edition.number(lowest, 1).into()),
        ("high", edition.number(highest, 1).into()),
        ("unit", unit.into()),
    ];
    let head = ["logger-month", "logger-days", "logger-lowest", "logger-highest"];
    let head = head.map(|head| edition.say(head));
    let head = head.each_ref().map(String::as_str);
    chart(
        edition,
        Plot {
            id,
            title,
            says: edition.tell("logger-curve", says),
            key: match limit {
                None => edition.say("logger-key"),
                Some(limit) => edition.tell("logger-key-level", [("limit", amount(limit).into())]),
            },
            unit,
            points: Vec::new(),
            level: limit.map(|limit| (limit, amount(limit), Vec::new())),
            lines: vec![
                days.iter().map(|(date, (_, high))| (*date, *high)).collect(),
                days.iter().map(|(date, (low, _))| (*date, *low)).collect(),
            ],
            table: Table::of(edition.say("logger-by-month"), &head, rows.collect())?,
        },
    )
}

fn moment(edition: &Edition<'_>, at: jiff::civil::DateTime) -> String {
    let time = ("time", at.strftime("%H:%M").to_string().into());
    edition.tell("logger-moment", [("date", edition.long_date(at.date()).into()), time])
}

fn hours(edition: &Edition<'_>, hours: f64) -> String {
    let count = ("count", ((hours * 10.0).round() / 10.0).into());
    edition.tell("logger-hours", [count, ("hours", edition.number(hours, 1).into())])
}

fn degrees(celsius: f64, edition: &Edition<'_>) -> String {
    let rounded = (celsius * 10.0).round() / 10.0;
    edition
        .shown(print_one(Temperature::from_base(rounded), edition.units(), Rounding::Nearest))
        .first
}

fn swing(kelvin: f64, edition: &Edition<'_>) -> String {
    match edition.units() {
        System::Metric => format!("{} °C", edition.number(kelvin, 1)),
        System::Imperial => format!("{} °F", edition.number(kelvin * 1.8, 1)),
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
fn shares(
    edition: &Edition<'_>,
    of: Option<(Ends, Shares)>,
    print: impl Fn(Ends) -> String,
) -> Shown {
    let Some((ends, shares)) = of else { return Shown::plain(edition.say("logger-no-range")) };
    let Some([below, within, above]) = shares.percent() else {
        return Shown::plain(edition.say("logger-no-reading"));
    };
    let percent = |share: f64| ("share", edition.number(share, 1).into());
    let range = ("range", print(ends).into());
    let mut parts = vec![edition.tell("logger-within", [percent(within), range])];
    for (share, label) in [(below, "logger-below"), (above, "logger-above")] {
        if share >= 0.05 {
            parts.push(edition.tell(label, [percent(share)]));
        }
    }
    Shown::plain(parts.join(", "))
}

fn spell(
    edition: &Edition<'_>,
    spell: Option<Spell>,
    limit: Option<String>,
    print: impl Fn(f64) -> String,
) -> Shown {
    match (spell, limit) {
        (_, None) => Shown::plain(edition.say("logger-no-limit")),
        (None, Some(limit)) => {
            Shown::plain(edition.tell("logger-never-above", [("limit", limit.into())]))
        }
        (Some(spell), Some(limit)) => Shown::plain(edition.tell(
            "logger-spell",
            [
                ("hours", hours(edition, spell.hours).into()),
                ("limit", limit.into()),
                ("highest", print(spell.highest).into()),
                ("date", moment(edition, spell.from).into()),
            ],
        )),
    }
}
