//! Humidity and condensation.

pub(super) mod ceiling_below_range;
pub(super) mod condensation_by_night;
pub(super) mod humidity_above_ceiling;
pub(super) mod humidity_out_of_range;
pub(super) mod humidity_unreachable;
pub(super) mod hygrometer_only_warm;
pub(super) mod sprayed_before_dry;
