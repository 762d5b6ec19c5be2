//! Space and furniture.

pub(super) mod climber_without_height;
pub(super) mod enclosure_outgrown_soon;
pub(super) mod enclosure_too_small;
pub(super) mod hide_outside_box;
pub(super) mod hide_too_small;
pub(super) mod hides_at_one_end;
pub(super) mod hides_too_few;
pub(super) mod inside_missing;
pub(super) mod no_water;

use crate::figures::AnimalFigures;
use crate::figures::enclosure::Shortfall;
use crate::model::housing::Housing;
use crate::model::{Animal, Species};
use crate::proof::Evidence;
use crate::quantity::{Area, Length, Quantity, Rounding, System, Volume, print_one};

/// An animal that is kept, with its species and its enclosure.
struct Housed<'a> {
    animal: &'a Animal,
    species: &'a Species,
    housing: &'a Housing,
    figures: &'a AnimalFigures,
}

/// Every animal that is kept in an enclosure of which something is known.
fn housed<'a>(evidence: &Evidence<'a>) -> Vec<Housed<'a>> {
    let (model, figures) = (evidence.model, evidence.figures);
    let kept = model.animals.iter().filter(|(_, animal)| animal.is_kept());
    kept.filter_map(|(name, animal)| {
        let species = model.species.get(&animal.species.name)?;
        let housing = animal.housing.as_ref()?;
        Some(Housed { animal, species, housing, figures: figures.animals.get(name)? })
    })
    .collect()
}

/// One value in the system that the site puts first.
fn one<Q: Quantity>(value: Q, system: System, rounding: Rounding) -> String {
    print_one(value, system, rounding).first
}

/// A length in the system that the site puts first.
fn cm(value: f64, system: System) -> String {
    one(Length::from_cm(value), system, Rounding::Nearest)
}

/// What there is and what is asked for: "length 60 cm where 120 cm is asked for".
fn shortfall(short: Shortfall, system: System) -> String {
    let lengths = |inside_cm, needed_cm| {
        let inside = one(Length::from_cm(inside_cm), system, Rounding::Down);
        (inside, one(Length::from_cm(needed_cm), system, Rounding::Up))
    };
    let (what, (inside, needed)) = match short {
        Shortfall::Length { needed_cm, inside_cm } => ("length", lengths(inside_cm, needed_cm)),
        Shortfall::Width { needed_cm, inside_cm } => ("width", lengths(inside_cm, needed_cm)),
        Shortfall::ShortestSide { needed_cm, inside_cm } => {
            ("shortest side", lengths(inside_cm, needed_cm))
        }
        Shortfall::Height { needed_cm, inside_cm } => ("height", lengths(inside_cm, needed_cm)),
        Shortfall::WaterDepth { needed_cm, inside_cm } => {
            ("height for the water", lengths(inside_cm, needed_cm))
        }
        Shortfall::Floor { needed_m2, inside_m2 } => {
            let of = |area, side| one(Area::from_square_metres(area), system, side);
            ("floor", (of(inside_m2, Rounding::Down), of(needed_m2, Rounding::Up)))
        }
        Shortfall::Water { needed_l, inside_l } => {
            let of = |litres, side| one(Volume::from_litres(litres), system, side);
            ("room for water", (of(inside_l, Rounding::Down), of(needed_l, Rounding::Up)))
        }
    };
    format!("{what} {inside} where {needed} is asked for")
}

/// Several shortfalls in one sentence.
fn shortfalls(short: &[Shortfall], system: System) -> String {
    let parts: Vec<String> = short.iter().map(|short| shortfall(*short, system)).collect();
    parts.join(", ")
}
