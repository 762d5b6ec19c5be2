//! The words of a species file as they stand in a sentence.

use crate::model::stated::Stated;
use crate::model::word::{Active, Company, Habit};

use super::edition::Edition;

/// Where it lives.
pub(super) fn habit(habit: Habit) -> &'static str {
    match habit {
        Habit::Ground => "on the ground",
        Habit::Climbing => "off the ground: it climbs",
        Habit::Burrowing => "in the ground: it digs itself in",
        Habit::SemiAquatic => "by and in water",
        Habit::Aquatic => "in water",
    }
}

/// When it is active.
pub(super) fn active(active: Active) -> &'static str {
    match active {
        Active::Day => "by day",
        Active::DuskAndNight => "at dusk and by night",
        Active::Night => "by night",
        Active::DayAndNight => "by day and by night",
    }
}

/// Which company it keeps.
pub(super) fn company(company: Company) -> &'static str {
    match company {
        Company::Alone => "one animal to an enclosure",
        Company::Pairs => "alone, or a pair that gets on",
        Company::Groups => "alone or in a group with room for each",
    }
}

/// What a stated figure is.
pub(super) fn figure(_edition: &Edition<'_>, stated: &Stated<'_>) -> String {
    stated.label.clone()
}
