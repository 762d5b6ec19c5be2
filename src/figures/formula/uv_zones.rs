//! The four zones of basking behaviour, by the UV index that animals of each seek.
//!
//! The UV index is 40 m²/W times the erythemal irradiance (World Health Organization 2002, Global Solar UV
//! Index, from memory).

/// One of the four zones of basking behaviour, with the UV index each seeks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct UvZone {
    /// The zone's number, 1 to 4.
    pub zone: u8,
    /// What animals of the zone do, in the words of the classification.
    pub behaviour: &'static str,
    /// The range of the mean UV index that they expose themselves to.
    pub mean_uvi: (f64, f64),
    /// The range of the highest.
    pub greatest_uvi: (f64, f64),
}

/// The four zones.
///
/// Source: F. Baines et al. 2016, J. Zoo Aquar. Res. 4(1):42-63, after G. W. Ferguson et al. 2010, Zoo
/// Biology 29:317-334. The numbers were read on three independent pages that reproduce the table.
pub const UV_ZONES: [UvZone; 4] = [
    UvZone {
        zone: 1,
        behaviour: "crepuscular or shade dweller, thermal conformer",
        mean_uvi: (0.0, 0.7),
        greatest_uvi: (0.6, 1.4),
    },
    UvZone {
        zone: 2,
        behaviour: "partial sun / occasional basker, thermoregulator",
        mean_uvi: (0.7, 1.0),
        greatest_uvi: (1.1, 3.0),
    },
    UvZone {
        zone: 3,
        behaviour: "open or partial sun basker, thermoregulator",
        mean_uvi: (1.0, 2.6),
        greatest_uvi: (2.9, 7.4),
    },
    UvZone {
        zone: 4,
        behaviour: "mid-day sun basker, thermoregulator",
        mean_uvi: (2.6, 3.5),
        greatest_uvi: (4.5, 9.5),
    },
];

/// Returns a zone by its number; `None` for any but 1 to 4.
#[must_use]
pub fn uv_zone(zone: u8) -> Option<&'static UvZone> {
    UV_ZONES.iter().find(|known| known.zone == zone)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_mean_index_rises_from_zone_to_zone_without_a_gap() {
        for pair in UV_ZONES.windows(2) {
            assert_eq!(pair[0].mean_uvi.1, pair[1].mean_uvi.0);
            assert!(pair[0].greatest_uvi.1 < pair[1].greatest_uvi.1);
        }
    }

    #[test]
    fn there_is_no_zone_but_one_to_four() {
        assert_eq!(uv_zone(3).map(|zone| zone.mean_uvi), Some((1.0, 2.6)));
        assert_eq!((uv_zone(0), uv_zone(5)), (None, None));
    }
}
