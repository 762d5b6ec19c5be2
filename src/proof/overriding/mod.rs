//! Single figures that a nearer folder puts in place of a farther one's.

pub(super) mod override_below_moved;
pub(super) mod override_changes_nothing;
pub(super) mod override_figure_unknown;
pub(super) mod override_loosens_limit;
pub(super) mod override_species_unknown;
pub(super) mod override_without_was;

use crate::model::Override;
use crate::model::overriding::Replaced;
use crate::model::stated::Amount;
use crate::proof::Evidence;
use crate::quantity::Rounding;

/// Every entry that has taken the place of a figure.
fn replaced<'a>(evidence: &Evidence<'a>) -> impl Iterator<Item = (&'a Override, &'a Replaced)> {
    evidence.model.overrides.iter().filter_map(|entry| Some((entry, entry.replaced()?)))
}

/// A figure as the site prints it.
fn shown(evidence: &Evidence<'_>, amount: &Amount) -> String {
    amount.print(evidence.model.site.units, Rounding::Nearest).first
}
