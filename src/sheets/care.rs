//! The care sheet of a species.

use serde::Serialize;

use crate::figures::working::number;
use crate::figures::{Figures, SpeciesFigures};
use crate::model::Species;
use crate::model::stated::Stated;
use crate::model::word::{Measure, Word};

use super::animal::capital;
use super::blocks::{Caution, Chapter, Fact, Link, Shown, SourceEntry, WorkingBlock};
use super::citing::Citing;
use super::edition::Edition;
use super::frame::Frame;
use super::{cautions, drawing, law, laws, order, phrases, print, tables, words};

/// A care sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CareSheet {
    /// The frame.
    pub frame: Frame,
    /// The species' name in files and addresses.
    pub key: String,
    /// The trade's common name.
    pub name: String,
    /// The scientific name.
    pub scientific: String,
    /// Other common names.
    pub also: Vec<String>,
    /// What kind of animal it is.
    pub kind: String,
    /// Its picture, where it has one.
    pub picture: Option<super::picture::Picture>,
    /// One sentence.
    pub summary: Option<String>,
    /// What matters in ten seconds.
    pub glance: Vec<Fact>,
    /// What can hurt.
    pub cautions: Vec<Caution>,
    /// The chapters.
    pub chapters: Vec<Chapter>,
    /// The sources of this page.
    pub sources: Vec<SourceEntry>,
    /// When it was last reviewed.
    pub reviewed: Option<String>,
    /// The same as `2026-11-25`, for search engines.
    pub reviewed_on: Option<String>,
    /// By whom.
    pub reviewer: Option<String>,
    /// When it is to be reviewed again.
    pub next_review: Option<String>,
    /// The species before it.
    pub previous: Option<Link>,
    /// The species after it.
    pub next: Option<Link>,
}

/// The chapters that a care sheet owes its reader: anchor, heading, and the beginnings of the names of their figures.
pub const CHAPTERS: [(&str, &str, &[&str]); 11] = [
    ("glance", "At a glance", &[]),
    ("suits", "Is this animal for you", &["life."]),
    ("enclosure", "Enclosure", &[]),
    ("heat", "Heat and light", &["temperature.", "light."]),
    ("humidity", "Humidity and water", &["humidity."]),
    ("feeding", "Feeding", &["feeding.", "energy.", "fasting."]),
    ("company", "Handling and company", &["handling."]),
    ("cleaning", "Cleaning", &[]),
    ("health", "Health", &[]),
    ("growth", "Breeding and growth", &["size.", "growth."]),
    ("law", "Law and where it comes from", &["origin."]),
];

/// Builds the care sheet of a species.
pub fn care(
    edition: &Edition<'_>,
    figures: &Figures,
    key: &str,
    species: &Species,
    of: &SpeciesFigures,
) -> CareSheet {
    let mut citing = Citing::new(&edition.sources);
    let stated = species.stated();
    let glance = glance(edition, species, of, &stated, &mut citing);
    let text = words::with_figures(species, of, edition);
    let mut passages = words::passages(&text);
    let mut chapters = Vec::new();
    for (id, title, names) in CHAPTERS {
        let mut chapter = Chapter::new(id, title);
        if let Some(place) =
            passages.iter().position(|passage| passage.heading.eq_ignore_ascii_case(title))
        {
            chapter.words = passages.remove(place).text;
        }
        let belongs = |stated: &&Stated<'_>| names.iter().any(|name| stated.name.starts_with(name));
        // The feeding table shows its figures itself; those with a source or a remark stand once more beside it.
        let says_more = |stated: &&Stated<'_>| {
            !stated.name.starts_with("feeding.")
                || !stated.sources.is_empty()
                || stated.note.is_some()
        };
        chapter.facts = stated
            .iter()
            .filter(belongs)
            .filter(says_more)
            .map(|stated| citing.fact(stated, edition))
            .collect();
        fill(&mut chapter, edition, species, of);
        chapters.push(chapter);
    }
    // Words under a heading of the author's own keep their place at the end.
    for (number, passage) in passages.into_iter().enumerate() {
        let title = if passage.heading.is_empty() { "More" } else { &passage.heading };
        chapters.push(Chapter {
            words: passage.text,
            ..Chapter::new(&format!("more-{}", number + 1), title)
        });
    }
    chapters.retain(|chapter| !chapter.is_empty());
    let description = species
        .summary
        .clone()
        .unwrap_or_else(|| format!("Care sheet for {} ({}).", species.name, species.scientific));
    let path = super::care_path(key);
    let (previous, next) = order::neighbours(edition, key);
    let reviewed = species.reviewed.map(|(date, _)| date);
    CareSheet {
        frame: Frame::new(
            edition,
            &path,
            false,
            &format!("{} care sheet", species.name),
            &description,
            figures.as_of,
        ),
        key: key.to_owned(),
        name: species.name.clone(),
        scientific: species.scientific.clone(),
        picture: super::picture::of_species(edition, key, species),
        also: species.also.clone(),
        kind: species.kind.spelling().to_owned(),
        summary: species.summary.clone(),
        glance,
        cautions: cautions::of_species(edition, species),
        chapters,
        sources: citing.entries(),
        reviewed: reviewed.map(|date| edition.long_date(date)),
        reviewed_on: reviewed.map(|date| date.to_string()),
        reviewer: species.reviewer.clone(),
        next_review: reviewed
            .and_then(|date| {
                crate::figures::calendar::days_after(date, edition.site.review_every.days())
            })
            .map(|date| edition.long_date(date)),
        previous,
        next,
    }
}

/// Adds to a chapter what is worked out for it.
fn fill(chapter: &mut Chapter, edition: &Edition<'_>, species: &Species, of: &SpeciesFigures) {
    let working =
        |working: &Option<crate::figures::Working>| working.as_ref().map(WorkingBlock::from);
    match chapter.id.as_str() {
        "enclosure" => {
            chapter.facts.extend(fittings(species));
            chapter.tables.extend(tables::enclosure(
                of,
                &|name| standard_title(edition, name),
                edition,
            ));
            let measure = capital(species.size.measure.spelling());
            chapter.tables.extend(tables::ladder(of, &measure, edition));
            chapter.drawings.extend(drawing::grown(species, of, edition));
            for working in of.enclosure.iter().filter_map(|need| enclosure_working(edition, need)) {
                // Forms and sexes that a rule does not tell apart have one working.
                if !chapter.workings.iter().any(|other| {
                    other.steps == working.steps && other.publication == working.publication
                }) {
                    chapter.workings.push(working);
                }
            }
        }
        "heat" => {
            if let Some((narrowest, widest)) = of.gradient.span_c {
                let ends = Some((Some(narrowest), Some(widest)));
                let span = print::shown::<crate::quantity::TemperatureDifference>(
                    ends,
                    edition,
                    crate::quantity::Rounding::Nearest,
                );
                chapter.facts.push(Fact::plain("Gradient, warmest to coolest", span));
            }
            chapter.tables.extend(tables::year_of_light(of));
            chapter.drawings.extend(drawing::year(of));
            chapter.workings.extend(working(&of.gradient.working));
            chapter.workings.extend(working(&of.light.working));
        }
        "humidity" => {
            chapter.tables.extend(tables::humidity(&of.humidity, edition));
            chapter.workings.extend(working(&of.humidity.working));
        }
        "feeding" => {
            if let Some(when) = &species.fasts_when {
                chapter.facts.push(Fact::plain("Fasts", when.clone()));
            }
            chapter.tables.extend(tables::feeding(species, of, edition));
            chapter.drawings.extend(drawing::meals(of, edition));
            chapter.facts.extend(stage_notes(species));
            chapter.workings.extend(
                of.feeding
                    .iter()
                    .filter(|row| !row.working.steps.is_empty())
                    .map(|row| WorkingBlock::from(&row.working)),
            );
            let grown = species.grown_stage().map(|stage| stage.name.as_str());
            let energy = of.feeding.iter().filter(|row| Some(row.stage.as_str()) == grown);
            chapter.workings.extend(
                energy.filter_map(|row| row.energy_working.as_ref()).map(WorkingBlock::from),
            );
        }
        "suits" => {
            chapter.workings.extend(of.cost.iter().map(|cost| WorkingBlock::from(&cost.working)))
        }
        "company" => chapter.facts.push(Fact::plain("Company", phrases::company(species.company))),
        "health" => chapter.tables.extend(tables::signs(species)),
        "law" => legal(chapter, edition, species),
        _ => {}
    }
}

/// Supplements and remarks of each stage, which a narrow table has no room for.
fn stage_notes(species: &Species) -> Vec<Fact> {
    let mut facts = Vec::new();
    for stage in &species.feeding {
        if let Some(supplement) = &stage.supplement {
            facts.push(Fact::plain(format!("Supplements, {}", stage.name), supplement.clone()));
        }
        if let Some(note) = &stage.note {
            facts.push(Fact::plain(format!("Remark, {}", stage.name), note.clone()));
        }
    }
    facts
}

fn legal(chapter: &mut Chapter, edition: &Edition<'_>, species: &Species) {
    if let Some(origin) = &species.origin {
        chapter.facts.insert(0, Fact::plain("Comes from", origin.clone()));
    }
    chapter.facts.extend(law::rules(edition, species));
    let checked =
        species.legal.checked.map_or("not yet".to_owned(), |(date, _)| edition.long_date(date));
    chapter
        .facts
        .push(Fact::plain("Looked up", format!("{checked}; check locally, local law decides")));
    chapter.facts.extend(laws::release(edition));
    chapter.facts.extend(laws::written_for(edition));
}

fn fittings(species: &Species) -> Vec<Fact> {
    let fittings = &species.fittings;
    let hides =
        fittings.hides.map(|hides| format!("at least {hides}, at the warm and at the cool end"));
    [
        ("Lives", Some(phrases::habit(species.habit).to_owned())),
        ("Active", Some(phrases::active(species.active).to_owned())),
        ("Hides", hides),
        ("Substrate", fittings.substrate.clone()),
        ("Water", fittings.water.clone()),
        ("Climbing", fittings.climbing.clone()),
        ("Digging", fittings.digging.clone()),
        ("Bathing", fittings.bathing.clone()),
    ]
    .into_iter()
    .filter_map(|(label, text)| Some(Fact::plain(label, text?)))
    .collect()
}

fn enclosure_working(
    edition: &Edition<'_>,
    need: &crate::figures::space::Need,
) -> Option<WorkingBlock> {
    let least = need.least.as_ref().ok()?;
    let mut assumptions = least.assumptions.clone();
    assumptions.extend(least.missing.iter().cloned());
    assumptions.extend(need.build.iter().flat_map(|build| build.assumptions.iter().cloned()));
    Some(WorkingBlock {
        title: format!(
            "Enclosure, {}, by {}",
            need.for_whom,
            standard_title(edition, &need.standard)
        ),
        formula: "the standard's rule, applied to the top of the adult range".to_owned(),
        steps: least.steps.clone(),
        assumptions,
        publication: publication(edition, &need.standard),
    })
}

/// A standard's name as it stands in a table: where it holds and its year.
pub fn standard_title(edition: &Edition<'_>, name: &str) -> String {
    edition.standards.get(name).map_or_else(
        || name.to_owned(),
        |standard| match standard.where_.as_str() {
            "" => format!("{} {}", standard.issuer, standard.year),
            place => format!("{place} {}", standard.year),
        },
    )
}

/// A standard in full.
pub fn publication(edition: &Edition<'_>, name: &str) -> String {
    edition.standards.get(name).map_or_else(
        || name.to_owned(),
        |standard| {
            format!(
                "{}, {}, {} ({})",
                standard.title, standard.issuer, standard.year, standard.status
            )
        },
    )
}

/// What matters in ten seconds: how big, how long, how warm, how humid, how much space, what it eats, whether it is legal.
fn glance(
    edition: &Edition<'_>,
    species: &Species,
    of: &SpeciesFigures,
    stated: &[Stated<'_>],
    citing: &mut Citing<'_>,
) -> Vec<Fact> {
    let mut facts = Vec::new();
    let wanted = [
        "size.adult",
        "size.female",
        "size.male",
        "life.years",
        "temperature.basking",
        "temperature.warm",
        "temperature.cool",
        "temperature.water",
        "temperature.night",
        "humidity.range",
        "humidity.ceiling",
    ];
    for name in wanted {
        if let Some(stated) = stated.iter().find(|stated| stated.name == name) {
            let mut fact = citing.fact(stated, edition);
            // In ten seconds nobody reads a remark; it stands in the chapter.
            (fact.note, fact.others, fact.overridden) = (None, Vec::new(), None);
            if name.starts_with("size.") && species.size.measure != Measure::TotalLength {
                fact.label = format!("{}, {}", fact.label, species.size.measure.spelling());
            }
            facts.push(fact);
        }
    }
    facts.push(Fact::plain("Least enclosure, grown", space(of, edition)));
    let meal = species.grown_stage().and_then(|stage| stage.meal.clone());
    facts.push(Fact::plain("Eats, grown", meal.map_or_else(|| edition.missing(), Shown::plain)));
    if let Some(cost) = &of.cost {
        let (low, high) = cost.per_year;
        let about = format!(
            "about {}–{} {} a year, without vets",
            number(low, 0),
            number(high, 0),
            cost.currency
        );
        facts.push(Fact::plain("Costs to run", about));
    }
    let danger =
        species.cautions.iter().map(|danger| danger.spelling()).collect::<Vec<_>>().join(", ");
    if !danger.is_empty() {
        facts.push(Fact::plain("Dangers", danger));
    }
    facts.push(Fact::plain("Law", "check locally; see the last chapter"));
    facts
}

/// What is to be built for grown animals, whatever their sex and form, by every standard in force.
pub fn space(of: &SpeciesFigures, edition: &Edition<'_>) -> Shown {
    let grown = crate::figures::grown::grown_space(&of.enclosure);
    grown.map_or_else(|| edition.missing(), |grown| print::sides(grown.inside_cm, edition))
}
