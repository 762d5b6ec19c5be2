//! Disinfectants and cleaning.

pub(super) mod chlorine_beside_ammonia;
pub(super) mod chlorine_with_ammonia_in_words;
pub(super) mod disinfectant_strength_unproven;
pub(super) mod disinfectant_without_effect;
