//! How figures look on the page, as tables of what is typed and what is printed.

use super::*;
use Rounding::{Down, Inward, Nearest, Up};

/// Checks what is printed, metric first; spaces stand for no-break spaces between number and unit too.
fn check<Q: Quantity>(rounding: Rounding, cases: &[(&str, &str)]) {
    for (text, wanted) in cases {
        let range = parse_range::<Q>(text).unwrap_or_else(|fault| panic!("{text}: {fault}"));
        let printed = range.print(System::Metric, rounding).to_string();
        assert_eq!(printed.replace('\u{a0}', " "), *wanted, "{text}");
    }
}

#[test]
fn a_number_never_parts_from_its_unit() {
    let print = |text| parse_range::<Temperature>(text).unwrap().print(System::Imperial, Inward);
    assert_eq!(print("79-82 F").to_string(), "79–82\u{a0}°F (26.5–27.5\u{a0}°C)");
    assert_eq!(print("at least 68 F").to_string(), "at least 68\u{a0}°F (at least 20\u{a0}°C)");
}

#[test]
fn temperatures() {
    check::<Temperature>(
        Inward,
        &[
            ("26-28 C", "26–28 °C (79–82 °F)"),
            ("26-26 C", "26 °C (79 °F)"),
            ("24 C", "24 °C (75 °F)"),
            ("26.5-28 C", "26.5–28 °C (80–82 °F)"),
            ("24.5 C", "24.5 °C (76 °F)"),
            ("at most 34 C", "at most 34 °C (at most 93 °F)"),
            ("at least 20 C", "at least 20 °C (at least 68 °F)"),
            ("at least 21 C", "at least 21 °C (at least 70 °F)"),
            ("-5 to 4 C", "−5 to 4 °C (23–39 °F)"),
            ("79-83 F", "27–28 °C (79–83 °F)"),
            ("at most 79 F", "at most 26 °C (at most 79 °F)"),
            ("20.1-20.2 C", "20.1–20.2 °C (68.2–68.3 °F)"),
        ],
    );
    check::<TemperatureDifference>(
        Nearest,
        &[("6-10 K", "6–10 °C (11–18 °F)"), ("9 F", "5 °C (9 °F)")],
    );
}

#[test]
fn lengths() {
    check::<Length>(
        Nearest,
        &[
            ("3 mm", "3 mm (0.12 in)"),
            ("2.5-4 cm", "2.5–4 cm (1–1.5 in)"),
            ("1 in", "2.5 cm (1 in)"),
            ("25-38 cm", "25–38 cm (10–15 in)"),
            ("90-150 cm", "90–150 cm (2 ft 11 in – 4 ft 11 in)"),
            ("60 cm", "60 cm (24 in)"),
            ("4 ft 6 in", "137 cm (4 ft 6 in)"),
            ("3-4 ft", "91–122 cm (3–4 ft)"),
            ("3.25 m", "3.25 m (10 ft 8 in)"),
            ("15 ft", "4.6 m (15 ft)"),
            ("2.25 in", "5.5 cm (2.25 in)"),
        ],
    );
    check::<Length>(Up, &[("120 cm", "120 cm (4 ft)"), ("4 ft", "122 cm (4 ft)")]);
    check::<Length>(Down, &[("120 cm", "120 cm (3 ft 11 in)"), ("4 ft", "121 cm (4 ft)")]);
}

#[test]
fn areas_volumes_and_masses() {
    check::<Area>(
        Up,
        &[
            ("0.72 m2", "0.72 m² (7.8 sq ft)"),
            ("at least 8 ft2", "at least 0.75 m² (at least 8 sq ft)"),
        ],
    );
    check::<Volume>(
        Nearest,
        &[
            ("80 l", "80 litres (21 US gal)"),
            ("1 l", "1 litre (0.26 US gal)"),
            ("20 gal", "76 litres (20 US gal)"),
        ],
    );
    check::<Mass>(
        Nearest,
        &[
            ("6 g", "6 g (0.21 oz)"),
            ("700-1000 g", "0.7–1 kg (1 lb 9 oz – 2 lb 3 oz)"),
            ("6 lb 4 oz", "2.85 kg (6 lb 4 oz)"),
            ("12 kg", "12 kg (26 lb)"),
            ("2 lb", "907 g (2 lb)"),
            ("40-60 g", "40–60 g (1.4–2.1 oz)"),
        ],
    );
}

#[test]
fn quantities_of_one_system_have_no_second() {
    check::<Humidity>(Inward, &[("40-60 %", "40–60 %"), ("at most 70 %", "at most 70 %")]);
    check::<Power>(Nearest, &[("75 W", "75 W"), ("0.15 kW", "150 W")]);
    check::<Energy>(Nearest, &[("20-30 kJ", "20–30 kJ"), ("2.4 kWh", "2.4 kWh")]);
    check::<Multiple>(Nearest, &[("0.75 x", "0.75 ×"), ("2 x", "2 ×")]);
    check::<UvIndex>(Nearest, &[("2.6-3.5 UVI", "2.6–3.5 UVI"), ("0-0.7 UVI", "0–0.7 UVI")]);
    check::<Share>(Nearest, &[("10-15 %", "10–15 %")]);
    check::<Count>(Nearest, &[("5-10", "5–10"), ("at least 2", "at least 2")]);
    check::<PerYear>(Nearest, &[("0.65 per year", "0.65 per year")]);
}

#[test]
fn spans_take_the_largest_unit_they_fill() {
    check::<Span>(
        Nearest,
        &[
            ("5-7 days", "5–7 days"),
            ("2 months", "2 months"),
            ("1 day", "1 day"),
            ("24 hours", "1 day"),
            ("14 days", "2 weeks"),
            ("18-36 months", "18–36 months"),
            ("24-36 months", "2–3 years"),
            ("15-20 years", "15–20 years"),
            ("10-14 hours", "10–14 hours"),
            ("up to 1 year", "at most 1 year"),
            ("0-2 days", "0–2 days"),
        ],
    );
    let age = print_one(Span::from_days(1000.0), System::Metric, Nearest).first;
    assert_eq!(age.replace('\u{a0}', " "), "2.5 years");
    let age = print_one(Span::from_days(1000.3), System::Metric, Nearest).first;
    assert_eq!(age.replace('\u{a0}', " "), "2.5 years");
}

#[test]
fn latitudes_name_their_hemisphere() {
    check::<Latitude>(
        Nearest,
        &[
            ("25-40 N", "25–40° N"),
            ("12 S - 8 N", "12° S – 8° N"),
            ("12-25 S", "12–25° S"),
            ("30 S", "30° S"),
            ("0-15 N", "0–15° N"),
        ],
    );
}

#[test]
fn dimensions_keep_one_step_for_all_three() {
    let print = |text: &str, rounding| {
        let printed = parse_dimensions(text).unwrap().print(System::Metric, rounding);
        printed.to_string().replace('\u{a0}', " ")
    };
    assert_eq!(print("120 x 60 x 60 cm", Nearest), "120 × 60 × 60 cm (3 ft 11 in × 2 ft × 2 ft)");
    assert_eq!(print("4 x 2 x 2 ft", Nearest), "122 × 61 × 61 cm (4 ft × 2 ft × 2 ft)");
    assert_eq!(print("120 x 60 x 60 cm", Up), "120 × 60 × 60 cm (4 ft × 2 ft × 2 ft)");
}

#[test]
fn money_has_cents_only_where_they_count() {
    let price = |text| parse_price(text).unwrap().to_string().replace('\u{a0}', " ");
    assert_eq!(price("0.315 EUR/kWh"), "0.315 EUR per kWh");
    assert_eq!(price("2.2 EUR each"), "2.20 EUR each");
    assert_eq!(price("4 EUR/kg"), "4 EUR per kg");
    let money =
        |amount| Money { amount, currency: "EUR".into() }.to_string().replace('\u{a0}', " ");
    assert_eq!([money(1200.4), money(12.345), money(7.0)], ["1200 EUR", "12.35 EUR", "7 EUR"]);
}
