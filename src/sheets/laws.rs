//! What the law of the site's jurisdictions asks of a sheet: item by item with the article, and where the sheet answers it.

use serde::Serialize;

use crate::figures::Figures;
use crate::figures::owed::{chapters, in_force};
use crate::model::Named;
use crate::model::law::{Concerns, Ground, Jurisdiction, Rule};
use crate::quantity::{Rounding, print_one};

use super::animal::capital;
use super::blocks::{Chapter, Fact, Link, Shown, SourceEntry, Table};
use super::citing::Citing;
use super::edition::Edition;
use super::frame::Frame;
use super::notices;

/// The page on law.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct LawSheet {
    /// The frame.
    pub frame: Frame,
    /// The places, in the order in which the site names them.
    pub places: Vec<String>,
    /// A chapter for each, its notice in one of its own behind it.
    pub chapters: Vec<Chapter>,
    /// The notices on pages of their own.
    pub notices: Vec<Link>,
    /// The sources of this page.
    pub sources: Vec<SourceEntry>,
}

/// Builds the page on law; none where the site names no jurisdiction.
pub fn laws(edition: &Edition<'_>, figures: &Figures) -> Option<LawSheet> {
    let found = in_force(edition);
    let mut citing = Citing::new(&edition.sources);
    let mut all = Vec::new();
    for found in &found {
        all.push(place(found.key, found.law, edition, &mut citing));
        if let Some(notice) = &found.law.notice {
            let id = format!("{}-notice", found.key);
            let place = capital(&found.law.name);
            let title = edition.tell("law-public-health", [("place", place.into())]);
            let mut chapter = Chapter::new(&id, &title);
            chapter.facts = notices::facts(edition, &mut citing, found.law, notice);
            all.push(chapter);
        }
    }
    let links = notices::all(edition).into_iter().map(|(found, _)| Link {
        text: capital(&found.law.name),
        href: super::notice_path(found.key),
    });
    (!found.is_empty()).then(|| LawSheet {
        frame: Frame::new(
            edition,
            super::LAW,
            false,
            &edition.say("law-title"),
            &edition.say("law-description"),
            figures.as_of,
        ),
        places: found.iter().map(|found| found.law.name.clone()).collect(),
        chapters: all,
        notices: links.collect(),
        sources: citing.entries(),
    })
}

/// One place: the act, what it asks of a sheet, and what else it says.
fn place(key: &str, law: &Jurisdiction, edition: &Edition<'_>, citing: &mut Citing<'_>) -> Chapter {
    let mut chapter = Chapter::new(key, &capital(&law.name));
    let say = |label| edition.say(label);
    let mut act =
        Fact::plain(say("law-act"), format!("{}, {}, {}", law.title, law.issuer, law.year));
    act.sources = citing.links(&Vec::from_iter(law.ground.source.clone()));
    let read = notices::read(edition, law, &law.ground);
    let state = law.state.as_ref().map(|state| format!(". {state}")).unwrap_or_default();
    chapter.facts.extend([act, Fact::plain(say("law-read"), format!("{read}{state}"))]);
    if let Some(binds) = &law.applies_to {
        chapter.facts.push(Fact::plain(say("law-binds"), binds.clone()));
    }
    let larger = law.within.iter().filter_map(|named| edition.laws.get(&named.name));
    let larger: Vec<&str> = larger.map(|law| law.name.as_str()).collect();
    if !larger.is_empty() {
        chapter.facts.push(Fact::plain(say("law-lies-within"), larger.join(", ")));
    }
    chapter.facts.extend(rules(law, edition, citing));
    let rows = law.items.iter().map(|(item, ask)| {
        let mut more = Vec::new();
        if ask.wider {
            more.push(say("law-wider"));
        }
        if ask.wording_set {
            more.push(say("law-wording-set"));
        }
        more.extend(ask.ground.note.as_ref().map(|note| note.trim_end_matches('.').to_owned()));
        vec![
            Shown::plain(edition.word("law-item", *item)),
            Shown::plain(article(edition, &ask.ground)),
            Shown::plain(where_answered(edition, chapters(*item), item.is_of_animal())),
            Shown::plain(more.join("; ")),
        ]
    });
    let rows: Vec<Vec<Shown>> = rows.collect();
    let head = ["law-asked-for", "law-article", "law-answered", "law-remark"].map(say).to_vec();
    let caption = edition.tell("law-asks", [("place", law.name.as_str().into())]);
    chapter.tables.extend((!rows.is_empty()).then_some(Table { caption, head, rows, note: None }));
    chapter
}

/// What the law says beside the items, a fact a row.
fn rules(law: &Jurisdiction, edition: &Edition<'_>, citing: &mut Citing<'_>) -> Vec<Fact> {
    let mut facts = Vec::new();
    let own = law.ground.source.as_ref();
    let mut add = |label: &str, text: String, ground: &Ground| {
        let mut fact = Fact::plain(edition.say(label), text);
        let named: Vec<Named> =
            ground.source.iter().filter(|source| Some(*source) != own).cloned().collect();
        fact.sources = citing.links(&named);
        let note = ground.note.as_ref().map(|note| format!(" {note}")).unwrap_or_default();
        fact.note = Some(format!("{}.{note}", capital(&article(edition, ground))));
        facts.push(fact);
    };
    let says = |rule: &Option<String>| rule.clone().unwrap_or_default();
    if let Some(rule) = &law.delivery {
        add("law-form", says(&rule.says), &rule.ground);
    }
    if let Some(rule) = &law.buyer {
        let age = edition.shown(print_one(rule.about, edition.units(), Rounding::Nearest)).first;
        let text = edition.tell("law-buyer-age", [("age", age.into())]);
        add("law-buyer", text, &rule.ground);
    }
    if let Some(rule) = &law.treatment {
        let text = rule.says.clone().unwrap_or_else(|| edition.word("law-sale", rule.about));
        add("law-treatment", text, &rule.ground);
    }
    for rule in &law.sizes {
        add("law-size", with_size(rule.says.as_ref(), &rule.about, edition), &rule.ground);
    }
    for (label, of_law) in [("law-paper", &law.papers), ("law-mark", &law.marks)] {
        for rule in of_law {
            let Rule { about: (name, concerns), says, ground } = rule;
            let text = with_size(says.as_ref(), concerns, edition);
            add(label, format!("{}. {text}", capital(name)), ground);
        }
    }
    if let Some(rule) = &law.records {
        let keep = edition.shown(print_one(rule.about, edition.units(), Rounding::Nearest)).first;
        add("law-records", format!("{keep}. {}", says(&rule.says)), &rule.ground);
    }
    for rule in &law.further {
        add("law-also", says(&rule.says), &rule.ground);
    }
    facts
}

/// What a row says; where it says nothing, the sizes for which it holds.
fn with_size(says: Option<&String>, concerns: &Concerns, edition: &Edition<'_>) -> String {
    let bound = |label: &str, size: Option<String>| {
        size.map(|size| edition.tell(label, [("size", size.into())]))
    };
    says.cloned().unwrap_or_else(|| {
        let shown =
            |length| edition.shown(print_one(length, edition.units(), Rounding::Nearest)).first;
        let all = [
            bound("law-shell-below", concerns.shell_below.map(shown)),
            bound("law-shell-from", concerns.shell_from.map(shown)),
            bound(
                "law-mass-from",
                concerns.mass_from.map(|mass| {
                    edition.shown(print_one(mass, edition.units(), Rounding::Nearest)).first
                }),
            ),
        ];
        all.into_iter().flatten().collect::<Vec<_>>().join(", ")
    })
}

/// The article and whether the row is told from memory.
fn article(edition: &Edition<'_>, ground: &Ground) -> String {
    let article = ground.article.clone().unwrap_or_else(|| edition.say("law-article-unknown"));
    if ground.from_memory {
        return edition.tell("law-article-memory", [("article", article.into())]);
    }
    article
}

/// The headings under which a sheet answers an item.
fn where_answered(edition: &Edition<'_>, anchors: &[&str], of_animal: bool) -> String {
    let title = |anchor: &&str| match *anchor {
        "health" if of_animal => edition.say("law-under-treatment"),
        "head" | "seconds" | "cautions" | "identity" | "origin" | "measurements" => {
            edition.say(&format!("law-under-{anchor}"))
        }
        chapter => edition.say(&format!("chapter-{chapter}")),
    };
    let titles = anchors.iter().map(title).collect::<Vec<_>>().join("; ");
    if of_animal {
        return edition.tell("law-on-handover", [("headings", titles.into())]);
    }
    titles
}

/// The jurisdictions that a sheet is held against, in one line; none where the site names none.
pub(super) fn written_for(edition: &Edition<'_>) -> Option<Fact> {
    let found = in_force(edition);
    let names: Vec<&str> = found.iter().map(|found| found.law.name.as_str()).collect();
    let read = found.iter().filter_map(|found| found.law.read).min();
    let places = names.join(", ");
    let text = match read {
        Some(date) => {
            let date = edition.long_date(date).into();
            edition.tell("law-held-read", [("places", places.into()), ("date", date)])
        }
        None => places,
    };
    (!names.is_empty()).then(|| Fact::plain(edition.say("law-held-against"), text))
}

/// The warnings against release that the laws in force ask for: the law's own words where the site has them, else ours.
pub(super) fn release(edition: &Edition<'_>) -> Vec<Fact> {
    use crate::model::law::Item;
    let asks = in_force(edition)
        .into_iter()
        .filter_map(|found| Some((found.law, found.law.items.get(&Item::NoRelease)?)));
    let facts = asks.map(|(law, ask)| {
        let label = edition.tell("law-release", [("place", law.name.as_str().into())]);
        let ours = || edition.say("law-release-ours");
        match &ask.wording {
            Some(wording) => Fact::plain(label, wording.clone()),
            None if ask.wording_set => {
                let mut fact = Fact::plain(label, ours());
                fact.note = Some(edition.say("law-release-note"));
                fact
            }
            None => Fact::plain(label, ours()),
        }
    });
    facts.collect()
}
