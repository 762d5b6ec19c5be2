//! Meals, intervals and stages.

pub(super) mod stage_bounds;
