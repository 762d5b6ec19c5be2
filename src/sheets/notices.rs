//! The public-health notices: one for each jurisdiction in force, under its own name, with its own ages. They are never joined.

use serde::Serialize;

use crate::figures::Figures;
use crate::figures::owed::{InForce, in_force};
use crate::model::Species;
use crate::model::law::{Ground, Jurisdiction, Notice};
use crate::model::word::Kind;

use super::animal::capital;
use super::blocks::{Caution, Fact};
use super::citing::Citing;
use super::edition::Edition;
use super::frame::Frame;

/// A notice on a page of its own.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct NoticeSheet {
    /// The frame.
    pub frame: Frame,
    /// The place.
    pub place: String,
    /// Whether it is a notice or advice.
    pub title: String,
    /// What it says: the words that the law sets, where the site has taken them from it, else ours.
    pub says: String,
    /// What it says of ages.
    pub ages: Vec<String>,
    /// To whom it is given, what hangs on the wall, where it comes from.
    pub facts: Vec<Fact>,
}

/// The jurisdictions in force that have a notice for a kind of animal.
pub fn for_kind<'a>(edition: &Edition<'a>, kind: Kind) -> Vec<(&'a Jurisdiction, &'a Notice)> {
    let all = in_force(edition.model).into_iter();
    all.filter_map(|found| Some((found.law, found.law.notice.as_ref()?)))
        .filter(|(_, notice)| notice.is_for(kind))
        .collect()
}

/// The jurisdictions in force that have a notice, for any kind of animal.
pub fn all<'a>(edition: &Edition<'a>) -> Vec<(InForce<'a>, &'a Notice)> {
    let all = in_force(edition.model).into_iter();
    all.filter_map(|found| Some((found, found.law.notice.as_ref()?))).collect()
}

/// The heading of a notice: what it is and whose.
fn title(edition: &Edition<'_>, law: &Jurisdiction, notice: &Notice) -> String {
    let what = if notice.binding { "notice-title-binding" } else { "notice-title-advice" };
    edition.tell(what, [("place", law.name.as_str().into())])
}

/// The notices that a species' sheets carry, each a caution of its own. The hygiene of mere advice stands on the sheet already; of
/// advice the ages are told.
pub(super) fn cautions(edition: &Edition<'_>, species: &Species) -> Vec<Caution> {
    let notices = for_kind(edition, species.kind).into_iter();
    notices
        .map(|(law, notice)| {
            let (says, ages) = (words(notice), ages(edition, notice));
            let says = if notice.binding || ages.is_empty() { says } else { String::new() };
            let whence =
                format!("({}.){}", whence(law, notice, edition), own_words(edition, notice));
            let text = [says, ages, whence].join(" ");
            Caution { title: title(edition, law, notice), text: text.trim().to_owned() }
        })
        .collect()
}

/// The same for a card on the wall, which has room for the ages alone; a notice that names none is given in full.
pub(super) fn brief(edition: &Edition<'_>, species: &Species) -> Vec<Caution> {
    let notices = for_kind(edition, species.kind).into_iter();
    notices
        .map(|(law, notice)| {
            let ages = age_lines(edition, notice).join("; ");
            let says = if ages.is_empty() { words(notice) } else { capital(&ages) };
            let says = says.trim_end_matches('.');
            Caution {
                title: capital(&law.name),
                text: format!("{says} ({}).", whence(law, notice, edition)),
            }
        })
        .collect()
}

/// What a notice says: the law's own words where the site has them.
fn words(notice: &Notice) -> String {
    notice.wording.clone().unwrap_or_else(|| notice.says.clone())
}

/// What it says of ages, in one sentence. Words that the law sets hold them already.
fn ages(edition: &Edition<'_>, notice: &Notice) -> String {
    let lines = age_lines(edition, notice);
    if lines.is_empty() {
        return String::new();
    }
    edition.tell("notice-ages-line", [("ages", lines.join("; ").into())])
}

fn age_lines(edition: &Edition<'_>, notice: &Notice) -> Vec<String> {
    if notice.wording.is_some() {
        return Vec::new();
    }
    let lines = notice.ages.iter().filter_map(|age| {
        let says = age.says.as_ref()?.trim_end_matches('.');
        // An age that another text tells is told with it.
        let own = age.ground.source != notice.ground.source;
        let source = age.ground.source.as_ref().filter(|_| own);
        let source = source.and_then(|named| edition.sources.get(&named.name));
        let short = source.map(|source| format!(" ({})", source.short()));
        Some(format!("{says}{}", short.unwrap_or_default()))
    });
    lines.collect()
}

/// The text it is told from and its date, in a few words.
fn whence(law: &Jurisdiction, notice: &Notice, edition: &Edition<'_>) -> String {
    let source = notice.ground.source.as_ref().and_then(|named| edition.sources.get(&named.name));
    let short =
        source.map_or_else(|| format!("{} {}", law.issuer, law.year), |source| source.short());
    format!("{short}, {}", read(edition, law, &notice.ground))
}

/// When a row had been read, or that it was not.
pub(super) fn read(edition: &Edition<'_>, law: &Jurisdiction, ground: &Ground) -> String {
    match law.read {
        _ if ground.from_memory => edition.say("notice-from-memory"),
        Some(date) => edition.tell("notice-read-by", [("date", edition.long_date(date).into())]),
        None => edition.say("notice-read-unknown"),
    }
}

/// What is to be known of words that the law sets, or may set, and that nobody has taken from it, with a space before it.
fn own_words(edition: &Edition<'_>, notice: &Notice) -> String {
    match (notice.wording_set, &notice.wording) {
        (true, None) => format!(" {}", edition.say("notice-own-words")),
        _ => String::new(),
    }
}

/// The sentence under a notice: what it is told from, when that was read, and that local law decides.
fn told_from(edition: &Edition<'_>, law: &Jurisdiction, notice: &Notice) -> String {
    let source = notice.ground.source.as_ref().and_then(|named| edition.sources.get(&named.name));
    let title = notice.title.as_ref().or(source.map(|source| &source.title)).unwrap_or(&law.title);
    let set = own_words(edition, notice);
    format!("{title} ({}).{set}", whence(law, notice, edition))
}

/// Builds the page of one notice; none where that jurisdiction is not in force or has none.
pub fn notice(edition: &Edition<'_>, figures: &Figures, key: &str) -> Option<NoticeSheet> {
    let (found, notice) = all(edition).into_iter().find(|(found, _)| found.key == key)?;
    let title = title(edition, found.law, notice);
    let described = edition.tell("notice-description", [("title", title.as_str().into())]);
    let mut citing = Citing::new(&edition.sources);
    let mut told = facts(edition, &mut citing, found.law, notice);
    // A page of its own has no list of sources to count in.
    told.iter_mut().for_each(|fact| fact.sources.clear());
    let above = ["notice-says", "notice-ages"].map(|label| edition.say(label));
    told.retain(|fact| !above.contains(&fact.label));
    Some(NoticeSheet {
        frame: Frame::new(
            edition,
            &super::notice_path(key),
            false,
            &title,
            &described,
            figures.as_of,
        ),
        place: found.law.name.clone(),
        title,
        says: words(notice),
        ages: age_lines(edition, notice).iter().map(|line| capital(line)).collect(),
        facts: told,
    })
}

/// A notice as facts, each of them with its sources.
pub(super) fn facts(
    edition: &Edition<'_>,
    citing: &mut Citing<'_>,
    law: &Jurisdiction,
    notice: &Notice,
) -> Vec<Fact> {
    let mut facts = Vec::new();
    let mut add = |label: &str, text: Option<String>| {
        facts.extend(text.map(|text| Fact::plain(edition.say(label), text)));
    };
    add("notice-says", Some(words(notice)));
    let lines = age_lines(edition, notice);
    add("notice-ages", (!lines.is_empty()).then(|| lines.join("; ")));
    add("notice-given-to", notice.given_to.clone());
    add("notice-wall", notice.wall.clone());
    add("notice-for", kinds(edition, notice));
    let set = notice.wording_set && notice.wording.is_none();
    let set = set.then(|| edition.say("notice-words-set"));
    add("notice-words", set);
    let told = told_from(edition, law, notice);
    add("notice-rests-on", Some(format!("{told} {}", edition.say("notice-local-law"))));
    if let Some(fact) = facts.last_mut() {
        let ages = notice.ages.iter().map(|age| &age.ground);
        let mut named: Vec<_> = std::iter::once(&notice.ground)
            .chain(ages)
            .filter_map(|ground| ground.source.clone())
            .collect();
        named.dedup_by(|a, b| a.name == b.name);
        fact.sources = citing.links(&named);
        fact.note.clone_from(&notice.ground.note);
    }
    facts
}

fn kinds(edition: &Edition<'_>, notice: &Notice) -> Option<String> {
    let kinds: Vec<String> =
        notice.kinds.iter().map(|kind| edition.word("notice-for", *kind)).collect();
    (!kinds.is_empty()).then(|| kinds.join(", "))
}
