//! Which disinfectant works on which organism, as trials found it: a table, and what it says of a site's mixes.
//!
//! A publication seldom says whether its per cent is of the bottle or of what is active in it. A mix is therefore judged by the
//! larger of the two readings, so that nothing is called weak which may be strong enough; where the active substance is meant
//! beyond doubt, a mix that does not name it is not judged.

use crate::model::site::MixStrength;

/// What kills in a disinfectant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Substance {
    /// Sodium hypochlorite and its like: bleach.
    Chlorine,
    /// Chlorhexidine.
    Chlorhexidine,
    /// Quaternary ammonium compounds.
    Quaternary,
    /// Benzalkonium chloride with polyhexanide.
    BenzalkoniumWithPolyhexanide,
    /// Ethanol, isopropanol.
    Alcohol,
    /// Glutaraldehyde.
    Glutaraldehyde,
    /// Hydrogen peroxide.
    Peroxide,
    /// Potassium peroxymonosulfate.
    Peroxymonosulfate,
    /// Potassium permanganate.
    Permanganate,
    /// Ammonia and ammonium hydroxide.
    Ammonia,
}

/// What a disinfectant is used against.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Organism {
    /// Ranavirus.
    Ranavirus,
    /// The fungus of snakes, Ophidiomyces.
    SnakeFungus,
    /// The yellow fungus of lizards, Nannizziopsis.
    Nannizziopsis,
    /// Cryptosporidium.
    Cryptosporidium,
}

/// Up to which strength an substance failed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fails {
    /// At no strength that was tried.
    Never,
    /// Up to so many per cent.
    UpTo(f64),
    /// At every strength that was tried.
    Always,
}

/// What trials found of one substance on one organism.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trial {
    /// The substance.
    pub substance: Substance,
    /// The organism.
    pub organism: Organism,
    /// Up to which strength it failed.
    pub fails: Fails,
    /// From how many per cent it worked; absent where no strength is given.
    pub works_from: Option<f64>,
    /// Whether the per cent are of the active substance beyond doubt.
    pub of_active: bool,
    /// What worked instead, or how long this must act.
    pub instead: &'static str,
    /// Who says so.
    pub source: &'static str,
}

/// What a mix does to an organism.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Effect {
    /// Trials found none.
    None,
    /// It is weaker than what was shown to work.
    Unproven {
        /// The strength of the mix.
        percent: f64,
        /// The least that was shown to work.
        works_from: f64,
    },
    /// It is as strong as what was shown to work.
    Works,
}

const RANAVIRUS: &str =
    "Disinfectants against ranavirus, Diseases of Aquatic Organisms 84, 2009 (abstract)";
const SNAKE_FUNGUS: &str = "Evaluation of common disinfectants effective against Ophidiomyces, Journal of Wildlife Diseases 52(3), 2016";
const LIZARD_FUNGUS: &str =
    "Benzalkonium chloride and polyhexanide against Nannizziopsis, AEMV and ARAV, 2024";
const CRYPTO: &str =
    "Laboratory disinfectants on Cryptosporidium parvum oocysts in cell culture, n.d. (abstract)";
const ONE_MINUTE: &str = "for a minute: bleach at 3 %, chlorhexidine at 0.75 % or potassium peroxymonosulfate at 1 % worked";
const AGAINST_CRYPTO: &str = "hydrogen peroxide at 6 %, ammonia cleaner, steam, or drying worked";

const fn trial(
    substance: Substance,
    organism: Organism,
    (fails, works_from): (Fails, Option<f64>),
    instead: &'static str,
    source: &'static str,
) -> Trial {
    Trial { substance, organism, fails, works_from, of_active: false, instead, source }
}

/// What was tried, with who says so.
pub static TRIALS: &[Trial] = &[
    trial(
        Substance::Chlorine,
        Organism::Ranavirus,
        (Fails::UpTo(1.0), Some(3.0)),
        ONE_MINUTE,
        RANAVIRUS,
    ),
    trial(
        Substance::Chlorhexidine,
        Organism::Ranavirus,
        (Fails::UpTo(0.25), Some(0.75)),
        ONE_MINUTE,
        RANAVIRUS,
    ),
    trial(
        Substance::Peroxymonosulfate,
        Organism::Ranavirus,
        (Fails::Never, Some(1.0)),
        ONE_MINUTE,
        RANAVIRUS,
    ),
    trial(
        Substance::Permanganate,
        Organism::Ranavirus,
        (Fails::UpTo(0.0005), None),
        ONE_MINUTE,
        RANAVIRUS,
    ),
    trial(
        Substance::Chlorhexidine,
        Organism::SnakeFungus,
        (Fails::Always, None),
        "bleach worked",
        SNAKE_FUNGUS,
    ),
    trial(
        Substance::Chlorine,
        Organism::SnakeFungus,
        (Fails::Never, None),
        "bleach worked",
        SNAKE_FUNGUS,
    ),
    trial(
        Substance::BenzalkoniumWithPolyhexanide,
        Organism::Nannizziopsis,
        (Fails::UpTo(0.2), Some(5.0)),
        "for ten minutes: 1 part in 20 worked, and 1 in 500 did not",
        LIZARD_FUNGUS,
    ),
    trial(
        Substance::Chlorine,
        Organism::Cryptosporidium,
        (Fails::Always, None),
        AGAINST_CRYPTO,
        CRYPTO,
    ),
    trial(
        Substance::Alcohol,
        Organism::Cryptosporidium,
        (Fails::Always, None),
        AGAINST_CRYPTO,
        CRYPTO,
    ),
    trial(
        Substance::Quaternary,
        Organism::Cryptosporidium,
        (Fails::Always, None),
        AGAINST_CRYPTO,
        CRYPTO,
    ),
    trial(
        Substance::Glutaraldehyde,
        Organism::Cryptosporidium,
        (Fails::Always, None),
        AGAINST_CRYPTO,
        CRYPTO,
    ),
    trial(
        Substance::Ammonia,
        Organism::Cryptosporidium,
        (Fails::Never, None),
        AGAINST_CRYPTO,
        CRYPTO,
    ),
    Trial {
        of_active: true,
        ..trial(
            Substance::Peroxide,
            Organism::Cryptosporidium,
            (Fails::Never, Some(6.0)),
            "hydrogen peroxide at 6 % acts for at least 4 minutes",
            CRYPTO,
        )
    },
];

/// The substance that a name speaks of.
///
/// ```
/// use wardsheet::figures::disinfection::{Substance, substance};
///
/// assert_eq!(substance("Household bleach"), Some(Substance::Chlorine));
/// assert_eq!(substance("quaternary ammonium"), Some(Substance::Quaternary));
/// assert_eq!(substance("hot water"), None);
/// ```
pub fn substance(name: &str) -> Option<Substance> {
    let name = name.to_lowercase();
    let names = |words: &[&str]| words.iter().any(|word| name.contains(word));
    // The more particular name comes first: a peroxymonosulfate is no peroxide, a quaternary ammonium no ammonia.
    Some(if names(&["benzalkonium"]) && names(&["polyhexanide", "phmb", "biguanide"]) {
        Substance::BenzalkoniumWithPolyhexanide
    } else if names(&["quaternary", "benzalkonium", "didecyl", "quat "]) {
        Substance::Quaternary
    } else if names(&["chlorhexidine"]) {
        Substance::Chlorhexidine
    } else if names(&["monosulfate", "monosulphate", "monopersulfate", "monopersulphate"]) {
        Substance::Peroxymonosulfate
    } else if names(&["permanganate"]) {
        Substance::Permanganate
    } else if names(&["peroxide"]) {
        Substance::Peroxide
    } else if names(&["glutaraldehyde", "glutaral"]) {
        Substance::Glutaraldehyde
    } else if names(&["bleach", "hypochlorite", "chlorine", "dichloroisocyanurate"]) {
        Substance::Chlorine
    } else if names(&["alcohol", "ethanol", "isopropanol", "methylated spirit"]) {
        Substance::Alcohol
    } else if names(&["ammonia", "ammonium hydroxide"]) {
        Substance::Ammonia
    } else {
        return None;
    })
}

/// The organism that a name speaks of.
pub fn organism(name: &str) -> Option<Organism> {
    let name = name.to_lowercase();
    let names = |words: &[&str]| words.iter().any(|word| name.contains(word));
    Some(if names(&["ranavir"]) {
        Organism::Ranavirus
    } else if names(&["ophidiomyces", "snake fung"]) {
        Organism::SnakeFungus
    } else if names(&["nannizziopsis", "yellow fungus"]) {
        Organism::Nannizziopsis
    } else if names(&["crypto"]) {
        Organism::Cryptosporidium
    } else {
        return None;
    })
}

/// What a mix does to an organism, and the trial that says so; nothing where none was found.
pub fn effect(
    name: &str,
    strength: MixStrength,
    against: &str,
) -> Option<(Effect, &'static Trial)> {
    let (substance, organism) = (substance(name)?, organism(against)?);
    let trial =
        TRIALS.iter().find(|trial| trial.substance == substance && trial.organism == organism)?;
    let percent = match strength {
        MixStrength::PercentActive { wanted, .. } if trial.of_active => Some(wanted),
        _ if trial.of_active => None,
        MixStrength::OnePartIn(parts) => Some(100.0 / parts),
        MixStrength::PercentOfBottle(percent) => Some(percent),
        MixStrength::PercentActive { wanted, bottle } => Some(100.0 * wanted / bottle),
    };
    let effect = match (trial.fails, trial.works_from, percent) {
        (Fails::Always, ..) => Effect::None,
        (Fails::UpTo(most), _, Some(percent)) if percent <= most => Effect::None,
        // A ratio such as one part in 32 stands for a round figure of per cent.
        (_, Some(works_from), Some(percent)) if percent < works_from * 0.99 => {
            Effect::Unproven { percent, works_from }
        }
        _ => Effect::Works,
    };
    Some((effect, trial))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn does(name: &str, strength: MixStrength, against: &str) -> Option<Effect> {
        effect(name, strength, against).map(|(effect, _)| effect)
    }

    // Disinfectants against ranavirus, Diseases of Aquatic Organisms 84, 2009: bleach at 3 and 5 % worked within a minute, at
    // 0.2 and 1 % it did not; chlorhexidine at 0.75 and 2 % worked, at 0.25 % it did not.
    #[test]
    fn the_strengths_of_the_ranavirus_trial_are_kept_apart() {
        let bleach = |percent| does("bleach", MixStrength::PercentOfBottle(percent), "ranavirus");
        assert_eq!(bleach(0.2), Some(Effect::None));
        assert_eq!(bleach(1.0), Some(Effect::None));
        assert_eq!(bleach(2.0), Some(Effect::Unproven { percent: 2.0, works_from: 3.0 }));
        assert_eq!(bleach(3.0), Some(Effect::Works));
        assert_eq!(does("bleach", MixStrength::OnePartIn(32.0), "Ranavirus"), Some(Effect::Works));
        assert_eq!(does("bleach", MixStrength::OnePartIn(320.0), "Ranavirus"), Some(Effect::None));
        let chlorhexidine =
            |percent| does("chlorhexidine", MixStrength::PercentOfBottle(percent), "ranavirus");
        assert_eq!(chlorhexidine(0.25), Some(Effect::None));
        assert_eq!(chlorhexidine(0.75), Some(Effect::Works));
    }

    #[test]
    fn what_routine_disinfectants_do_not_kill_is_told_and_what_nobody_tried_is_not() {
        let neat = MixStrength::PercentOfBottle(100.0);
        for name in ["household bleach", "isopropanol", "quaternary ammonium", "glutaraldehyde"] {
            assert_eq!(does(name, neat, "Cryptosporidium serpentis"), Some(Effect::None), "{name}");
        }
        assert_eq!(does("chlorhexidine", neat, "Ophidiomyces"), Some(Effect::None));
        assert_eq!(does("household bleach", neat, "general"), None);
        assert_eq!(does("vinegar", neat, "ranavirus"), None);
        let peroxide = |wanted| {
            does("hydrogen peroxide", MixStrength::PercentActive { wanted, bottle: 12.0 }, "crypto")
        };
        assert_eq!(peroxide(6.0), Some(Effect::Works));
        assert_eq!(peroxide(3.0), Some(Effect::Unproven { percent: 3.0, works_from: 6.0 }));
        // Three per cent of a bottle of unknown strength may be anything.
        assert_eq!(
            does("hydrogen peroxide", MixStrength::PercentOfBottle(3.0), "crypto"),
            Some(Effect::Works)
        );
    }
}
