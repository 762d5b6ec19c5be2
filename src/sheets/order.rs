//! The order of the species: by group, then by common name.

use crate::model::Species;
use crate::model::word::Kind;

use super::blocks::Link;
use super::edition::Edition;

/// The kinds in the order in which people look for them; the heading of each is `edition.word("group", kind)`.
pub const GROUPS: [Kind; 7] = [
    Kind::Snake,
    Kind::Lizard,
    Kind::Tortoise,
    Kind::Turtle,
    Kind::Frog,
    Kind::Salamander,
    Kind::Invertebrate,
];

/// Every species in the order of the index: by group, then by common name.
pub fn in_order<'a>(edition: &Edition<'a>) -> Vec<(&'a String, &'a Species)> {
    let group = |species: &Species| GROUPS.iter().position(|kind| *kind == species.kind);
    let mut all: Vec<_> = edition.model.species.iter().collect();
    all.sort_by(|(_, a), (_, b)| {
        group(a).cmp(&group(b)).then_with(|| edition.name(a).cmp(edition.name(b)))
    });
    all
}

/// The species before and after one.
pub(super) fn neighbours(edition: &Edition<'_>, key: &str) -> (Option<Link>, Option<Link>) {
    let all = in_order(edition);
    let place = all.iter().position(|(name, _)| *name == key);
    let link = |place: Option<usize>| {
        let (key, species) = all.get(place?)?;
        Some(Link { text: edition.name(species).to_owned(), href: super::care_path(key) })
    };
    (link(place.and_then(|place| place.checked_sub(1))), link(place.map(|place| place + 1)))
}
