//! What is wrong or doubtful: a code, a severity, a place, one sentence and what would put it right.
//!
//! A finding is plain data. The room that finds a fault turns it into a [`Finding`] there and then;
//! one file, [`draw`], shows it to people, and [`mod@json`] and [`mod@sarif`] hand it to programs. Which codes exist is known by
//! the rooms that find them.

pub mod code;
pub mod draw;
pub mod json;
pub mod nearest;
pub mod place;
pub mod sarif;

pub use code::{Code, Severity, Subject};
pub use nearest::did_you_mean;
pub use place::{FileId, Place};

/// The longest sentence that is told, in bytes: what a file holds may stand in it, and that may be a line of many megabytes.
const LONGEST_SENTENCE: usize = 2000;

/// A sentence, cut short where it is too long to be read.
fn readable(sentence: impl Into<String>) -> String {
    let mut sentence = sentence.into();
    if sentence.len() > LONGEST_SENTENCE {
        sentence.truncate(sentence.floor_char_boundary(LONGEST_SENTENCE));
        sentence.push('…');
        // What was cut off is not kept in memory.
        sentence.shrink_to_fit();
    }
    sentence
}

/// Something wrong or doubtful in what the user wrote.
#[derive(Debug, Clone, PartialEq)]
pub struct Finding {
    /// What kind of fault it is.
    pub code: &'static Code,
    /// How grave it is; the code's own severity unless the site has changed it.
    pub severity: Severity,
    /// Where it is. Without a place it concerns the site as a whole.
    pub place: Option<Place>,
    /// One sentence in lower case without a full stop; it states the fault and makes sense alone.
    pub message: String,
    /// What would put it right.
    pub help: Option<String>,
    /// Other places that belong to it, each with a word on why.
    pub related: Vec<(Place, String)>,
}

impl Finding {
    /// Makes a finding of the code's own severity at a place.
    pub fn new(code: &'static Code, place: Place, message: impl Into<String>) -> Finding {
        Finding { place: Some(place), ..Finding::of_site(code, message) }
    }

    /// Makes a finding that concerns the site as a whole.
    pub fn of_site(code: &'static Code, message: impl Into<String>) -> Finding {
        let message = readable(message);
        Finding {
            code,
            severity: code.severity,
            place: None,
            message,
            help: None,
            related: Vec::new(),
        }
    }

    /// Whether it leaves the figures without a meaning: a file, a field or a name that cannot be read.
    pub fn is_meaningless(&self) -> bool {
        let of_reading =
            matches!(self.code.subject, Subject::Files | Subject::Writing | Subject::Names);
        of_reading && self.severity == Severity::Error
    }

    /// Adds what would put it right.
    #[must_use]
    pub fn help(mut self, help: impl Into<String>) -> Finding {
        self.help = Some(readable(help));
        self
    }

    /// Adds what would put it right, where there is something to say.
    #[must_use]
    pub fn help_if(mut self, help: Option<String>) -> Finding {
        self.help = help.map(readable).or(self.help);
        self
    }

    /// Adds another place that belongs to it.
    #[must_use]
    pub fn also_at(mut self, place: Place, why: impl Into<String>) -> Finding {
        self.related.push((place, readable(why)));
        self
    }
}

/// Puts findings in the order in which they are shown: by file, then place, then code.
pub fn sort(findings: &mut [Finding]) {
    findings.sort_by(|a, b| {
        let key = |f: &Finding| f.place.map(|p| (p.file, p.start));
        key(a)
            .cmp(&key(b))
            .then_with(|| a.code.name.cmp(b.code.name))
            .then_with(|| a.message.cmp(&b.message))
    });
}

/// Tells whether any of the findings stops the compile.
pub fn stops(findings: &[Finding]) -> bool {
    findings.iter().any(|finding| finding.severity == Severity::Error)
}
