//! The kinds of finding: each has a name in words, a severity and a page.

/// A kind of finding.
#[derive(Debug, PartialEq, Eq)]
pub struct Code {
    /// Its name: lower-case words joined by hyphens, named for the bad thing.
    pub name: &'static str,
    /// How grave it is unless the site says otherwise.
    pub severity: Severity,
    /// A safety error: a site may not lower it.
    pub safety: bool,
    /// The subject that it is listed under.
    pub subject: Subject,
    /// One line for lists: what is wrong.
    pub summary: &'static str,
    /// Its page in Markdown: what it finds, why, an example that fires, the example put right, the source.
    pub page: &'static str,
}

/// How grave a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// Doubtful: somebody should look.
    Warning,
    /// Unsafe or meaningless: nothing is written.
    Error,
}

impl Severity {
    /// The word that stands in front of a message.
    pub fn word(self) -> &'static str {
        match self {
            Severity::Note => "note",
            Severity::Warning => "warning",
            Severity::Error => "error",
        }
    }
}

/// What a finding is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Subject {
    /// Files that cannot be found or read.
    Files,
    /// Fields and how figures are written.
    Writing,
    /// Names that stand for something elsewhere.
    Names,
    /// Heaters, thermostats and the gradient.
    Heat,
    /// Humidity and condensation.
    Humidity,
    /// Day length and ultraviolet.
    Light,
    /// Space and furniture.
    Enclosure,
    /// Meals and fasts.
    Feeding,
    /// Weight, length, sheds and the log.
    Body,
    /// One animal: identity, status, company.
    Animal,
    /// Disinfectants and cleaning.
    Hygiene,
    /// A species' own figures.
    Species,
    /// What the law of a place asks.
    Law,
    /// Markdown words.
    Words,
    /// The site as a whole.
    Site,
}

impl Subject {
    /// Its heading in lists.
    pub fn heading(self) -> &'static str {
        match self {
            Subject::Files => "Files",
            Subject::Writing => "Writing",
            Subject::Names => "Names",
            Subject::Heat => "Heat",
            Subject::Humidity => "Humidity",
            Subject::Light => "Light",
            Subject::Enclosure => "Enclosure",
            Subject::Feeding => "Feeding",
            Subject::Body => "Body",
            Subject::Animal => "Animal",
            Subject::Hygiene => "Hygiene",
            Subject::Species => "Species",
            Subject::Law => "Law",
            Subject::Words => "Words",
            Subject::Site => "Site",
        }
    }
}
