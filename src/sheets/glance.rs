//! The head of a care sheet: what matters in ten seconds.

use crate::figures::SpeciesFigures;
use crate::model::Species;
use crate::model::stated::Stated;
use crate::model::word::Measure;

use super::blocks::{Fact, Shown};
use super::care;
use super::citing::Citing;
use super::edition::Edition;

/// What matters in ten seconds: how big, how long, how warm, how humid, how much space, what it eats, whether it is legal.
pub(super) fn glance(
    edition: &Edition<'_>,
    species: &Species,
    of: &SpeciesFigures,
    stated: &[Stated<'_>],
    citing: &mut Citing<'_>,
) -> Vec<Fact> {
    let mut facts = Vec::new();
    let wanted = [
        "size.adult",
        "size.female",
        "size.male",
        "life.years",
        "temperature.basking",
        "temperature.warm",
        "temperature.cool",
        "temperature.water",
        "temperature.night",
        "humidity.range",
        "humidity.ceiling",
    ];
    for name in wanted {
        if let Some(stated) = stated.iter().find(|stated| stated.name == name) {
            let mut fact = citing.fact(stated, edition);
            // In ten seconds nobody reads a remark; it stands in the chapter.
            (fact.note, fact.others, fact.overridden) = (None, Vec::new(), None);
            if name.starts_with("size.") && species.size.measure != Measure::TotalLength {
                let measure = edition.word("measure", species.size.measure);
                let values = [("label", fact.label.into()), ("measure", measure.into())];
                fact.label = edition.tell("care-measured", values);
            }
            facts.push(fact);
        }
    }
    facts.push(Fact::plain(edition.say("care-space"), care::space(of, edition)));
    let meal = species.grown_stage().and_then(|stage| stage.meal.clone());
    let meal = meal.map_or_else(|| edition.missing(), Shown::plain);
    facts.push(Fact::plain(edition.say("care-eats"), meal));
    if let Some(cost) = &of.cost {
        let (low, high) = cost.per_year;
        let about = edition.tell(
            "care-costs-a-year",
            [
                ("low", edition.number(low, 0).into()),
                ("high", edition.number(high, 0).into()),
                ("currency", cost.currency.as_str().into()),
            ],
        );
        facts.push(Fact::plain(edition.say("care-costs"), about));
    }
    let dangers: Vec<String> =
        species.cautions.iter().map(|danger| edition.word("danger", *danger)).collect();
    if !dangers.is_empty() {
        facts.push(Fact::plain(edition.say("care-dangers"), dangers.join(", ")));
    }
    facts.push(Fact::plain(edition.say("care-law"), edition.say("care-law-check")));
    facts
}
