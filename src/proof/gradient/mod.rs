//! The gradient as it is read: basking spot, warm side, cool side and night.

pub(super) mod basking_spot_too_hot;
pub(super) mod cool_end_too_cold;
pub(super) mod cool_end_too_warm;
pub(super) mod gradient_inverted;
pub(super) mod gradient_too_narrow;
pub(super) mod gradient_too_steep;
pub(super) mod night_below_critical;
pub(super) mod night_too_cold;
pub(super) mod night_too_warm;
pub(super) mod no_basking_spot;
pub(super) mod no_escape_from_heat;
pub(super) mod probe_above_never_above;
pub(super) mod room_too_warm;
pub(super) mod warm_side_out_of_range;
pub(super) mod water_out_of_range;
