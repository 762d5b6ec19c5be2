//! The enclosure over an animal's lifetime: at which length the present one no longer does, and when that is.

use jiff::civil::Date;

use crate::model::housing::Housing;
use crate::model::{Animal, Model, Species};

use super::absence::Absence;
use super::enclosure::{Fit, Minimum, fits};
use super::feeding::Body;
use super::growth::{AdultLength, GrowthFigures, ReachDates, adult_range_cm, reach};
use super::space::{self, Fits, Need, Space, in_force};
use super::working::{Why, absent};

/// When the present enclosure is outgrown.
#[derive(Debug, Clone, PartialEq)]
pub struct Outgrown {
    /// At this length, cm.
    pub at_cm: f64,
    /// On these days.
    pub dates: ReachDates,
}

/// How finely the length is found, cm.
const FINE_CM: f64 = 0.05;
/// How many steps the way to the top of the interval is searched in: a rule may ask for less just past a breakpoint, so the
/// first length that is too long is looked for from below.
const STEPS: u32 = 200;

/// What the standards in force ask for at one length.
#[derive(Debug)]
pub struct AtLength {
    /// Whether the animal counts as adult.
    pub adult: bool,
    /// The least enclosure by each standard; none where that cannot be worked out.
    pub leasts: Vec<Option<Minimum>>,
}

impl AtLength {
    /// Whether an enclosure satisfies everything that is asked for.
    fn is_met(&self, inside_cm: [f64; 3]) -> bool {
        self.leasts.iter().flatten().all(|least| fits(inside_cm, least) == Fit::Enough)
    }

    /// Whether the same classes of every standard hold at another length, and so at all lengths between the two.
    fn is_of_the_classes_of(&self, other: &AtLength) -> bool {
        fn of(least: &Option<Minimum>) -> Option<&Vec<usize>> {
            least.as_ref().map(|least| &least.classes)
        }
        self.adult == other.adult && self.leasts.iter().map(of).eq(other.leasts.iter().map(of))
    }
}

/// Finds the length and the days at which an enclosure of `inside_cm` no longer satisfies what the standards `ask` for.
///
/// `ask` gives what every standard in force asks for at a length. Lengths in cm, searched from the present one to the top of
/// the interval of the adult length.
///
/// # Errors
/// Why there is no such day: it is too small already, or does for the longest that is expected.
pub fn outgrown(
    inside_cm: [f64; 3],
    length_cm: f64,
    growth: &GrowthFigures,
    ask: impl Fn(f64) -> AtLength,
    as_of: Date,
) -> Result<Outgrown, Absence> {
    let top_cm =
        growth.adult.map(|adult| adult.high_cm.max(length_cm)).ok_or(Absence::NoAdultLength)?;
    let now = ask(length_cm);
    if !now.is_met(inside_cm) {
        return Err(Absence::TooSmall);
    }
    let step = (top_cm - length_cm) / f64::from(STEPS);
    let length_at = |number: u32| length_cm + step * f64::from(number);
    let way = Way { inside_cm, ask_at: |number| ask(length_at(number)) };
    let Some(number) = way.first_unmet((0, &now), (STEPS, &ask(length_at(STEPS)))) else {
        return Err(Absence::DoesForLongest);
    };
    let (mut low, mut high) = (length_at(number - 1), length_at(number));
    while high - low > FINE_CM {
        let middle = (low + high) / 2.0;
        if ask(middle).is_met(inside_cm) { low = middle } else { high = middle }
    }
    let dates = reach(growth, high, as_of).unwrap_or_default();
    Ok(Outgrown { at_cm: high, dates })
}

/// The way from the present length to the longest that is expected, in steps.
struct Way<F> {
    inside_cm: [f64; 3],
    ask_at: F,
}

impl<F: Fn(u32) -> AtLength> Way<F> {
    /// The first step after `from`, where the enclosure still does, up to `to` at which it does no longer.
    ///
    /// Within a class a rule asks for more the longer the animal is, so an enclosure that does at the end of a stretch of one
    /// class does on all of it; only where the class changes has each step to be looked at.
    fn first_unmet(&self, from: (u32, &AtLength), to: (u32, &AtLength)) -> Option<u32> {
        let is_met = to.1.is_met(self.inside_cm);
        if to.0 - from.0 == 1 || is_met && from.1.is_of_the_classes_of(to.1) {
            return (!is_met).then_some(to.0);
        }
        let number = u32::midpoint(from.0, to.0);
        let middle = (number, &(self.ask_at)(number));
        self.first_unmet(from, middle).or_else(|| self.first_unmet(middle, to))
    }
}

/// The enclosure now, grown, and when it is outgrown.
pub(super) struct Enclosures {
    pub(super) now: Option<Space>,
    pub(super) fits: Option<Fits>,
    pub(super) grown: Option<Space>,
    pub(super) grown_at_most: Option<Space>,
    pub(super) outgrown: Result<Outgrown, Absence>,
    pub(super) animals: u32,
}

/// Works out what an animal needs now, grown and at the top of its interval, and when its enclosure is outgrown.
pub(super) fn enclosure(
    model: &Model,
    animal: &Animal,
    species: &Species,
    (body, growth): (&Body, &GrowthFigures),
    as_of: Date,
    why: &mut Why,
) -> Enclosures {
    let animals = 1 + u32::try_from(animal.company.len()).unwrap_or(u32::MAX - 1);
    let standards = in_force(model, species);
    let needs = |length_cm: f64, adult: bool, age_months: Option<f64>| -> Vec<Need> {
        let for_whom = |standard| {
            space::need(species, standard, &animal.name, length_cm, adult, animals, age_months)
        };
        standards.iter().copied().map(for_whom).collect()
    };
    let form = animal.form.as_ref().map(|form| form.name.as_str());
    let is_adult = |length_cm: f64| {
        adult_range_cm(species, animal.sex, form).is_some_and(|(low, _)| length_cm >= low)
    };
    let age_months = body.age_days.map(|days| days / (365.25 / 12.0));
    let at_present = |length_cm: f64| needs(length_cm, is_adult(length_cm), age_months);
    let now = body.length_cm.and_then(|length_cm| space::join(at_present(length_cm)));
    let grown = growth.adult.and_then(|adult| space::join(needs(adult.estimate_cm, true, None)));
    let grown_at_most =
        growth.adult.and_then(|adult| space::join(needs(adult.high_cm, true, None)));
    if now.is_none() {
        let reason = body.length_cm.map_or("no length has been measured".to_owned(), |length_cm| {
            no_rule(&at_present(length_cm))
        });
        absent(why, "enclosure.now", &reason);
    }
    if grown.is_none() {
        let known = |adult: AdultLength| no_rule(&needs(adult.estimate_cm, true, None));
        let reason = growth.adult.map_or("no adult length is known".to_owned(), known);
        absent(why, "enclosure.adult", &reason);
        absent(why, "enclosure.adult_at_most", &reason);
    }
    let inside_cm = animal.housing.as_ref().and_then(inside_cm);
    let fits =
        now.as_ref().zip(inside_cm).map(|(space, inside_cm)| space::satisfied(inside_cm, space));
    if fits.is_none() {
        let reason = if inside_cm.is_none() {
            "the enclosure's inside measures are not given"
        } else {
            "what it needs could not be worked out"
        };
        absent(why, "enclosure.now.fits", reason);
    }
    // While it grows it grows older too: what a standard asks by age is asked of a grown animal at the latest.
    let while_growing = |length_cm: f64| {
        let adult = is_adult(length_cm);
        let least =
            |standard| space::least(species, standard, length_cm, adult, animals, age_months).ok();
        AtLength { adult, leasts: standards.iter().copied().map(least).collect() }
    };
    let outgrown = match (inside_cm, body.length_cm) {
        (Some(inside_cm), Some(length_cm)) if now.is_some() => {
            self::outgrown(inside_cm, length_cm, growth, while_growing, as_of)
        }
        _ => Err(Absence::NotKnown),
    };
    match &outgrown {
        Ok(outgrown) => {
            if outgrown.dates.expected.is_none() {
                absent(
                    why,
                    "enclosure.outgrown.expected",
                    "fewer than half of such animals grow so long",
                );
            }
            if outgrown.dates.latest.is_none() {
                absent(
                    why,
                    "enclosure.outgrown.latest",
                    "one in twenty such animals, or more, never grows so long",
                );
            }
            if outgrown.dates.earliest.is_none() {
                absent(why, "enclosure.outgrown.earliest", "hardly any such animal grows so long");
            }
        }
        Err(reason) => absent(why, "enclosure.outgrown", &reason.to_string()),
    }
    Enclosures { now, fits, grown, grown_at_most, outgrown, animals }
}

fn no_rule(needs: &[Need]) -> String {
    let reasons: Vec<String> = needs
        .iter()
        .filter_map(|need| need.least.as_ref().err().map(|why| format!("{}: {why}", need.standard)))
        .collect();
    if reasons.is_empty() {
        "no standard in force has a rule for this species".to_owned()
    } else {
        reasons.join("; ")
    }
}

/// The inside measures of an enclosure, cm.
pub fn inside_cm(housing: &Housing) -> Option<[f64; 3]> {
    housing.inside.map(|(inside, _)| [inside.length.cm(), inside.width.cm(), inside.height.cm()])
}
