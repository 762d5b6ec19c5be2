//! Sizes or ages that contradict one another: as long at birth as when grown, and the like.

use crate::finding::{Code, Finding, Place, Severity, Subject};
use crate::model::Species;
use crate::model::species::Figure;
use crate::proof::{Evidence, Rule};
use crate::quantity::{Quantity, System};

use super::shown;

static CODE: Code = Code {
    name: "sizes-out-of-order",
    severity: Severity::Error,
    safety: false,
    subject: Subject::Species,
    summary: "a species' sizes or ages contradict one another",
    page: include_str!("sizes_out_of_order.md"),
};

pub(in crate::proof) static RULE: Rule = Rule { code: &CODE, find };

fn find(evidence: &Evidence<'_>, found: &mut Vec<Finding>) {
    let system = evidence.model.site.units;
    for species in evidence.model.species.values() {
        let size = &species.size;
        let mut clashes = Vec::new();
        for adult in [&size.adult, &size.female, &size.male, &size.total_length] {
            clashes.extend(clash(
                ("length at birth", &size.birth),
                ("adult length", adult),
                system,
            ));
        }
        for form in size.forms.values() {
            for adult in [&form.adult, &form.female, &form.male] {
                let grown = ("adult length of a form", adult);
                clashes.extend(clash(("length at birth", &size.birth), grown, system));
            }
        }
        for adult in [&size.mass, &size.mass_female, &size.mass_male] {
            clashes.extend(clash(
                ("mass at birth", &size.birth_mass),
                ("adult mass", adult),
                system,
            ));
        }
        let matures = ("age at maturity", &species.growth.matures);
        clashes.extend(clash(matures, ("span of life", &species.years), system));
        report(species, clashes, found);
    }
}

/// A clash of two figures: the smaller one's name, the rest of the sentence, and both places.
type Clash = (String, String, Place, Place);

/// The first has to be the smaller, end by end.
fn clash<Q: Quantity>(
    (less, small): (&str, &Figure<Q>),
    (more, large): (&str, &Figure<Q>),
    system: System,
) -> Option<Clash> {
    let (small, large) = (small.as_ref()?, large.as_ref()?);
    let most = small.value.high().or(small.value.low())?;
    let least = large.value.low().or(large.value.high())?;
    (most >= least).then(|| {
        let (small_shown, large_shown) = (shown(&small.value, system), shown(&large.value, system));
        let told = format!("is {small_shown}, and the {more} {large_shown}");
        (less.to_owned(), told, small.place, large.place)
    })
}

fn report(species: &Species, clashes: Vec<Clash>, found: &mut Vec<Finding>) {
    for (less, told, small, large) in clashes {
        let finding = Finding::new(&CODE, small, format!("the {less} of {} {told}", species.name))
            .help("correct the unit or the figure of one of the two");
        found.push(finding.also_at(large, "the larger one"));
    }
}
