//! One layout: its sides or its floor, grown for further animals, its height cut by the cap.

use super::{Growth, Minimum, Reason, Scale, Shape};
use crate::{
    figures::enclosure::wording::{add_once, number},
    model::standard::{Extent, Layout, Row, SizeClass},
};

const NO_HEIGHT: &str = "The standard gives no height; the added volume is put into the floor.";
const CAPPED: &str = "The proportions cannot be kept above the greatest height asked for; the rest of the added volume is put into the floor.";

/// Works out one layout, adding its working to `minimum`.
pub(super) fn shape(
    row: &Row,
    class: &SizeClass,
    layout: &Layout,
    scale: &Scale<'_>,
    growth: &Growth,
    minimum: &mut Minimum,
) -> Result<Shape, Reason> {
    let sides = match (layout.length, layout.width) {
        (Some(length), Some(width)) => Some([scale.extent(length)?, scale.extent(width)?]),
        _ => None,
    };
    let base_height = layout.height.map(|height| scale.extent(height)).transpose()?;
    for (what, extent) in
        [("Length", layout.length), ("Width", layout.width), ("Height", layout.height)]
    {
        if let Some(extent) = extent {
            minimum.steps.push(extent_line(what, extent, scale)?);
        }
    }
    let base_m2 = match (layout.floor, sides) {
        (Some(area), _) => Some(scale.area(area)?),
        (None, Some([length, width])) => Some(length * width / 10_000.0),
        // Land and the surface of the water lie side by side, and have already grown for further animals.
        (None, None) => {
            minimum.water_floor_m2.map(|water_m2| water_m2 + minimum.land_m2.unwrap_or(0.0))
        }
    };
    let grown_m2 = base_m2.map(|base_m2| grown_floor(class, base_m2, growth, minimum));

    let (height_cm, floor_factor) = stacked(row, base_height, growth, minimum);
    let floor_m2 = grown_m2.map(|floor_m2| floor_m2 * floor_factor);
    let length_width_cm = sides.map(|[length, width]| {
        let factor = match (base_m2, floor_m2) {
            (Some(base_m2), Some(floor_m2)) if base_m2 > 0.0 => (floor_m2 / base_m2).sqrt(),
            _ => 1.0,
        };
        [length.max(width) * factor, length.min(width) * factor]
    });
    minimum.steps.push(result_line(length_width_cm, floor_m2, height_cm));
    Ok(Shape { length_width_cm, floor_m2, height_cm })
}

/// Adds to the floor what further animals add, or takes the floor of a group.
fn grown_floor(class: &SizeClass, base_m2: f64, growth: &Growth, minimum: &mut Minimum) -> f64 {
    if let Some(each_m2) = class.space.group_floor_m2.filter(|_| growth.animals >= 2) {
        let group_m2 = f64::from(growth.animals) * each_m2;
        minimum.steps.push(format!(
            "Floor of the group: {} × {} m² = {} m².",
            growth.animals,
            number(each_m2, 4),
            number(group_m2, 4)
        ));
        if group_m2 < base_m2 {
            minimum.assumptions.push(format!(
                "The floor of the group comes out below the {} m² of one animal alone; that is kept.",
                number(base_m2, 4)
            ));
        }
        return group_m2.max(base_m2);
    }
    let grown_m2 = base_m2 * growth.floor_factor + growth.floor_m2();
    if !growth.floor_words.is_empty() || !growth.floor_areas_m2.is_empty() {
        let mut terms = vec![format!("{} m²", number(base_m2, 4))];
        terms.extend(growth.floor_words.iter().cloned());
        terms.extend(
            growth
                .floor_areas_m2
                .iter()
                .map(|(count, area_m2)| format!("{count} × {} m²", number(*area_m2, 4))),
        );
        minimum.steps.push(format!(
            "Floor for {} animals, {} beyond the figure: {} = {} m².",
            growth.animals,
            growth.further,
            terms.join(" + "),
            number(grown_m2, 4)
        ));
    }
    let added_m2 = base_m2 * growth.floor_factor_added + growth.floor_m2();
    if growth.further > 1 && growth.floor_factor > growth.floor_factor_added {
        minimum.assumptions.push(format!(
            "The share for each further animal is read as growing on itself, {} m²; read as the same each time it would be {} m².",
            number(grown_m2, 4),
            number(added_m2, 4)
        ));
    }
    grown_m2
}

/// Returns the height, and what the floor is multiplied by so that the volume is met.
///
/// With proportions kept, every side grows with the cube root of the volume. Where a cap cuts the height, what is
/// missing goes into the floor: the added volume always, the volume above the cap only if the standard says so.
fn stacked(
    row: &Row,
    base_cm: Option<f64>,
    growth: &Growth,
    minimum: &mut Minimum,
) -> (Option<f64>, f64) {
    let volume = growth.volume_factor;
    if volume > 1.0 {
        minimum.steps.push(format!(
            "Volume for {} animals: 1 + {} = {} times the base, with the proportions kept.",
            growth.animals,
            growth.volume_words.join(" + "),
            number(volume, 4)
        ));
    }
    let Some(printed_cm) = base_cm else {
        if volume > 1.0 {
            add_once(&mut minimum.assumptions, NO_HEIGHT.to_owned());
        }
        return (None, volume);
    };
    let wanted_cm = printed_cm + growth.height_cm;
    if growth.height_cm > 0.0 {
        minimum.steps.push(format!(
            "Height for {} animals: {} + {} = {} cm.",
            growth.animals,
            number(printed_cm, 1),
            number(growth.height_cm, 1),
            number(wanted_cm, 1)
        ));
    }
    let cap_cm = row.height_cap.map_or(f64::INFINITY, |cap| cap.height_cm);
    let floor_grows = row.height_cap.is_some_and(|cap| cap.floor_grows);
    let base_cm = if floor_grows { wanted_cm } else { wanted_cm.min(cap_cm) };
    let scaled_cm = if volume > 1.0 { base_cm * libm::cbrt(volume) } else { base_cm };
    let height_cm = scaled_cm.min(cap_cm);
    if wanted_cm > cap_cm {
        let floor = if floor_grows {
            "the floor grows so that the volume stays"
        } else {
            "the floor stays"
        };
        minimum.steps.push(format!(
            "The height of {} cm need not exceed {} cm; {floor}.",
            number(wanted_cm, 1),
            number(cap_cm, 1)
        ));
    }
    if volume > 1.0 && scaled_cm > cap_cm && !floor_grows {
        add_once(&mut minimum.assumptions, CAPPED.to_owned());
    }
    (Some(height_cm), base_cm * volume / height_cm)
}

fn extent_line(what: &str, extent: Extent, scale: &Scale<'_>) -> Result<String, Reason> {
    let length_cm = scale.extent(extent)?;
    Ok(match extent {
        Extent::Centimetres(_) => format!("{what}: {} cm.", number(length_cm, 1)),
        Extent::Multiple(factor) => format!(
            "{what}: {} × {} cm {} = {} cm.",
            number(factor, 3),
            number(scale.lengths.required(scale.measure)?, 1),
            scale.measure,
            number(length_cm, 1)
        ),
    })
}

fn result_line(sides: Option<[f64; 2]>, floor_m2: Option<f64>, height_cm: Option<f64>) -> String {
    let floor = match (sides, floor_m2) {
        (Some([length, width]), _) => {
            format!("floor {} × {} cm", number(length, 1), number(width, 1))
        }
        (None, Some(floor_m2)) => format!("floor {} m²", number(floor_m2, 4)),
        (None, None) => "no size of the floor".to_owned(),
    };
    match height_cm {
        Some(height_cm) => format!("At least: {floor}, height {} cm.", number(height_cm, 1)),
        None => format!("At least: {floor}; no height is asked for."),
    }
}
