//! Second looks: thermometers, positions and what may burn.

pub(super) mod dry_bedding_under_lamp;
pub(super) mod lamp_near_what_burns;
pub(super) mod position_outside_enclosure;
pub(super) mod room_without_alarm;
pub(super) mod strip_overloaded;
pub(super) mod thermometer_single;
