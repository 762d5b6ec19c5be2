//! What each quantity's figures mean, as tables of text and value in the base unit.

use super::*;

/// Checks that each text is read as these ends in the base unit.
fn check<Q: Quantity>(cases: &[(&str, Option<f64>, Option<f64>)]) {
    for (text, low, high) in cases {
        let range = parse_range::<Q>(text).unwrap_or_else(|fault| panic!("{text}: {fault}"));
        for (name, found, wanted) in [("low", range.low(), low), ("high", range.high(), high)] {
            match (found.map(Q::base), wanted) {
                (Some(found), Some(wanted)) => {
                    assert!(
                        (found - wanted).abs() < 1e-6,
                        "{text}: {name} is {found}, not {wanted}"
                    );
                }
                (found, wanted) => assert_eq!(found, *wanted, "{text}: {name}"),
            }
        }
    }
}

/// Checks that each text is read as exactly this value in the base unit.
fn check_one<Q: Quantity>(cases: &[(&str, f64)]) {
    for (text, value) in cases {
        check::<Q>(&[(text, Some(*value), Some(*value))]);
        assert!(parse_one::<Q>(text).is_ok(), "{text}");
    }
}

#[test]
fn a_range_may_be_written_in_many_ways() {
    let warm = (Some(26.0), Some(28.0));
    for text in [
        "26-28 C",
        "26–28 °C",
        "26 to 28 C",
        "26 C to 28 C",
        "26 - 28 degC",
        "26-28C",
        "26—28 c",
        "26 °C – 28 °C",
        "26\u{a0}–\u{a0}28\u{a0}°C",
        "26-28 º C",
        "26-28 degrees Celsius",
        "26.0-28.0 deg C",
        "  26-28 C  ",
        "26\u{202f}TO\u{202f}28 celsius",
        "26 −28 C",
        "78.8-82.4 F",
        "26 C - 82.4 F",
    ] {
        check::<Temperature>(&[(text, warm.0, warm.1)]);
    }
}

#[test]
fn floors_and_ceilings_are_words_or_signs() {
    check::<Temperature>(&[
        ("at least 20 C", Some(20.0), None),
        ("At Least 20 C", Some(20.0), None),
        ("over 20 C", Some(20.0), None),
        ("no less than 68 F", Some(20.0), None),
        (">= 20 C", Some(20.0), None),
        ("≥20 C", Some(20.0), None),
        ("at least -5 C", Some(-5.0), None),
        ("up to -5 C", None, Some(-5.0)),
    ]);
    check::<Humidity>(&[
        ("at most 80 %", None, Some(80.0)),
        ("up to 80 %", None, Some(80.0)),
        ("under 80% RH", None, Some(80.0)),
        ("<= 80 %", None, Some(80.0)),
        ("< 80%", None, Some(80.0)),
        ("not above 80 %", None, Some(80.0)),
    ]);
}

#[test]
fn temperatures() {
    check_one::<Temperature>(&[
        ("24 C", 24.0),
        ("-5 C", -5.0),
        ("−5 °C", -5.0),
        ("32 F", 0.0),
        ("95 °F", 35.0),
        ("-40 F", -40.0),
    ]);
    check::<Temperature>(&[
        ("-5 to 4 C", Some(-5.0), Some(4.0)),
        ("-5-4 C", Some(-5.0), Some(4.0)),
        ("-10 - -5 C", Some(-10.0), Some(-5.0)),
        ("77-86 F", Some(25.0), Some(30.0)),
    ]);
    check_one::<TemperatureDifference>(&[
        ("10 K", 10.0),
        ("10 C", 10.0),
        ("18 F", 10.0),
        ("9 °F", 5.0),
    ]);
}

#[test]
fn lengths_areas_and_volumes() {
    check_one::<Length>(&[
        ("12 mm", 1.2),
        ("120 cm", 120.0),
        ("120 CM", 120.0),
        ("1.2 m", 120.0),
        ("10 in", 25.4),
        ("10 in.", 25.4),
        ("4 ft", 121.92),
        ("4 ft 6 in", 137.16),
        ("4ft6in", 137.16),
        ("4' 6\"", 137.16),
        ("4′6″", 137.16),
        ("1 m 20 cm", 120.0),
    ]);
    check::<Length>(&[
        ("3 ft 6 in - 4 ft 6 in", Some(106.68), Some(137.16)),
        ("3-4 ft", Some(91.44), Some(121.92)),
        ("10 in to 2 ft", Some(25.4), Some(60.96)),
        ("80 cm - 1.2 m", Some(80.0), Some(120.0)),
    ]);
    check_one::<Area>(&[
        ("0.5 m2", 0.5),
        ("0.5 m²", 0.5),
        ("5000 cm2", 0.5),
        ("10 ft2", 0.929_030_4),
        ("10 sq ft", 0.929_030_4),
        ("144 in2", 0.092_903_04),
    ]);
    // 231 cubic inches: NIST Handbook 44, Appendix C (2023).
    check_one::<Volume>(&[
        ("80 l", 80.0),
        ("80 litres", 80.0),
        ("500 ml", 0.5),
        ("20 gal", 75.708_235_68),
        ("1 US gal", 3.785_411_784),
        ("1 UK gal", 4.546_09),
    ]);
}

#[test]
fn masses() {
    // 1 lb = 453.592 37 g: NIST Handbook 44, Appendix C (2023).
    check_one::<Mass>(&[
        ("500 mg", 0.5),
        ("700 g", 700.0),
        ("1.5 kg", 1500.0),
        ("1.5 KG", 1500.0),
        ("1 lb", 453.592_37),
        ("6 lb 4 oz", 2_834.952_312_5),
        ("2 kg 300 g", 2300.0),
        ("4 oz", 113.398_092_5),
        ("3 lbs", 1_360.777_11),
    ]);
    check::<Mass>(&[
        ("800 g to 1.2 kg", Some(800.0), Some(1200.0)),
        ("1-2 lb", Some(453.592_37), Some(907.184_74)),
    ]);
}

#[test]
fn power_and_energy() {
    check_one::<Power>(&[("75 W", 75.0), ("0.15 kW", 150.0), ("75 watts", 75.0)]);
    check_one::<Energy>(&[
        ("250 J", 0.25),
        ("20 kJ", 20.0),
        ("10 kcal", 41.84),
        ("100 Wh", 360.0),
        ("1 kWh", 3600.0),
        ("1 kwh", 3600.0),
    ]);
}

#[test]
fn spans_of_time() {
    check_one::<Span>(&[
        ("12 hours", 0.5),
        ("1 hour", 1.0 / 24.0),
        ("36 h", 1.5),
        ("1 day", 1.0),
        ("7 days", 7.0),
        ("2 d", 2.0),
        ("1 week", 7.0),
        ("8 wk", 56.0),
        ("12 months", 365.25),
        ("2 mo", 60.875),
        ("1 year", 365.25),
        ("2 yr", 730.5),
        ("1 year 6 months", 547.875),
        ("30 minutes", 1.0 / 48.0),
    ]);
    check::<Span>(&[
        ("5-7 days", Some(5.0), Some(7.0)),
        ("15-20 years", Some(5478.75), Some(7305.0)),
        ("6 weeks to 3 months", Some(42.0), Some(91.3125)),
        ("up to 2 months", None, Some(60.875)),
    ]);
}

#[test]
fn numbers_with_one_unit() {
    check_one::<Humidity>(&[
        ("60 %", 60.0),
        ("60%", 60.0),
        ("60 % RH", 60.0),
        ("60 percent", 60.0),
    ]);
    check_one::<Share>(&[("10 %", 10.0), ("0.5 per cent", 0.5)]);
    check_one::<Multiple>(&[("0.75 x", 0.75), ("0.75 ×", 0.75), ("2x", 2.0), (".5 x", 0.5)]);
    check_one::<UvIndex>(&[("2.6 UVI", 2.6), ("3 uvi", 3.0)]);
    check_one::<PerYear>(&[("0.6 per year", 0.6), ("0.6/year", 0.6), ("0.6 / yr", 0.6)]);
    check_one::<PerHour>(&[("1 per hour", 1.0), ("2 air changes per hour", 2.0)]);
    check_one::<Count>(&[("5", 5.0), (" 12 ", 12.0)]);
    check::<Count>(&[("5-10", Some(5.0), Some(10.0)), ("at least 3", Some(3.0), None)]);
}

#[test]
fn latitudes_run_from_south_to_north() {
    check::<Latitude>(&[
        ("25-40 N", Some(25.0), Some(40.0)),
        ("12 S - 8 N", Some(-12.0), Some(8.0)),
        ("12° S – 8° N", Some(-12.0), Some(8.0)),
        ("12-25 S", Some(-25.0), Some(-12.0)),
        ("25-12 S", Some(-25.0), Some(-12.0)),
        ("40 to 25 degrees north", Some(25.0), Some(40.0)),
    ]);
}

#[test]
fn dimensions_share_the_unit_behind_them() {
    let cases = [
        ("120 x 60 x 60 cm", [120.0, 60.0, 60.0]),
        ("120x60x50cm", [120.0, 60.0, 50.0]),
        ("120 × 60 × 60 cm", [120.0, 60.0, 60.0]),
        ("1.2 m x 60 cm x 60 cm", [120.0, 60.0, 60.0]),
        ("1.2 m x 60 x 50 cm", [120.0, 60.0, 50.0]),
        ("120cmx60cmx50cm", [120.0, 60.0, 50.0]),
        ("4 X 2 X 2 ft", [121.92, 60.96, 60.96]),
        ("4 ft 6 in x 2 ft x 18 in", [137.16, 60.96, 45.72]),
    ];
    for (text, wanted) in cases {
        let read = parse_dimensions(text).unwrap_or_else(|fault| panic!("{text}: {fault}"));
        let found = [read.length, read.width, read.height].map(Length::cm);
        assert!(found.iter().zip(wanted).all(|(f, w)| (f - w).abs() < 1e-9), "{text}: {found:?}");
    }
    let tank = parse_dimensions("120 x 60 x 50 cm").unwrap();
    assert_eq!((tank.floor().square_metres(), tank.volume().litres()), (0.72, 360.0));
}

#[test]
fn money_and_prices() {
    let cases = [
        ("0.31 EUR per kWh", 0.31, "EUR", PriceUnit::KilowattHour),
        ("0.31 EUR/kWh", 0.31, "EUR", PriceUnit::KilowattHour),
        ("0.31 eur / kWh", 0.31, "EUR", PriceUnit::KilowattHour),
        ("4 GBP per kg", 4.0, "GBP", PriceUnit::Kilogram),
        ("0.02 USD/g", 0.02, "USD", PriceUnit::Gram),
        ("2.20 EUR each", 2.2, "EUR", PriceUnit::Each),
    ];
    for (text, amount, currency, per) in cases {
        let price = parse_price(text).unwrap_or_else(|fault| panic!("{text}: {fault}"));
        assert_eq!(price, Price { amount, currency: currency.to_owned(), per }, "{text}");
    }
    assert_eq!(
        parse_money("1200 EUR").unwrap(),
        Money { amount: 1200.0, currency: "EUR".to_owned() }
    );
}

#[test]
fn every_table_of_units_and_scales_holds_together() {
    fn check<Q: Quantity>() {
        for (index, unit) in Q::UNITS.iter().enumerate() {
            for spelling in unit.spellings {
                let plain: String = spelling.chars().filter(|c| *c != ' ').collect();
                let first = Q::UNITS.iter().position(|unit| unit.is_spelled(&plain));
                assert_eq!(first, Some(index), "{}: {spelling}", Q::NAME);
            }
        }
        for scales in [Q::METRIC, Q::IMPERIAL] {
            assert!(scales.is_sorted_by(|a, b| a.below < b.below), "{}", Q::NAME);
            assert!(scales.last().is_none_or(|scale| scale.below.is_infinite()), "{}", Q::NAME);
            for scale in scales {
                assert!(
                    !scale.steps.is_empty() && scale.steps.is_sorted_by(|a, b| a > b),
                    "{}",
                    Q::NAME
                );
            }
        }
        assert!(!Q::METRIC.is_empty() && Q::BEARABLE.0 < Q::BEARABLE.1);
        assert!(parse_range::<Q>(Q::EXAMPLE).is_ok(), "{}", Q::NAME);
    }
    check::<Temperature>();
    check::<TemperatureDifference>();
    check::<Length>();
    check::<Area>();
    check::<Volume>();
    check::<Mass>();
    check::<Humidity>();
    check::<Power>();
    check::<Energy>();
    check::<Span>();
    check::<Share>();
    check::<Multiple>();
    check::<UvIndex>();
    check::<PerYear>();
    check::<PerHour>();
    check::<Latitude>();
    check::<Count>();
}
