//! An address as a square of dark and light fields that a telephone reads: a QR code, ISO/IEC 18004.

use qrcode::{Color, EcLevel, QrCode};

/// The light margin around the square, in fields: four, as the standard asks.
const MARGIN: usize = 4;

fn code(address: &str) -> Option<QrCode> {
    QrCode::with_error_correction_level(address, EcLevel::M).ok()
}

/// The side of the square with its margin, in fields; 0 where the address is too long for one.
pub(super) fn side(address: &str) -> usize {
    code(address).map_or(0, |code| code.width() + 2 * MARGIN)
}

/// The dark fields as the path of an SVG, a run of fields in a row at a time.
pub(super) fn path(address: &str) -> String {
    let Some(code) = code(address) else { return String::new() };
    let width = code.width();
    let fields = code.to_colors();
    let mut path = String::new();
    for (y, row) in fields.chunks(width).enumerate() {
        let mut x = 0;
        while x < width {
            let run = row[x..].iter().take_while(|field| **field == Color::Dark).count();
            if run > 0 {
                path.push_str(&format!("M{} {}h{run}v1h-{run}z", x + MARGIN, y + MARGIN));
            }
            x += run.max(1);
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use super::{path, side};

    /// ISO/IEC 18004: version 1 has 21 fields a side and each version four more; each of three corners holds a finder pattern
    /// whose first row is seven dark fields.
    #[test]
    fn a_square_has_the_standards_size_and_corners() {
        let address = "https://example.org/quillmere/species/corn-snake/";
        let fields = side(address) - 8;
        assert_eq!((fields - 21) % 4, 0);
        let path = path(address);
        assert!(path.starts_with("M4 4h7v1h-7z"), "{path}");
        let right = fields - 7 + 4;
        assert!(path.contains(&format!("M{right} 4h7v1h-7z")));
        assert!(path.contains(&format!("M4 {right}h7v1h-7z")));
    }

    #[test]
    fn an_address_too_long_for_a_square_has_none() {
        assert_eq!(side(&"x".repeat(9000)), 0);
        assert_eq!(path(&"x".repeat(9000)), "");
    }
}
