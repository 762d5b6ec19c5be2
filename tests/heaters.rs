//! Which thermostat suits which heater, which heaters need a guard, and what is said of one that lacks either.

use jiff::civil::Date;

use wardsheet::figures::figures;
use wardsheet::parse::parse;
use wardsheet::proof::{Evidence, proof};
use wardsheet::source::{Layer, Role, Sources, library};

/// The codes about heaters and their thermostats that one heater of a grown corn snake gives.
fn codes_of(heater: &str) -> Vec<&'static str> {
    let mut sources = Sources::default();
    let mut add = |path: &str, role, name: &str, text: String| {
        sources.add(path, role, name, Layer::Own, text)
    };
    add("wardsheet.toml", Role::Site, "wardsheet", "title = \"Quillmere\"\n".to_owned());
    let animal = format!(
        "name = \"Juniper\"\nspecies = \"corn-snake\"\n[enclosure]\ninside = \"150 x 80 x 80 cm\"\n[[heater]]\n{heater}\n"
    );
    add("animals/juniper.toml", Role::Animal, "juniper", animal);
    library::add_species(&mut sources);
    let (model, found) = parse(&sources);
    assert_eq!(found, [], "{heater}");
    let as_of: Date = "2026-11-25".parse().expect("a day");
    let figures = figures(&model, as_of);
    let found = proof(&Evidence { sources: &sources, model: &model, figures: &figures });
    const ABOUT: [&str; 9] = [
        "heater-unguarded",
        "water-heater-unguarded",
        "heater-without-thermostat",
        "lamp-without-thermostat",
        "mercury-vapour-on-thermostat",
        "thermostat-unsuitable",
        "set-point-missing",
        "set-point-too-high",
        "set-point-above-basking",
    ];
    let mut codes: Vec<&str> =
        found.iter().map(|finding| finding.code.name).filter(|code| ABOUT.contains(code)).collect();
    codes.sort_unstable();
    codes
}

#[test]
fn each_heater_has_the_thermostats_that_suit_it() {
    // Columns: on-off, pulse, dimming. Common practice of the trade; lamps are dimmed, heaters without light take pulses.
    let suits = [
        ("ceramic", [true, true, true]),
        ("deep heat projector", [true, true, true]),
        ("radiant panel", [true, true, true]),
        ("halogen", [false, false, true]),
        ("basking lamp", [false, false, true]),
        ("mat", [true, true, false]),
        ("cable", [true, true, false]),
        ("water heater", [true, false, false]),
        ("room heater", [true, false, false]),
    ];
    for (kind, fits) in suits {
        for (thermostat, fits) in ["on-off", "pulse", "dimming"].into_iter().zip(fits) {
            let heater = format!(
                "kind = \"{kind}\"\nwatts = \"20 W\"\nguard = true\nset_point = \"22 C\"\nthermostat = \"{thermostat}\""
            );
            let codes = codes_of(&heater);
            let unsuitable = codes.contains(&"thermostat-unsuitable");
            assert_eq!(unsuitable, !fits, "{kind} on {thermostat}: {codes:?}");
        }
    }
}

#[test]
fn a_mat_that_is_load_enough_may_be_dimmed() {
    let mat = |watts: u32| {
        format!(
            "kind = \"mat\"\nwatts = \"{watts} W\"\nset_point = \"30 C\"\nthermostat = \"dimming\""
        )
    };
    assert_eq!(codes_of(&mat(14)), ["thermostat-unsuitable"]);
    assert_eq!(codes_of(&mat(60)), [] as [&str; 0]);
}

#[test]
fn only_heaters_that_burn_on_touch_need_a_guard() {
    for (kind, burns) in [
        ("ceramic", true),
        ("halogen", true),
        ("basking lamp", true),
        ("mercury vapour", true),
        ("deep heat projector", true),
        ("radiant panel", false),
        ("mat", false),
        ("cable", false),
        ("room heater", false),
    ] {
        // A guard that is not mentioned counts as missing, like one that is said to be missing.
        for guard in ["", "guard = false"] {
            let codes = codes_of(&format!("kind = \"{kind}\"\nwatts = \"60 W\"\n{guard}"));
            assert_eq!(codes.contains(&"heater-unguarded"), burns, "{kind}, `{guard}`: {codes:?}");
        }
        let codes = codes_of(&format!("kind = \"{kind}\"\nwatts = \"60 W\"\nguard = true"));
        assert!(!codes.contains(&"heater-unguarded"), "{kind} with a guard: {codes:?}");
    }
}

#[test]
fn a_heater_without_light_must_have_a_thermostat_and_a_lamp_should() {
    let bare = |kind: &str| codes_of(&format!("kind = \"{kind}\"\nwatts = \"60 W\"\nguard = true"));
    for kind in [
        "ceramic",
        "deep heat projector",
        "radiant panel",
        "mat",
        "cable",
        "water heater",
        "room heater",
    ] {
        assert_eq!(bare(kind), ["heater-without-thermostat"], "{kind}");
    }
    for kind in ["halogen", "basking lamp"] {
        assert_eq!(bare(kind), ["lamp-without-thermostat"], "{kind}");
    }
    assert_eq!(bare("mercury vapour"), [] as [&str; 0]);
}

#[test]
fn a_mercury_vapour_lamp_bears_no_thermostat() {
    for thermostat in ["on-off", "pulse", "dimming"] {
        let codes = codes_of(&format!(
            "kind = \"mercury vapour\"\nwatts = \"100 W\"\nguard = true\nthermostat = \"{thermostat}\""
        ));
        assert_eq!(codes, ["mercury-vapour-on-thermostat"], "{thermostat}");
    }
}

#[test]
fn a_set_point_is_held_to_the_basking_spot_and_to_the_limit() {
    // A corn snake basks at 30-32 C and may never meet more than 35 C.
    let set = |degrees: f64| {
        codes_of(&format!(
            "kind = \"halogen\"\nwatts = \"60 W\"\nguard = true\nthermostat = \"dimming\"\nset_point = \"{degrees} C\""
        ))
    };
    assert_eq!(set(32.0), [] as [&str; 0]);
    assert_eq!(set(32.5), ["set-point-above-basking"]);
    assert_eq!(set(35.0), ["set-point-above-basking"]);
    assert_eq!(set(35.5), ["set-point-too-high"]);
    // The same in degrees Fahrenheit, as a keeper there writes it.
    let heater = "kind = \"ceramic\"\nwatts = \"60 W\"\nguard = true\nthermostat = \"pulse\"\nset_point = \"97 F\"";
    assert_eq!(codes_of(heater), ["set-point-too-high"]);
}
