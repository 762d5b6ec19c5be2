//! The enclosure that holds a grown animal of a species by every standard in force, whatever its sex and form.

use super::space::{self, Need};

/// Keeps the last bit of a product from failing a floor that is exactly enough.
const GUARD: f64 = 1e-9;

/// What the largest grown animals of a species need.
#[derive(Debug, Clone, PartialEq)]
pub struct GrownSpace {
    /// Length, width and height that satisfy every standard and can be bought or built, cm, inside.
    pub inside_cm: [f64; 3],
    /// Their floor, m².
    pub floor_m2: f64,
    /// For whom: the sex or form that needs the most.
    pub for_whom: String,
    /// The standards that could not be worked out and are not satisfied for certain.
    pub left_out: Vec<String>,
}

/// Joins what the standards ask for, sex by sex and form by form, and keeps the one that needs the largest floor, then the
/// largest volume. None where no standard could be worked out.
pub fn grown_space(needs: &[Need]) -> Option<GrownSpace> {
    let of_kind = |(kind, own): (&str, Vec<&Need>)| {
        let left_out = own.iter().filter(|need| need.least.is_err());
        let left_out = left_out.map(|need| need.standard.clone()).collect();
        let own = own.into_iter().cloned().collect();
        let [length, width, height] = space::join(own)?.build?.inside_cm;
        Some(GrownSpace {
            inside_cm: [length, width, height],
            floor_m2: length * width / 10_000.0,
            for_whom: kind.to_owned(),
            left_out,
        })
    };
    let weight = |space: &GrownSpace| (space.floor_m2, space.inside_cm[2]);
    let all = space::by_kind(needs).into_iter().filter_map(of_kind);
    all.reduce(|most, next| if weight(&next) > weight(&most) { next } else { most })
}

impl GrownSpace {
    /// Tells whether a floor of so many m² is enough.
    pub fn fits_on(&self, floor_m2: f64) -> bool {
        self.floor_m2 <= floor_m2 * (1.0 + GUARD)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_floor_that_is_exactly_enough_is_enough() {
        let space = |inside_cm: [f64; 3]| GrownSpace {
            inside_cm,
            floor_m2: inside_cm[0] * inside_cm[1] / 10_000.0,
            for_whom: String::new(),
            left_out: Vec::new(),
        };
        assert!(space([100.0, 50.0, 50.0]).fits_on(0.5));
        assert!(!space([110.0, 50.0, 50.0]).fits_on(0.5));
        assert!(space([150.0, 100.0, 200.0]).fits_on(1.5));
    }

    #[test]
    fn without_a_standard_nothing_is_said() {
        assert_eq!(grown_space(&[]), None);
    }
}
