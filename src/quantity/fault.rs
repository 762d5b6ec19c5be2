//! What can be wrong with the text of a figure.

/// A place in a text, as byte offsets.
pub type Place = std::ops::Range<usize>;

/// What kind of thing is wrong with a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FaultKind {
    /// A number stands without its unit.
    BareNumber,
    /// A word after a number is no unit of this quantity.
    UnknownUnit,
    /// The low end lies above the high end.
    Reversed,
    /// The value is one that no living animal or real enclosure could have.
    Unbearable,
    /// The text is not a figure at all.
    Unreadable,
}

/// A fault in the text of a figure: what is wrong, what would put it right, and at which bytes.
///
/// The message makes sense alone and states only the fault; the help alone says what to write. Both are lower case
/// without a full stop.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault {
    /// The kind of fault.
    pub kind: FaultKind,
    /// What is wrong.
    pub message: String,
    /// What to write instead, and what was probably meant.
    pub help: String,
    /// The smallest stretch of the text that shows the fault, in bytes; it always lies on character boundaries.
    pub at: Place,
}

impl Fault {
    pub(super) fn new(
        kind: FaultKind,
        at: Place,
        message: impl Into<String>,
        help: impl Into<String>,
    ) -> Self {
        Fault { kind, message: message.into(), help: help.into(), at }
    }
}

impl std::fmt::Display for Fault {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "{}; {}", self.message, self.help)
    }
}

impl std::error::Error for Fault {}
