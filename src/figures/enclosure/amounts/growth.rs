//! What the animals beyond the row's number add.

use super::{Reason, Scale};
use crate::{
    figures::enclosure::wording::percent,
    model::standard::{Further, Increment, Row, SizeClass},
};

/// The sum of what all further animals add.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Growth {
    /// How many animals are kept.
    pub(super) animals: u32,
    /// Those beyond the row's number.
    pub(super) further: u32,
    /// What the base floor is multiplied by.
    pub(super) floor_factor: f64,
    /// The same, if shares that grow on themselves are read as growing on the base.
    pub(super) floor_factor_added: f64,
    /// How the factor came about, with the numbers put in.
    pub(super) floor_words: Vec<String>,
    /// The areas added to the floor, each with the number of animals that add it.
    pub(super) floor_areas_m2: Vec<(u32, f64)>,
    /// What the base volume is multiplied by.
    pub(super) volume_factor: f64,
    /// How that factor came about.
    pub(super) volume_words: Vec<String>,
    pub(super) height_cm: f64,
    pub(super) water_l: f64,
    pub(super) land_m2: f64,
    pub(super) water_floor_m2: f64,
}

impl Growth {
    /// Adds up the rules of a class for so many animals.
    ///
    /// An area for each animal of a group takes the place of the rules for further animals.
    pub(super) fn of(
        row: &Row,
        class: &SizeClass,
        scale: &Scale<'_>,
        animals: u32,
    ) -> Result<Growth, Reason> {
        let mut growth = Growth {
            animals,
            further: animals.saturating_sub(row.animals),
            floor_factor: 1.0,
            floor_factor_added: 1.0,
            floor_words: Vec::new(),
            floor_areas_m2: Vec::new(),
            volume_factor: 1.0,
            volume_words: Vec::new(),
            height_cm: 0.0,
            water_l: 0.0,
            land_m2: 0.0,
            water_floor_m2: 0.0,
        };
        if growth.further == 0 || class.space.group_floor_m2.is_some() {
            return Ok(growth);
        }
        let covered = covered(row, &class.further);
        if animals > covered {
            return Err(Reason::NoFurther { animals: covered, singly: row.singly });
        }
        for rule in &class.further {
            growth.add(rule, number_of(row, rule, animals), scale)?;
        }
        Ok(growth)
    }

    fn add(&mut self, rule: &Further, count: u32, scale: &Scale<'_>) -> Result<(), Reason> {
        if count == 0 {
            return Ok(());
        }
        let times = f64::from(count);
        match rule.floor {
            Some(Increment::Share(share)) if rule.compounding => {
                self.floor_factor *= libm::pow(1.0 + share, times);
                self.floor_factor_added += share * times;
                self.floor_words
                    .push(format!("{count} times {}, each on top of the last", percent(share)));
            }
            Some(Increment::Share(share)) => {
                self.floor_factor += share * times;
                self.floor_factor_added += share * times;
                self.floor_words.push(format!("{count} × {} of it", percent(share)));
            }
            Some(Increment::Area(area)) => self.floor_areas_m2.push((count, scale.area(area)?)),
            None => {}
        }
        if let Some(share) = rule.volume_share {
            self.volume_factor += share * times;
            self.volume_words.push(format!("{count} × {}", percent(share)));
        }
        self.height_cm += rule.height_cm.unwrap_or(0.0) * times;
        self.water_l += rule.water_l.unwrap_or(0.0) * times;
        if let Some(area) = rule.land {
            self.land_m2 += scale.area(area)? * times;
        }
        if let Some(area) = rule.water_floor {
            self.water_floor_m2 += scale.area(area)? * times;
        }
        Ok(())
    }

    /// Returns the whole area added to the floor.
    pub(super) fn floor_m2(&self) -> f64 {
        self.floor_areas_m2.iter().map(|(count, area_m2)| f64::from(*count) * area_m2).sum()
    }
}

/// Counts the animals, of those kept, that a rule holds for.
fn number_of(row: &Row, rule: &Further, animals: u32) -> u32 {
    let beyond = row.animals.saturating_add(1);
    let from = rule.from.unwrap_or(beyond).max(beyond);
    let to = rule.to.unwrap_or(u32::MAX).min(animals);
    if to < from { 0 } else { to - from + 1 }
}

/// Returns the most animals for which every one beyond the row's number has a rule.
fn covered(row: &Row, rules: &[Further]) -> u32 {
    let mut covered = row.animals;
    // A rule may start only once those before it are counted, so as many rounds as rules are enough.
    for _ in rules {
        for rule in rules {
            let next = covered.saturating_add(1);
            let to = rule.to.unwrap_or(u32::MAX);
            if rule.from.unwrap_or(next) <= next && to >= next {
                covered = to;
            }
        }
    }
    covered
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::standard::{Edges, Measure};

    fn row(animals: u32) -> Row {
        Row {
            taxon: String::new(),
            printed: None,
            note: None,
            animals,
            measure: Measure::CarapaceLength,
            measure_assumed: false,
            edges: Edges::Shared,
            height_cap: None,
            singly: false,
            tolerance_share: None,
            classes: Vec::new(),
        }
    }

    fn rule(from: Option<u32>, to: Option<u32>) -> Further {
        Further { from, to, ..Further::default() }
    }

    #[test]
    fn a_rule_counts_the_animals_it_names() {
        let third_and_fourth = rule(Some(3), Some(4));
        assert_eq!(number_of(&row(2), &third_and_fourth, 2), 0);
        assert_eq!(number_of(&row(2), &third_and_fourth, 3), 1);
        assert_eq!(number_of(&row(2), &third_and_fourth, 9), 2);
        assert_eq!(number_of(&row(2), &rule(Some(5), None), 9), 5);
        assert_eq!(number_of(&row(3), &rule(None, None), 5), 2);
    }

    #[test]
    fn a_gap_between_rules_ends_what_is_covered() {
        let rules = [rule(Some(5), None), rule(Some(3), Some(4))];
        assert_eq!(covered(&row(2), &rules), u32::MAX);
        assert_eq!(covered(&row(2), &[rule(Some(4), None)]), 2);
        assert_eq!(covered(&row(1), &[rule(Some(2), Some(2))]), 2);
        assert_eq!(covered(&row(4), &[]), 4);
    }
}
