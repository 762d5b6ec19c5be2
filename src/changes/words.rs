//! Words that differ, by chapter; and what stands in a species' file in words: signs, dangers, fittings, law.

use std::collections::BTreeSet;

use crate::model::word::Word;
use crate::model::{Model, Species};

use super::{Changes, How, Reworded};

/// Chapters in their order: the heading and the text under it.
type Chapters = Vec<(String, String)>;

pub(super) fn species(changes: &mut Changes, key: &str, before: &Species, after: &Species) {
    let of = |species: &Species| {
        let mut chapters = in_the_file(species);
        let words = species.words.as_ref().map(|words| words.text.as_str()).unwrap_or_default();
        chapters.extend(by_chapter(words));
        chapters
    };
    differ(changes, &format!("species {key}"), &of(before), &of(after));
}

pub(super) fn pages(changes: &mut Changes, before: &Model, after: &Model) {
    let keys: BTreeSet<&String> = before.pages.keys().chain(after.pages.keys()).collect();
    for key in keys {
        let of = |model: &Model| {
            model.pages.get(key).map(|page| by_chapter(&page.words.text)).unwrap_or_default()
        };
        differ(changes, &format!("page {key}"), &of(before), &of(after));
    }
}

fn differ(changes: &mut Changes, whose: &str, before: &Chapters, after: &Chapters) {
    let mut push = |chapter: &str, how: How| {
        changes.words.push(Reworded { whose: whose.to_owned(), chapter: chapter.to_owned(), how });
    };
    let find = |chapters: &Chapters, heading: &str| {
        chapters.iter().find(|(other, _)| other == heading).map(|(_, text)| text.clone())
    };
    for (heading, text) in before {
        match find(after, heading) {
            None => push(heading, How::Removed),
            Some(now) if now != *text => push(heading, How::Changed),
            Some(_) => {}
        }
    }
    for (heading, _) in after.iter().filter(|(heading, _)| find(before, heading).is_none()) {
        push(heading, How::Added);
    }
}

/// The text under each heading of the second level. White space at the ends of lines says nothing.
fn by_chapter(text: &str) -> Chapters {
    let mut chapters: Chapters = vec![("before the first heading".to_owned(), String::new())];
    let mut fenced = false;
    for line in text.lines() {
        fenced ^= line.trim_start().starts_with("```");
        match line.strip_prefix("## ").filter(|_| !fenced) {
            Some(heading) => chapters.push((heading.trim().to_owned(), String::new())),
            None => {
                if let Some((_, text)) = chapters.last_mut() {
                    text.push_str(line.trim_end());
                    text.push('\n');
                }
            }
        }
    }
    chapters.iter_mut().for_each(|(_, text)| *text = text.trim().to_owned());
    chapters.retain(|(heading, text)| !text.is_empty() || heading != "before the first heading");
    chapters
}

fn in_the_file(species: &Species) -> Chapters {
    let dangers: Vec<&str> = species.cautions.iter().map(|danger| danger.spelling()).collect();
    let signs: Vec<String> = species
        .signs
        .iter()
        .map(|sign| {
            let means = sign.means.as_deref().unwrap_or_default();
            format!("{}|{means}|{}", sign.sign, sign.urgency.spelling())
        })
        .collect();
    let fittings = &species.fittings;
    let fittings = [
        &fittings.water,
        &fittings.substrate,
        &fittings.climbing,
        &fittings.digging,
        &fittings.bathing,
        &fittings.hides.map(|hides| hides.to_string()),
    ]
    .map(|fitting| fitting.clone().unwrap_or_default());
    let meals: Vec<String> = species
        .feeding
        .iter()
        .map(|stage| {
            format!("{}|{:?}|{:?}|{:?}", stage.name, stage.meal, stage.supplement, stage.note)
        })
        .collect();
    let law: Vec<String> = species
        .legal
        .rules
        .iter()
        .map(|rule| format!("{}|{}|{:?}", rule.jurisdiction, rule.says, rule.paper))
        .collect();
    let cites = species.legal.cites.map(|cites| cites.spelling()).unwrap_or_default();
    let company = species.company.spelling();
    vec![
        ("dangers to people".to_owned(), dangers.join("|")),
        ("signs of illness".to_owned(), signs.join("\n")),
        ("meals and supplements".to_owned(), meals.join("\n")),
        ("fittings".to_owned(), fittings.join("|")),
        ("company".to_owned(), company.to_owned()),
        ("law".to_owned(), format!("{cites}\n{}", law.join("\n"))),
        ("summary".to_owned(), species.summary.clone().unwrap_or_default()),
    ]
}
