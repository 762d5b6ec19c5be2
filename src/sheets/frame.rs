//! What stands around every page: the site's name, its foot, the day, and the way back to the root.

use jiff::civil::Date;
use serde::Serialize;

use crate::language::{Catalogue, is_same};
use crate::model::Site;
use crate::model::word::Word;

use super::edition::Edition;

/// The frame of a page.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Frame {
    /// The page's title.
    pub title: String,
    /// The title with the site's name behind it where both fit into a line of a search result, the title alone elsewhere.
    pub full_title: String,
    /// One sentence for search results, no longer than they show.
    pub description: String,
    /// The site's name.
    pub site: String,
    /// Text for the foot.
    pub footer: Option<String>,
    /// The language, a BCP 47 tag.
    pub language: String,
    /// The language of what the site itself says, where that is another than the page's.
    pub site_language: Option<String>,
    /// The paper it prints on: `A4` or `Letter`.
    pub paper: String,
    /// The way back to where the pages of this language begin: `../../` for a page two folders down.
    pub root: String,
    /// The way back to the root of the site's part, where the pictures, the look and the feed stand: for a further language it is
    /// a folder further than `root`.
    pub base: String,
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
    /// The same page in the other languages of the site.
    pub editions: Vec<EditionLink>,
}

/// A page in one of the languages of the site.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct EditionLink {
    /// The language, a BCP 47 tag.
    pub language: String,
    /// What those who speak it call it.
    pub name: String,
    /// The way there from this page.
    pub href: String,
    /// Its full address, where the site has one.
    pub address: Option<String>,
}

/// The page at a path inside its language, in the other languages of the site.
fn editions(edition: &Edition<'_>, path: &str, base: &str) -> Vec<EditionLink> {
    let all = edition.site.all_languages().into_iter().filter(|tag| *tag != edition.language());
    let link = |tag: &str| {
        let other = edition.other(tag);
        let place = format!("{}{path}", other.folder());
        let name = other.catalogue().find("language-own").filter(|_| Catalogue::of(tag).is_some());
        EditionLink {
            language: tag.to_owned(),
            name: name.unwrap_or_else(|| tag.to_owned()),
            href: format!("{base}{place}"),
            address: full_address(&edition.site, &place),
        }
    };
    all.map(link).collect()
}

impl Frame {
    /// The frame of the page at a path inside the public or private part, or inside the folder of its language there.
    pub fn new(
        edition: &Edition<'_>,
        path: &str,
        private: bool,
        title: &str,
        description: &str,
        as_of: Date,
    ) -> Frame {
        let site = &edition.site;
        let folder = edition.folder();
        let up = |path: &str| "../".repeat(path.matches('/').count());
        let root = up(path);
        let language = edition.language();
        let own = is_same(language, &site.language);
        let base = format!("{root}{}", up(&folder));
        Frame {
            editions: if private { Vec::new() } else { editions(edition, path, &base) },
            title: title.to_owned(),
            full_title: full_title(title, &site.title),
            description: shortened(description),
            site: site.title.clone(),
            footer: site.footer.clone(),
            // Where a language has no catalogue, the labels are English.
            language: Catalogue::of(language).map_or("en", |_| language).to_owned(),
            paper: site.paper.spelling().to_owned(),
            base,
            root,
            as_of: edition.long_date(as_of),
            private,
            // Read by those who cannot read the site's own sentence, ours is the safer one.
            vet: site.vet.clone().filter(|_| own).unwrap_or_else(|| edition.say("frame-vet")),
            site_language: (!own).then(|| site.language.clone()),
            has_species: !edition.species.is_empty(),
            has_law: !crate::figures::owed::in_force(edition).is_empty(),
            address: if private { None } else { full_address(site, &format!("{folder}{path}")) },
        }
    }
}

/// How many letters of a title, and of a description, a search result shows: about so many, whatever their widths.
const TITLE_LETTERS: usize = 60;
const DESCRIPTION_LETTERS: usize = 155;

fn full_title(title: &str, site: &str) -> String {
    let both = format!("{title} · {site}");
    if title == site || both.chars().count() > TITLE_LETTERS { title.to_owned() } else { both }
}

/// A description cut after its last whole sentence that fits, or after its last whole word.
fn shortened(description: &str) -> String {
    if description.chars().count() <= DESCRIPTION_LETTERS {
        return description.to_owned();
    }
    let fits: String = description.chars().take(DESCRIPTION_LETTERS - 1).collect();
    match fits.rfind(". ") {
        Some(end) if end > DESCRIPTION_LETTERS / 2 => fits[..=end].to_owned(),
        _ => {
            let end = fits.rfind(' ').unwrap_or(fits.len());
            format!("{}…", fits[..end].trim_end_matches([',', ';', ':', ' ']))
        }
    }
}

/// The full address of the page at a path inside the public part, where the site has an address.
pub fn full_address(site: &Site, path: &str) -> Option<String> {
    let address = site.address.as_ref()?.trim_end_matches('/');
    Some(format!("{address}/{}", path.trim_end_matches("index.html")))
}
