//! What other programs read of a public site: the list of its pages, and the feed of the sheets that were reviewed.
//!
//! Both hold full addresses, so a site without an address has neither.

use jiff::civil::Date;
use serde::Serialize;

use crate::figures::Figures;

use super::Wanted;
use super::edition::Edition;
use super::frame::full_address;

/// The list of pages, after sitemaps.org, protocol 0.9.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Sitemap {
    /// The pages in the order of their paths.
    pub pages: Vec<Place>,
}

/// A page in the list.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Place {
    /// Its full address.
    pub address: String,
    /// The day of its review, as `2026-11-25`; pages that are not reviewed have none.
    pub reviewed: Option<String>,
    /// The same page in every language of the site, its own among them; nothing where there is only one.
    pub editions: Vec<InLanguage>,
}

/// A page in a language.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct InLanguage {
    /// The language, a BCP 47 tag.
    pub language: String,
    /// Its full address.
    pub address: String,
}

/// The feed of reviewed sheets, after RFC 4287.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Feed {
    /// Its identity: its own address.
    pub id: String,
    /// The site's address.
    pub home: String,
    /// The site's name.
    pub title: String,
    /// The language of the pages.
    pub language: String,
    /// The latest review, or the day of the compile where there is none: RFC 3339.
    pub updated: String,
    /// The sheets, the one last reviewed first.
    pub entries: Vec<Entry>,
}

/// A reviewed sheet.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Entry {
    /// Its identity and its address.
    pub address: String,
    /// The species' common name.
    pub title: String,
    /// When it was reviewed: RFC 3339.
    pub updated: String,
    /// One sentence.
    pub summary: String,
}

/// Builds the list of pages. None where the site has no address.
pub fn sitemap(edition: &Edition<'_>) -> Option<Sitemap> {
    edition.site.address.as_ref()?;
    let pages = super::plan(edition).into_iter().filter_map(|wanted| {
        let path = wanted.path_inside();
        let is_listed = path.ends_with(".html") && wanted != Wanted::NotFound;
        let address = full_address(&edition.site, &path)?;
        (is_listed && !wanted.is_private()).then(|| Place {
            address,
            reviewed: reviewed(edition, &wanted),
            editions: editions(edition, &wanted),
        })
    });
    Some(Sitemap { pages: pages.collect() })
}

/// A page in every language, where the site has more than one.
fn editions(edition: &Edition<'_>, wanted: &Wanted) -> Vec<InLanguage> {
    let page = wanted.page();
    let all = edition.site.all_languages();
    if all.len() < 2 || !page.is_in_every_language() {
        return Vec::new();
    }
    let one = |language: &str| {
        let place = edition.other(language).wanted(page.clone()).path_inside();
        let address = full_address(&edition.site, &place)?;
        Some(InLanguage { language: language.to_owned(), address })
    };
    all.into_iter().filter_map(one).collect()
}

fn reviewed(edition: &Edition<'_>, wanted: &Wanted) -> Option<String> {
    let (Wanted::Care(key) | Wanted::Working(key) | Wanted::Card(key)) = wanted.page() else {
        return None;
    };
    edition.species.get(key)?.reviewed.map(|(date, _)| date.to_string())
}

/// Builds the feed. None where the site has no address.
pub fn feed(edition: &Edition<'_>, figures: &Figures) -> Option<Feed> {
    let home = full_address(&edition.site, "")?;
    let mut sheets: Vec<(Date, Entry)> = Vec::new();
    for (key, species) in &edition.species {
        let Some((date, _)) = species.reviewed else { continue };
        let summary = edition
            .summary(species)
            .map(str::to_owned)
            .unwrap_or_else(|| species.scientific.clone());
        let entry = Entry {
            address: full_address(&edition.site, &super::care_path(key))?,
            title: edition.name(species).to_owned(),
            updated: midnight(date),
            summary,
        };
        sheets.push((date, entry));
    }
    // The sort is stable: sheets of one day stay in the order of their names.
    sheets.sort_by_key(|(date, _)| std::cmp::Reverse(*date));
    let latest = sheets.first().map_or(figures.as_of, |(date, _)| *date);
    Some(Feed {
        id: full_address(&edition.site, super::FEED)?,
        home,
        title: edition.site.title.clone(),
        language: edition.site.language.clone(),
        updated: midnight(latest),
        entries: sheets.into_iter().map(|(_, entry)| entry).collect(),
    })
}

/// The beginning of a day, as RFC 3339 writes it.
fn midnight(date: Date) -> String {
    format!("{date}T00:00:00Z")
}
