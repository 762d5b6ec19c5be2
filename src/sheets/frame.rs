//! What stands around every page: the site's name, its foot, the day, and the way back to the root.

use jiff::civil::Date;
use serde::Serialize;

use crate::model::word::Word;
use crate::model::{Model, Site};

/// The frame of a page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Frame {
    /// The page's title.
    pub title: String,
    /// One sentence for search results.
    pub description: String,
    /// The site's name.
    pub site: String,
    /// Text for the foot.
    pub footer: Option<String>,
    /// The language, a BCP 47 tag.
    pub language: String,
    /// The paper it prints on: `A4` or `Letter`.
    pub paper: String,
    /// The way back to the root of the site's part: `../../` for a page two folders down.
    pub root: String,
    /// The day that the sheet is for.
    pub as_of: String,
    /// Whether the page is private.
    pub private: bool,
    /// The sentence about the vet.
    pub vet: String,
    /// Whether the site has species, and so pages that compare them.
    pub has_species: bool,
    /// Whether the site names jurisdictions, and so has a page on what their law asks.
    pub has_law: bool,
    /// The page's full address, where the site has one.
    pub address: Option<String>,
}

/// The vet line of a site that has none of its own.
const VET: &str = "This sheet does not replace a vet. If an animal seems ill, ring a vet who treats reptiles and amphibians.";

impl Frame {
    /// The frame of the page at a path inside the public or private part.
    pub fn new(
        model: &Model,
        path: &str,
        private: bool,
        title: &str,
        description: &str,
        as_of: Date,
    ) -> Frame {
        let site = &model.site;
        Frame {
            title: title.to_owned(),
            description: description.to_owned(),
            site: site.title.clone(),
            footer: site.footer.clone(),
            language: site.language.clone(),
            paper: site.paper.spelling().to_owned(),
            root: "../".repeat(path.matches('/').count()),
            as_of: long_date(as_of),
            private,
            vet: site.vet.clone().unwrap_or_else(|| VET.to_owned()),
            has_species: !model.species.is_empty(),
            has_law: !crate::figures::owed::in_force(model).is_empty(),
            address: if private { None } else { full_address(site, path) },
        }
    }
}

/// The full address of the page at a path inside the public part, where the site has an address.
pub fn full_address(site: &Site, path: &str) -> Option<String> {
    let address = site.address.as_ref()?.trim_end_matches('/');
    Some(format!("{address}/{}", path.trim_end_matches("index.html")))
}

/// A date as it is read aloud: `25 November 2026`.
pub fn long_date(date: Date) -> String {
    const MONTHS: [&str; 12] = [
        "January",
        "February",
        "March",
        "April",
        "May",
        "June",
        "July",
        "August",
        "September",
        "October",
        "November",
        "December",
    ];
    let month = MONTHS[usize::try_from(date.month() - 1).unwrap_or(0).min(11)];
    format!("{} {month} {}", date.day(), date.year())
}

/// A date in a table or on a box to tick: `Wed 25 Nov`.
pub fn short_date(date: Date) -> String {
    let day = match date.weekday() {
        jiff::civil::Weekday::Monday => "Mon",
        jiff::civil::Weekday::Tuesday => "Tue",
        jiff::civil::Weekday::Wednesday => "Wed",
        jiff::civil::Weekday::Thursday => "Thu",
        jiff::civil::Weekday::Friday => "Fri",
        jiff::civil::Weekday::Saturday => "Sat",
        jiff::civil::Weekday::Sunday => "Sun",
    };
    let written = long_date(date);
    let month: String = written.chars().filter(|c| c.is_alphabetic()).take(3).collect();
    format!("{day} {} {month}", date.day())
}
