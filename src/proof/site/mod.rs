//! The site's own settings.

pub(super) mod code_unknown;
pub(super) mod safety_lowered;
