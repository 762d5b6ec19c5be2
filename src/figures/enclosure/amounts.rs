//! What one class asks for: the base figure, what further animals add, and the cap on the height.

mod growth;
mod layout;

use super::{BodyLengths, Minimum, Reason, Shape, wording::number};
use crate::model::standard::{Area, Extent, Measure, Row, SizeClass};
use growth::Growth;

/// The lengths that turn multiples into centimetres.
struct Scale<'a> {
    lengths: &'a BodyLengths,
    measure: Measure,
}

impl Scale<'_> {
    fn extent(&self, extent: Extent) -> Result<f64, Reason> {
        self.extent_of(extent, self.measure)
    }

    fn extent_of(&self, extent: Extent, measure: Measure) -> Result<f64, Reason> {
        match extent {
            Extent::Centimetres(length_cm) => Ok(length_cm),
            Extent::Multiple(factor) => Ok(factor * self.lengths.required(measure)?),
        }
    }

    fn area(&self, area: Area) -> Result<f64, Reason> {
        match area {
            Area::SquareMetres(area_m2) => Ok(area_m2),
            Area::SquaredMultiple(factor) => {
                let length_m = self.lengths.required(self.measure)? / 100.0;
                Ok(factor * length_m * length_m)
            }
        }
    }
}

/// Works out one class for so many animals.
pub(super) fn of_class(
    row: &Row,
    class: &SizeClass,
    lengths: &BodyLengths,
    animals: u32,
) -> Result<Minimum, Reason> {
    let scale = Scale { lengths, measure: row.measure };
    let space = &class.space;
    let growth = Growth::of(row, class, &scale, animals)?;
    let mut minimum = Minimum {
        shape: Shape::default(),
        alternatives: Vec::new(),
        least_side_cm: None,
        water_l: space.water_l.map(|base_l| base_l + growth.water_l),
        water_floor_m2: None,
        water_depth_cm: None,
        water_depth_at_most_cm: None,
        land_m2: None,
        measure: row.measure,
        classes: Vec::new(),
        assumptions: Vec::new(),
        missing: Vec::new(),
        steps: Vec::new(),
    };
    group_lines(row, animals, &mut minimum);

    if let Some(land) = space.land {
        minimum.land_m2 = Some(scale.area(land)? + growth.land_m2);
    }
    if let Some(surface) = space.water_floor {
        minimum.water_floor_m2 = Some(scale.area(surface)? + growth.water_floor_m2);
    }
    water_depth(row, class, &scale, &mut minimum);
    match space.least_side.map(|side| scale.extent(side)).transpose() {
        Ok(side) => minimum.least_side_cm = side,
        Err(reason) => minimum.missing.push(format!("Shortest side of the floor: {reason}")),
    }

    let open = [Default::default()];
    let layouts = if space.layouts.is_empty() { &open } else { space.layouts.as_slice() };
    let mut shapes = Vec::with_capacity(layouts.len());
    for (place, layout) in layouts.iter().enumerate() {
        if place > 0 {
            minimum.steps.push("Or, as the standard allows:".to_owned());
        }
        shapes.push(layout::shape(row, class, layout, &scale, &growth, &mut minimum)?);
    }
    water_lines(&mut minimum);
    minimum.shape = shapes.remove(0);
    minimum.alternatives = shapes;
    Ok(minimum)
}

/// Says how the number of animals stands to the number that the figure serves.
fn group_lines(row: &Row, animals: u32, minimum: &mut Minimum) {
    if row.singly && animals > 1 {
        minimum.assumptions.push(
            "The standard says to keep this animal singly; the figure for more comes from its own table all the same."
                .to_owned(),
        );
    }
    if animals > 1 {
        minimum.assumptions.push(
            "In a group of mixed sizes the lengths are taken to be those of the largest animal."
                .to_owned(),
        );
    }
    if animals < row.animals {
        minimum
            .steps
            .push(format!("The figure serves up to {} animals; fewer need as much.", row.animals));
    }
    if let Some(share) = row.tolerance_share {
        minimum.assumptions.push(format!(
            "The shortfall of {} that the standard tolerates in special cases is not used.",
            super::wording::percent(share)
        ));
    }
}

/// Fills in the depth of the water, and keeps its volume where the cap on the height cuts it.
fn water_depth(row: &Row, class: &SizeClass, scale: &Scale<'_>, minimum: &mut Minimum) {
    let Some(depth) = class.space.water_depth else { return };
    let measure = depth.of.unwrap_or(row.measure);
    match scale.extent_of(depth.least, measure) {
        Ok(least_cm) => minimum.water_depth_cm = Some(least_cm),
        Err(reason) => minimum.missing.push(format!("Depth of the water: {reason}")),
    }
    minimum.water_depth_at_most_cm =
        depth.most.and_then(|most| scale.extent_of(most, measure).ok());
    let (Some(cap), Some(depth_cm)) = (row.height_cap, minimum.water_depth_cm) else { return };
    if cap.floor_grows && depth_cm > cap.height_cm {
        minimum.water_depth_cm = Some(cap.height_cm);
        minimum.water_floor_m2 =
            minimum.water_floor_m2.map(|floor_m2| floor_m2 * depth_cm / cap.height_cm);
        minimum.steps.push(format!(
            "The depth of {} cm need not exceed {} cm; the surface of the water grows so that the volume stays.",
            number(depth_cm, 1),
            number(cap.height_cm, 1)
        ));
    }
}

fn water_lines(minimum: &mut Minimum) {
    let lines = [
        ("Water", minimum.water_l.map(|value| format!("{} l", number(value, 1)))),
        (
            "Surface of the water",
            minimum.water_floor_m2.map(|value| format!("{} m²", number(value, 4))),
        ),
        (
            "Depth of the water, at least",
            minimum.water_depth_cm.map(|value| format!("{} cm", number(value, 1))),
        ),
        (
            "Depth of the water, at most",
            minimum.water_depth_at_most_cm.map(|value| format!("{} cm", number(value, 1))),
        ),
        ("Land", minimum.land_m2.map(|value| format!("{} m²", number(value, 4)))),
        (
            "Shortest side, at least",
            minimum.least_side_cm.map(|value| format!("{} cm", number(value, 1))),
        ),
    ];
    for (what, value) in lines {
        if let Some(value) = value {
            minimum.steps.push(format!("{what}: {value}."));
        }
    }
}
