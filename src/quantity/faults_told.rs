//! What is said of a wrong figure: kind, message, help and place.

use super::*;
use FaultKind::{BareNumber, Reversed, Unbearable, UnknownUnit, Unreadable};

/// A text, the stretch of it that is pointed at, and what is said.
type Case<'t> = (&'t str, FaultKind, &'t str, &'t str, &'t str);

fn check_told(cases: &[Case<'_>], read: impl Fn(&str) -> Option<Fault>) {
    for (text, kind, pointed, message, help) in cases {
        let fault = read(text).unwrap_or_else(|| panic!("{text} was accepted"));
        let told =
            (fault.kind, &text[fault.at.clone()], fault.message.as_str(), fault.help.as_str());
        assert_eq!(told, (*kind, *pointed, *message, *help), "{text}");
    }
}

fn check<Q: Quantity>(cases: &[Case<'_>]) {
    check_told(cases, |text| parse_range::<Q>(text).err());
}

#[test]
fn a_bare_number_is_offered_its_units() {
    check::<Temperature>(&[
        ("28", BareNumber, "28", "`28` has no unit", "write \"28 C\" (82 °F) or \"28 F\" (-2 °C)"),
        (
            "26-28",
            BareNumber,
            "26-28",
            "`26-28` has no unit",
            "write \"26-28 C\" (79–82 °F) or \"26-28 F\" (-3 to -2 °C)",
        ),
        ("at least 95", BareNumber, "95", "`95` has no unit", "write \"at least 95 F\" (35 °C)"),
        ("26 C - 28", BareNumber, "28", "`28` has no unit", "write \"26-28 C\""),
    ]);
    check::<Length>(&[
        (
            "120",
            BareNumber,
            "120",
            "`120` has no unit",
            "write \"120 cm\" (3 ft 11 in) or \"120 in\" (3 m)",
        ),
        ("4 ft 6", BareNumber, "6", "`6` has no unit", "write \"90-150 cm\""),
    ]);
    check::<Span>(&[(
        "3",
        BareNumber,
        "3",
        "`3` has no unit",
        "write \"3 days\", \"3 weeks\" or \"3 months\"",
    )]);
    check::<Humidity>(&[("60", BareNumber, "60", "`60` has no unit", "write \"60 %\"")]);
}

#[test]
fn an_unknown_unit_is_named_or_its_likeness_offered() {
    check::<Temperature>(&[
        (
            "28 Celcius",
            UnknownUnit,
            "Celcius",
            "`Celcius` is not a unit of temperature",
            "did you mean \"28 Celsius\"?",
        ),
        (
            "26-28 Farenheit",
            UnknownUnit,
            "Farenheit",
            "`Farenheit` is not a unit of temperature",
            "did you mean \"28 Fahrenheit\"?",
        ),
        (
            "28 cm",
            UnknownUnit,
            "cm",
            "`cm` is a unit of length, not of temperature",
            "write it like \"26-28 C\"",
        ),
        (
            "82 degrees",
            UnknownUnit,
            "degrees",
            "`degrees` is not a unit of temperature",
            "write \"82 C\" or \"82 F\"",
        ),
        (
            "300 K",
            UnknownUnit,
            "K",
            "`K` is a unit of temperature difference, not of temperature",
            "write it like \"26-28 C\"",
        ),
        ("28 Q", UnknownUnit, "Q", "`Q` is not a unit of temperature", "known units are C, F"),
        (
            "60 % RH",
            UnknownUnit,
            "% RH",
            "`% RH` is a unit of humidity, not of temperature",
            "write it like \"26-28 C\"",
        ),
    ]);
    check::<Mass>(&[
        ("5 Mg", UnknownUnit, "Mg", "`Mg` is not a unit of mass", "did you mean \"5 mg\"?"),
        (
            "5 gramms",
            UnknownUnit,
            "gramms",
            "`gramms` is not a unit of mass",
            "did you mean \"5 grams\"?",
        ),
    ]);
    check::<Count>(&[(
        "5 mice",
        UnknownUnit,
        "mice",
        "`mice` does not belong in a count",
        "write the number alone: \"5\"",
    )]);
}

#[test]
fn ends_the_wrong_way_round_are_turned() {
    check::<Temperature>(&[
        (
            "28-26 C",
            Reversed,
            "28-26 C",
            "the low end `28` lies above the high end `26 C`",
            "write \"26-28 C\"",
        ),
        (
            "4 to -5 C",
            Reversed,
            "4 to -5 C",
            "the low end `4` lies above the high end `-5 C`",
            "write \"-5 to 4 C\"",
        ),
    ]);
    check::<Length>(&[(
        "1 m to 80 cm",
        Reversed,
        "1 m to 80 cm",
        "the low end `1 m` lies above the high end `80 cm`",
        "write \"80 cm to 1 m\"",
    )]);
}

#[test]
fn what_no_animal_bears_is_read_in_another_unit() {
    check::<Temperature>(&[
        (
            "95 C",
            Unbearable,
            "95 C",
            "95 °C is more than any animal or enclosure bears",
            "was \"95 F\" meant? that is 35 °C",
        ),
        (
            "90-95 C",
            Unbearable,
            "90",
            "90 °C is more than any animal or enclosure bears",
            "was \"90-95 F\" meant? that is 32–35 °C",
        ),
        (
            "-60 C",
            Unbearable,
            "-60 C",
            "-60 °C is less than any animal or enclosure bears",
            "a temperature lies in -40 to 65 °C",
        ),
    ]);
    check::<Length>(&[
        (
            "1200 m",
            Unbearable,
            "1200 m",
            "1200 m is more than any animal or enclosure bears",
            "was \"1200 cm\" meant? that is 12 m",
        ),
        (
            "-5 cm",
            Unbearable,
            "-5 cm",
            "-5 cm is less than any animal or enclosure bears",
            "a length lies in 0–100 m",
        ),
    ]);
    check::<Mass>(&[(
        "5000 kg",
        Unbearable,
        "5000 kg",
        "5000 kg is more than any animal or enclosure bears",
        "was \"5000 g\" meant? that is 5 kg",
    )]);
    check::<Humidity>(&[(
        "150 %",
        Unbearable,
        "150 %",
        "150 % is more than any animal or enclosure bears",
        "a humidity lies in 0–100 %",
    )]);
}

#[test]
fn what_is_no_figure_is_pointed_at() {
    check::<Mass>(&[
        ("2,5 kg", Unreadable, "2,5", "`2,5` has a comma in it", "write \"2.5\" with a point"),
        (
            "1,200 g",
            Unreadable,
            "1,200",
            "`1,200` has a comma in it",
            "write \"1200\" for thousands, or \"1.200\" with a point",
        ),
    ]);
    check::<Temperature>(&[
        ("", Unreadable, "", "the temperature is empty", "write it like \"26-28 C\""),
        ("  ", Unreadable, "  ", "the temperature is empty", "write it like \"26-28 C\""),
        (
            "warm",
            Unreadable,
            "warm",
            "`warm` cannot be read as a temperature",
            "write it like \"26-28 C\"",
        ),
        (
            "26-",
            Unreadable,
            "-",
            "`-` cannot be read as a temperature",
            "write it like \"26-28 C\"",
        ),
        (
            "26-28-30 C",
            Unreadable,
            "26-28-30 C",
            "`26-28-30 C` cannot be read as a temperature",
            "write it like \"26-28 C\"",
        ),
        (
            "26 C; 28 C",
            Unreadable,
            ";",
            "`;` has no place in a figure",
            "write numbers with their units only",
        ),
        (
            "at least 26-28 C",
            Unreadable,
            "at least",
            "`at least` stands before a range",
            "write one value behind it, or the range alone",
        ),
    ]);
    check::<Length>(&[(
        "6 in 4 ft",
        Unreadable,
        "4 ft",
        "`4 ft` cannot be read as a length",
        "write it like \"90-150 cm\"",
    )]);
    check::<Count>(&[(
        "2.5",
        Unreadable,
        "2.5",
        "`2.5` is not a whole number",
        "write a count in whole numbers",
    )]);
    check_told(
        &[(
            "26-28 C",
            Unreadable,
            "26-28 C",
            "`26-28 C` is a range where one value is needed",
            "write one temperature only",
        )],
        |text| parse_one::<Temperature>(text).err(),
    );
}

#[test]
fn dimensions_say_which_measure_is_wrong() {
    check_told(
        &[
            (
                "120 x 60 cm",
                Unreadable,
                "120 x 60 cm",
                "2 measures where three are needed",
                "write length, width and height, like \"120 x 60 x 60 cm\"",
            ),
            (
                "120 x 60 x 60",
                BareNumber,
                "60",
                "`60` has no unit",
                "write \"120 x 60 x 60 cm\" or \"120 x 60 x 60 in\"",
            ),
            (
                "120 x 60 x 60 C",
                UnknownUnit,
                "C",
                "`C` is a unit of temperature, not of length",
                "write it like \"90-150 cm\"",
            ),
            (
                "12 x 6 x 600 m",
                Unbearable,
                "600 m",
                "600 m is more than any animal or enclosure bears",
                "was \"600 cm\" meant? that is 6 m",
            ),
        ],
        |text| parse_dimensions(text).err(),
    );
}

#[test]
fn prices_say_what_is_missing() {
    check_told(
        &[
            (
                "0.31",
                BareNumber,
                "0.31",
                "`0.31` has no currency",
                "write it with three letters, like \"0.31 EUR per kWh\"",
            ),
            (
                "0.31 EUR",
                BareNumber,
                "0.31 EUR",
                "`0.31 EUR` does not say what it is paid for",
                "write \"0.31 EUR per kWh\", \"0.31 EUR per kg\", \"0.31 EUR per g\" or \"0.31 EUR each\"",
            ),
            (
                "0.31 € per kWh",
                UnknownUnit,
                "€",
                "`€` is not the three letters of a currency",
                "write it like \"0.31 EUR per kWh\"",
            ),
            (
                "4 EUR per mile",
                UnknownUnit,
                "per mile",
                "`per mile` does not say what is paid for",
                "write it like \"0.31 EUR per kWh\"",
            ),
            (
                "-4 EUR each",
                Unbearable,
                "-4",
                "`-4` is less than nothing",
                "write it like \"0.31 EUR per kWh\"",
            ),
            (
                "EUR 4 each",
                Unreadable,
                "EUR",
                "`EUR` cannot be read as a price",
                "write it like \"0.31 EUR per kWh\"",
            ),
            (
                "0,31 EUR/kWh",
                Unreadable,
                "0,31",
                "`0,31` has a comma in it",
                "write \"0.31\" with a point",
            ),
        ],
        |text| parse_price(text).err(),
    );
}
