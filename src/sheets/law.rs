//! What the law says of a species: the appendix that lists it, and the rules of single places with the papers they ask for.

use crate::model::Species;

use super::blocks::Fact;
use super::edition::Edition;

/// International trade first, then place by place.
pub(super) fn rules(edition: &Edition<'_>, species: &Species) -> Vec<Fact> {
    let trade = species.legal.cites.into_iter();
    let trade =
        trade.map(|cites| Fact::plain(edition.say("law-trade"), edition.word("cites", cites)));
    let places = species.legal.rules.iter().map(|rule| {
        let says = match &rule.paper {
            Some(paper) => edition.tell(
                "law-with-paper",
                [("says", rule.says.as_str().into()), ("paper", paper.as_str().into())],
            ),
            None => rule.says.clone(),
        };
        Fact::plain(rule.jurisdiction.clone(), says)
    });
    trade.chain(places).collect()
}
