//! An animal of any built-in species in an enclosure that is what its species asks for gives nothing to find about heat,
//! humidity or light, and neither does the library itself.

use jiff::civil::Date;

use wardsheet::figures::figures;
use wardsheet::figures::formula::humidity::humidity_at;
use wardsheet::finding::{Finding, Severity, Subject, draw};
use wardsheet::model::species::{Figure, Species};
use wardsheet::model::word::Habit;
use wardsheet::parse::parse;
use wardsheet::proof::{Evidence, proof};
use wardsheet::quantity::{Quantity, Temperature};
use wardsheet::source::{Layer, Role, Sources, library};

const AS_OF: &str = "2026-11-25";

fn built_in() -> Sources {
    let mut sources = Sources::default();
    sources.add(
        "wardsheet.toml",
        Role::Site,
        "wardsheet",
        Layer::Own,
        "title = \"Quillmere\"\n".to_owned(),
    );
    library::add_species(&mut sources);
    sources
}

fn found_in(sources: &Sources) -> Vec<Finding> {
    let as_of: Date = AS_OF.parse().expect("a day");
    let (model, mut found) = parse(sources);
    let figures = figures(&model, as_of);
    found.extend(proof(&Evidence { sources, model: &model, figures: &figures }));
    found.retain(|finding| {
        let subject = finding.code.subject;
        matches!(subject, Subject::Heat | Subject::Humidity | Subject::Light)
            && finding.severity > Severity::Note
    });
    found
}

/// The middle of a figure, or the end that it has.
fn middle<Q: Quantity>(figure: &Figure<Q>) -> Option<Q> {
    let range = figure.as_ref()?.value;
    range.middle().or(range.low()).or(range.high())
}

fn celsius(figure: &Figure<Temperature>) -> Option<f64> {
    middle(figure).map(Temperature::celsius)
}

/// An enclosure as the species file asks for it, with everything in the middle of its range.
fn as_asked(key: &str, species: &Species) -> String {
    let asked = &species.temperature;
    let (basking, warm, cool) =
        (celsius(&asked.basking), celsius(&asked.warm), celsius(&asked.cool));
    let night = celsius(&asked.night).expect("every built-in species has a night");
    let room = cool.or(celsius(&asked.water)).unwrap_or(20.0) - 1.0;
    let mut text = format!(
        "name = \"Example\"\nspecies = \"{key}\"\n[enclosure]\ninside = \"200 x 100 x 100 cm\"\nroom_day = \"{room} C\"\nroom_night = \"18 C\"\nsubstrate = \"soil, 4 cm\"\nfallback = \"Ring the second contact.\"\n"
    );
    if let Some(top) = basking {
        text.push_str(&format!("[[heater]]\nkind = \"halogen\"\nwatts = \"80 W\"\nat = \"20 cm\"\nthermostat = \"dimming\"\nset_point = \"{top} C\"\nguard = true\n"));
    }
    if let Some(warm) = warm {
        text.push_str(&format!("[[heater]]\nkind = \"radiant panel\"\nwatts = \"80 W\"\nat = \"40 cm\"\nthermostat = \"pulse\"\nset_point = \"{warm} C\"\nset_night = \"{night} C\"\n"));
    }
    // The cool side in the middle of its range; the same vapour elsewhere.
    let damp = middle(&species.humidity.range).map(|humidity| humidity.percent());
    let probes = [
        ("basking", basking, "20 cm"),
        ("warm", warm, "40 cm"),
        ("cool", cool, "190 cm"),
        ("water", celsius(&asked.water), "190 cm"),
    ];
    for (name, day, at) in probes.into_iter().filter_map(|(name, day, at)| Some((name, day?, at))) {
        let night = night.min(day);
        text.push_str(&format!("[[probe]]\nname = \"{name}\"\nat = \"{at}\"\nday = \"{day} C\"\nnight = \"{night} C\"\n"));
        if let (Some(damp), Some(cool), "warm" | "cool") = (damp, cool, name) {
            let here = humidity_at(cool, damp, day).expect("temperatures of an enclosure");
            text.push_str(&format!("humidity = \"{:.1} %\"\n", here.relative_humidity_percent));
        }
    }
    let hours = middle(&species.light.hours).map_or(12.0, |hours| hours.hours());
    let uvi = middle(&species.light.uvi).map_or(0.5, |uvi| uvi.uvi());
    text.push_str(&format!("[[lamp]]\nkind = \"UV tube\"\nwatts = \"24 W\"\nat = \"20 cm\"\ndistance = \"30 cm\"\nuvi = \"{uvi} UVI\"\nhours = \"{hours} hours\"\nfitted = 2026-07-01\nreplace_after = \"12 months\"\nguard = true\n"));
    text
}

#[test]
fn the_built_in_species_contradict_nothing() {
    let sources = built_in();
    let found = found_in(&sources);
    assert!(found.is_empty(), "{}", draw::draw(&found, false, &|file| sources.shown(file)));
}

#[test]
fn an_enclosure_as_its_species_asks_gives_nothing_to_find() {
    let mut sources = built_in();
    let (model, _) = parse(&sources);
    assert!(model.species.len() > 20, "{} built-in species", model.species.len());
    for (key, species) in &model.species {
        let text = as_asked(key, species);
        sources.add(format!("animals/{key}.toml"), Role::Animal, key, Layer::Own, text);
    }
    let found = found_in(&sources);
    assert!(found.is_empty(), "{}", draw::draw(&found, false, &|file| sources.shown(file)));
}

#[test]
fn probes_by_names_of_the_keepers_own_read_the_zones_that_their_file_tells() {
    let own =
        [("basking", "Sonnenplatz"), ("warm", "rechts"), ("cool", "links"), ("water", "Becken")];
    let found_with = |told: fn(&'static str) -> &'static str| {
        let mut sources = built_in();
        let (model, _) = parse(&sources);
        for (key, species) in &model.species {
            let text = own.iter().fold(as_asked(key, species), |text, (zone, name)| {
                let named = format!("name = \"{name}\"\nzone = \"{}\"", told(zone));
                text.replace(&format!("name = \"{zone}\""), &named)
            });
            sources.add(format!("animals/{key}.toml"), Role::Animal, key, Layer::Own, text);
        }
        found_in(&sources)
    };
    assert_eq!(found_with(|zone| zone), []);
    let turned = found_with(|zone| match zone {
        "warm" => "cool",
        "cool" => "warm",
        other => other,
    });
    assert!(turned.iter().any(|finding| finding.code.name == "gradient-inverted"), "{turned:?}");
}

#[test]
fn an_enclosure_at_the_edges_of_its_zones_gives_nothing_to_find() {
    // The warm end at the top of its ranges and the cool side at the bottom of its own: the widest gradient that is asked for.
    let mut sources = built_in();
    let (model, _) = parse(&sources);
    for (key, species) in
        model.species.iter().filter(|(_, species)| species.habit != Habit::Aquatic)
    {
        let asked = &species.temperature;
        let top =
            |figure: &Figure<Temperature>| figure.as_ref().and_then(|cited| cited.value.high());
        let low =
            |figure: &Figure<Temperature>| figure.as_ref().and_then(|cited| cited.value.low());
        let zones = [
            ("basking", top(&asked.basking), 20),
            ("warm", top(&asked.warm), 60),
            ("cool", low(&asked.cool), 190),
        ];
        let mut text = format!(
            "name = \"Example\"\nspecies = \"{key}\"\n[enclosure]\ninside = \"200 x 100 x 100 cm\"\n"
        );
        for (name, day, at) in
            zones.into_iter().filter_map(|(name, day, at)| Some((name, day?.celsius(), at)))
        {
            text.push_str(&format!(
                "[[probe]]\nname = \"{name}\"\nat = \"{at} cm\"\nday = \"{day} C\"\n"
            ));
        }
        text.push_str("[[lamp]]\nkind = \"UV tube\"\nfitted = 2026-07-01\n");
        sources.add(format!("animals/{key}.toml"), Role::Animal, key, Layer::Own, text);
    }
    let mut found = found_in(&sources);
    found.retain(|finding| finding.code.name != "heater-missing");
    assert!(found.is_empty(), "{}", draw::draw(&found, false, &|file| sources.shown(file)));
}

#[test]
fn words_headed_in_the_language_of_their_site_lack_no_section() {
    let words = include_str!("base/species/testing-snake.md");
    let labels = wardsheet::language::Catalogue::of("de").expect("a catalogue");
    let headed = wardsheet::model::species::CHAPTERS.iter().fold(
        words.to_owned(),
        |text, (anchor, heading)| {
            let german = labels.say(&format!("chapter-{anchor}"));
            text.replace(&format!("## {heading}\n"), &format!("## {german}\n"))
        },
    );
    assert!(headed.contains("## Wärme und Licht\n") && !headed.contains("## Heat and light\n"));
    let codes = |text: &str| {
        let site = include_str!("base/wardsheet.toml").replace("\"en\"", "\"de\"");
        let law = "jurisdictions = [\"germany\", \"switzerland\", \"france\"]\n";
        let files = [
            ("wardsheet.toml", format!("{law}{site}")),
            ("sources.toml", include_str!("base/sources.toml").to_owned()),
            (
                "species/standards/testing.toml",
                include_str!("base/species/standards/testing.toml").to_owned(),
            ),
            (
                "species/testing-snake.toml",
                include_str!("base/species/testing-snake.toml").to_owned(),
            ),
            ("species/testing-snake.md", text.to_owned()),
        ];
        let mut sources = Sources::default();
        for (path, text) in files {
            sources.add_bytes(path, Layer::Own, text.into_bytes()).expect("a file of a site");
        }
        library::add_species(&mut sources);
        let (model, _) = parse(&sources);
        assert!(model.laws.len() > 3);
        let figures = figures(&model, AS_OF.parse().expect("a day"));
        let found = proof(&Evidence { sources: &sources, model: &model, figures: &figures });
        let of_words = found.into_iter().filter(|finding| {
            let sentence = finding.message.contains("Testing");
            finding.code.name.starts_with("heading-")
                || sentence && finding.code.name == "care-sheet-item-missing"
        });
        of_words.map(|finding| (finding.code.name, finding.message)).collect::<Vec<_>>()
    };
    assert_eq!(codes(&headed), codes(words));
    let without = headed.replace("## Reinigung\n", "");
    assert!(
        codes(&without).iter().any(|(_, message)| message.contains("`Reinigung`")),
        "{:?}",
        codes(&without)
    );
}
