//! What a data logger has recorded of an enclosure, summed up in one pass.
//!
//! A sample stands for the time until the next one; where that is longer than a gap allows, for the usual step only, and the
//! rest is a gap that nobody knows of. Times are the clock's on the wall, without a change to summer time.

use jiff::civil::{Date, DateTime};

use crate::model::Species;
use crate::model::recording::{Recording, Sample};
use crate::model::word::Zone;

use super::calendar::days_after;
use super::working::Ends;

/// How many steps the usual step is told from.
const STEPS_LOOKED_AT: usize = 201;
/// A pause is a gap when it is longer than so many usual steps, and than so many seconds.
const GAP_STEPS: i64 = 3;
const GAP_SECONDS: i64 = 3600;
/// How long a ceiling may be passed at a stretch where the species does not say, hours: a night. Common practice, no source.
const CEILING_HOURS: f64 = 12.0;
/// How long what is never passed must be passed before it is told, hours: two readings in a quarter of an hour may be the
/// sun or a hand on the probe. Common practice, no source.
const NEVER_ABOVE_HOURS: f64 = 0.25;
/// The lighted day where nothing is known of the lights, hours after midnight.
const DAY: (f64, f64) = (8.0, 20.0);

const DAY_SECONDS: i64 = 86_400;

/// A time below, within and above a range, hours.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Shares {
    /// Below it.
    pub below_h: f64,
    /// In it.
    pub within_h: f64,
    /// Above it.
    pub above_h: f64,
}

impl Shares {
    fn add(&mut self, hours: f64, value: f64, range: Ends) {
        if range.0.is_some_and(|low| value < low) {
            self.below_h += hours;
        } else if range.1.is_some_and(|high| value > high) {
            self.above_h += hours;
        } else {
            self.within_h += hours;
        }
    }

    /// The share below, within and above, per cent; none where there was no time at all.
    pub fn percent(&self) -> Option<[f64; 3]> {
        let all = self.below_h + self.within_h + self.above_h;
        let share = |hours: f64| 100.0 * hours / all;
        (all > 0.0).then(|| [self.below_h, self.within_h, self.above_h].map(share))
    }
}

/// A time at a stretch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spell {
    /// Its first moment.
    pub from: DateTime,
    /// How long it was, hours.
    pub hours: f64,
    /// The highest value in it.
    pub highest: f64,
}

/// The lowest and highest of a day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayEnds {
    /// The day.
    pub date: Date,
    /// Temperature, °C.
    pub celsius: Option<(f64, f64)>,
    /// Humidity, per cent.
    pub percent: Option<(f64, f64)>,
}

/// What one probe's recording comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct LoggerFigures {
    /// The probe's name.
    pub probe: String,
    /// The first and the last moment.
    pub ends: (DateTime, DateTime),
    /// How many readings there are.
    pub readings: usize,
    /// From reading to reading, as a rule, minutes.
    pub step_min: f64,
    /// The range that holds by day, °C, and the time in it.
    pub day: Option<(Ends, Shares)>,
    /// The range that holds by night, °C, and the time in it.
    pub night: Option<(Ends, Shares)>,
    /// The range of humidity, per cent, and the time in it.
    pub humidity: Option<(Ends, Shares)>,
    /// What the humidity may be at most at this probe, per cent.
    pub ceiling_percent: Option<f64>,
    /// The longest time above that.
    pub above_ceiling: Option<Spell>,
    /// How long the species bears that at a stretch, hours, and whether it says so itself.
    pub bears_h: (f64, bool),
    /// What is never passed, °C.
    pub never_above_c: Option<f64>,
    /// The longest time above that.
    pub above_never: Option<Spell>,
    /// The evening of the coldest night, and its lowest reading, °C.
    pub coldest_night: Option<(Date, f64)>,
    /// The day with the widest swing, and how wide it was, K.
    pub widest_swing: Option<(Date, f64)>,
    /// The swing of a day in the middle of all days, K.
    pub usual_swing: Option<f64>,
    /// How many gaps there are, and how long they are together, hours.
    pub gaps: (usize, f64),
    /// The longest gap.
    pub longest_gap: Option<Spell>,
    /// Every day with a reading.
    pub days: Vec<DayEnds>,
    /// When the day begins and ends, hours after midnight, and whether that is known from the lights.
    pub lights: ((f64, f64), bool),
}

/// What is asked at a probe.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Asked {
    /// By day, °C.
    pub day_c: Option<Ends>,
    /// By night, °C.
    pub night_c: Option<Ends>,
    /// Humidity, per cent.
    pub percent: Option<Ends>,
    /// The most humidity at this place, per cent.
    pub ceiling_percent: Option<f64>,
    /// What is never passed, °C.
    pub never_above_c: Option<f64>,
    /// How long the ceiling may be passed, hours, where the species says so.
    pub bears_h: Option<f64>,
    /// When the lights go on and off, hours after midnight.
    pub lights_h: Option<(f64, f64)>,
}

impl Asked {
    /// What a species asks at a probe that reads a zone, or one of which no zone is known.
    pub fn of(species: &Species, zone: Option<Zone>) -> Asked {
        use super::working::ends;
        let asked = &species.temperature;
        let (day, night) = match zone {
            Some(Zone::Basking) => (&asked.basking, &asked.night),
            Some(Zone::Warm) => (&asked.warm, &asked.night),
            Some(Zone::Cool) => (&asked.cool, &asked.night),
            Some(Zone::Water) => (&asked.water, &asked.water),
            None => (&None, &asked.night),
        };
        let of_range = |figure: &crate::model::species::Figure<crate::quantity::Temperature>| {
            figure.as_ref().map(|cited| ends(&cited.value))
        };
        let never = of_range(&asked.never_above).and_then(|(low, high)| high.or(low));
        Asked {
            day_c: of_range(day),
            night_c: of_range(night),
            percent: species.humidity.range.as_ref().map(|cited| ends(&cited.value)),
            never_above_c: never.filter(|_| zone != Some(Zone::Basking)),
            bears_h: species
                .humidity
                .ceiling_for
                .as_ref()
                .and_then(|cited| cited.value.high().or(cited.value.low()))
                .map(|span| span.hours()),
            ..Asked::default()
        }
    }
}

/// A time above a limit that is being followed.
#[derive(Default)]
struct Watch {
    limit: Option<f64>,
    now: Option<(i64, f64, f64)>,
    longest: Option<(i64, f64, f64)>,
}

impl Watch {
    fn of(limit: Option<f64>) -> Watch {
        Watch { limit, ..Watch::default() }
    }

    fn add(&mut self, at: i64, hours: f64, value: Option<f64>, gap: bool) {
        let Some(limit) = self.limit else { return };
        match value.filter(|value| *value > limit) {
            Some(value) => {
                let (from, so_far, highest) = self.now.unwrap_or((at, 0.0, value));
                self.now = Some((from, so_far + hours, highest.max(value)));
                if gap {
                    self.close();
                }
            }
            None => self.close(),
        }
    }

    fn close(&mut self) {
        if let Some(spell) = self.now.take()
            && self.longest.is_none_or(|longest| spell.1 > longest.1)
        {
            self.longest = Some(spell);
        }
    }

    fn end(mut self) -> Option<Spell> {
        self.close();
        let (from, hours, highest) = self.longest?;
        Some(Spell { from: moment(from)?, hours, highest })
    }
}

/// Sums a recording up; none where it holds nothing.
pub fn logger(recording: &Recording, asked: &Asked) -> Option<LoggerFigures> {
    let samples = &recording.samples;
    let (first, last) = (samples.first()?, samples.last()?);
    let step = usual_step(samples);
    let gap_after = (GAP_STEPS * step).max(GAP_SECONDS);
    let (on, off) = asked.lights_h.unwrap_or(DAY);
    let mut figures = LoggerFigures {
        probe: recording.probe.clone(),
        ends: (moment(first.at)?, moment(last.at)?),
        readings: samples.len(),
        step_min: step as f64 / 60.0,
        day: asked.day_c.map(|range| (range, Shares::default())),
        night: asked.night_c.map(|range| (range, Shares::default())),
        humidity: asked.percent.map(|range| (range, Shares::default())),
        ceiling_percent: asked.ceiling_percent,
        above_ceiling: None,
        bears_h: (asked.bears_h.unwrap_or(CEILING_HOURS), asked.bears_h.is_some()),
        never_above_c: asked.never_above_c,
        above_never: None,
        coldest_night: None,
        widest_swing: None,
        usual_swing: None,
        gaps: (0, 0.0),
        longest_gap: None,
        days: Vec::new(),
        lights: ((on, off), asked.lights_h.is_some()),
    };
    let (mut damp, mut hot) = (Watch::of(asked.ceiling_percent), Watch::of(asked.never_above_c));
    let mut of_day: Option<i64> = None;
    let mut coldest: Option<(i64, f64)> = None;
    let mut longest_gap: Option<(i64, i64)> = None;
    for (place, sample) in samples.iter().enumerate() {
        let next = samples.get(place + 1).map(|next| next.at - sample.at);
        let gap = next.is_some_and(|next| next > gap_after);
        let seconds = next.filter(|_| !gap).unwrap_or(step);
        let hours = seconds as f64 / 3600.0;
        if let Some(next) = next.filter(|_| gap) {
            figures.gaps = (figures.gaps.0 + 1, figures.gaps.1 + (next - step) as f64 / 3600.0);
            if longest_gap.is_none_or(|(_, longest)| next > longest) {
                longest_gap = Some((sample.at, next));
            }
        }
        let (day, of_clock) =
            (sample.at.div_euclid(DAY_SECONDS), sample.at.rem_euclid(DAY_SECONDS));
        let clock = of_clock as f64 / 3600.0;
        let lit = if on <= off { clock >= on && clock < off } else { clock >= on || clock < off };
        let celsius = sample.celsius.map(f64::from);
        let percent = sample.percent.map(f64::from);
        if let Some(celsius) = celsius {
            let shares = if lit { &mut figures.day } else { &mut figures.night };
            if let Some((range, shares)) = shares {
                shares.add(hours, celsius, *range);
            }
            // The small hours belong to the night that began the evening before.
            let evening = if clock < on { day - 1 } else { day };
            if !lit && coldest.is_none_or(|(_, lowest)| celsius < lowest) {
                coldest = Some((evening, celsius));
            }
        }
        if let (Some(percent), Some((range, shares))) = (percent, &mut figures.humidity) {
            shares.add(hours, percent, *range);
        }
        damp.add(sample.at, hours, percent, gap);
        hot.add(sample.at, hours, celsius, gap);
        if of_day != Some(day) {
            of_day = Some(day);
            figures.days.push(DayEnds { date: date(day)?, celsius: None, percent: None });
        }
        if let Some(ends) = figures.days.last_mut() {
            ends.celsius = widened(ends.celsius, celsius);
            ends.percent = widened(ends.percent, percent);
        }
    }
    // What was never read was never below a limit either.
    let read = |has: fn(&DayEnds) -> bool| figures.days.iter().any(has);
    let (warmth, damp_read) =
        (read(|day| day.celsius.is_some()), read(|day| day.percent.is_some()));
    figures.never_above_c = figures.never_above_c.filter(|_| warmth);
    figures.ceiling_percent = figures.ceiling_percent.filter(|_| damp_read);
    figures.above_ceiling = damp.end();
    figures.above_never = hot.end();
    figures.coldest_night = coldest.and_then(|(day, lowest)| Some((date(day)?, lowest)));
    figures.longest_gap = longest_gap.and_then(|(from, seconds)| {
        let (from, seconds) = (from + step, seconds - step);
        Some(Spell { from: moment(from)?, hours: seconds as f64 / 3600.0, highest: 0.0 })
    });
    let swings = figures.days.iter().filter_map(|day| {
        let (low, high) = day.celsius?;
        Some((day.date, high - low))
    });
    let mut swings: Vec<(Date, f64)> = swings.collect();
    swings.sort_by(|a, b| a.1.total_cmp(&b.1));
    figures.widest_swing = swings.last().copied();
    figures.usual_swing = swings.get(swings.len() / 2).map(|(_, swing)| *swing);
    Some(figures)
}

impl LoggerFigures {
    /// The time above the ceiling that was longer than the species bears.
    pub fn too_damp(&self) -> Option<Spell> {
        self.above_ceiling.filter(|spell| spell.hours > self.bears_h.0)
    }

    /// The time above what is never passed that was no mere flicker.
    pub fn too_hot(&self) -> Option<Spell> {
        self.above_never.filter(|spell| spell.hours > NEVER_ABOVE_HOURS)
    }
}

fn widened(ends: Option<(f64, f64)>, value: Option<f64>) -> Option<(f64, f64)> {
    match (ends, value) {
        (Some((low, high)), Some(value)) => Some((low.min(value), high.max(value))),
        (None, Some(value)) => Some((value, value)),
        (ends, None) => ends,
    }
}

/// The step in the middle of the first steps, seconds; a single reading stands for a minute.
fn usual_step(samples: &[Sample]) -> i64 {
    let pairs = samples.iter().zip(samples.iter().skip(1)).take(STEPS_LOOKED_AT);
    let mut steps: Vec<i64> = pairs.map(|(one, next)| next.at - one.at).collect();
    steps.sort_unstable();
    steps.get(steps.len() / 2).copied().unwrap_or(60).max(1)
}

fn date(day: i64) -> Option<Date> {
    days_after(Date::constant(1970, 1, 1), day as f64)
}

fn moment(at: i64) -> Option<DateTime> {
    let day = date(at.div_euclid(DAY_SECONDS))?;
    let seconds = at.rem_euclid(DAY_SECONDS);
    let small = |number: i64| i8::try_from(number).unwrap_or(0);
    Some(day.at(small(seconds / 3600), small(seconds / 60 % 60), small(seconds % 60), 0))
}

#[cfg(test)]
#[path = "logger/tests.rs"]
mod tests;
