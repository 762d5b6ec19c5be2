//! A hide that the animal does not fit into.

use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::{Kind, Measure};
use crate::proof::{Evidence, Rule};
use crate::quantity::{Area, Rounding};

use super::{Housed, cm, housed, one};

static CODE: Code = Code {
    name: "hide-too-small",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Enclosure,
    summary: "a hide is too small for the animal",
    page: include_str!("hide_too_small.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// A snake packs tighter than one flat layer, but not into half of it.
const TIGHTEST: f64 = 0.5;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for housed in housed(evidence) {
        for hide in &housed.housing.hides {
            let Some((inside, place)) = hide.inside else { continue };
            let (length, width) = (inside.length.cm(), inside.width.cm());
            let floor =
                |cm2: f64| one(Area::from_square_metres(cm2 / 1e4), system, Rounding::Nearest);
            let message = match coil_cm2(&housed) {
                Some(coil) if length * width < coil * TIGHTEST => format!(
                    "this hide has a floor of {}, and the snake coiled flat covers about {}",
                    floor(length * width),
                    floor(coil)
                ),
                Some(_) => continue,
                None => match body_cm(&housed) {
                    Some(body) if length.max(width) < body => format!(
                        "this hide is {} long inside, and the animal's body {}",
                        cm(length.max(width), system),
                        cm(body, system)
                    ),
                    _ => continue,
                },
            };
            let help =
                "give it one that it fits into and touches on all sides, or correct the measures";
            found.push(Finding::new(&CODE, place, message).help(help));
        }
    }
}

/// What a snake lying in one flat coil covers: its length times its mean thickness.
///
/// The thickness is that of a round body as heavy as water: d = √(4 m / (π L)), with m in g and L in cm.
fn coil_cm2(housed: &Housed<'_>) -> Option<f64> {
    let body = housed.figures.body;
    let (length, mass) = (body.length_cm?, body.mass_g?);
    let is_long =
        housed.species.kind == Kind::Snake && housed.species.size.measure == Measure::TotalLength;
    let thickness = (4.0 * mass / (std::f64::consts::PI * length)).sqrt();
    is_long.then_some(length * thickness)
}

/// The length of a body that does not coil, for kinds measured without the tail.
fn body_cm(housed: &Housed<'_>) -> Option<f64> {
    let without_tail =
        matches!(housed.species.size.measure, Measure::SnoutVent | Measure::Carapace);
    housed.figures.body.length_cm.filter(|_| without_tail && housed.species.kind != Kind::Snake)
}
