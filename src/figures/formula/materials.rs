//! What enclosures are made of: how well each material conducts heat, and how much of it it stores.
//!
//! Conductivities are the design values of EN 12524:2000 (superseded by EN ISO 10456:2007, table 3) as
//! stored in a public engineering library, and for foams and fibres, which that standard leaves to the
//! maker, those listed in BR 443:2019; both read in secondary copies. Where the conductivity depends on
//! the density, the values in between are taken on the straight line, as the standard allows (from memory).

use super::domain::{OutOfRange, within};

/// A material of walls and furnishings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Material {
    /// Its usual name.
    pub name: &'static str,
    /// Other names for the same material.
    pub other_names: &'static [&'static str],
    /// Density in kg/m³ and conductivity in W/(m K), lightest first. One pair where it hardly varies.
    pub conductivity_by_density: &'static [(f64, f64)],
    /// The density in kg/m³ that is taken when none is given.
    pub usual_density_kg_per_m3: f64,
    /// Specific heat in J/(kg K).
    pub specific_heat_j_per_kg_k: f64,
    /// Where the conductivity comes from; density and specific heat too, unless `heat_from_memory`.
    pub source: &'static str,
    /// Whether density and specific heat are from memory.
    pub heat_from_memory: bool,
}

const EN_12524: &str = "EN 12524:2000 (EN ISO 10456:2007, table 3), read in a public library";
const BR_443: &str = "BR 443:2019, read in a public list of building materials";

/// A row of the standard's table, which gives density and specific heat as well.
const fn standard(
    name: &'static str,
    other_names: &'static [&'static str],
    conductivity_by_density: &'static [(f64, f64)],
    usual_density_kg_per_m3: f64,
    specific_heat_j_per_kg_k: f64,
) -> Material {
    Material {
        name,
        other_names,
        conductivity_by_density,
        usual_density_kg_per_m3,
        specific_heat_j_per_kg_k,
        source: EN_12524,
        heat_from_memory: false,
    }
}

/// An insulating material, whose density and specific heat are from memory.
const fn insulation(
    name: &'static str,
    other_names: &'static [&'static str],
    conductivity_by_density: &'static [(f64, f64)],
    specific_heat_j_per_kg_k: f64,
) -> Material {
    Material {
        name,
        other_names,
        conductivity_by_density,
        usual_density_kg_per_m3: conductivity_by_density[0].0,
        specific_heat_j_per_kg_k,
        source: BR_443,
        heat_from_memory: true,
    }
}

/// The materials that enclosures are built and lined with.
pub const MATERIALS: &[Material] = &[
    standard(
        "plywood",
        &["ply"],
        &[(300.0, 0.09), (500.0, 0.13), (700.0, 0.17), (1000.0, 0.24)],
        500.0,
        1600.0,
    ),
    standard("OSB", &["oriented strand board"], &[(650.0, 0.13)], 650.0, 1700.0),
    standard(
        "chipboard",
        &["particleboard", "particle board", "melamine"],
        &[(300.0, 0.10), (600.0, 0.14), (900.0, 0.18)],
        600.0,
        1700.0,
    ),
    standard(
        "MDF",
        &["fibreboard", "fiberboard"],
        &[(250.0, 0.07), (400.0, 0.10), (600.0, 0.14), (800.0, 0.18)],
        600.0,
        1700.0,
    ),
    standard("softwood", &["timber", "wood", "pine", "spruce"], &[(500.0, 0.13)], 500.0, 1600.0),
    standard("hardwood", &["oak", "beech"], &[(700.0, 0.18)], 700.0, 1600.0),
    standard("glass", &["float glass"], &[(2500.0, 1.00)], 2500.0, 750.0),
    standard("PVC", &["upvc", "pvc-u"], &[(1390.0, 0.17)], 1390.0, 900.0),
    standard("polycarbonate", &[], &[(1200.0, 0.20)], 1200.0, 1200.0),
    standard("acrylic", &["pmma", "acrylic glass"], &[(1180.0, 0.18)], 1180.0, 1500.0),
    standard("solid polystyrene", &[], &[(1050.0, 0.16)], 1050.0, 1300.0),
    standard("polypropylene", &["pp"], &[(910.0, 0.22)], 910.0, 1800.0),
    standard("epoxy resin", &["epoxy"], &[(1200.0, 0.20)], 1200.0, 1400.0),
    standard(
        "concrete",
        &[],
        &[(1800.0, 1.15), (2000.0, 1.35), (2200.0, 1.65), (2400.0, 2.00)],
        2200.0,
        1000.0,
    ),
    standard("cork tile", &["cork"], &[(400.0, 0.065)], 400.0, 1500.0),
    standard("ceramic tile", &["tile", "tiles"], &[(2300.0, 1.30)], 2300.0, 840.0),
    insulation("EPS", &["expanded polystyrene", "polystyrene foam"], &[(20.0, 0.038)], 1450.0),
    insulation("XPS", &["extruded polystyrene"], &[(33.0, 0.033)], 1450.0),
    insulation("PUR", &["polyurethane foam", "pur foam", "pir"], &[(30.0, 0.025)], 1400.0),
    insulation("mineral wool", &["rock wool", "glass wool"], &[(100.0, 0.036)], 1030.0),
    insulation("expanded cork", &["cork board", "corkboard"], &[(110.0, 0.040)], 1560.0),
    insulation("cellulose", &[], &[(50.0, 0.040)], 1600.0),
];

/// Returns the material of that name, or of one of its other names, in capitals or not.
///
/// # Example
///
/// ```
/// use wardsheet::figures::formula::materials::material;
///
/// assert_eq!(material("plywood").expect("listed").conductivity_w_per_m_k(None), Ok(0.13));
/// assert_eq!(material("Melamine").expect("listed").name, "chipboard");
/// ```
#[must_use]
pub fn material(name: &str) -> Option<&'static Material> {
    let same = |other: &str| other.eq_ignore_ascii_case(name.trim());
    MATERIALS.iter().find(|m| same(m.name) || m.other_names.iter().any(|other| same(other)))
}

impl Material {
    /// The conductivity in W/(m K) at a density in kg/m³, or at the usual one.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the density is outside those of the table; where the table has one only, it
    /// holds for half as much and twice as much.
    pub fn conductivity_w_per_m_k(
        &self,
        density_kg_per_m3: Option<f64>,
    ) -> Result<f64, OutOfRange> {
        let table = self.conductivity_by_density;
        let density = density_kg_per_m3.unwrap_or(self.usual_density_kg_per_m3);
        let (lightest, heaviest) = (table[0], table[table.len() - 1]);
        if table.len() == 1 {
            within("density_kg_per_m3", density, 0.5 * lightest.0, 2.0 * lightest.0)?;
            return Ok(lightest.1);
        }
        within("density_kg_per_m3", density, lightest.0, heaviest.0)?;
        let above = table.iter().position(|&(known, _)| known >= density).unwrap_or(0).max(1);
        let ((low, low_value), (high, high_value)) = (table[above - 1], table[above]);
        Ok(low_value + (high_value - low_value) * (density - low) / (high - low))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_means_one_material() {
        let mut names: Vec<String> = (MATERIALS.iter())
            .flat_map(|m| std::iter::once(m.name).chain(m.other_names.iter().copied()))
            .map(str::to_lowercase)
            .collect();
        let count = names.len();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), count, "a name is used twice");
    }

    #[test]
    fn densities_rise_and_the_usual_one_is_among_them() {
        for material in MATERIALS {
            let densities: Vec<f64> =
                material.conductivity_by_density.iter().map(|d| d.0).collect();
            assert!(densities.is_sorted(), "{}", material.name);
            assert!(material.conductivity_w_per_m_k(None).is_ok(), "{}", material.name);
        }
    }

    #[test]
    fn a_density_between_two_rows_has_a_conductivity_between_theirs() {
        let plywood = material("plywood").expect("listed");
        let conductivity = plywood.conductivity_w_per_m_k(Some(600.0)).expect("in range");
        assert!((conductivity - 0.15).abs() < 1e-12);
        assert!(plywood.conductivity_w_per_m_k(Some(1500.0)).is_err());
    }

    #[test]
    fn a_name_nobody_uses_is_no_material() {
        assert_eq!(material("unobtainium"), None);
    }
}
