//! Prey that is wider than the snake that is to swallow it.

use crate::figures::formula::coil::body_width_cm;
use crate::finding::{Code, Finding, Severity, Subject};
use crate::model::word::Kind;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Length, Rounding, print_one};

use super::fed;

static CODE: Code = Code {
    name: "meal-too-wide",
    severity: Severity::Warning,
    safety: false,
    subject: Subject::Feeding,
    summary: "a snake's prey is wider than the snake",
    page: include_str!("meal_too_wide.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

/// How far beyond the body's width, which is worked out, prey is doubted.
const MARGIN: f64 = 1.25;

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    for fed in fed(evidence) {
        if fed.species.kind != Kind::Snake {
            continue;
        }
        let Some((width, place)) = fed.animal.feeding.as_ref().and_then(|practice| practice.width)
        else {
            continue;
        };
        let body = fed.figures.body.length_cm.zip(fed.figures.body.mass_g);
        let Some(own) = body.and_then(|(length, mass)| body_width_cm(length, mass).ok()) else {
            continue;
        };
        if width.cm() <= own * MARGIN {
            continue;
        }
        let shown = |cm: f64| {
            print_one(
                Length::from_cm((cm * 10.0).round() / 10.0),
                evidence.model.site.units,
                Rounding::Nearest,
            )
            .first
        };
        let message = format!(
            "prey {} wide is offered to {}, whose body is about {} wide at its widest",
            shown(width.cm()),
            fed.animal.name,
            shown(own)
        );
        let help = "offer prey no wider than the snake's widest part; what is too wide comes up again, or tears";
        found.push(Finding::new(&CODE, place, message).help(help));
    }
}
