//! The site's own settings.

pub(super) mod address_not_https;
pub(super) mod code_unknown;
pub(super) mod language_without_labels;
pub(super) mod library_overridden;
pub(super) mod private_value_in_public;
pub(super) mod safety_lowered;
pub(super) mod standards_missing;
