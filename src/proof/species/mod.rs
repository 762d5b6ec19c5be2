//! A species' own figures.

pub(super) mod critical_above_night;
pub(super) mod feeding_missing;
pub(super) mod figure_without_source;
pub(super) mod legal_check_old;
pub(super) mod legal_unchecked;
pub(super) mod life_missing;
pub(super) mod never_above_below_basking;
pub(super) mod no_standard_covers;
pub(super) mod review_missing;
pub(super) mod review_overdue;
pub(super) mod signs_too_few;
pub(super) mod sizes_out_of_order;
pub(super) mod sources_disagree;
pub(super) mod temperatures_missing;
pub(super) mod temperatures_out_of_order;

use jiff::civil::Date;

use crate::figures::calendar::days_after;
use crate::finding::{FileId, Severity};
use crate::model::Cited;
use crate::proof::Evidence;
use crate::quantity::{Quantity, Range, Rounding, System};
use crate::source::Layer;

/// A range in the system that the site puts first.
fn shown<Q: Quantity>(range: &Range<Q>, system: System) -> String {
    range.print(system, Rounding::Nearest).first
}

/// Whether one range lies higher than another: the lower end where both have one, else the upper.
fn lies_above<Q: Quantity>(one: &Cited<Range<Q>>, other: &Cited<Range<Q>>) -> bool {
    let ends = |end: fn(&Range<Q>) -> Option<Q>| end(&one.value).zip(end(&other.value));
    match (ends(Range::low), ends(Range::high)) {
        (Some((low, other_low)), Some((high, other_high))) => low > other_low && high > other_high,
        (Some((low, other_low)), None) => low > other_low,
        (None, Some((high, other_high))) => high > other_high,
        (None, None) => false,
    }
}

/// The day on which something checked once is due again, if that has passed.
fn overdue(evidence: &Evidence<'_>, checked: Date) -> Option<Date> {
    let due = days_after(checked, evidence.model.site.review_every.days())?;
    (due < evidence.figures.as_of).then_some(due)
}

/// How grave a gap is that only the owner of a file can close: the built-in library is not the site's own to review.
fn own_or_built_in(evidence: &Evidence<'_>, file: FileId, own: Severity) -> Severity {
    let built_in = evidence
        .sources
        .files()
        .iter()
        .any(|source| source.id == file && source.layer == Layer::BuiltIn);
    if built_in { Severity::Note } else { own }
}
