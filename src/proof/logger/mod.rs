//! What data loggers have recorded.

pub(super) mod logger_unknown;
pub(super) mod recorded_too_damp;
pub(super) mod recorded_too_hot;
