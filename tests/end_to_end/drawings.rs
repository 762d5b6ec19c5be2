//! Drawings: each says in words what it shows, has no colour of its own, and its numbers stand in a table of the same page.

use crate::site::{Site, tree};

/// The drawings of one kind on a page.
fn drawings<'a>(page: &'a str, kind: &str) -> Vec<&'a str> {
    let start = format!("<figure class=\"drawing {kind}\">");
    page.split(start.as_str()).skip(1).filter_map(|rest| rest.split("</figure>").next()).collect()
}

#[test]
fn every_drawing_has_a_name_a_text_and_no_colour_of_its_own() {
    let site = Site::example("drawings");
    site.compile();
    let mut seen = [0; 3];
    for (path, bytes) in tree(&site.out()).iter().filter(|(path, _)| path.ends_with(".html")) {
        let page = String::from_utf8_lossy(bytes);
        for (count, kind) in seen.iter_mut().zip(["year", "meals", "front"]) {
            for drawing in drawings(&page, kind) {
                *count += 1;
                assert!(drawing.contains("role=img"), "{path}: {kind}");
                let said = drawing.split("</desc>").next().and_then(|text| text.rsplit('>').next());
                assert!(said.is_some_and(|said| said.len() > 40), "{path}: {kind} says {said:?}");
                for colour in ["fill=", "stroke=", "rgb", "style=\"fill", "style=\"stroke"] {
                    assert!(!drawing.contains(colour), "{path}: {kind} has a colour");
                }
                let is_private = path.starts_with("private/");
                assert!(kind == "front" || !is_private, "{path}: {kind}");
            }
        }
    }
    assert!(seen.iter().all(|count| *count > 5), "{seen:?}");
}

#[test]
fn a_probe_stands_where_it_is_and_moves_with_its_file() {
    let site = Site::example("drawings-front");
    let place = |site: &Site| {
        site.compile();
        let page = site.text("out/private/animals/juniper/handover.html");
        let front = drawings(&page, "front")[0].to_owned();
        assert!(front.contains("--long: 150"), "{front}");
        // What the hygrometers may read is told below the box as well as in the list.
        assert!(front.contains("hygrometer at most"), "{front}");
        // Juniper's third probe reads the cool side.
        let before = front.split(">3</text>").next().expect("the mark of the probe");
        let at = before.rsplit("cx=").next().and_then(|rest| rest.split('%').next());
        at.and_then(|at| at.parse::<f64>().ok()).expect("a place along the length")
    };
    // 135 of 150 cm from the warm end.
    assert_eq!(place(&site), 90.0);
    let file = site.text("animals/juniper.toml");
    assert!(file.contains("at = \"135 cm\""));
    site.put("animals/juniper.toml", file.replace("at = \"135 cm\"", "at = \"120 cm\""));
    assert_eq!(place(&site), 80.0);
}

#[test]
fn meals_stand_as_far_apart_as_the_stage_is_fed() {
    let site = Site::example("drawings-meals");
    site.own_species("corn-snake", |species| {
        let stages = species["feeding"].as_array_mut().expect("stages");
        stages[0].as_table_mut().expect("a stage").insert("every".to_owned(), "9-11 days".into());
    });
    site.compile();
    let page = site.text("out/public/species/corn-snake/index.html");
    let meals = drawings(&page, "meals")[0];
    assert!(meals.contains("every 9–11"), "{meals}");
    // Ten days from mark to mark, of which 0.4 are the mark.
    assert!(meals.contains("\"0.4 9.6\""), "{meals}");
}

#[test]
fn nothing_is_drawn_where_it_would_show_nothing() {
    let site = Site::example("drawings-none");
    site.compile();
    // Near the equator the days are all alike.
    let boa = site.text("out/public/species/boa-constrictor/index.html");
    assert!(drawings(&boa, "year").is_empty() && !drawings(&boa, "meals").is_empty());
    // A bearded dragon eats every day or every second day all its life.
    let dragon = site.text("out/public/species/bearded-dragon/index.html");
    assert!(drawings(&dragon, "meals").is_empty() && !drawings(&dragon, "year").is_empty());
}

#[test]
fn the_box_of_a_care_sheet_is_to_scale_and_says_what_holds_along_it() {
    let site = Site::example("drawings-box");
    site.compile();
    let page = site.text("out/public/species/boa-constrictor/index.html");
    let front = drawings(&page, "front")[0];
    // The least enclosure of a grown boa is 230 × 150 × 200 cm, and a boa of 244 cm cannot lie straight in it.
    assert!(front.contains("--long: 230; --high: 200"), "{front}");
    assert!(front.contains("32–34") && front.contains("24–26"), "{front}");
    assert!(!front.contains("class=animal"), "{front}");
    let gecko = site.text("out/public/species/leopard-gecko/index.html");
    assert!(drawings(&gecko, "front")[0].contains("class=animal"));
    // Where the animal lives in water, nothing is said of air along the box.
    let axolotl = site.text("out/public/species/axolotl/index.html");
    assert!(drawings(&axolotl, "front").is_empty());
}
