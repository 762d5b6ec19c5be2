//! Laws that hold of every figure.

use super::*;
use proptest::prelude::*;

/// Checks that what is printed can be read again, and lies where the rounding says it must.
fn check_printed<Q: Quantity>(low: f64, high: f64, room: f64) {
    let (low, high) = (low.min(high), low.max(high));
    // Ends further apart than this are set on one scale, and the lower loses its decimals.
    let low = if Q::BEARABLE.0 < 0.0 { low } else { low.max(high / 50.0) };
    let ranges = [
        Range::between(Q::from_base(low), Q::from_base(high)).unwrap(),
        Range::at_least(Q::from_base(low)),
        Range::at_most(Q::from_base(high)),
    ];
    for range in ranges {
        for rounding in [Rounding::Nearest, Rounding::Inward, Rounding::Up, Rounding::Down] {
            let printed = range.print(System::Metric, rounding);
            for text in [Some(printed.first), printed.second].into_iter().flatten() {
                let read = parse_range::<Q>(&text).unwrap_or_else(|f| panic!("{text}: {f}"));
                check_end(range.low(), read.low(), rounding, &text, room);
                check_end(range.high(), read.high(), rounding, &text, room);
                if rounding == Rounding::Inward {
                    check_inward(&range, &read, &text);
                }
            }
        }
    }
}

/// An end is printed within `room` (a share of it, and the same in base units) of what it is.
fn check_end<Q: Quantity>(
    own: Option<Q>,
    read: Option<Q>,
    rounding: Rounding,
    text: &str,
    room: f64,
) {
    let (Some(own), Some(read)) = (own.map(Q::base), read.map(Q::base)) else {
        assert!(own.is_none() && read.is_none(), "{text}: an end came or went");
        return;
    };
    let off = (own - read).abs();
    assert!(off <= room * own.abs().max(1.0), "{text} {rounding:?}: {own} reads {read}");
}

/// A floor never falls and a ceiling never rises. Both ends may move only where they print alike, or next to it.
fn check_inward<Q: Quantity>(own: &Range<Q>, read: &Range<Q>, text: &str) {
    let hair = |x: f64| 1e-5 * (1.0 + x.abs());
    let (low, high) = (own.low().map(Q::base), own.high().map(Q::base));
    let (read_low, read_high) = (read.low().map(Q::base), read.high().map(Q::base));
    // A range narrower than the finest steps is set to the nearest of them.
    if let (Some(low), Some(high)) = (low, high)
        && high - low < 0.25 * (1.0 + high.abs() / 25.0)
    {
        return;
    }
    if let (Some(low), Some(read)) = (low, read_low) {
        assert!(read >= low - hair(low), "{text}: the floor {low} fell to {read}");
    }
    if let (Some(high), Some(read)) = (high, read_high) {
        assert!(read <= high + hair(high), "{text}: the ceiling {high} rose to {read}");
    }
}

proptest! {
    #[test]
    fn what_is_printed_reads_as_it_was(a in 0.0..1.0f64, b in 0.0..1.0f64) {
        // Cubes, so that small values are met as often as large ones.
        let (a, b) = (a * a * a, b * b * b);
        check_printed::<Temperature>(-40.0 + 100.0 * a, -40.0 + 100.0 * b, 1.0);
        check_printed::<Length>(0.05 + 900.0 * a, 0.05 + 900.0 * b, 0.55);
        check_printed::<Mass>(0.05 + 90_000.0 * a, 0.05 + 90_000.0 * b, 0.6);
        check_printed::<Volume>(0.05 + 5000.0 * a, 0.05 + 5000.0 * b, 0.6);
        check_printed::<Humidity>(100.0 * a, 100.0 * b, 1.0);
        check_printed::<Share>(100.0 * a, 100.0 * b, 1.0);
        check_printed::<Power>(0.1 + 1000.0 * a, 0.1 + 1000.0 * b, 1.0);
        check_printed::<Multiple>(0.1 + 10.0 * a, 0.1 + 10.0 * b, 0.1);
    }

    #[test]
    fn a_single_end_stays_on_its_safe_side(celsius in -40.0..65.0f64) {
        let bound = Temperature::from_celsius(celsius);
        let ceiling = Range::at_most(bound).print(System::Metric, Rounding::Inward);
        let floor = Range::at_least(bound).print(System::Metric, Rounding::Inward);
        // A value next to the end of what is bearable may be printed beyond it, and is then no figure.
        prop_assume!((-39.0..64.0).contains(&celsius));
        for text in [Some(ceiling.first), ceiling.second].into_iter().flatten() {
            let read = parse_range::<Temperature>(&text).unwrap().high().unwrap();
            prop_assert!(read.celsius() <= celsius + 1e-5, "{text} from {celsius}");
        }
        for text in [Some(floor.first), floor.second].into_iter().flatten() {
            let read = parse_range::<Temperature>(&text).unwrap().low().unwrap();
            prop_assert!(read.celsius() >= celsius - 1e-5, "{text} from {celsius}");
        }
    }

    #[test]
    fn whole_degrees_print_as_typed(low in -39i32..140, more in 0i32..9) {
        let high = low + more;
        for rounding in [Rounding::Nearest, Rounding::Inward, Rounding::Up, Rounding::Down] {
            let typed = format!("{low} to {high} F");
            let range = parse_range::<Temperature>(&typed).unwrap();
            let text = range.print(System::Imperial, rounding).first;
            let dash = if low < 0 { " to " } else { "–" };
            let wanted = if more == 0 { format!("{low}\u{a0}°F") } else { format!("{low}{dash}{high}\u{a0}°F") };
            prop_assert_eq!(text, wanted.replace('-', "\u{2212}"));
        }
    }

    #[test]
    fn feet_and_inches_print_as_typed(feet in 2u32..30, inches in 1u32..12) {
        let typed = format!("{feet} ft {inches} in");
        let range = parse_range::<Length>(&typed).unwrap();
        for rounding in [Rounding::Nearest, Rounding::Inward, Rounding::Up, Rounding::Down] {
            prop_assert_eq!(range.print(System::Imperial, rounding).first.replace('\u{a0}', " "), &*typed);
        }
    }

    #[test]
    fn pounds_and_ounces_print_as_typed(pounds in 1u32..200, ounces in 1u32..16) {
        let typed = format!("{pounds} lb {ounces} oz");
        let range = parse_range::<Mass>(&typed).unwrap();
        for rounding in [Rounding::Nearest, Rounding::Inward, Rounding::Up, Rounding::Down] {
            prop_assert_eq!(range.print(System::Imperial, rounding).first.replace('\u{a0}', " "), &*typed);
        }
    }

    #[test]
    fn conversion_there_and_back_changes_nothing(value in -40.0..65.0f64) {
        let there = Temperature::from_celsius(value).fahrenheit();
        prop_assert!((Temperature::from_fahrenheit(there).celsius() - value).abs() < 1e-12 * 100.0);
        let typed = Temperature::UNITS[1].to_base(there);
        prop_assert!((typed - value).abs() < 1e-12 * 100.0);
    }

    #[test]
    fn any_text_is_read_or_refused_at_a_place_in_it(text in "\\PC{0,24}") {
        refused_inside(&text)?;
    }

    #[test]
    fn any_jumble_of_figures_is_read_or_refused_at_a_place_in_it(
        parts in prop::collection::vec(
            prop::sample::select(vec![
                "-", "–", "to", "at", "least", "up", "<=", ">", "5", "26.5", "2,5", "1e9", ".", "C", "°", "F", "cm",
                "ft", "in", "'", "\"", "x", "×", "m", "m2", "M", "Mg", "EUR", "/", "kWh", "%", " ", "\u{a0}", "S", "N", "é",
            ]),
            0..10,
        )
    ) {
        refused_inside(&parts.concat())?;
        refused_inside(&parts.join(" "))?;
    }
}

/// Reads `text` as everything there is, and checks that each fault points into it and says what to do.
fn refused_inside(text: &str) -> Result<(), TestCaseError> {
    let faults = [
        parse_range::<Temperature>(text).err(),
        parse_range::<Length>(text).err(),
        parse_range::<Mass>(text).err(),
        parse_range::<Span>(text).err(),
        parse_range::<Count>(text).err(),
        parse_range::<Latitude>(text).err(),
        parse_one::<Humidity>(text).err(),
        parse_dimensions(text).err(),
        parse_price(text).err(),
        parse_money(text).err(),
    ];
    for fault in faults.into_iter().flatten() {
        prop_assert!(text.get(fault.at.clone()).is_some(), "{text:?}: {fault:?}");
        prop_assert!(!fault.message.is_empty() && !fault.help.is_empty(), "{text:?}: {fault:?}");
        prop_assert!(!fault.message.ends_with('.'), "{text:?}: {fault:?}");
    }
    Ok(())
}
