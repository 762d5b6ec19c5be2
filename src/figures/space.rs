//! The least enclosure by each standard in force: for a species when grown, and for one animal now and grown.

use std::collections::{BTreeMap, BTreeSet};

use crate::model::standard::Measure as RuleMeasure;
use crate::model::word::{Kind, Measure, Sex};
use crate::model::{Model, Species, Standard};

use super::enclosure::{
    BodyLengths, Build, Fit, Minimum, Reason, Shortfall, build_cm, fits, minimum, strictest,
};
use super::growth::adult_range_cm;
use super::working::number;

/// What one standard asks for one kind of animal.
#[derive(Debug, Clone, PartialEq)]
pub struct Need {
    /// For whom: `female`, `male`, `adult`, or a form's name with the sex.
    pub for_whom: String,
    /// How many animals.
    pub animals: u32,
    /// The length that the rule was applied to, cm, by the species' own measure.
    pub reference_length_cm: f64,
    /// The standard's name.
    pub standard: String,
    /// What it asks for, or why that cannot be worked out.
    pub least: Result<Minimum, String>,
    /// Why its row gives no figure, where it gives none.
    pub reason: Option<Reason>,
    /// The least that can be bought or built.
    pub build: Option<Build>,
}

/// The names of the standards in force for a species: the site's list, or every one that the species names.
///
/// A standard that the library does not hold is left out; that it is missing is a finding.
pub fn in_force<'a>(model: &'a Model, species: &'a Species) -> Vec<&'a Standard> {
    let listed: BTreeSet<&str> =
        model.site.standards.iter().map(|named| named.name.as_str()).collect();
    species
        .enclosure
        .keys()
        .filter(|name| listed.is_empty() || listed.contains(name.as_str()))
        .filter_map(|name| model.standards.get(name))
        .collect()
}

/// The kinds of grown animal that a species tells apart, with the range of their adult length in cm.
fn grown_kinds(species: &Species) -> Vec<(String, (f64, f64))> {
    let mut kinds = Vec::new();
    let mut add = |form: Option<(&str, &str)>| {
        let key = form.map(|(key, _)| key);
        let female = adult_range_cm(species, Sex::Female, key);
        let male = adult_range_cm(species, Sex::Male, key);
        let named = |sex: &str| match form {
            Some((_, name)) => format!("{sex}, {name}"),
            None => sex.to_owned(),
        };
        match (female, male) {
            (Some(female), Some(male)) if female == male => kinds.push((named("adult"), female)),
            _ => {
                kinds.extend(female.map(|range| (named("female"), range)));
                kinds.extend(male.map(|range| (named("male"), range)));
            }
        }
    };
    add(None);
    for (key, form) in &species.size.forms {
        add(Some((key, &form.name)));
    }
    kinds
}

/// Works out what every standard in force asks for each kind of grown animal of a species, at the top of its adult range.
pub fn of_species(model: &Model, species: &Species) -> Vec<Need> {
    let mut needs = Vec::new();
    for (for_whom, (_, longest_cm)) in grown_kinds(species) {
        for standard in in_force(model, species) {
            needs.push(need(species, standard, &for_whom, longest_cm, true, 1, None));
        }
    }
    needs
}

/// What one standard asks for an animal of a length.
///
/// `length_cm` is by the species' own measure; other measures follow from it where the species gives their proportion.
pub fn need(
    species: &Species,
    standard: &Standard,
    for_whom: &str,
    length_cm: f64,
    adult: bool,
    animals: u32,
    age_months: Option<f64>,
) -> Need {
    let least = least(species, standard, length_cm, adult, animals, age_months);
    let mut reason = None;
    let least = least.map_err(|refused| match refused {
        Some(refused) => sentence(&reason.insert(refused).to_string()),
        None => format!("the standard has no row `{}`", row_of(species, standard)),
    });
    let build = least.as_ref().ok().and_then(build_cm);
    let (for_whom, standard) = (for_whom.to_owned(), standard.name.clone());
    Need { for_whom, animals, reference_length_cm: length_cm, standard, least, reason, build }
}

/// The row of a standard that a species names.
fn row_of<'a>(species: &'a Species, standard: &Standard) -> &'a str {
    let rule = species.enclosure.get(&standard.name);
    rule.map(|rule| rule.row.name.as_str()).unwrap_or_default()
}

/// The least enclosure by one standard for an animal of a length.
///
/// # Errors
/// Why it cannot be worked out; nothing where the standard has no such row.
pub(super) fn least(
    species: &Species,
    standard: &Standard,
    length_cm: f64,
    adult: bool,
    animals: u32,
    age_months: Option<f64>,
) -> Result<Minimum, Option<Reason>> {
    let lengths = BodyLengths { age_months, ..body_lengths(species, length_cm) };
    let row = standard.rows.get(row_of(species, standard)).ok_or(None)?;
    let mut least = minimum(row, &lengths, adult, animals).map_err(Some)?;
    least.assumptions.extend(carried(species, length_cm, least.measure, &lengths));
    least.assumptions.extend(row.note.clone());
    Ok(least)
}

/// The lengths of an animal by every measure that follows from the species' own.
fn body_lengths(species: &Species, length_cm: f64) -> BodyLengths {
    let mut lengths = BodyLengths::default();
    match species.size.measure {
        Measure::TotalLength => lengths.total_cm = Some(length_cm),
        Measure::SnoutVent => lengths.snout_vent_cm = Some(length_cm),
        Measure::Carapace => lengths.carapace_cm = Some(length_cm),
    }
    if species.size.measure == Measure::SnoutVent {
        let ratio = total_over_snout_vent(species);
        lengths.total_cm = ratio.map(|ratio| length_cm * ratio);
    }
    // A frog has no tail: its snout-vent length is its total length.
    if species.kind == Kind::Frog {
        lengths.total_cm = lengths.total_cm.or(lengths.snout_vent_cm);
        lengths.snout_vent_cm = lengths.snout_vent_cm.or(lengths.total_cm);
    }
    lengths
}

/// How many times its snout-vent length a grown animal measures in all, from the tops of both ranges.
fn total_over_snout_vent(species: &Species) -> Option<f64> {
    let total = species.size.total_length.as_ref()?.value.high()?.cm();
    let (_, snout_vent) = adult_range_cm(species, Sex::Unknown, None)?;
    (snout_vent > 0.0).then(|| (total / snout_vent).max(1.0))
}

fn carried(
    species: &Species,
    length_cm: f64,
    measure: RuleMeasure,
    lengths: &BodyLengths,
) -> Option<String> {
    let total = lengths.total_cm?;
    if measure != RuleMeasure::TotalLength
        || species.size.measure == Measure::TotalLength
        || species.kind == Kind::Frog
    {
        return None;
    }
    Some(format!(
        "The rule means the total length; {} cm is taken for a snout-vent length of {} cm, in the proportion of grown animals.",
        number(total, 1),
        number(length_cm, 1)
    ))
}

/// The standards' reasons are sentences; a reason in a list is not.
fn sentence(reason: &str) -> String {
    let reason = reason.trim_end_matches('.');
    let mut letters = reason.chars();
    letters.next().map(|first| first.to_lowercase().chain(letters).collect()).unwrap_or_default()
}

/// What every standard in force asks for, and the one that asks for most.
#[derive(Debug, Clone, PartialEq)]
pub struct Space {
    /// By standard.
    pub needs: Vec<Need>,
    /// The place in `needs` of the one that asks for the largest floor.
    pub governing: usize,
    /// What satisfies all of them.
    pub all: Minimum,
    /// The least that satisfies all of them and can be bought or built.
    pub build: Option<Build>,
}

impl Space {
    /// The standard that asks for the largest floor, with what it asks for.
    pub fn strictest(&self) -> &Need {
        &self.needs[self.governing]
    }
}

/// Joins what the standards ask for. None where not one of them can be worked out.
///
/// The governing standard is the one with the largest floor, then the most water, then the greatest height.
pub fn join(needs: Vec<Need>) -> Option<Space> {
    let weight = |need: &Need| {
        let least = need.least.as_ref().ok();
        let of = |figure: fn(&Minimum) -> Option<f64>| least.and_then(figure).unwrap_or(0.0);
        (of(Minimum::floor_m2), of(|least| least.water_l), of(Minimum::height_cm))
    };
    let mut governing: Option<usize> = None;
    for (place, need) in needs.iter().enumerate() {
        let larger = governing.is_none_or(|best| weight(need) > weight(&needs[best]));
        if need.least.is_ok() && larger {
            governing = Some(place);
        }
    }
    let all: Vec<Minimum> = needs.iter().filter_map(|need| need.least.clone().ok()).collect();
    let all = strictest(&all)?;
    let build = build_cm(&all);
    Some(Space { governing: governing?, needs, all, build })
}

/// Whether an enclosure is enough; where it is not, the standards by their names and what is short of each.
pub type Fits = Result<(), Vec<(String, Shortfall)>>;

/// Tells whether an enclosure of these inside measures satisfies everything that was asked for.
pub fn satisfied(inside_cm: [f64; 3], space: &Space) -> Fits {
    let mut short = Vec::new();
    for need in &space.needs {
        let Ok(least) = &need.least else { continue };
        if let Fit::Short(shortfalls) = fits(inside_cm, least) {
            short.extend(shortfalls.into_iter().map(|short| (need.standard.clone(), short)));
        }
    }
    if short.is_empty() { Ok(()) } else { Err(short) }
}

/// The largest of the sizes to build, by volume.
pub fn largest_build(needs: &[Need]) -> Option<[f64; 3]> {
    let volume = |cm: &[f64; 3]| cm.iter().product::<f64>();
    let sizes = needs.iter().filter_map(|need| need.build.as_ref()).map(|build| build.inside_cm);
    sizes.max_by(|a, b| volume(a).total_cmp(&volume(b)))
}

/// What a species needs at one length on its way to its adult one.
#[derive(Debug, Clone, PartialEq)]
pub struct Rung {
    /// The length by the species' own measure, cm.
    pub length_cm: f64,
    /// What satisfies every standard in force.
    pub space: Space,
}

/// How many lengths are worked out between birth and the top of the adult range.
const RUNGS: u32 = 5;

/// Works out what a species needs at lengths from birth to the top of its adult range, for one animal.
///
/// Lengths in cm, rounded up to whole steps that suit the size of the animal. An animal counts as adult from the low end of the
/// adult range on. Lengths that no standard covers are left out.
pub fn ladder(model: &Model, species: &Species) -> Vec<Rung> {
    let Some((adult_cm, top_cm)) = adult_range_cm(species, Sex::Unknown, None) else {
        return Vec::new();
    };
    let birth =
        species.size.birth.as_ref().and_then(|cited| cited.value.high().or(cited.value.low()));
    let birth_cm = birth.map_or(top_cm / f64::from(RUNGS), |birth| birth.cm().min(top_cm));
    let step = if top_cm > 100.0 {
        10.0
    } else if top_cm > 30.0 {
        5.0
    } else {
        1.0
    };
    let mut rungs: Vec<Rung> = Vec::new();
    for number in 0..=RUNGS {
        let exact = birth_cm + (top_cm - birth_cm) * f64::from(number) / f64::from(RUNGS);
        let length_cm = if number == RUNGS { top_cm } else { (exact / step).ceil() * step };
        if rungs.last().is_some_and(|last| last.length_cm >= length_cm) {
            continue;
        }
        let needs = in_force(model, species).into_iter();
        let needs = needs
            .map(|standard| need(species, standard, "", length_cm, length_cm >= adult_cm, 1, None));
        if let Some(space) = join(needs.collect()) {
            rungs.push(Rung { length_cm, space });
        }
    }
    rungs
}

/// The needs of each kind of animal, in the order in which the kinds come first.
pub fn by_kind(needs: &[Need]) -> Vec<(&str, Vec<&Need>)> {
    let mut numbers: BTreeMap<&str, usize> = BTreeMap::new();
    let mut kinds: Vec<(&str, Vec<&Need>)> = Vec::new();
    for need in needs {
        let number = *numbers.entry(&need.for_whom).or_insert(kinds.len());
        match kinds.get_mut(number) {
            Some((_, own)) => own.push(need),
            None => kinds.push((&need.for_whom, vec![need])),
        }
    }
    kinds
}

/// How many times the smallest floor asked for by a standard the largest is, for the same kind of animal.
pub fn disagreement(needs: &[Need]) -> Option<f64> {
    let ratios = by_kind(needs).into_iter().map(|(_, own)| {
        let floors = own.iter().filter_map(|need| need.least.as_ref().ok()?.floor_m2());
        let ends = floors
            .fold((f64::MAX, 0.0_f64), |(least, most), floor| (floor.min(least), floor.max(most)));
        ends.1 / ends.0
    });
    ratios
        .filter(|ratio| ratio.is_finite())
        .fold(None, |most: Option<f64>, ratio| Some(most.map_or(ratio, |most| most.max(ratio))))
}
