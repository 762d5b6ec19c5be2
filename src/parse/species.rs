//! `species/NAME.toml`.

use std::collections::BTreeMap;

use crate::finding::Finding;
use crate::model::species::{
    EnclosureRule, Fittings, Form, Growth, Humidities, Legal, LegalRule, Light, Sign, Size,
    Species, Stage, Temperatures,
};
use crate::model::word::{Active, Company, Diet, Habit, Kind, Measure, Urgency};
use crate::source::SourceFile;

use super::figure::whole_numbers;
use super::table::{self, Table};

/// The fields without which a species means nothing.
const REQUIRED: [(&str, &str); 6] = [
    ("name", "the trade's common name: name = \"Corn snake\""),
    ("scientific", "the scientific name: scientific = \"Pantherophis guttatus\""),
    (
        "kind",
        "what kind of animal it is: kind = \"snake\", or lizard, tortoise, turtle, frog, salamander, invertebrate",
    ),
    ("habit", "where it lives: habit = \"ground\", or climbing, burrowing, semi-aquatic, aquatic"),
    ("diet", "what it eats: diet = \"carnivore\", or insectivore, herbivore, omnivore"),
    ("size", "a table [size] with measure and the adult length: adult = \"90-150 cm\""),
];

/// One reviewer, or several in one line.
fn reviewers(top: &Table<'_, '_>) -> Option<String> {
    let names: Vec<String> = top.list("reviewer").into_iter().map(|named| named.name).collect();
    (!names.is_empty()).then(|| names.join(", "))
}

pub(super) fn species(file: &SourceFile) -> (Option<Species>, Vec<Finding>) {
    table::read(file.id, &file.text, |top| {
        for (key, what) in REQUIRED {
            top.missing(key, what);
        }
        let name = top.text("name");
        let scientific = top.text("scientific");
        let kind = top.word("kind");
        let habit = top.word("habit");
        let diet = top.word("diet");
        let size = top.table("size").map(|table| size(&table));
        let origin = top.table("origin");
        let life = top.table("life");
        let energy = top.table("energy");
        let fasting = top.table("fasting");
        let handling = top.table("handling");
        let rest = Rest {
            years: life.as_ref().and_then(|table| table.figure("years")),
            latitudes: origin.as_ref().and_then(|table| table.figure("latitudes")),
            origin: origin.as_ref().and_then(|table| table.text("where")),
            energy_at_most: energy.as_ref().and_then(|table| table.figure("at_most")),
            fasting: fasting.as_ref().and_then(|table| table.figure("normal")),
            fasts_when: fasting.as_ref().and_then(|table| table.text("when")),
            rest_after_meal: handling.as_ref().and_then(|table| table.figure("after_meal")),
        };
        [origin, life, energy, fasting, handling].iter().flatten().for_each(Table::close);
        let species = Species {
            file: file.id,
            name: name.clone().unwrap_or_default(),
            scientific: scientific.clone().unwrap_or_default(),
            also: top.list("also").into_iter().map(|named| named.name).collect(),
            // Every field is read before a missing one makes the whole meaningless, so that each fault is reported once.
            kind: kind.map_or(Kind::Snake, |(kind, _)| kind),
            habit: habit.map_or(Habit::Ground, |(habit, _)| habit),
            diet: diet.map_or(Diet::Carnivore, |(diet, _)| diet),
            active: top.word("active").map_or(Active::DayAndNight, |(active, _)| active),
            company: top.word("company").map_or(Company::Alone, |(company, _)| company),
            cautions: top.words("cautions"),
            reviewed: top.date("reviewed"),
            reviewer: reviewers(top),
            summary: top.text("summary"),
            photo: top.named("photo"),
            photo_shows: top.text("photo_shows"),
            origin: rest.origin,
            latitudes: rest.latitudes,
            size: size.clone().unwrap_or_default(),
            growth: top.table("growth").map(|table| growth(&table)).unwrap_or_default(),
            years: rest.years,
            temperature: top
                .table("temperature")
                .map(|table| temperatures(&table))
                .unwrap_or_default(),
            humidity: top.table("humidity").map(|table| humidities(&table)).unwrap_or_default(),
            light: top.table("light").map(|table| light(&table)).unwrap_or_default(),
            enclosure: top.table("enclosure").map(|table| enclosure(&table)).unwrap_or_default(),
            fittings: top.table("fittings").map(|table| fittings(&table)).unwrap_or_default(),
            feeding: top.tables("feeding").iter().filter_map(stage).collect(),
            energy_at_most: rest.energy_at_most,
            fasting: rest.fasting,
            fasts_when: rest.fasts_when,
            rest_after_meal: rest.rest_after_meal,
            signs: top.tables("sign").iter().filter_map(sign).collect(),
            legal: top.table("legal").map(|table| legal(&table)).unwrap_or_default(),
            overrides: Vec::new(),
            language: top.text("language"),
            words: None,
            translations: BTreeMap::new(),
        };
        let whole = kind.is_some() && habit.is_some() && diet.is_some() && size.is_some();
        (name.is_some() && scientific.is_some() && whole).then_some(species)
    })
}

/// Figures that stand alone in a table of their own.
struct Rest {
    years: crate::model::species::Figure<crate::quantity::Span>,
    latitudes: crate::model::species::Figure<crate::quantity::Latitude>,
    origin: Option<String>,
    energy_at_most: crate::model::species::Figure<crate::quantity::Multiple>,
    fasting: crate::model::species::Figure<crate::quantity::Span>,
    fasts_when: Option<String>,
    rest_after_meal: crate::model::species::Figure<crate::quantity::Span>,
}

fn size(table: &Table<'_, '_>) -> Size {
    let size = Size {
        measure: table.word("measure").map_or(Measure::TotalLength, |(measure, _)| measure),
        birth: table.figure("birth"),
        adult: table.figure("adult"),
        male: table.figure("male"),
        female: table.figure("female"),
        total_length: table.figure("total_length"),
        birth_mass: table.figure("birth_mass"),
        mass: table.figure("mass"),
        mass_male: table.figure("mass_male"),
        mass_female: table.figure("mass_female"),
        forms: table.table("forms").map(|forms| named_forms(&forms)).unwrap_or_default(),
    };
    if size.adult.is_none() && (size.male.is_none() || size.female.is_none()) {
        table.missing("adult", "the adult length, for both sexes or by sex: adult = \"90-150 cm\"");
    }
    table.close();
    size
}

fn named_forms(forms: &Table<'_, '_>) -> BTreeMap<String, Form> {
    let mut read = BTreeMap::new();
    for key in forms.names() {
        let Some(table) = forms.table(&key.name) else { continue };
        let form = Form {
            name: table.text("name").unwrap_or_else(|| key.name.clone()),
            adult: table.figure("adult"),
            male: table.figure("male"),
            female: table.figure("female"),
        };
        table.close();
        read.insert(key.name, form);
    }
    read
}

fn growth(table: &Table<'_, '_>) -> Growth {
    let growth = Growth { k: table.figure("k"), matures: table.figure("matures") };
    table.close();
    growth
}

fn temperatures(table: &Table<'_, '_>) -> Temperatures {
    let temperatures = Temperatures {
        basking: table.figure("basking"),
        warm: table.figure("warm"),
        cool: table.figure("cool"),
        night: table.figure("night"),
        never_above: table.figure("never_above"),
        critical_low: table.figure("critical_low"),
        water: table.figure("water"),
        brumation: table.figure("brumation"),
        brumation_weeks: table.figure("brumation_weeks"),
    };
    table.close();
    temperatures
}

fn humidities(table: &Table<'_, '_>) -> Humidities {
    let humidities = Humidities {
        range: table.figure("range"),
        ceiling: table.figure("ceiling"),
        ceiling_for: table.figure("ceiling_for"),
        shed: table.figure("shed"),
    };
    table.close();
    humidities
}

fn light(table: &Table<'_, '_>) -> Light {
    let light =
        Light { hours: table.figure("hours"), zone: table.zone("zone"), uvi: table.figure("uvi") };
    table.close();
    light
}

fn enclosure(table: &Table<'_, '_>) -> BTreeMap<String, EnclosureRule> {
    let mut rules = BTreeMap::new();
    for standard in table.names() {
        let Some(inner) = table.table(&standard.name) else { continue };
        match inner.named("row") {
            Some(row) => {
                rules.insert(standard.name, EnclosureRule { row, place: standard.place });
            }
            None => {
                inner.missing("row", "the row of the standard: row = \"pantherophis-guttatus\"")
            }
        }
        inner.close();
    }
    table.close();
    rules
}

fn fittings(table: &Table<'_, '_>) -> Fittings {
    let fittings = Fittings {
        water: table.text("water"),
        substrate: table.text("substrate"),
        hides: table.number("hides").map(|(hides, _)| hides),
        climbing: table.text("climbing"),
        digging: table.text("digging"),
        bathing: table.text("bathing"),
    };
    table.close();
    fittings
}

fn stage(table: &Table<'_, '_>) -> Option<Stage> {
    let name = table.text("stage");
    let stage = Stage {
        name: name.clone().unwrap_or_default(),
        place: table.place(),
        until_age: table.one("until_age").map(|(age, _)| age),
        until_length: table.one("until_length").map(|(length, _)| length),
        until_mass: table.one("until_mass").map(|(mass, _)| mass),
        meal: table.text("meal"),
        every: table.figure("every"),
        mass: table.figure("mass"),
        share: table.figure("share"),
        count: table.cited("count", whole_numbers),
        supplement: table.text("supplement"),
        note: table.text("note"),
    };
    if name.is_none() {
        table.missing("stage", "the stage's name: stage = \"hatchling\"");
    }
    table.close();
    name.map(|_| stage)
}

fn sign(table: &Table<'_, '_>) -> Option<Sign> {
    let text = table.text("sign");
    let urgency = table.word::<Urgency>("urgency");
    let read = Sign {
        sign: text.clone().unwrap_or_default(),
        means: table.text("means"),
        urgency: urgency.map_or(Urgency::Days, |(urgency, _)| urgency),
        sources: table.list("source"),
    };
    if text.is_none() {
        table.missing("sign", "what is seen: sign = \"…\"");
    }
    if urgency.is_none() {
        table.missing(
            "urgency",
            "how urgent it is: urgency = \"now\", \"day\", \"days\" or \"watch\"",
        );
    }
    table.close();
    text.map(|_| read)
}

fn legal(table: &Table<'_, '_>) -> Legal {
    let rules = table
        .tables("rule")
        .iter()
        .filter_map(|rule| {
            let jurisdiction = rule.text("where");
            let says = rule.text("says");
            let (paper, sources) = (rule.text("paper"), rule.list("source"));
            rule.close();
            Some(LegalRule { jurisdiction: jurisdiction?, says: says?, paper, sources })
        })
        .collect();
    let cites = table.word("cites").map(|(cites, _)| cites);
    let legal = Legal { checked: table.date("checked"), cites, rules };
    table.close();
    legal
}
