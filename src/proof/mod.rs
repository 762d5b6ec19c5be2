//! What does not agree, is unsafe or is doubtful: one rule a file over the model and its figures, its page beside it.
//!
//! A rule looks at the [`Evidence`] and adds findings. It writes nothing and changes nothing. Adding one touches its own
//! file, its page, and one line of [`RULES`].

mod animal;
mod body;
mod enclosure;
mod feeding;
mod gradient;
mod heat;
mod housed;
mod humidity;
mod hygiene;
mod law;
mod light;
mod log;
mod logger;
mod names;
pub mod new_line;
mod overriding;
mod places;
mod safety;
mod site;
mod species;
mod words;

use std::collections::BTreeMap;

use rayon::prelude::*;

use crate::figures::Figures;
use crate::finding::{self, Code, Finding, Severity};
use crate::model::Model;
use crate::source::Sources;

pub use law::before_handover;

/// What a rule may look at.
#[derive(Debug, Clone, Copy)]
pub struct Evidence<'a> {
    /// The files: which exist, in which layer.
    pub sources: &'a Sources,
    /// What they say.
    pub model: &'a Model,
    /// What was worked out, and for which day.
    pub figures: &'a Figures,
}

/// One rule.
#[derive(Debug)]
pub struct Rule {
    /// What it finds.
    pub code: &'static Code,
    /// Finds it.
    pub find: fn(&Evidence<'_>, &mut Vec<Finding>),
}

/// Every rule, by subject. A rule runs once and sees everything.
pub static RULES: &[&Rule] = &[
    &names::companion_unknown::RULE,
    &names::figure_unknown::RULE,
    &names::form_unknown::RULE,
    &names::jurisdiction_unknown::RULE,
    &names::owner_missing::RULE,
    &names::photo_missing::RULE,
    &names::photo_without_description::RULE,
    &names::probe_unknown::RULE,
    &names::room_unknown::RULE,
    &names::source_unknown::RULE,
    &names::species_unknown::RULE,
    &names::standard_unknown::RULE,
    &names::strip_unknown::RULE,
    &logger::logger_unknown::RULE,
    &logger::recorded_too_damp::RULE,
    &logger::recorded_too_hot::RULE,
    &log::log_in_future::RULE,
    &log::log_out_of_order::RULE,
    &body::born_after_log::RULE,
    &body::length_jump::RULE,
    &body::length_shrank::RULE,
    &body::logged_before_arrival::RULE,
    &body::shed_incomplete::RULE,
    &body::shed_overdue::RULE,
    &body::size_beyond_species::RULE,
    &body::weight_against_length::RULE,
    &body::weight_jump::RULE,
    &body::weight_lost::RULE,
    &animal::arrived_in_future::RULE,
    &animal::chip_twice::RULE,
    &animal::companion_is_prey::RULE,
    &animal::company_against_nature::RULE,
    &animal::company_of_two_species::RULE,
    &animal::company_one_sided::RULE,
    &animal::company_with_itself::RULE,
    &animal::ended_animal_published::RULE,
    &animal::ended_animal_with_company::RULE,
    &animal::ended_animal_with_tasks::RULE,
    &animal::hatched_after_arrival::RULE,
    &animal::hatched_in_future::RULE,
    &animal::home_sought_unpublished::RULE,
    &animal::older_than_its_kind::RULE,
    &animal::origin_missing::RULE,
    &animal::published_with_private_words::RULE,
    &animal::quarantine_cut_short::RULE,
    &animal::quarantine_ended::RULE,
    &animal::quarantine_not_restarted::RULE,
    &animal::quarantine_served_first::RULE,
    &animal::quarantine_shared::RULE,
    &animal::quarantine_tools_shared::RULE,
    &animal::quarantine_unmarked::RULE,
    &animal::quarantine_without_dates::RULE,
    &animal::sex_unknown::RULE,
    &animal::story_missing::RULE,
    &heat::cut_out_out_of_range::RULE,
    &heat::heat_from_below::RULE,
    &heat::heater_at_cool_end::RULE,
    &heat::heater_missing::RULE,
    &heat::heater_too_small::RULE,
    &heat::heater_unguarded::RULE,
    &heat::heater_without_power::RULE,
    &heat::heater_without_thermostat::RULE,
    &heat::lamp_without_thermostat::RULE,
    &heat::mat_under_deep_substrate::RULE,
    &heat::material_unknown::RULE,
    &heat::mercury_vapour_on_thermostat::RULE,
    &heat::power_cut_unplanned::RULE,
    &heat::probe_drives_two_heaters::RULE,
    &heat::probe_out_of_sight::RULE,
    &heat::set_night_above_day::RULE,
    &heat::set_night_missing::RULE,
    &heat::set_point_above_basking::RULE,
    &heat::set_point_missing::RULE,
    &heat::set_point_too_high::RULE,
    &heat::thermostat_probe_far::RULE,
    &heat::thermostat_unsuitable::RULE,
    &heat::water_heater_unguarded::RULE,
    &gradient::basking_spot_too_hot::RULE,
    &gradient::cool_end_too_cold::RULE,
    &gradient::cool_end_too_warm::RULE,
    &gradient::gradient_inverted::RULE,
    &gradient::gradient_too_narrow::RULE,
    &gradient::gradient_too_steep::RULE,
    &gradient::night_below_critical::RULE,
    &gradient::night_too_cold::RULE,
    &gradient::night_too_warm::RULE,
    &gradient::no_basking_spot::RULE,
    &gradient::no_escape_from_heat::RULE,
    &gradient::probe_above_never_above::RULE,
    &gradient::room_too_warm::RULE,
    &gradient::warm_side_out_of_range::RULE,
    &gradient::water_out_of_range::RULE,
    &humidity::ceiling_below_range::RULE,
    &humidity::condensation_by_night::RULE,
    &humidity::humidity_above_ceiling::RULE,
    &humidity::humidity_out_of_range::RULE,
    &humidity::humidity_unreachable::RULE,
    &humidity::hygrometer_only_warm::RULE,
    &humidity::sprayed_before_dry::RULE,
    &light::hours_far_from_home::RULE,
    &light::lamp_age_unknown::RULE,
    &light::lamp_fitted_in_future::RULE,
    &light::lamp_overdue::RULE,
    &light::lamp_unguarded::RULE,
    &light::lit_by_night::RULE,
    &light::no_dark::RULE,
    &light::uv_missing::RULE,
    &light::uv_outside_band::RULE,
    &light::uv_too_strong::RULE,
    &light::uv_without_distance::RULE,
    &safety::dry_bedding_under_lamp::RULE,
    &safety::lamp_near_what_burns::RULE,
    &safety::position_outside_enclosure::RULE,
    &safety::room_without_alarm::RULE,
    &safety::strip_overloaded::RULE,
    &safety::thermometer_single::RULE,
    &enclosure::climber_without_height::RULE,
    &enclosure::enclosure_outgrown_soon::RULE,
    &enclosure::enclosure_too_small::RULE,
    &enclosure::hide_outside_box::RULE,
    &enclosure::hide_too_small::RULE,
    &enclosure::hides_at_one_end::RULE,
    &enclosure::hides_too_few::RULE,
    &enclosure::inside_missing::RULE,
    &enclosure::no_water::RULE,
    &feeding::fast_too_long::RULE,
    &feeding::fed_live::RULE,
    &feeding::handled_after_meal::RULE,
    &feeding::interval_outside_stage::RULE,
    &feeding::mass_and_share_disagree::RULE,
    &feeding::meal_overdue::RULE,
    &feeding::meal_share_too_large::RULE,
    &feeding::meal_too_heavy::RULE,
    &feeding::meal_too_wide::RULE,
    &feeding::one_prey_only::RULE,
    &feeding::overfed::RULE,
    &feeding::stage_bounds::RULE,
    &hygiene::disinfectant_without_effect::RULE,
    &hygiene::disinfectant_strength_unproven::RULE,
    &hygiene::chlorine_beside_ammonia::RULE,
    &hygiene::chlorine_with_ammonia_in_words::RULE,
    &overriding::override_below_moved::RULE,
    &overriding::override_changes_nothing::RULE,
    &overriding::override_figure_unknown::RULE,
    &overriding::override_loosens_limit::RULE,
    &overriding::override_species_unknown::RULE,
    &overriding::override_without_was::RULE,
    &species::critical_above_night::RULE,
    &species::feeding_missing::RULE,
    &species::figure_without_source::RULE,
    &species::legal_check_old::RULE,
    &species::legal_unchecked::RULE,
    &species::life_missing::RULE,
    &species::never_above_below_basking::RULE,
    &species::no_standard_covers::RULE,
    &species::review_missing::RULE,
    &species::review_overdue::RULE,
    &species::signs_too_few::RULE,
    &species::sizes_out_of_order::RULE,
    &species::sources_disagree::RULE,
    &species::temperatures_missing::RULE,
    &species::temperatures_out_of_order::RULE,
    &law::care_sheet_item_missing::RULE,
    &law::handed_on_below_size::RULE,
    &law::handed_on_under_treatment::RULE,
    &law::handover_item_missing::RULE,
    &law::mark_missing::RULE,
    &law::paper_missing::RULE,
    &law::sheet_in_another_language::RULE,
    &law::wording_not_taken::RULE,
    &words::dose_in_words::RULE,
    &words::figure_could_be_quoted::RULE,
    &words::heading_missing::RULE,
    &words::heading_unknown::RULE,
    &words::link_nowhere::RULE,
    &words::picture_without_description::RULE,
    &words::prose_above_ceiling::RULE,
    &words::prose_drift::RULE,
    &words::quote_unknown::RULE,
    &words::words_missing::RULE,
    &site::address_not_https::RULE,
    &site::code_unknown::RULE,
    &site::library_overridden::RULE,
    &site::private_value_in_public::RULE,
    &site::safety_lowered::RULE,
    &site::language_without_labels::RULE,
    &site::standards_missing::RULE,
];

/// Every code that a finding can have, by name.
pub fn codes() -> BTreeMap<&'static str, &'static Code> {
    let reading = crate::source::codes::ALL.iter().copied();
    let parsing = crate::parse::codes::ALL.iter().copied();
    let rendering = std::iter::once(&TEMPLATE_BROKEN);
    reading
        .chain(parsing)
        .chain(rendering)
        .chain(RULES.iter().map(|rule| rule.code))
        .map(|code| (code.name, code))
        .collect()
}

/// A template of the site's own that does not work. It is found when a page is rendered, and listed here with the rest.
pub static TEMPLATE_BROKEN: Code = Code {
    name: "template-broken",
    severity: Severity::Error,
    safety: false,
    subject: finding::Subject::Site,
    summary: "a template of the site's own does not work",
    page: include_str!("site/template_broken.md"),
};

/// Runs every rule, and returns what was found with the severities that the site wishes.
pub fn proof(evidence: &Evidence<'_>) -> Vec<Finding> {
    let of = |rule: &&'static Rule| {
        let mut found = Vec::new();
        (rule.find)(evidence, &mut found);
        found
    };
    // On all cores, and still in the order of the list.
    RULES.par_iter().flat_map_iter(of).collect()
}

/// Gives every finding the severity that the site wishes. A safety error stays an error whatever the site says.
pub fn with_site_severities(model: &Model, found: Vec<Finding>) -> Vec<Finding> {
    let wishes: BTreeMap<&str, Option<Severity>> = model
        .site
        .severities
        .iter()
        .map(|(code, severity)| (code.name.as_str(), *severity))
        .collect();
    let mut kept = Vec::new();
    for mut finding in found {
        match wishes.get(finding.code.name) {
            Some(wish) if finding.code.safety => {
                finding.severity = wish.unwrap_or(finding.severity).max(finding.severity)
            }
            Some(Some(severity)) => finding.severity = *severity,
            Some(None) => continue,
            None => {}
        }
        kept.push(finding);
    }
    finding::sort(&mut kept);
    kept
}
