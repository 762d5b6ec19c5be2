//! Which class of a row holds for an animal.

use super::{BodyLengths, Reason, wording::number};
use crate::model::standard::{Area, Edges, Extent, Row, SizeClass};

/// The classes that hold, with what had to be decided.
pub(super) struct Choice {
    /// Places in the row: one, or two exactly at a shared edge.
    pub(super) classes: Vec<usize>,
    pub(super) assumptions: Vec<String>,
    pub(super) steps: Vec<String>,
}

/// Chooses by adulthood, then by age where the row goes by age, then by length.
pub(super) fn choose(row: &Row, lengths: &BodyLengths, adult: bool) -> Result<Choice, Reason> {
    let given = [
        lengths.total_cm,
        lengths.snout_vent_cm,
        lengths.carapace_cm,
        lengths.carapace_width_cm,
        lengths.age_months,
    ];
    if given.into_iter().flatten().any(|value| !value.is_finite() || value <= 0.0) {
        return Err(Reason::NotALength);
    }
    let Some(last) = row.classes.len().checked_sub(1) else { return Err(Reason::NoClasses) };
    let mut choice = Choice { classes: Vec::new(), assumptions: Vec::new(), steps: Vec::new() };
    let mut by_length = false;

    if row.classes.iter().any(|class| class.up_to_months.is_some()) {
        choice.by_age(row, lengths, adult, last);
    } else if let Some(place) = row.classes.iter().position(|class| class.adult).filter(|_| adult) {
        choice.adult(row, lengths, place)?;
    } else if last == 0 && row.classes[0].up_to_cm.is_none() && row.classes[0].from_cm.is_none() {
        choice.classes.push(0);
        if row.classes[0].adult {
            choice.assumptions.push(
                "The figure is printed for adults; it is used for a younger animal too, which may need less."
                    .to_owned(),
            );
        }
    } else {
        by_length = true;
        choice.by_length(row, lengths)?;
    }

    let multiples = choice.classes.iter().any(|&place| uses_multiples(&row.classes[place]));
    if row.measure_assumed && (by_length || multiples) {
        choice.assumptions.push(format!(
            "The standard does not say which length it means; the {} is taken.",
            row.measure
        ));
    }
    Ok(choice)
}

impl Choice {
    fn by_age(&mut self, row: &Row, lengths: &BodyLengths, adult: bool, last: usize) {
        match lengths.age_months {
            Some(age) if !adult => {
                let ends: Vec<f64> = row
                    .classes
                    .iter()
                    .map(|class| class.up_to_months.unwrap_or(f64::INFINITY))
                    .collect();
                self.classes = holding(row, &ends, age);
                // The last class of a table by age is the adults'; a table that ends earlier still gives its most.
                if self.classes.is_empty() {
                    self.classes.push(last);
                }
                self.steps
                    .push(format!("The class is chosen by the age, {} months.", number(age, 1)));
            }
            Some(_) => self.classes.push(last),
            None => {
                self.classes.push(last);
                if !adult {
                    self.assumptions
                        .push("The age is not known; the figure for adults is used.".to_owned());
                }
            }
        }
    }

    fn adult(&mut self, row: &Row, lengths: &BodyLengths, place: usize) -> Result<(), Reason> {
        if let (Some(up_to_cm), Some(length_cm)) =
            (row.classes[place].up_to_cm, lengths.of(row.measure))
            && length_cm > up_to_cm
        {
            return Err(Reason::NoClass { measure: row.measure, length_cm, up_to_cm });
        }
        self.classes.push(place);
        self.steps.push(
            "The animal is adult: the class for adults holds, whatever its length.".to_owned(),
        );
        Ok(())
    }

    fn by_length(&mut self, row: &Row, lengths: &BodyLengths) -> Result<(), Reason> {
        let measure = row.measure;
        let length_cm = lengths.required(measure)?;
        let ends: Vec<f64> =
            row.classes.iter().map(|class| class.up_to_cm.unwrap_or(f64::INFINITY)).collect();
        self.classes = holding(row, &ends, length_cm);
        let Some(&place) = self.classes.first() else {
            let up_to_cm = ends.into_iter().fold(0.0, f64::max);
            return Err(Reason::NoClass { measure, length_cm, up_to_cm });
        };
        let class = &row.classes[place];
        self.steps.push(format!(
            "{}{} {} cm: the class {}.",
            measure.to_string()[..1].to_uppercase(),
            &measure.to_string()[1..],
            number(length_cm, 1),
            reach(row, place)
        ));
        if self.classes.len() > 1 {
            self.assumptions.push(format!(
                "Exactly {} cm stands in two classes; both are worked out and the larger figure of each kind is used.",
                number(length_cm, 1)
            ));
        }
        if class.adult && row.classes.len() > 1 {
            self.assumptions.push(
                "The animal is longer than the last class with a length; the class for adults is used.".to_owned(),
            );
        }
        if let Some(from_cm) = class.from_cm.filter(|&from_cm| length_cm < from_cm) {
            self.assumptions.push(format!(
                "The standard has no class below {} cm; its first class is used.",
                number(from_cm, 1)
            ));
        }
        Ok(())
    }
}

/// Returns the place of the class that holds, and of its upper neighbour exactly at an edge both print.
fn holding(row: &Row, ends: &[f64], value: f64) -> Vec<usize> {
    let Some(place) = ends.iter().position(|&end| value <= end) else { return Vec::new() };
    let on_edge = ends[place] == value;
    match row.classes.get(place + 1) {
        Some(next) if on_edge && row.edges == Edges::Shared && !next.adult && !next.over => {
            vec![place, place + 1]
        }
        _ => vec![place],
    }
}

/// Says how far a class reaches.
fn reach(row: &Row, place: usize) -> String {
    let below = place.checked_sub(1).and_then(|lower| row.classes[lower].up_to_cm);
    match (below, row.classes[place].up_to_cm, row.classes[place].adult) {
        (_, _, true) => "for adults".to_owned(),
        (None, Some(up_to), _) => format!("up to {} cm", number(up_to, 1)),
        (Some(below), Some(up_to), _) => {
            format!("from {} to {} cm", number(below, 1), number(up_to, 1))
        }
        (Some(below), None, _) => format!("over {} cm", number(below, 1)),
        (None, None, _) => "for all lengths".to_owned(),
    }
}

fn uses_multiples(class: &SizeClass) -> bool {
    let space = &class.space;
    let sides =
        space.layouts.iter().flat_map(|layout| [layout.length, layout.width, layout.height]);
    let depth = space.water_depth.map(|depth| depth.least);
    let areas =
        space.layouts.iter().map(|layout| layout.floor).chain([space.land, space.water_floor]);
    sides
        .chain([depth, space.least_side])
        .flatten()
        .any(|extent| matches!(extent, Extent::Multiple(_)))
        || areas.flatten().any(|area| matches!(area, Area::SquaredMultiple(_)))
}
