//! The care sheet of a species.

use serde::Serialize;

use crate::figures::{Figures, SpeciesFigures};
use crate::model::Species;
use crate::model::species::{CHAPTERS, Stage};
use crate::model::stated::Stated;
use crate::model::word::Word;
use crate::quantity::{Rounding, TemperatureDifference};

use super::blocks::{Caution, Chapter, Fact, Link, Shown, SourceEntry, WorkingBlock};
use super::citing::Citing;
use super::edition::Edition;
use super::frame::Frame;
use super::{cautions, drawing, glance, law, laws, order, print, tables, words};

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
    /// What of it stands in another language than the page.
    pub foreign: Option<String>,
    /// That language, where the words are in it too.
    pub language: Option<String>,
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

/// The beginnings of the names of the figures that stand in a chapter.
fn figures_of(chapter: &str) -> &'static [&'static str] {
    match chapter {
        "suits" => &["life."],
        "heat" => &["temperature.", "light."],
        "humidity" => &["humidity."],
        "feeding" => &["feeding.", "energy.", "fasting."],
        "company" => &["handling."],
        "growth" => &["size.", "growth."],
        "law" => &["origin."],
        _ => &[],
    }
}

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
    let glance = glance::glance(edition, species, of, &stated, &mut citing);
    let text = words::with_figures(species, of, edition);
    let mut passages = words::passages(&text);
    let mut chapters = Vec::new();
    for (id, heading) in CHAPTERS {
        let mut chapter = Chapter::new(id, &edition.say(&format!("chapter-{id}")));
        chapter.words = words::taken(&mut passages, &[heading, &chapter.title]);
        let names = figures_of(id);
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
        let more = edition.say("care-more");
        let title = if passage.heading.is_empty() { &more } else { &passage.heading };
        chapters.push(Chapter {
            words: passage.text,
            ..Chapter::new(&format!("more-{}", number + 1), title)
        });
    }
    chapters.retain(|chapter| !chapter.is_empty());
    let language = edition.foreign_words(species).map(str::to_owned);
    for chapter in chapters.iter_mut().filter(|chapter| !chapter.words.is_empty()) {
        chapter.language.clone_from(&language);
    }
    let summary = edition.summary(species).map(str::to_owned);
    let name = || ("name", edition.name(species).into());
    let description = summary.clone().unwrap_or_else(|| {
        let scientific = species.scientific.as_str().into();
        edition.tell("care-description", [name(), ("scientific", scientific)])
    });
    let path = super::care_path(key);
    let (previous, next) = order::neighbours(edition, key);
    let reviewed = species.reviewed.map(|(date, _)| date);
    CareSheet {
        frame: Frame::new(
            edition,
            &path,
            false,
            &edition.tell("care-title", [name()]),
            &description,
            figures.as_of,
        ),
        key: key.to_owned(),
        name: edition.name(species).to_owned(),
        scientific: species.scientific.clone(),
        picture: super::picture::of_species(edition, key, species),
        also: species.also.clone(),
        kind: species.kind.spelling().to_owned(),
        foreign: foreign(edition, species),
        language,
        summary,
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

/// A sentence on what stands in another language than the page.
fn foreign(edition: &Edition<'_>, species: &Species) -> Option<String> {
    let language = [("language", edition.language_name(edition.foreign(species)?).into())];
    Some(match edition.foreign_words(species) {
        Some(_) => edition.tell("care-foreign-words", language),
        None => edition.tell("care-foreign-texts", language),
    })
}

/// Adds to a chapter what is worked out for it.
fn fill(chapter: &mut Chapter, edition: &Edition<'_>, species: &Species, of: &SpeciesFigures) {
    let working =
        |working: &Option<crate::figures::Working>| working.as_ref().map(WorkingBlock::from);
    match chapter.id.as_str() {
        "enclosure" => {
            chapter.facts.extend(fittings(species, edition));
            chapter.tables.extend(tables::enclosure(
                of,
                &|name| standard_title(edition, name),
                edition,
            ));
            let measure = edition.word("measure-title", species.size.measure);
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
                let span = print::shown::<TemperatureDifference>(ends, edition, Rounding::Nearest);
                chapter.facts.push(Fact::plain(edition.say("care-gradient"), span));
            }
            chapter.tables.extend(tables::year_of_light(of, edition));
            chapter.drawings.extend(drawing::year(of, edition));
            chapter.workings.extend(working(&of.gradient.working));
            chapter.workings.extend(working(&of.light.working));
        }
        "humidity" => {
            chapter.tables.extend(tables::humidity(&of.humidity, edition));
            chapter.workings.extend(working(&of.humidity.working));
        }
        "feeding" => {
            if let Some(when) = &species.fasts_when {
                chapter.facts.push(Fact::plain(edition.say("care-fasts"), when.clone()));
            }
            chapter.tables.extend(tables::feeding(species, of, edition));
            chapter.drawings.extend(drawing::meals(of, edition));
            chapter.facts.extend(stage_notes(species, edition));
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
        "company" => {
            let company = edition.word("company", species.company);
            chapter.facts.push(Fact::plain(edition.say("care-company"), company));
        }
        "health" => chapter.tables.extend(tables::signs(species, edition)),
        "law" => legal(chapter, edition, species),
        _ => {}
    }
}

/// Supplements and remarks of each stage, which a narrow table has no room for.
fn stage_notes(species: &Species, edition: &Edition<'_>) -> Vec<Fact> {
    let label =
        |label: &str, stage: &Stage| edition.tell(label, [("stage", stage.name.as_str().into())]);
    let mut facts = Vec::new();
    for stage in &species.feeding {
        if let Some(supplement) = &stage.supplement {
            facts.push(Fact::plain(label("care-supplements", stage), supplement.clone()));
        }
        if let Some(note) = &stage.note {
            facts.push(Fact::plain(label("care-remark", stage), note.clone()));
        }
    }
    facts
}

fn legal(chapter: &mut Chapter, edition: &Edition<'_>, species: &Species) {
    if let Some(origin) = &species.origin {
        chapter.facts.insert(0, Fact::plain(edition.say("care-origin"), origin.clone()));
    }
    chapter.facts.extend(law::rules(edition, species));
    let checked = match species.legal.checked {
        Some((date, _)) => {
            edition.tell("care-looked-up-on", [("date", edition.long_date(date).into())])
        }
        None => edition.say("care-looked-up-never"),
    };
    chapter.facts.push(Fact::plain(edition.say("care-looked-up"), checked));
    chapter.facts.extend(laws::release(edition));
    chapter.facts.extend(laws::written_for(edition));
}

fn fittings(species: &Species, edition: &Edition<'_>) -> Vec<Fact> {
    let fittings = &species.fittings;
    let hides = fittings
        .hides
        .map(|hides| edition.tell("care-hides-at-least", [("hides", i64::from(hides).into())]));
    [
        ("care-lives", Some(edition.word("habit", species.habit))),
        ("care-active", Some(edition.word("active", species.active))),
        ("care-hides", hides),
        ("care-substrate", fittings.substrate.clone()),
        ("care-water", fittings.water.clone()),
        ("care-climbing", fittings.climbing.clone()),
        ("care-digging", fittings.digging.clone()),
        ("care-bathing", fittings.bathing.clone()),
    ]
    .into_iter()
    .filter_map(|(label, text)| Some(Fact::plain(edition.say(label), text?)))
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

/// What is to be built for grown animals, whatever their sex and form, by every standard in force.
pub fn space(of: &SpeciesFigures, edition: &Edition<'_>) -> Shown {
    let grown = crate::figures::grown::grown_space(&of.enclosure);
    grown.map_or_else(|| edition.missing(), |grown| print::sides(grown.inside_cm, edition))
}
