//! Logs: the order of their days.

pub(super) mod log_in_future;
pub(super) mod log_out_of_order;
