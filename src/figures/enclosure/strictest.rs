//! One requirement that satisfies several.

use super::{Minimum, Shape, wording::add_once};

/// So many layouts are carried on, of the least volume first: the choices multiply with every standard.
const MOST_LAYOUTS: usize = 100;

/// Combines several minima into one requirement that satisfies them all.
///
/// Of each figure the largest wins: length, width, floor, height, shortest side, water, depth and land each on their
/// own, so the combination may be larger than any of the minima alone. Where minima offer alternative layouts, every
/// choice of one layout from each is combined; the one with the least volume comes first and the others stay as
/// alternatives, except those that ask for more of everything than another, and at most a hundred. The greatest depth of water is the
/// shallowest that any of them allows. None if `minima` is empty.
pub fn strictest(minima: &[Minimum]) -> Option<Minimum> {
    let (first, rest) = minima.split_first()?;
    let mut combined = first.clone();
    let mut shapes: Vec<Shape> = first.shapes().copied().take(MOST_LAYOUTS).collect();
    for next in rest {
        shapes = shapes
            .iter()
            .flat_map(|shape| next.shapes().take(MOST_LAYOUTS).map(|other| larger(shape, other)))
            .collect();
        if shapes.len() > MOST_LAYOUTS {
            shapes.sort_by(|a, b| volume(a).total_cmp(&volume(b)));
            shapes.truncate(MOST_LAYOUTS);
        }
        combined.least_side_cm = most(combined.least_side_cm, next.least_side_cm);
        combined.water_l = most(combined.water_l, next.water_l);
        combined.water_floor_m2 = most(combined.water_floor_m2, next.water_floor_m2);
        combined.water_depth_cm = most(combined.water_depth_cm, next.water_depth_cm);
        combined.water_depth_at_most_cm =
            least(combined.water_depth_at_most_cm, next.water_depth_at_most_cm);
        combined.land_m2 = most(combined.land_m2, next.land_m2);
        for line in &next.assumptions {
            add_once(&mut combined.assumptions, line.clone());
        }
        for line in &next.missing {
            add_once(&mut combined.missing, line.clone());
        }
        combined.steps.extend(next.steps.iter().cloned());
    }
    if !rest.is_empty() {
        combined.classes.clear();
        if let (Some(deep), Some(shallow)) =
            (combined.water_depth_cm, combined.water_depth_at_most_cm)
            && deep > shallow
        {
            combined.water_depth_at_most_cm = None;
            combined.assumptions.push(
                "The depths of the water contradict each other; the least depth is kept and the greatest is dropped."
                    .to_owned(),
            );
        }
        shapes.sort_by(|a, b| volume(a).total_cmp(&volume(b)));
        shapes = without_idle(shapes);
    }
    combined.shape = shapes.first().copied().unwrap_or_default();
    combined.alternatives = shapes.into_iter().skip(1).collect();
    Some(combined)
}

/// Returns the shape that holds both: of each figure the larger.
fn larger(a: &Shape, b: &Shape) -> Shape {
    let length_width_cm = match (a.length_width_cm, b.length_width_cm) {
        (Some(a), Some(b)) => Some([a[0].max(b[0]), a[1].max(b[1])]),
        (one, other) => one.or(other),
    };
    let of_sides = length_width_cm.map(|[length, width]| length * width / 10_000.0);
    Shape {
        length_width_cm,
        floor_m2: most(of_sides, most(a.floor_m2, b.floor_m2)),
        height_cm: most(a.height_cm, b.height_cm),
    }
}

/// Leaves out every layout that asks for at least as much of everything as an earlier one.
fn without_idle(shapes: Vec<Shape>) -> Vec<Shape> {
    let mut kept: Vec<Shape> = Vec::new();
    for shape in shapes {
        if !kept.iter().any(|earlier| larger(earlier, &shape) == shape) {
            kept.push(shape);
        }
    }
    kept
}

fn volume(shape: &Shape) -> f64 {
    shape.floor_m2.unwrap_or(0.0) * shape.height_cm.unwrap_or(1.0)
}

fn most(a: Option<f64>, b: Option<f64>) -> Option<f64> {
    match (a, b) {
        (Some(a), Some(b)) => Some(a.max(b)),
        (one, other) => one.or(other),
    }
}

fn least(a: Option<f64>, b: Option<f64>) -> Option<f64> {
    match (a, b) {
        (Some(a), Some(b)) => Some(a.min(b)),
        (one, other) => one.or(other),
    }
}
