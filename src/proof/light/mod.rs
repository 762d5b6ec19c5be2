//! Day length and ultraviolet.

pub(super) mod hours_far_from_home;
pub(super) mod lamp_age_unknown;
pub(super) mod lamp_fitted_in_future;
pub(super) mod lamp_overdue;
pub(super) mod lamp_unguarded;
pub(super) mod lit_by_night;
pub(super) mod no_dark;
pub(super) mod uv_missing;
pub(super) mod uv_outside_band;
pub(super) mod uv_too_strong;
pub(super) mod uv_without_distance;
