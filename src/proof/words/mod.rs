//! Markdown words.

pub(super) mod quote_unknown;
