//! Second looks: thermometers, positions and what may burn.

pub(super) mod dry_bedding_under_lamp;
pub(super) mod position_outside_enclosure;
pub(super) mod thermometer_single;
