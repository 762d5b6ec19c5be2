//! What the law says of a species: the appendix that lists it, and the rules of single places with the papers they ask for.

use crate::model::Species;

use super::blocks::Fact;

/// International trade first, then place by place.
pub(super) fn rules(species: &Species) -> Vec<Fact> {
    let trade = species
        .stated_words()
        .into_iter()
        .map(|(_, cites)| Fact::plain("International trade", cites));
    let places = species.legal.rules.iter().map(|rule| {
        let paper =
            rule.paper.as_ref().map(|paper| format!(" Paper: {paper}.")).unwrap_or_default();
        Fact::plain(rule.jurisdiction.clone(), format!("{}{paper}", rule.says))
    });
    trade.chain(places).collect()
}
